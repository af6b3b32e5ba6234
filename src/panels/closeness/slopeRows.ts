import type { Design } from '../../design/design';
import { JYY, JYZ, JZZ } from '../../engine/mass/moments';
import type { Derivative } from '../../neutralise/closeness/derivatives';
import { probeLayout } from '../../neutralise/closeness/headProbe';
import { type Toleranced, toleranceOf } from '../../neutralise/closeness/tolerances';
import { type KnobRef, knobKey, knobPart } from '../../neutralise/knobs';
import type { ParameterUnit } from '../../parts/contract';
import type { ClosenessView, Slopes } from '../../state/closeness';
import type { DisplayUnits } from '../../state/settings';
import { documentNumber, shownStep, shownText, shownUnit } from '../../state/shownUnits';

/** One number of the head and what it does to the push-rod force (of a head without an arm: to the moment), SI. */
export interface SlopeRow {
  readonly key: string;
  readonly ref: KnobRef;
  readonly unit: ParameterUnit;
  /** "0.1 mm", "1 %": what `change` is for. */
  readonly stepText: string;
  /** What one step changes; null where there is no slope. */
  readonly change: number | null;
  readonly outcome: Derivative['outcome'];
  readonly tolerance: Pick<Toleranced, 'plusMinus' | 'source'> | null;
  /** What the tolerance changes, either way. */
  readonly effect: number;
}

export interface SlopeTable {
  /** Of a force (of a head without an arm: a moment), or of a second moment. */
  readonly quantity: 'force' | 'moment' | 'secondMoment';
  /** The largest first; those without a slope last. */
  readonly rows: readonly SlopeRow[];
  /** How many change nothing. */
  readonly zeros: number;
  readonly largest: number;
}

/** A change below this share of the largest is none: rounding and what does not weigh. */
const NOTHING = 1e-6;

/** Steps that are compared: a tenth of a millimetre or a gram, a degree, a hundredth of a density or of a chord. */
function stepOf(field: string, unit: ParameterUnit, value: number, units: DisplayUnits) {
  if (unit === 'kg/m3') return { step: value / 100, text: '1\u00a0%' };
  if (field.endsWith('Percent')) return { step: 1, text: '1\u00a0%' };
  const shown = shownUnit(unit, units);
  const own = unit === 'mm' || unit === 'g' ? 0.1 : 1;
  const step = documentNumber(shownStep(own, shown), shown);
  return { step, text: shownText(step, shown) };
}

/**
 * In a drag: the head whose slopes are shown, with the tolerances as they are now. A tolerance changes no slope, so the head that was
 * last worked out may be older than they are.
 */
export function slopedDesign({ design }: Slopes, tolerance: Design['tolerance']): Design {
  const { tolerance: _, ...head } = design;
  return tolerance ? { ...head, tolerance } : head;
}

/** The table at the pitch looked at, in the order looked for. Tolerances are those of the design as it is now. */
export function slopeTable(
  { derivatives, pitchesDeg }: Slopes,
  design: Design,
  view: ClosenessView,
  units: DisplayUnits,
): SlopeTable {
  const layout = probeLayout(pitchesDeg.length);
  const forceAt = layout.forceAt(view.pitch);
  const found = derivatives.flatMap(({ outcome }) => (outcome.kind === 'found' ? [outcome] : []));
  const hasForce = found.some(({ slopes }) => !Number.isNaN(slopes[forceAt]));
  const momentAt = layout.momentAt(view.pitch);
  const read = {
    force: (row: Float64Array) => row[hasForce ? forceAt : momentAt],
    difference: (row: Float64Array) => row[JYY] - row[JZZ],
    product: (row: Float64Array) => row[JYZ],
  }[view.of];
  const quantity = view.of === 'force' ? (hasForce ? 'force' : 'moment') : 'secondMoment';
  const all = derivatives.map((one) => rowOf(one, read, design, units));
  const size = (row: SlopeRow) =>
    row.change === null ? -1 : view.rank === 'step' ? Math.abs(row.change) : row.effect;
  const largestStep = Math.max(0, ...all.map(({ change }) => Math.abs(change ?? 0)));
  const weighs = (row: SlopeRow) =>
    row.change === null || Math.abs(row.change) > NOTHING * largestStep;
  const rows = all.filter(weighs).toSorted((a, b) => size(b) - size(a));
  return {
    quantity,
    rows,
    zeros: all.length - rows.length,
    largest: Math.max(0, ...rows.map(size)),
  };
}

function rowOf(
  { ref, unit, value, outcome }: Derivative,
  read: (row: Float64Array) => number,
  design: Design,
  units: DisplayUnits,
): SlopeRow {
  const { step, text } = stepOf(ref.field, unit, value, units);
  const slope = outcome.kind === 'found' ? read(outcome.slopes) : Number.NaN;
  const part = knobPart(design, ref);
  const tolerance = part ? toleranceOf(design, part, ref, value, unit) : null;
  return {
    key: knobKey(ref),
    ref,
    unit,
    stepText: text,
    change: Number.isNaN(slope) ? null : slope * step,
    outcome,
    tolerance,
    effect: Number.isNaN(slope) ? 0 : Math.abs(slope) * (tolerance?.plusMinus ?? 0),
  };
}

import {
  COVERAGE,
  type Comparison,
  compareMeasured,
  type Measurement,
} from '../engine/mass/compareMeasured';
import type { MeasuredQuantity } from '../engine/mass/measured';
import { JXX, JYY, JZZ, M, type Moments } from '../engine/mass/moments';
import { kilogramsFromGrams, metresFromMm } from '../engine/units';
import {
  bodyMoments,
  drawnMoments,
  MEASURED_QUANTITIES,
  type Quantities,
  quantitiesOf,
} from './bodyMoments';
import { type DensityRange, densitiesOf, densityRanges } from './densityRange';
import type { Part } from './design';
import { MEASURED_LIMITS, type Measured, SWING_AXES } from './measured';
import type { Materials } from './resolve';
import type { PartValues } from './values';
import { massUncertainty, readingUncertainty, swingMoment } from './weighPart';

const CENTRES = ['centreX', 'centreY', 'centreZ'] as const;
const INERTIAS = ['inertiaX', 'inertiaY', 'inertiaZ'] as const;

/**
 * Assumed standard uncertainty of what the dimensions give (common practice: a part measured with a calliper, its
 * section and fillets simplified): this share of mass and moments of inertia, and of the root-mean-square distance of
 * the mass from the body's origin for a centre.
 */
export const DIMENSION_UNCERTAINTY = 0.02;

export interface QuantityComparison extends Comparison {
  /** Standard uncertainties that `uncertainty` is made of. */
  readonly measuredUncertainty: number;
  readonly modelUncertainty: number;
  /** How large a difference is still expected: COVERAGE times the combined standard uncertainty. */
  readonly expected: number;
}

/** One number of a body, SI, in its own frame; moments of inertia are about its centre of mass. */
export interface ReportedQuantity {
  readonly what: MeasuredQuantity;
  /** As drawn. */
  readonly modelled: number;
  readonly modelUncertainty: number;
  /** What the head is computed with. */
  readonly applied: number;
  /** Null where it was not measured. */
  readonly comparison: QuantityComparison | null;
}

export interface MeasuredReport {
  /** All seven, in the order of `MEASURED_QUANTITIES`. */
  readonly quantities: readonly ReportedQuantity[];
  /** Mass that applies over modelled mass: what every density was scaled by. */
  readonly densityFactor: number;
  /** The density before and after, where the part has one density and no more. */
  readonly density: { readonly from: number; readonly to: number } | null;
  /** Material ranges that the modelled uncertainties come from. */
  readonly ranges: readonly DensityRange[];
}

/**
 * A part as drawn beside what was measured of it. Null where it has no mass to compare, or where its measurements are
 * refused (`weighPart` says why).
 *
 * Modelled values are uncertain by `DIMENSION_UNCERTAINTY` and, where a density comes from a material with a range, by
 * that: taken as uniform, half the range over sqrt(3) (JCGM 100, GUM, 4.3.7), each quantity weighed anew at both ends.
 */
export function measuredReport(
  part: Part,
  values: PartValues,
  materials: Materials,
): MeasuredReport | null {
  const drawn = drawnMoments(part, values);
  const applied = bodyMoments(part, values);
  const modelled = quantitiesOf(drawn);
  const now = applied && quantitiesOf(applied);
  if (!modelled || !now) return null;
  const ranges = densityRanges(part, values, materials);
  const spread = modelUncertainties(part, values, drawn, modelled, ranges);
  const measurements = measurementsOf(part.measured ?? {}, modelled.mass, spread);
  const compared = compareMeasured(drawn, measurements);
  if (!compared.ok) return null;
  const densityFactor = now.mass / modelled.mass;
  return {
    quantities: MEASURED_QUANTITIES.map((what): ReportedQuantity => {
      const at = measurements.findIndex((one) => one.what === what);
      return {
        what,
        modelled: modelled[what],
        modelUncertainty: spread[what],
        applied: now[what],
        comparison: at < 0 ? null : explained(compared.value[at], measurements[at]),
      };
    }),
    densityFactor,
    density: onlyDensity(part, values, modelled.mass, densityFactor),
    ranges,
  };
}

function modelUncertainties(
  part: Part,
  values: PartValues,
  drawn: Moments,
  modelled: Quantities,
  ranges: readonly DensityRange[],
): Quantities {
  const rms = (place: number) => Math.sqrt(Math.max(0, drawn[place]) / drawn[M]);
  const sizes: Quantities = {
    ...modelled,
    centreX: rms(JXX),
    centreY: rms(JYY),
    centreZ: rms(JZZ),
  };
  const ends = ranges.map(({ name, value, uncertainty }) =>
    [value - uncertainty, value + uncertainty].map((density) =>
      quantitiesOf(drawnMoments(part, { ...values, [name]: density })),
    ),
  );
  const uncertainty = (what: MeasuredQuantity) =>
    Math.hypot(
      DIMENSION_UNCERTAINTY * sizes[what],
      ...ends.map(([low, high]) => (low && high ? (high[what] - low[what]) / 2 : 0)),
    );
  const entries = MEASURED_QUANTITIES.map((what) => [what, uncertainty(what)]);
  return Object.fromEntries(entries) as Record<MeasuredQuantity, number>;
}

/** A timing without a weighed mass takes the modelled one, with the model's uncertainty. */
function measurementsOf(measured: Measured, modelMass: number, spread: Quantities): Measurement[] {
  const { massGrams, swings = [] } = measured;
  const mass = massGrams === undefined ? modelMass : kilogramsFromGrams(massGrams);
  const massSpread = massGrams === undefined ? spread.mass : massUncertainty(measured);
  const step = metresFromMm(measured.centreStepMm ?? MEASURED_LIMITS.centreStepMm.standard);
  const one = (what: MeasuredQuantity, value: number, uncertainty: number): Measurement => ({
    what,
    measured: value,
    uncertainty,
    modelUncertainty: spread[what],
  });
  const centres = [measured.centreXMm, measured.centreYMm, measured.centreZMm];
  return [
    ...(massGrams === undefined ? [] : [one('mass', mass, massSpread)]),
    ...centres.flatMap((mm, axis) =>
      mm === undefined ? [] : [one(CENTRES[axis], metresFromMm(mm), readingUncertainty(step))],
    ),
    ...swings.map((swing) => {
      const { moment, uncertainty } = swingMoment(swing, mass, massSpread);
      return one(INERTIAS[SWING_AXES.indexOf(swing.about)], moment, uncertainty);
    }),
  ];
}

function explained(compared: Comparison, measurement: Measurement): QuantityComparison {
  return {
    ...compared,
    measuredUncertainty: measurement.uncertainty,
    modelUncertainty: measurement.modelUncertainty ?? 0,
    expected: COVERAGE * compared.uncertainty,
  };
}

/** The one density that the whole mass comes from, before and after; null where there are several, or none. */
function onlyDensity(
  part: Part,
  values: PartValues,
  mass: number,
  factor: number,
): MeasuredReport['density'] {
  const [name, ...others] = densitiesOf(part).filter((one) => {
    const heavier = drawnMoments(part, { ...values, [one]: 2 * (values[one] as number) });
    return heavier[M] !== mass;
  });
  if (name === undefined || others.length > 0) return null;
  const from = values[name] as number;
  const doubled = drawnMoments(part, { ...values, [name]: 2 * from })[M];
  return Math.abs(doubled / mass - 2) < 1e-9 ? { from, to: from * factor } : null;
}

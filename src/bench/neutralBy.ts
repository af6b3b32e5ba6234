import type { Design } from '../design/design';
import type { DesignFault } from '../design/fault';
import { HeadModel } from '../design/headModel';
import { materialsOf, valuesOf } from '../design/resolve';
import { createMoments, JYY, JYZ, JZZ } from '../engine/mass/moments';
import { fail, type Result, succeed } from '../engine/result';
import { crossings } from '../engine/solve/oneUnknown';
import { kilogramsFromGrams, metresFromMm } from '../engine/units';
import { type KnobRef, knobPart, knobRange, knobValue, withKnob } from '../neutralise/knobs';
import { partType } from '../parts/registry';
import { type CorrectionFault, type Lump, lumpAt } from './correction';
import { digits } from './digits';
import type { Estimated } from './fitRung';

/** One number of the design that brings the measured head's J_yy - J_zz to nothing. */
export interface NeutralBy {
  readonly ref: KnobRef;
  readonly from: number;
  /** In the knob's unit, with the standard uncertainty that the measurement leaves. */
  readonly value: number;
  readonly sigma: number;
  readonly design: Design;
  /** J_yz of the head that is then left, kg m^2: one number does not bring it to nothing as well. */
  readonly productLeft: number;
}

export type NeutralFault =
  | { readonly kind: 'design'; readonly fault: DesignFault }
  | { readonly kind: 'noKnob' }
  /** The nearest value that does it is more than `reach` away from the present one: another number should be turned. */
  | { readonly kind: 'tooFar'; readonly value: number; readonly reach: number }
  /** Within its limits and the rules of the part no value does it; the nearest there is leaves this, kg m^2. */
  | { readonly kind: 'noValue'; readonly nearest: number | null; readonly spreadLeft: number };

/** Looks along the knob. */
const LOOKS = 49;

/**
 * The value of one number with which the measured head would be neutral: modelled J_yy - J_zz at that value plus what the
 * model has too little is zero. The deficit is taken as belonging to other parts, so that it stays as it is; of several
 * values the nearest to the present one. Its uncertainty is the deficit's over the slope.
 */
export function neutralBy(
  design: Design,
  ref: KnobRef,
  deficit: Estimated,
  limits?: { readonly min: number; readonly max: number },
): Result<NeutralBy, NeutralFault> {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return fail({ kind: 'design', fault: loaded.error });
  const range = limits ?? knobRange(design, ref);
  const part = knobPart(design, ref);
  const from = knobValue(design, ref);
  if (!range || !part || from === undefined) return fail({ kind: 'noKnob' });
  const totals = createMoments();
  const materials = materialsOf(design);
  const spreadAt = (value: number): number => {
    if (!model.setPart(withKnob(part, ref, value, materials)).ok) return Number.NaN;
    model.totals(totals);
    return totals[JYY] - totals[JZZ] + deficit.spread;
  };
  const near = nearRange(range, from);
  const found = crossings(spreadAt, near.min, near.max, LOOKS, [from]);
  const far =
    found.roots.length > 0 ? found : crossings(spreadAt, range.min, range.max, LOOKS, [from]);
  const [root] = far.roots.toSorted(nearerTo(from));
  if (root && found.roots.length === 0 && !limits)
    return fail({ kind: 'tooFar', value: digits(root.x), reach: reachOf(from) });
  if (!root) {
    const { nearest } = far;
    return fail({
      kind: 'noValue',
      nearest: nearest?.x ?? null,
      spreadLeft: nearest?.value ?? Number.NaN,
    });
  }
  const value = digits(root.x);
  const slope = slopeAt(spreadAt, value);
  spreadAt(value);
  return succeed({
    ref,
    from,
    value,
    sigma: Math.sqrt(deficit.covariance[0]) / Math.abs(slope),
    design: {
      ...design,
      parts: design.parts.map((one) =>
        one.id === ref.part ? withKnob(one, ref, value, materials) : one,
      ),
    },
    productLeft: totals[JYZ] + deficit.product,
  });
}

function nearerTo(from: number) {
  return (a: { readonly x: number }, b: { readonly x: number }) =>
    Math.abs(a.x - from) - Math.abs(b.x - from);
}

/** How far a number is turned at most for a correction: 20 mm, or to three times what it is (an assumption of ours). */
function reachOf(from: number): number {
  return Math.max(20, 2 * Math.abs(from));
}

/** Some tens of millimetres about where it is, within its limits: a limit is often metres away. */
function nearRange({ min, max }: { readonly min: number; readonly max: number }, from: number) {
  const reach = reachOf(from);
  return { min: Math.max(min, from - reach), max: Math.min(max, from + reach) };
}

/** By central difference, from the one side where the other breaks a rule. */
function slopeAt(f: (x: number) => number, x: number): number {
  const h = 1e-4 * Math.max(1, Math.abs(x));
  const [low, at, high] = [f(x - h), f(x), f(x + h)];
  if (Number.isNaN(low)) return (high - at) / h;
  return Number.isNaN(high) ? (at - low) / h : (high - low) / (2 * h);
}

/** The lengths that are turned to carry mass outward (a head's extension, a nut's height), the usual one of each part first. */
export function turnedLengths(design: Design): readonly KnobRef[] {
  return design.parts.flatMap((part): KnobRef[] => {
    if (part.hidden) return [];
    const values = valuesOf(part, materialsOf(design)) as never;
    const trims = partType(part.kind).trims?.(values) ?? [];
    return trims.map(({ length }) => ({ part: part.id, field: length }));
  });
}

/**
 * Grams at a stated place (mm, grip frame) that bring the measured head's J_yy - J_zz to nothing: modelled plus missing.
 * The place must be one whose mass pulls the other way; J_yz is left as it comes out.
 */
export function neutralLump(
  design: Design,
  positionMm: readonly [number, number, number],
  deficit: Estimated,
  name: string,
): Result<Lump, CorrectionFault> {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return fail({ kind: 'design', fault: loaded.error });
  const totals = model.totals(createMoments());
  const [a, , , p] = deficit.covariance;
  // J_yz takes no part: its weight is made nothing.
  const wanted: Estimated = {
    ...deficit,
    spread: -(totals[JYY] - totals[JZZ] + deficit.spread),
    product: 0,
    covariance: [a, 0, 0, Math.max(a, p) * 1e12],
  };
  const lump = lumpAt(design, positionMm, wanted, name);
  if (!lump.ok) return lump;
  const [y, z] = [metresFromMm(positionMm[1]), metresFromMm(positionMm[2])];
  const product = totals[JYZ] + deficit.product + kilogramsFromGrams(lump.value.massGrams) * y * z;
  return succeed({ ...lump.value, left: { ...deficit, spread: 0, product } });
}

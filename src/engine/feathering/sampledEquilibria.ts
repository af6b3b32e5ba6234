import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';
import type { Equilibria, Equilibrium, EquilibriumKind } from './equilibria';

/** A moment curve with its slope; NaN in its gaps. */
export interface SmoothMoment {
  readonly value: (pitch: number) => number;
  readonly slope: (pitch: number) => number;
  /** Both at the ends of the cells (`equilibriumCells`), where the caller has them at hand. */
  readonly atCells?: {
    readonly ends: Float64Array;
    readonly values: Float64Array;
    readonly slopes: Float64Array;
  };
}

/** Width of a cell of the search. */
const CELL = Math.PI / 720;
/** Where a cell begins beside a root that lies exactly on its end: a millionth of its width farther on. */
const BESIDE = 1e-6 * CELL;
/** A dip that comes within this share of the scale of zero touches it. */
const TOUCH = 1e-9;

/** Ends of the cells that are searched between two pitches, ascending: `from` first, `to` last. */
export function equilibriumCells(from: Radians, to: Radians): Float64Array {
  const count = Math.max(1, Math.ceil((to - from) / CELL - 1e-9));
  return Float64Array.from({ length: count + 1 }, (_, i) =>
    i === count ? to : from + ((to - from) * i) / count,
  );
}

/**
 * Rest and flee angles in [from, to] of a moment that is no trigonometric polynomial, ascending. `scale` is a size of
 * moment that counts as one: a curve below 1e-12 of it throughout is neutral. One without a single value is not: nothing is
 * known of it, so nothing is found.
 *
 * Cells of a quarter of a degree: a change of sign is one root (Brent); within a cell whose end slopes say that the
 * curve turns toward zero and back, the extremum is found and with it a pair of roots or a touch. What this can miss is
 * a pair within one cell about two extrema. A root that lies exactly on the end of a cell is called by the sign of its slope
 * alone, and the cells beside it begin a millionth of their width farther on. Nothing is looked for across a gap (NaN).
 */
export function sampledEquilibria(
  curve: SmoothMoment,
  from: Radians,
  to: Radians,
  scale: number,
): Equilibria {
  const ends = curve.atCells?.ends ?? equilibriumCells(from, to);
  const values = curve.atCells?.values ?? ends.map(curve.value);
  const slopes = curve.atCells?.slopes ?? null;
  const roots: Equilibrium[] = [];
  // NaN is below everything, and an empty maximum is -Infinity: a curve that is all gap stays there.
  let largest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < values.length; i++) {
    const size = Math.abs(values[i]);
    if (size > largest) largest = size;
  }
  const search = { curve, ends, values, slopes, scale };
  for (let i = 1; i < ends.length; i++) if (mayHoldRoots(search, i)) rootsBetween(search, i, roots);
  if (largest >= 0 && !(largest > 1e-12 * scale)) return { kind: 'neutral' };
  return { kind: 'found', roots: single(roots) };
}

interface Search {
  readonly curve: SmoothMoment;
  readonly ends: Float64Array;
  readonly values: Float64Array;
  /** Null where each has to be asked for. */
  readonly slopes: Float64Array | null;
  readonly scale: number;
}

/** Whether there may be any between the ends i - 1 and i: a zero, a change of sign, or a dip toward zero and back. */
function mayHoldRoots({ curve, ends, values, slopes }: Search, i: number): boolean {
  const atLow = values[i - 1];
  if (atLow * values[i] <= 0) return true;
  const isAbove = atLow > 0;
  const slope = slopes ? slopes[i - 1] : curve.slope(ends[i - 1]);
  if (!(isAbove ? slope < 0 : slope > 0)) return false;
  const next = slopes ? slopes[i] : curve.slope(ends[i]);
  return isAbove ? next > 0 : next < 0;
}

/** Those at and between the ends i - 1 and i, ascending. */
function rootsBetween({ curve, ends, values, scale }: Search, i: number, out: Equilibrium[]): void {
  const isLow = values[i - 1] === 0;
  const isHigh = values[i] === 0;
  if (isLow) out.push(rootAt(curve, ends[i - 1]));
  const low = isLow ? ends[i - 1] + BESIDE : ends[i - 1];
  const high = isHigh ? ends[i] - BESIDE : ends[i];
  rootsInside(curve, low, high, scale, out);
  if (isHigh) out.push(rootAt(curve, ends[i]));
}

/** Those between two pitches at which the curve is not zero; none where it is. */
function rootsInside(
  curve: SmoothMoment,
  low: number,
  high: number,
  scale: number,
  out: Equilibrium[],
): void {
  const way = Math.sign(curve.value(low));
  const other = Math.sign(curve.value(high));
  if (way * other === 0) return;
  if (way !== other) {
    const root = bracketedRoot(curve.value, low, high);
    if (root) out.push(rootAt(curve, root.root, way > 0 ? 'stable' : 'unstable'));
    return;
  }
  // Away from zero on the right and, where the slope changes its sign, toward it on the left: a dip between.
  const dip = way * curve.slope(high) > 0 ? bracketedRoot(curve.slope, low, high) : null;
  if (!dip) return;
  const depth = way * curve.value(dip.root);
  if (Math.abs(depth) <= TOUCH * scale) out.push(rootAt(curve, dip.root, 'tangent'));
  else if (depth < 0) {
    const first = bracketedRoot(curve.value, low, dip.root);
    const second = bracketedRoot(curve.value, dip.root, high);
    if (first) out.push(rootAt(curve, first.root, way > 0 ? 'stable' : 'unstable'));
    if (second) out.push(rootAt(curve, second.root, way > 0 ? 'unstable' : 'stable'));
  }
}

function rootAt(curve: SmoothMoment, pitch: number, known?: EquilibriumKind): Equilibrium {
  const slope = curve.slope(pitch);
  return {
    pitch: radians(pitch),
    kind: known ?? (slope < 0 ? 'stable' : 'unstable'),
    stiffness: -slope,
  };
}

/** A root on an edge that two cells share was found in both. */
function single(roots: readonly Equilibrium[]): readonly Equilibrium[] {
  return roots.filter((root, i) => i === 0 || root.pitch - roots[i - 1].pitch > 1e-9);
}

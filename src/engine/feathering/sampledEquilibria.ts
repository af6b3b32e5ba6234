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
/** A dip that comes within this share of the scale of zero touches it. */
const TOUCH = 1e-9;

/** Ends of the cells that are searched between two pitches, ascending: `from` first, `to` last. */
export function equilibriumCells(from: Radians, to: Radians): Float64Array {
  const count = Math.max(1, Math.ceil((to - from) / CELL - 1e-9));
  return Float64Array.from({ length: count + 1 }, (_, i) =>
    i === 0 ? from : i === count ? to : from + ((to - from) * i) / count,
  );
}

/**
 * Rest and flee angles in [from, to] of a moment that is no trigonometric polynomial, ascending. `scale` is a size of
 * moment that counts as one: a curve below 1e-12 of it throughout is neutral. One without a single value is not: nothing is
 * known of it, so nothing is found.
 *
 * Cells of a quarter of a degree: a change of sign is one root (Brent); within a cell whose end slopes say that the
 * curve turns toward zero and back, the extremum is found and with it a pair of roots or a touch. What this can miss is
 * a pair within one cell about two extrema, and a root within a quarter of a degree of one that lies exactly on the end of a
 * cell; such a one is called by the sign of its slope alone. Nothing is looked for across a gap (NaN).
 */
export function sampledEquilibria(
  curve: SmoothMoment,
  from: Radians,
  to: Radians,
  scale: number,
): Equilibria {
  const ends = curve.atCells?.ends ?? equilibriumCells(from, to);
  const values = curve.atCells?.values ?? ends.map(curve.value);
  const slopeAt = (i: number) => curve.atCells?.slopes[i] ?? curve.slope(ends[i]);
  const roots: Equilibrium[] = [];
  // NaN is below everything, and an empty maximum is -Infinity: a curve that is all gap stays there.
  let largest = Number.NEGATIVE_INFINITY;
  for (const value of values) if (Math.abs(value) > largest) largest = Math.abs(value);
  const search = { curve, ends, values, slopeAt, scale };
  for (let i = 1; i < ends.length; i++) rootsBetween(search, i, roots);
  if (largest >= 0 && !(largest > 1e-12 * scale)) return { kind: 'neutral' };
  return { kind: 'found', roots: single(roots) };
}

interface Search {
  readonly curve: SmoothMoment;
  readonly ends: Float64Array;
  readonly values: Float64Array;
  readonly scale: number;
  slopeAt(i: number): number;
}

/** Those between the ends i - 1 and i. */
function rootsBetween(search: Search, i: number, out: Equilibrium[]): void {
  const { curve, ends, values, scale } = search;
  const atLow = values[i - 1];
  const atHigh = values[i];
  if (Number.isNaN(atLow) || Number.isNaN(atHigh)) return;
  if (atLow === 0) out.push(rootAt(curve, ends[i - 1]));
  if (atHigh === 0) out.push(rootAt(curve, ends[i]));
  if (atLow === 0 || atHigh === 0) return;
  if (atLow > 0 !== atHigh > 0) {
    const root = bracketedRoot(curve.value, ends[i - 1], ends[i]);
    if (root) out.push(rootAt(curve, root.root, atLow > 0 ? 'stable' : 'unstable'));
    return;
  }
  // Toward zero on the left and, where the slope changes its sign, away from it on the right: a dip between.
  const way = Math.sign(atLow);
  if (!(way * search.slopeAt(i - 1) < 0 && way * search.slopeAt(i) > 0)) return;
  const dip = bracketedRoot(curve.slope, ends[i - 1], ends[i]);
  if (!dip) return;
  const depth = way * curve.value(dip.root);
  if (Math.abs(depth) <= TOUCH * scale) out.push(rootAt(curve, dip.root, 'tangent'));
  else if (depth < 0) {
    const first = bracketedRoot(curve.value, ends[i - 1], dip.root);
    const second = bracketedRoot(curve.value, dip.root, ends[i]);
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

import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';
import type { Equilibria, Equilibrium, EquilibriumKind } from './equilibria';

/** A moment curve with its slope; NaN in its gaps. */
export interface SmoothMoment {
  readonly value: (pitch: number) => number;
  readonly slope: (pitch: number) => number;
}

/** Width of a cell of the search. */
const CELL = Math.PI / 720;
/** A dip that comes within this share of the scale of zero touches it. */
const TOUCH = 1e-9;

/**
 * Rest and flee angles in [from, to] of a moment that is no trigonometric polynomial, ascending. `scale` is a size of
 * moment that counts as one: a curve below 1e-12 of it throughout is neutral.
 *
 * Cells of a quarter of a degree: a change of sign is one root (Brent); within a cell whose end slopes say that the
 * curve turns toward zero and back, the extremum is found and with it a pair of roots or a touch. What this can miss is
 * a pair within one cell about two extrema. Nothing is looked for across a gap (NaN).
 */
export function sampledEquilibria(
  curve: SmoothMoment,
  from: Radians,
  to: Radians,
  scale: number,
): Equilibria {
  const count = Math.max(1, Math.ceil((to - from) / CELL - 1e-9));
  const roots: Equilibrium[] = [];
  let largest = 0;
  let low = from as number;
  let atLow = curve.value(low);
  for (let i = 1; i <= count; i++) {
    const high = i === count ? to : from + ((to - from) * i) / count;
    const atHigh = curve.value(high);
    largest = Math.max(largest, Math.abs(atLow) || 0, Math.abs(atHigh) || 0);
    rootsBetween(curve, [low, atLow], [high, atHigh], scale, roots);
    low = high;
    atLow = atHigh;
  }
  if (!(largest > 1e-12 * scale)) return { kind: 'neutral' };
  return { kind: 'found', roots: single(roots) };
}

type Point = readonly [number, number];

function rootsBetween(
  curve: SmoothMoment,
  [low, atLow]: Point,
  [high, atHigh]: Point,
  scale: number,
  out: Equilibrium[],
): void {
  if (Number.isNaN(atLow) || Number.isNaN(atHigh)) return;
  if (atLow === 0) out.push(rootAt(curve, low));
  if (atHigh === 0) out.push(rootAt(curve, high));
  if (atLow === 0 || atHigh === 0) return;
  if (atLow > 0 !== atHigh > 0) {
    const root = bracketedRoot(curve.value, low, high);
    if (root) out.push(rootAt(curve, root.root, atLow > 0 ? 'stable' : 'unstable'));
    return;
  }
  // Toward zero on the left and, where the slope changes its sign, away from it on the right: a dip between.
  const way = Math.sign(atLow);
  if (!(way * curve.slope(low) < 0)) return;
  const dip = bracketedRoot(curve.slope, low, high);
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

import { bracketedRoot } from '../math/rootBracket';
import type { EquilibriumKind, MomentCurve } from './equilibria';

/** Width of the finest cells, rad: roots nearer to each other than about this are one tangent root. */
export const RESOLUTION = 1e-7;
/** A root that rounding has pushed this far past an end of the range still belongs to it, and is put on the end. */
export const MARGIN = 1e-12;
/** A moment below this share of the curve's scale is rounding. */
const TOUCH = 3e-15;

/** A root among flat cells. */
interface FlatRoot {
  /** The edges on either side of it where M is clearly not zero. */
  readonly low: number;
  readonly high: number;
  readonly pitch: number;
  readonly kind: EquilibriumKind;
  /** How far outside a range it may lie and still belong to it. */
  readonly reach: number;
}

/**
 * Roots among the cells (a, b pairs, ascending) that no bound could settle. Runs of neighbouring cells are walked edge
 * by edge with the sign of M, which counts as 0 below 3e-15 x scale (rounding) plus what an extremum can hide
 * between edges half a resolution apart.
 */
export function settleFlat(curve: MomentCurve, cells: readonly number[]): readonly FlatRoot[] {
  const step = RESOLUTION / 2;
  const floor = TOUCH * curve.scale + (curve.curvatureBound * step * step) / 8;
  const sign = (pitch: number) => {
    const value = curve.value(pitch);
    return Math.abs(value) <= floor ? 0 : Math.sign(value);
  };
  const roots: FlatRoot[] = [];
  let done = -Infinity;
  for (let i = 0; i < cells.length; ) {
    const edges = [cells[i]];
    do {
      edges.push(cells[i + 1]);
      i += 2;
    } while (i < cells.length && cells[i] - cells[i - 1] < step / 8);
    const signs = edges.map(sign);
    // Walk on past both ends until M is clearly not zero: the run's first and last root need both their sides.
    const farthest = 1e4;
    for (let k = 0; k < farthest && signs[0] === 0; k++) {
      edges.unshift(edges[0] - step);
      signs.unshift(sign(edges[0]));
    }
    for (let k = 0; k < farthest && signs[signs.length - 1] === 0; k++) {
      edges.push(edges[edges.length - 1] + step);
      signs.push(sign(edges[edges.length - 1]));
    }
    done = edges[edges.length - 1];
    while (i < cells.length && cells[i] < done) i += 2;
    let left = 0;
    for (let k = 1; k < edges.length; k++) {
      if (signs[k] === 0) continue;
      const root = flatRoot(curve, edges[left], edges[k], k - left, signs[left], signs[k]);
      if (root) roots.push(root);
      left = k;
    }
  }
  return roots;
}

/** The root between two edges of known sign with `cells - 1` edges of no sign between them. */
function flatRoot(
  curve: MomentCurve,
  low: number,
  high: number,
  cells: number,
  before: number,
  after: number,
): FlatRoot | null {
  const middle = (low + high) / 2;
  if (before * after < 0) {
    // A long run of zeros is a flat crossing, whose signs inside are rounding: its middle is the better root.
    const crossing = cells > 3 ? null : bracketedRoot(curve.value, low, high);
    const reach = crossing ? MARGIN : (high - low) / 2;
    return {
      low,
      high,
      pitch: crossing?.root ?? middle,
      kind: before > after ? 'stable' : 'unstable',
      reach,
    };
  }
  if (cells === 1) return null;
  // Without an extremum M only wavers about the floor on its way; with one, it must come to zero or go through.
  const extremum = bracketedRoot(curve.slope, low, high);
  if (extremum === null || curve.value(extremum.root) * before > TOUCH * curve.scale) return null;
  return { low, high, pitch: extremum.root, kind: 'tangent', reach: RESOLUTION };
}

import type { DesignFault } from '../design/fault';
import { boundedLeastSquares } from '../engine/solve/boundedLeastSquares';
import { crossings } from '../engine/solve/oneUnknown';
import { knobRange } from './knobs';
import { type Bench, type KnobLimits, type KnobSolution, MET } from './solveBench';

/** Why the goal is not met. */
export type Obstacle =
  /** A limit of a knob stands in the way; `needed` is the value that would do, null where none does. */
  | {
      readonly kind: 'limit';
      readonly knob: number;
      readonly limit: number;
      readonly needed: number | null;
    }
  /** A rule of the part refuses what would be needed. */
  | { readonly kind: 'rule'; readonly knob: number; readonly fault: DesignFault }
  /** What one number can do is done; the rest (J_yz, where it rests) it does not move. */
  | { readonly kind: 'partly' }
  /** None of the knobs moves what is left. */
  | { readonly kind: 'noEffect' }
  /** It comes no nearer anywhere within the limits: `share` of what is wrong now is left (above 1: it gets worse). */
  | { readonly kind: 'falls short'; readonly share: number };

/** What stands in the way of one knob: its limit, a rule, or nothing that it could do. */
export function obstacleOfOne(
  bench: Bench,
  nearest: { readonly x: number; readonly value: number },
  limits: KnobLimits,
): Obstacle {
  const { head } = bench;
  const here = bench.leading(head.start[0]);
  const share = Math.abs(nearest.value / here);
  const span = limits.max - limits.min;
  const beyond = Math.max(Math.abs(bench.leading(limits.min)), Math.abs(bench.leading(limits.max)));
  if (Math.abs(beyond - Math.abs(nearest.value)) <= MET) return { kind: 'noEffect' };
  const edge = nearest.x >= limits.max ? 1 : nearest.x <= limits.min ? -1 : 0;
  if (edge === 0) {
    // It ends before the limit: a rule of the part.
    for (const way of [1, -1]) {
      if (Number.isNaN(bench.leading(nearest.x + way * 1e-6 * span)) && head.refused) {
        return { kind: 'rule', knob: 0, fault: head.refused };
      }
    }
    return { kind: 'falls short', share };
  }
  const limit = edge > 0 ? limits.max : limits.min;
  return { kind: 'limit', knob: 0, limit, needed: neededBeyond(bench, limits, edge) };
}

/** The value past a limit that would do: looked for at twice, four, eight ... times the range, to the part's own limit. */
function neededBeyond(bench: Bench, { min, max }: KnobLimits, edge: 1 | -1): number | null {
  const own = knobRange(bench.head.design, bench.head.knobs[0].ref);
  if (!own) return null;
  const end = edge > 0 ? own.max : own.min;
  const span = max - min;
  let near = edge > 0 ? max : min;
  for (let times = 1; times <= 512; times *= 2) {
    const far = edge > 0 ? Math.min(end, near + times * span) : Math.max(end, near - times * span);
    if (far === near) return null;
    const { roots } = crossings(bench.leading, Math.min(near, far), Math.max(near, far), 25);
    const root = edge > 0 ? roots[0] : roots[roots.length - 1];
    if (root) return root.x;
    near = far;
  }
  return null;
}

export function obstacleOfSeveral(
  bench: Bench,
  limits: readonly KnobLimits[],
  best: KnobSolution | undefined,
): Obstacle {
  const { head, scale, startCost } = bench;
  if (!best) {
    bench.costAt(limits.map(({ min }) => min));
    return head.refused
      ? { kind: 'rule', knob: 0, fault: head.refused }
      : { kind: 'falls short', share: Number.NaN };
  }
  const knob = best.held.findIndex((side) => side !== 0);
  if (knob >= 0) {
    const side = best.held[knob];
    const limit = side > 0 ? limits[knob].max : limits[knob].min;
    return { kind: 'limit', knob, limit, needed: neededOfSeveral(bench, limits, best, knob) };
  }
  const share = Math.sqrt(best.cost / (scale * scale) / startCost);
  return Math.abs(share - 1) <= MET ? { kind: 'noEffect' } : { kind: 'falls short', share };
}

/** What a held knob would have to be for the goal to be met, the others within their limits. */
function neededOfSeveral(
  bench: Bench,
  limits: readonly KnobLimits[],
  best: KnobSolution,
  knob: number,
): number | null {
  const own = knobRange(bench.head.design, bench.head.knobs[knob].ref);
  if (!own) return null;
  const span = limits[knob].max - limits[knob].min;
  for (const times of [2, 8, 32]) {
    const wide = {
      min: Math.max(own.min, limits[knob].min - times * span),
      max: Math.min(own.max, limits[knob].max + times * span),
    };
    const boxes = limits.with(knob, wide);
    const solved = boundedLeastSquares({
      residuals: bench.residuals,
      count: bench.count,
      start: best.values,
      low: boxes.map(({ min }) => min),
      high: boxes.map(({ max }) => max),
    });
    if (solved.residuals.every((r) => Math.abs(r) <= MET)) return solved.x[knob];
  }
  return null;
}

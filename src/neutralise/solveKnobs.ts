import type { DesignFault } from '../design/fault';
import { createMoments, JYY, JZZ } from '../engine/mass/moments';
import { boundedLeastSquares } from '../engine/solve/boundedLeastSquares';
import { crossings } from '../engine/solve/oneUnknown';
import { isExact, leadingResidual } from './goal';
import { knobRange } from './knobs';
import type { TrialHead } from './trialHead';

/** What a search may set a knob to, in the knob's unit, both allowed. */
export interface KnobLimits {
  readonly min: number;
  readonly max: number;
}

export interface KnobSolution {
  readonly values: readonly number[];
  /** The goal is met to rounding; a least value never is, nor a compromise. */
  readonly met: boolean;
  /** Half the sum of squares of the residuals (see `fillResiduals`). */
  readonly cost: number;
  /** Knobs at a limit beyond which it would get better still: -1 at the low one, +1 at the high one. */
  readonly held: readonly number[];
}

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
  /** None of the knobs moves what is left. */
  | { readonly kind: 'noEffect' }
  /** It comes no nearer anywhere within the limits: `share` of what is wrong now is left (above 1: it gets worse). */
  | { readonly kind: 'falls short'; readonly share: number };

export interface KnobOutcome {
  /** Distinct, the best first; where the goal is not met the nearest that there is. */
  readonly solutions: readonly KnobSolution[];
  /** Null where the goal is met, or is a least value. */
  readonly obstacle: Obstacle | null;
}

/** Looks along one knob. */
const LOOKS = 49;
/** Starts of a search over several knobs, beside where they stand. */
const STARTS = 6;
/** Share of the spread (or of the start's residual) that counts as met. */
const MET = 1e-10;

/**
 * Turns the knobs of a head within limits so that its goal is met: one knob and an exact goal by bracketed roots, all of
 * them; otherwise by bounded least squares from several starts. Leaves the head at the last setting tried.
 */
export function solveKnobs(head: TrialHead, limits: readonly KnobLimits[]): KnobOutcome {
  const bench = createBench(head);
  if (head.knobs.length === 1 && isExact(head.wanted.goal)) return solveOne(bench, limits[0]);
  return solveSeveral(bench, limits);
}

type Bench = ReturnType<typeof createBench>;

/** Residuals of a head over a scale, so that 1 is about what is wrong at the start. */
function createBench(head: TrialHead) {
  const raw = new Float64Array(head.residualCount);
  head.set(head.start);
  const known = head.residuals(raw);
  const totals = head.forces.model.totals(createMoments());
  const spread = totals[JYY] + totals[JZZ];
  const size = known ? raw.reduce((most, value) => Math.max(most, Math.abs(value)), 0) : 0;
  const scale = head.wanted.goal.kind === 'neutral' ? spread || 1 : size || 1;
  const startCost = cost(raw.map((value) => value / scale));

  function residuals(values: ArrayLike<number>, out: Float64Array): boolean {
    if (!head.set(values) || !head.residuals(out)) return false;
    for (let i = 0; i < out.length; i++) out[i] /= scale;
    return true;
  }

  return {
    head,
    scale,
    startCost,
    count: raw.length,
    residuals,
    /** NaN where a rule refuses it. */
    leading(value: number): number {
      return residuals([value], raw) ? leadingResidual(head.wanted.goal, raw) : Number.NaN;
    },
    costAt(values: ArrayLike<number>): number {
      return residuals(values, raw) ? cost(raw) : Number.NaN;
    },
  };
}

function cost(residuals: Float64Array): number {
  return residuals.reduce((sum, value) => sum + value * value, 0) / 2;
}

function solveOne(bench: Bench, { min, max }: KnobLimits): KnobOutcome {
  const { head, scale } = bench;
  const found = crossings(bench.leading, min, max, LOOKS, head.start);
  const solutions = found.roots.map(
    ({ x }): KnobSolution => ({
      values: [x],
      met: true,
      cost: bench.costAt([x]) * scale * scale,
      held: [0],
    }),
  );
  if (solutions.length > 0)
    return { solutions: nearestFirst(solutions, head.start), obstacle: null };
  const { nearest } = found;
  if (!nearest) {
    bench.leading(min);
    const fault = head.refused;
    return {
      solutions: [],
      obstacle: fault
        ? { kind: 'rule', knob: 0, fault }
        : { kind: 'falls short', share: Number.NaN },
    };
  }
  const held = nearest.x >= max ? 1 : nearest.x <= min ? -1 : 0;
  return {
    solutions: [
      {
        values: [nearest.x],
        met: false,
        cost: bench.costAt([nearest.x]) * scale * scale,
        held: [held],
      },
    ],
    obstacle: obstacleOfOne(bench, nearest, { min, max }),
  };
}

/** What stands in the way of one knob: its limit, a rule, or nothing that it could do. */
function obstacleOfOne(
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

function nearestFirst(
  solutions: readonly KnobSolution[],
  start: readonly number[],
): readonly KnobSolution[] {
  const away = ({ values }: KnobSolution) => Math.abs(values[0] - start[0]);
  return solutions.toSorted((a, b) => away(a) - away(b));
}

function solveSeveral(bench: Bench, limits: readonly KnobLimits[]): KnobOutcome {
  const { head, scale } = bench;
  const found: KnobSolution[] = [];
  for (const start of startsOf(bench, limits)) {
    const solved = boundedLeastSquares({
      residuals: bench.residuals,
      count: bench.count,
      start,
      low: limits.map(({ min }) => min),
      high: limits.map(({ max }) => max),
    });
    if (solved.status === 'noStart') continue;
    const values = [...solved.x];
    if (found.some((one) => isClose(one.values, values, limits))) continue;
    const met = isExact(head.wanted.goal) && solved.residuals.every((r) => Math.abs(r) <= MET);
    found.push({ values, met, cost: solved.cost * scale * scale, held: [...solved.held] });
    // Where it stands is as good a start as any once the goal is met from there.
    if (met) break;
  }
  const solutions = found.toSorted((a, b) => a.cost - b.cost).slice(0, 3);
  if (!isExact(head.wanted.goal) && solutions.length > 0) return { solutions, obstacle: null };
  if (solutions[0]?.met) return { solutions: solutions.filter(({ met }) => met), obstacle: null };
  return { solutions, obstacle: obstacleOfSeveral(bench, limits, solutions[0]) };
}

/** Where the knobs stand, and places spread over the box (R. Halton's sequence, bases 2, 3, 5 ...), the best looks first. */
function startsOf(bench: Bench, limits: readonly KnobLimits[]): readonly (readonly number[])[] {
  const { head } = bench;
  const inside = head.start.map((value, i) =>
    Math.min(limits[i].max, Math.max(limits[i].min, value)),
  );
  const spread = Array.from({ length: 8 * STARTS }, (_, k) =>
    limits.map(({ min, max }, i) => min + (max - min) * halton(k + 1, BASES[i % BASES.length])),
  );
  const looked = spread
    .map((values) => ({ values, cost: bench.costAt(values) }))
    .filter(({ cost: found }) => !Number.isNaN(found))
    .toSorted((a, b) => a.cost - b.cost)
    .slice(0, STARTS);
  return [inside, ...looked.map(({ values }) => values)];
}

const BASES = [2, 3, 5, 7, 11, 13];

function halton(index: number, base: number): number {
  let value = 0;
  let share = 1;
  for (let i = index; i > 0; i = Math.floor(i / base)) {
    share /= base;
    value += share * (i % base);
  }
  return value;
}

function isClose(
  a: readonly number[],
  b: readonly number[],
  limits: readonly KnobLimits[],
): boolean {
  return a.every((value, i) => Math.abs(value - b[i]) <= 1e-6 * (limits[i].max - limits[i].min));
}

function obstacleOfSeveral(
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

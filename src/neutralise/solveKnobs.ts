import { boundedLeastSquares } from '../engine/solve/boundedLeastSquares';
import { crossings } from '../engine/solve/oneUnknown';
import { isExact } from './goal';
import { type Obstacle, obstacleOfOne, obstacleOfSeveral } from './obstacles';
import { type Bench, createBench, type KnobLimits, type KnobSolution, MET } from './solveBench';
import type { TrialHead } from './trialHead';

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

/**
 * Turns the knobs of a head within limits so that its goal is met: one knob and an exact goal by bracketed roots, all of
 * them; otherwise by bounded least squares from several starts. Leaves the head at the last setting tried.
 */
export function solveKnobs(head: TrialHead, limits: readonly KnobLimits[]): KnobOutcome {
  const bench = createBench(head);
  if (head.knobs.length === 1 && isExact(head.wanted.goal, head.design))
    return solveOne(bench, limits[0]);
  return solveSeveral(bench, limits);
}

function solveOne(bench: Bench, { min, max }: KnobLimits): KnobOutcome {
  const { head, scale } = bench;
  const found = crossings(bench.leading, min, max, LOOKS, head.start);
  const solutions = found.roots.map(
    ({ x }): KnobSolution => ({
      values: [x],
      met: bench.worstAt([x]) <= MET,
      leads: true,
      cost: bench.costAt([x]) * scale * scale,
      held: [0],
    }),
  );
  if (solutions.length > 0) {
    const whole = solutions.some(({ met }) => met);
    return {
      solutions: nearestFirst(solutions, head.start),
      obstacle: whole ? null : { kind: 'partly' },
    };
  }
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
        leads: false,
        cost: bench.costAt([nearest.x]) * scale * scale,
        held: [held],
      },
    ],
    obstacle: obstacleOfOne(bench, nearest, { min, max }),
  };
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
    const met =
      isExact(head.wanted.goal, head.design) && solved.residuals.every((r) => Math.abs(r) <= MET);
    const leads = Math.abs(solved.residuals[0]) <= MET;
    found.push({ values, met, leads, cost: solved.cost * scale * scale, held: [...solved.held] });
    // Where it stands is as good a start as any once the goal is met from there.
    if (met) break;
  }
  const solutions = found.toSorted((a, b) => a.cost - b.cost).slice(0, 3);
  if (!isExact(head.wanted.goal, head.design) && solutions.length > 0)
    return { solutions, obstacle: null };
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

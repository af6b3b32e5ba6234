import { ClearanceDesk } from '../design/clearance/clearanceDesk';
import type { DesignFault } from '../design/fault';
import { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { JYY, JZZ } from '../engine/mass/moments';
import { type HeadReport, headReport } from './headReport';
import type { Obstacle } from './obstacles';
import type { SearchRequest } from './request';
import { solveKnobs } from './solveKnobs';
import { TrialHead } from './trialHead';
import type { Way } from './ways';

/** A way that has been solved and rounded, not yet worked out in full. */
export interface Candidate {
  readonly way: Way;
  readonly exact: readonly number[];
  readonly made: readonly number[];
  readonly met: boolean;
  readonly left: number;
  readonly remains: Remains;
  readonly mass: number;
  readonly obstacle: Obstacle | null;
}

/** What is still to be done as made, in units: |J_yy - J_zz|, kg m^2; the largest force or torque (N, N m); the pull, N. */
export interface Remains {
  readonly kind: 'secondMoment' | 'force' | 'moment' | 'torque' | 'pull';
  readonly value: number;
}

/** The head as it is, which everything is held against. */
export interface Base {
  readonly desk: ClearanceDesk;
  readonly report: HeadReport;
  readonly cost: number;
  /** A residual below this is none: a millionth of the spread, or a thousandth of a newton. */
  readonly nothing: number;
}

export function startOf(request: SearchRequest): Base {
  const made = TrialHead.of(request.design, request.wanted, []);
  if (!made.ok) throw new Error(`runSearch(): design is not checked: ${made.error.path}`);
  const model = new HeadModel();
  model.load(request.design);
  const desk = new ClearanceDesk();
  const totals = model.totals(MOMENTS);
  return {
    desk,
    report: headReport(new HeadForces(model), desk),
    cost: costOf(made.value),
    nothing: request.wanted.goal.kind === 'neutral' ? 1e-6 * (totals[JYY] + totals[JZZ]) : 1e-3,
  };
}

/** What is left as the head is set, the most of all speeds. */
function remainsOf(head: TrialHead): Remains {
  const { goal, speedsRpm } = head.wanted;
  const residuals = new Float64Array(head.residualCount);
  head.residuals(residuals);
  const each = residuals.length / speedsRpm.length;
  if (goal.kind === 'neutral') return { kind: 'secondMoment', value: Math.abs(residuals[0]) };
  if (goal.kind === 'centring') {
    return { kind: 'pull', value: goal.forceN - (residuals[1] - residuals[2]) / 2 };
  }
  let most = 0;
  for (let i = 0; i < residuals.length; i++) {
    // Moment and friction stand in turn.
    if ((i % each) % 2 === 0) most = Math.max(most, Math.abs(residuals[i]));
  }
  const kind = goal.kind === 'leastServo' ? 'torque' : head.forces.linkage ? 'force' : 'moment';
  return { kind, value: most };
}

/** Half the sum of squares as the head is set; NaN where a number cannot be had. */
function costOf(head: TrialHead): number {
  const residuals = new Float64Array(head.residualCount);
  if (!head.residuals(residuals)) return Number.NaN;
  return residuals.reduce((sum, value) => sum + value * value, 0) / 2;
}

type Found =
  | { readonly candidates: readonly Candidate[]; readonly obstacle: Obstacle | null }
  | { readonly fault: DesignFault };

/** Every solution of one way, rounded to what can be made. */
export function candidatesOf(way: Way, request: SearchRequest, base: Base): Found {
  const made = TrialHead.of(way.design, request.wanted, way.knobs);
  if (!made.ok) return { fault: made.error };
  const head = made.value;
  const mass = () => head.forces.model.totals(MOMENTS)[0];
  // A head that is there already has nothing to hold a share against.
  const floor = base.nothing * base.nothing;
  const leftOf = (cost: number) => Math.sqrt(Math.max(cost, floor) / Math.max(base.cost, floor));
  if (way.knobs.length === 0) {
    const cost = costOf(head);
    const one = {
      way,
      exact: [],
      made: [],
      met: cost === 0,
      left: leftOf(cost),
      remains: remainsOf(head),
      mass: mass(),
      obstacle: null,
    };
    return { candidates: Number.isNaN(cost) ? [] : [one], obstacle: null };
  }
  const { solutions, obstacle } = solveKnobs(head, way.knobs);
  const candidates = solutions.map((solution): Candidate => {
    const rounded = roundedValues(head, way, solution.values);
    head.set(rounded.values);
    return {
      way,
      exact: solution.values,
      made: rounded.values,
      met: solution.met,
      left: leftOf(rounded.cost),
      remains: remainsOf(head),
      mass: mass(),
      obstacle,
    };
  });
  return { candidates, obstacle };
}

const MOMENTS = new Float64Array(10);

/** The neighbours in whole steps that leave the least, within the limits; the exact value where none is there. */
function roundedValues(
  head: TrialHead,
  { knobs }: Way,
  exact: readonly number[],
): { readonly values: readonly number[]; readonly cost: number } {
  let best: { values: readonly number[]; cost: number } | null = null;
  for (const values of neighbours(knobs, exact)) {
    if (!head.set(values)) continue;
    const cost = costOf(head);
    if (!Number.isNaN(cost) && (!best || cost < best.cost)) best = { values, cost };
  }
  if (best) return best;
  head.set(exact);
  return { values: exact, cost: costOf(head) };
}

function neighbours(knobs: Way['knobs'], exact: readonly number[]): readonly (readonly number[])[] {
  return knobs.reduce<readonly (readonly number[])[]>(
    (sets, { step, min, max }, i) => {
      const below = step > 0 ? Math.floor(exact[i] / step + 1e-9) : 0;
      const near = step > 0 ? [below, below + 1].map((k) => tidy(k * step)) : [exact[i]];
      const inside = near.filter((value) => value >= min && value <= max);
      const values = inside.length > 0 ? inside : [exact[i]];
      return sets.flatMap((set) => values.map((value) => [...set, value]));
    },
    [[]],
  );
}

/** Whole steps without the last digits of a product of decimals. */
function tidy(value: number): number {
  return Number(value.toFixed(9));
}

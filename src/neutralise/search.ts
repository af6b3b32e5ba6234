import type { Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { type HeadReport, headReport, holdAt } from './answer';
import type { Pick } from './choices';
import { type KnobRef, knobPart, knobRange, knobValue } from './knobs';
import type { SearchRequest } from './request';
import { combinationCount } from './request';
import { type Obstacle, solveKnobs } from './solveKnobs';
import { TrialHead } from './trialHead';
import { type Way, waysOf } from './ways';

/** A number as an answer sets it, in the knob's unit. */
export interface Setting {
  readonly ref: KnobRef;
  readonly also: readonly KnobRef[];
  readonly partName: string;
  /** What it is now; null for a new part. */
  readonly from: number | null;
  /** As the solver found it, and as it would be made. */
  readonly exact: number;
  readonly made: number;
  /** Change of the worst push-rod force within the pitch in use per unit of this number, N (or N m without an arm). */
  readonly perUnit: number | null;
}

/** One way to what is wanted. */
export interface Answer {
  readonly key: string;
  readonly parts: readonly Part[];
  readonly picks: readonly Pick[];
  readonly settings: readonly Setting[];
  /** Ids of parts that were not there. */
  readonly added: readonly string[];
  /** 'asIs': nothing is changed. 'bought': everything in it is off the shelf. */
  readonly make: 'asIs' | 'bought' | 'turned';
  /** The goal is met to rounding before it is rounded to what can be made. */
  readonly met: boolean;
  /** Share of what is wrong now that is left as made. */
  readonly left: number;
  readonly report: HeadReport;
  /** Added to the grip, kg. */
  readonly massAdded: number;
  readonly obstacle: Obstacle | null;
}

export interface SearchProgress {
  readonly done: number;
  readonly total: number;
}

export interface SearchResult {
  /** The best first; those that use up a limit or fall short come after those that do not. */
  readonly answers: readonly Answer[];
  /** The head as it is. */
  readonly now: HeadReport;
  readonly looked: number;
  /** Heads that a rule refused, and the first such rule. */
  readonly refused: number;
  readonly refusal: DesignFault | null;
  /** What stood in the way of the request's knobs on the head as it is; empty where something met the goal. */
  readonly obstacles: readonly { readonly knobs: readonly number[]; readonly obstacle: Obstacle }[];
}

/** Answers that are worked out in full. */
const MOST_ANSWERS = 60;
/** Candidates kept while searching. */
const KEPT = 400;

interface Candidate {
  readonly way: Way;
  readonly exact: readonly number[];
  readonly made: readonly number[];
  readonly met: boolean;
  readonly left: number;
  readonly mass: number;
  readonly obstacle: Obstacle | null;
}

/**
 * Looks at every way of a request that `requestFault` has passed: each combination of picks as it is, and with its knobs
 * solved and rounded to what can be made; the best are worked out in full. `onProgress` is called now and then; throwing
 * from it ends the search. Nothing of the request is changed.
 */
export function runSearch(
  request: SearchRequest,
  onProgress: (progress: SearchProgress) => void = () => {},
): SearchResult {
  const total = combinationCount(request);
  const base = startOf(request);
  let candidates: Candidate[] = [];
  const obstacles: SearchResult['obstacles'][number][] = [];
  let looked = 0;
  let refused = 0;
  let refusal: DesignFault | null = null;
  for (const way of waysOf(request)) {
    looked++;
    if (way) {
      const found = candidatesOf(way, request, base);
      if ('fault' in found) {
        refused++;
        refusal ??= found.fault;
      } else {
        candidates.push(...found.candidates);
        if (way.picks.length === 0 && found.obstacle && way.spec) {
          obstacles.push({ knobs: way.spec, obstacle: found.obstacle });
        }
      }
    }
    if (candidates.length > 2 * KEPT) candidates = bestOf(candidates, KEPT);
    onProgress({ done: looked, total });
  }
  const answers = bestOf(candidates, MOST_ANSWERS).map((one, i) => answerOf(one, request, base, i));
  const ranked = rankAnswers(answers);
  const anyMet = ranked.some(({ make, met, left }) => make !== 'asIs' && (met || left < NEAR));
  return {
    answers: ranked,
    now: base.report,
    looked,
    refused,
    refusal,
    obstacles: anyMet ? [] : obstacles,
  };
}

/** Share left under which a way counts as reaching the goal as well as it can be made. */
const NEAR = 0.02;

interface Base {
  readonly report: HeadReport;
  readonly cost: number;
}

function startOf(request: SearchRequest): Base {
  const made = TrialHead.of(request.design, request.wanted, []);
  if (!made.ok) throw new Error(`runSearch(): design is not checked: ${made.error.path}`);
  const model = new HeadModel();
  model.load(request.design);
  return { report: headReport(new HeadForces(model)), cost: costOf(made.value) };
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

function candidatesOf(way: Way, request: SearchRequest, base: Base): Found {
  const made = TrialHead.of(way.design, request.wanted, way.knobs);
  if (!made.ok) return { fault: made.error };
  const head = made.value;
  const mass = () => head.forces.model.totals(MOMENTS)[0];
  const leftOf = (cost: number) =>
    base.cost > 0 ? Math.sqrt(cost / base.cost) : cost === 0 ? 0 : Infinity;
  if (way.knobs.length === 0) {
    const cost = costOf(head);
    const one = {
      way,
      exact: [],
      made: [],
      met: cost === 0,
      left: leftOf(cost),
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

/** What is left first, roughly, then mass: enough to choose which are worked out in full. */
function bestOf(candidates: readonly Candidate[], count: number): Candidate[] {
  return candidates
    .toSorted((a, b) => roughly(a.left) - roughly(b.left) || a.mass - b.mass || a.left - b.left)
    .slice(0, count);
}

/** Shares that differ less than a tenth, or are all small, count as equal. */
function roughly(left: number): number {
  return left <= NEAR ? -1 : Math.round(Math.log10(left) * 20);
}

function answerOf(one: Candidate, request: SearchRequest, base: Base, index: number): Answer {
  const { way } = one;
  const knobs = way.knobs.map(({ ref, also }) => ({ ref, also }));
  const made = TrialHead.of(way.design, request.wanted, knobs);
  if (!made.ok) throw new Error(`answerOf(): design is not checked: ${made.error.path}`);
  const head = made.value;
  head.set(one.made);
  const parts = way.knobs.length === 0 ? way.design.parts : head.currentParts;
  const model = new HeadModel();
  model.load({ ...request.design, parts });
  const forces = new HeadForces(model);
  const report = headReport(forces);
  return {
    key: `${index}`,
    parts,
    picks: way.picks,
    settings: [...barSettings(one, request), ...knobSettings(one, request, forces, parts)],
    added: way.added,
    make: makeOf(way),
    met: one.met,
    left: one.left,
    report,
    massAdded: report.mass - base.report.mass,
    obstacle: one.obstacle,
  };
}

function makeOf({ picks, knobs, bars, added }: Way): Answer['make'] {
  if (knobs.length + bars.length + added.length > 0) return 'turned';
  if (picks.length === 0) return 'asIs';
  const sold = ({ kind }: Pick) => kind === 'catalogue' || kind === 'count' || kind === 'values';
  return picks.every(sold) ? 'bought' : 'turned';
}

function barSettings({ way }: Candidate, { design, knobs }: SearchRequest): readonly Setting[] {
  return way.bars.map(({ spec, value }) => {
    const { ref, also = [] } = knobs[spec];
    return {
      ref,
      also,
      partName: nameOf(knobPart(design, ref), ref),
      from: knobValue(design, ref) ?? null,
      exact: value,
      made: value,
      perUnit: null,
    };
  });
}

function knobSettings(
  { way, exact, made }: Candidate,
  { design }: SearchRequest,
  forces: HeadForces,
  parts: readonly Part[],
): readonly Setting[] {
  return way.knobs.map(({ ref, also }, i) => ({
    ref,
    also,
    partName: nameOf(knobPart({ parts }, ref), ref),
    from: knobValue(design, ref) ?? null,
    exact: exact[i],
    made: made[i],
    perUnit: sensitivity(way, made, i, forces),
  }));
}

function nameOf(part: Part | undefined, ref: KnobRef): string {
  return part?.name || ref.part;
}

/** Half a tenth of the usual step either way, in the knob's unit. */
const NUDGE = 0.05;

/** Change of the force per unit of one knob at both ends of the pitch in use, the larger; null where a side is refused. */
function sensitivity(
  way: Way,
  made: readonly number[],
  knob: number,
  forces: HeadForces,
): number | null {
  const { design } = way;
  const used = headReportPitch(forces);
  const range = knobRange(design, way.knobs[knob].ref);
  const nudge = range?.unit === 'kg/m3' ? 50 : NUDGE;
  const trial = TrialHead.of(
    design,
    { goal: { kind: 'neutral' }, speedsRpm: [design.rotor.speedRpm] },
    way.knobs,
  );
  if (!trial.ok) return null;
  const at = (value: number) => {
    if (!trial.value.set(made.with(knob, value))) return null;
    return [-used, used].map((deg) => holdAt(trial.value.forces, deg));
  };
  const up = at(made[knob] + nudge);
  const down = at(made[knob] - nudge);
  if (!up || !down) return null;
  const slopes = up.map((value, i) => {
    const other = down[i];
    return value === null || other === null ? 0 : Math.abs(value - other) / (2 * nudge);
  });
  return Math.max(...slopes);
}

function headReportPitch(forces: HeadForces): number {
  return forces.model.sections.rotor.usedPitchDeg ?? 20;
}

/** Those that use up no limit and reach what can be reached first, the lightest of them before the heavier. */
export function rankAnswers(answers: readonly Answer[]): readonly Answer[] {
  const least = Math.min(...answers.map(({ left }) => left));
  const group = (answer: Answer) => {
    const near = answer.left <= Math.max(NEAR, 1.1 * least);
    const loaded = (answer.report.limit?.use ?? 0) > 1;
    return (near ? 0 : 2) + (loaded ? 1 : 0);
  };
  return answers.toSorted((a, b) => {
    const order = group(a) - group(b);
    if (order !== 0) return order;
    return group(a) < 2 ? a.massAdded - b.massAdded || a.left - b.left : a.left - b.left;
  });
}

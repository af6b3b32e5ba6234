import type { DesignFault } from '../design/fault';
import { type Answer, answerOf, makeOf, NEAR, rankAnswers } from './answers';
import { type Candidate, candidatesOf, startOf } from './candidates';
import type { HeadReport } from './headReport';
import { allSteps, type JobProgress, type JobSteps } from './job';
import { knobValue } from './knobs';
import type { Obstacle } from './obstacles';
import { combinationCount, type SearchRequest } from './request';
import { waysOf } from './ways';

export interface SearchResult {
  /** The best first; those that use up a limit or fall short come after those that do not. */
  readonly answers: readonly Answer[];
  /** The head as it is. */
  readonly now: HeadReport;
  readonly looked: number;
  /** Heads that a rule refused, and the first such rule. */
  readonly refused: number;
  readonly refusal: DesignFault | null;
  /** What stood in the way of the request's knobs on the head as it is, or what they leave. */
  readonly obstacles: readonly { readonly knobs: readonly number[]; readonly obstacle: Obstacle }[];
}

/** Answers that are worked out in full. */
const MOST_ANSWERS = 60;
/** So many that can be bought as they are are always kept. */
const BOUGHT = 8;
/** Candidates kept while searching. */
const KEPT = 400;

/**
 * Looks at every way of a request that `requestFault` has passed: each combination of picks as it is, and with its knobs
 * solved and rounded to what can be made; the best are worked out in full. `onProgress` is called now and then; throwing
 * from it ends the search. Nothing of the request is changed.
 */
export function runSearch(
  request: SearchRequest,
  onProgress: (progress: JobProgress) => void = () => {},
): SearchResult {
  return allSteps(searchSteps(request), onProgress);
}

/** The same in steps: one combination each, then one answer each. */
export function* searchSteps(request: SearchRequest): JobSteps<SearchResult> {
  const total = combinationCount(request);
  const base = startOf(request);
  let candidates: Candidate[] = [];
  const obstacles: SearchResult['obstacles'][number][] = [];
  const seen = new Set<string>();
  let done = 0;
  let looked = 0;
  let refused = 0;
  let refusal: DesignFault | null = null;
  for (const way of waysOf(request)) {
    if (typeof way === 'number') {
      done += way;
      yield { done, total };
      continue;
    }
    done++;
    looked++;
    const found = candidatesOf(way, request, base);
    if ('fault' in found) {
      refused++;
      refusal ??= found.fault;
    } else {
      candidates.push(...found.candidates.filter((one) => isNew(one, request, seen)));
      if (way.picks.length === 0 && found.obstacle && way.spec && !isTold(obstacles, way.spec)) {
        obstacles.push({ knobs: way.spec, obstacle: found.obstacle });
      }
    }
    if (candidates.length > 2 * KEPT) candidates = bestOf(candidates, KEPT);
    yield { done, total };
  }
  const answers: Answer[] = [];
  for (const [i, one] of bestOf(candidates, MOST_ANSWERS).entries()) {
    answers.push(answerOf(one, request, base, i));
    yield { done, total };
  }
  const ranked = rankAnswers(answers);
  return { answers: ranked, now: base.report, looked, refused, refusal, obstacles };
}

/** Bars of one knob stand in each other's way alike. */
function isTold(obstacles: SearchResult['obstacles'], knobs: readonly number[]): boolean {
  return obstacles.some((one) => one.knobs.join() === knobs.join());
}

/** Whether a candidate changes something, and is not the same head as one before it. */
function isNew(
  { way, made, left, mass }: Candidate,
  request: SearchRequest,
  seen: Set<string>,
): boolean {
  const turned = way.knobs.some(({ ref }, i) => knobValue(request.design, ref) !== made[i]);
  const asIs = way.picks.length + way.bars.length + way.added.length === 0;
  if (asIs && way.knobs.length > 0 && !turned) return false;
  const key = `${left.toPrecision(12)} ${mass.toPrecision(12)}`;
  if (seen.has(key)) return false;
  seen.add(key);
  return true;
}

/**
 * What is left first, roughly, then mass: enough to choose which are worked out in full. Some that can be bought as they
 * are, and the head as it is, are always among them.
 */
function bestOf(candidates: readonly Candidate[], count: number): Candidate[] {
  const sorted = candidates.toSorted(
    (a, b) => roughly(a.left) - roughly(b.left) || a.mass - b.mass || a.left - b.left,
  );
  const asIs = sorted.filter(({ way }) => makeOf(way) === 'asIs').slice(0, 1);
  const bought = sorted
    .filter(({ way }) => makeOf(way) === 'bought')
    .toSorted((a, b) => a.left - b.left)
    .slice(0, BOUGHT);
  const kept = new Set([...asIs, ...bought]);
  for (const one of sorted) {
    if (kept.size >= count) break;
    kept.add(one);
  }
  return [...kept];
}

/** Shares that differ less than a tenth, or are all small, count as equal. */
function roughly(left: number): number {
  return left <= NEAR ? -1 : Math.round(Math.log10(left) * 20);
}

import { localNumber } from '../../../messages/numbers';
import { plainNumber } from '../../../state/typed/plainNumber';
import type { StepsDraft } from '../../deskTypes';
import { findLoadSteps, type NamedPitch, type StepSearch, travelsOf } from '../../namedSteps';
import type { BenchRun, BenchStep } from '../../readings/benchSection';
import { BENCH_LIMITS } from '../../readings/benchSection';
import type { Reading } from '../../readings/types';

/** Jumps of two steps of the gauge; a second of stretch, half a second of settling (common practice). */
const JUMP_STEPS = 2;
const [SHORTEST, SETTLING] = [1, 0.5];

/** Steps as the program finds them, or those that were taken, to be named again. */
export function firstNaming(
  run: BenchRun,
  readings: readonly Reading[],
  gaugeStepN: number,
): StepsDraft {
  const step = run.gaugeStepN ?? gaugeStepN;
  const search = {
    smallest: JUMP_STEPS * step || 0.05,
    shortest: SHORTEST,
    settling: SETTLING,
  };
  if (!run.steps) return searched(run.id, readings, search);
  const steps = run.steps.map(({ from, to, pitchDeg, travel }) => ({
    from,
    to,
    pitch: localNumber(String(pitchDeg)),
    travel: travel ?? null,
    counts: true,
  }));
  return { run: run.id, search, steps };
}

export function searched(
  run: string,
  readings: readonly Reading[],
  search: StepSearch,
): StepsDraft {
  const steps = findLoadSteps(readings, search).map(({ from, to }) => ({
    from,
    to,
    pitch: '',
    travel: null,
    counts: true,
  }));
  return { run, search, steps };
}

/** The draft with these pitches given to the steps that count, in their order. */
export function withPitches(draft: StepsDraft, pitches: readonly NamedPitch[]): StepsDraft {
  let at = 0;
  const steps = draft.steps.map((step) => {
    const named = step.counts ? pitches[at++] : undefined;
    return named
      ? { ...step, pitch: localNumber(String(named.pitchDeg)), travel: named.travel }
      : step;
  });
  return { ...draft, steps };
}

/** Pitches typed in a row, each with the way in which it was come to from the one before. */
export function namedInOrder(pitchesDeg: readonly number[]): NamedPitch[] {
  const travels = travelsOf(pitchesDeg);
  return pitchesDeg.map((pitchDeg, k) => ({ pitchDeg, travel: travels[k] }));
}

/** Steps to be kept, or the places (from 1) of those whose pitch is missing or no number within its limits. */
export function namedSteps({ steps }: StepsDraft): {
  readonly steps: readonly BenchStep[];
  readonly wrong: readonly number[];
} {
  const wrong: number[] = [];
  const named = steps.flatMap(({ from, to, pitch, travel, counts }, k): BenchStep[] => {
    if (!counts) return [];
    const pitchDeg = pitchOf(pitch);
    if (pitchDeg === null) wrong.push(k + 1);
    return [{ from, to, pitchDeg: pitchDeg ?? 0, ...(travel === null ? {} : { travel }) }];
  });
  return { steps: named, wrong };
}

/** A typed pitch in degrees; null where it is none. */
export function pitchOf(text: string): number | null {
  const read = plainNumber(text.replace(/\s*\u00b0\s*$/, ''));
  if (!read.ok) return null;
  const { min, max } = BENCH_LIMITS.pitchDeg;
  return read.value < min || read.value > max ? null : read.value;
}

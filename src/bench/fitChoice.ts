import type { BenchFitRecord } from '../design/sections/bench';
import type { FitChoice } from './deskTypes';
import { USUAL_SHARED } from './sharedErrors';

/** How readings are fitted before anybody chooses: friction grows with the pull, a zero for each run, the air taken off. */
export const FIRST_FIT: FitChoice = {
  friction: 'pull',
  zeros: 'free',
  air: 'known',
  noiseN: null,
  pitchSigmaDeg: 0.2,
  ...USUAL_SHARED,
};

/** What a design keeps of a choice: the noise stands with the gauge. Undefined where it is the first. */
export function recordedFit(fit: FitChoice): BenchFitRecord | undefined {
  const { noiseN: _, ...kept } = fit;
  const { noiseN: __, ...first } = FIRST_FIT;
  const isFirst = (Object.keys(first) as (keyof typeof first)[]).every(
    (key) => kept[key] === first[key],
  );
  return isFirst ? undefined : kept;
}

/** The way back; what a record does not say of the fit was kept with the first choice. */
export function fitOf(record: BenchFitRecord | undefined, noiseN: number | undefined): FitChoice {
  return { ...FIRST_FIT, ...record, noiseN: noiseN ?? null };
}

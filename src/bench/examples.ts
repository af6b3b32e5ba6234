import type { Design } from '../design/design';
import { type PracticeBench, practiceBench } from './practice';
import type { HiddenErrors } from './practiceErrors';

/** The example ladder in assets/bench: made up, and said to be in every file. */
export const EXAMPLE_SEED = 260;
export const EXAMPLE_STEP_N = 0.1;
export const EXAMPLE_NOTE =
  'Invented example for the invented head Dunlin 260, turned nut; made by the virtual gauge, not measured';

/** Invented errors: the blade a tenth heavier than drawn, more friction, a zero that is off. */
export const EXAMPLE_ERRORS: HiddenErrors = {
  massShares: { blade: 0.1 },
  seatShiftsMm: {},
  frictionFactor: 1.3,
  dragFactor: 1.1,
  zeroN: 0.13,
  noiseN: 0.05,
  pitchSigmaDeg: 0.05,
};

export interface ExampleFile {
  /** Name in assets/bench. */
  readonly file: string;
  readonly text: string;
}

/** The bench of the examples for the demo head with the turned nut. */
export function exampleBench(turnedNut: Design): PracticeBench {
  const made = practiceBench(turnedNut, {
    seed: EXAMPLE_SEED,
    gaugeStep: EXAMPLE_STEP_N,
    errors: EXAMPLE_ERRORS,
    note: EXAMPLE_NOTE,
  });
  if (!made.ok) throw new Error(`exampleBench(): ${made.error.kind}`);
  return made.value;
}

/** The files as they lie in assets/bench, in the order of the ladder. */
export function exampleFiles(turnedNut: Design): readonly ExampleFile[] {
  return exampleBench(turnedNut).runs.map(({ key, text }, k) => ({
    file: `${k + 1}-${FILE_NAMES[key]}.csv`,
    text,
  }));
}

const FILE_NAMES = {
  drag: 'drag-at-rest',
  bare: 'bare-grip',
  bolt: 'with-bolt',
  ordinary: 'ordinary-bolt',
  asDesigned: 'turned-nut',
} as const;

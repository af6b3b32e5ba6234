import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { benchFit } from '../../../src/engine/identify/benchFit';
import type { Gauge } from '../../../src/engine/identify/benchReading';
import { flagOutliers } from '../../../src/engine/identify/outliers';
import {
  type HiddenTruth,
  type VirtualPlan,
  virtualReadings,
} from '../../../src/engine/identify/virtualBench';
import { radians, radiansFromDegrees } from '../../../src/engine/units';

/** An invented bench: nine pitches, both senses, two speeds, an arm of 18 mm with the rod along the shaft. */
export const plan: VirtualPlan = {
  pitches: [-20, -15, -10, -5, 0, 5, 10, 15, 20].map(radiansFromDegrees),
  senses: [1, -1],
  speeds: [750, 1068],
  repeats: 1,
  dragTravels: [],
  dragRepeats: 0,
  precone: radians(0),
  forcePerMoment: (pitch) => 1 / (0.018 * Math.cos(pitch)),
  travel: (pitch) => 0.018 * Math.sin(pitch),
};
export const truth: HiddenTruth = {
  spread: 5e-7,
  product: 1e-7,
  frictionMoment: 0.005,
  zeros: [0.1],
  restDrag: () => 0,
  noise: 0.08,
  pitchSigma: 0,
  wrongShare: 0,
  wrongBy: 0,
};
export const gauge: Gauge = { step: 0.139, noise: 0.08 };
export const setup: BenchSetup = {
  friction: 'moment',
  zeros: 'free',
  extras: [],
  drag: [],
  precone: radians(0),
};

export function flagsOf(hidden: HiddenTruth, seed: number, told: Gauge) {
  const { readings, wrong } = virtualReadings(plan, hidden, told, seed);
  const found = benchFit({ readings, gauge: told }, setup);
  if (!found.ok) throw new Error(found.error.kind);
  return { readings, wrong, flags: flagOutliers(readings, setup, told, found.value) };
}

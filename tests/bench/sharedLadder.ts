import { estimatedOf } from '../../src/bench/fitRung';
import { type LadderStep, ladderSteps, type MeasuredRung } from '../../src/bench/ladder';
import { RUNG_KEYS } from '../../src/bench/rungs';
import { sharedErrors, USUAL_SHARED } from '../../src/bench/sharedErrors';
import type { BenchSetup } from '../../src/engine/identify/benchDesign';
import { benchFit } from '../../src/engine/identify/benchFit';
import type { BenchReading, Gauge, RestDrag } from '../../src/engine/identify/benchReading';
import { type Calibration, lineCalibration } from '../../src/engine/identify/calibration';
import { type VirtualPlan, virtualReadings } from '../../src/engine/identify/virtualBench';
import { normalQuantile } from '../../src/engine/math/normal';
import { radians, radiansFromDegrees } from '../../src/engine/units';
import { seeded } from '../support/seeded';

/** J_yy - J_zz and J_yz of the rungs, kg m^2: bare grip, with bolt, with blade, with the new nut, as the demo head's go. */
export const TRUTH = [
  { spread: 40e-9, product: 15e-9 },
  { spread: -90e-9, product: 25e-9 },
  { spread: 340e-9, product: 5e-9 },
  { spread: 20e-9, product: -10e-9 },
] as const;
const STEP_N = 0.1;
const PITCH_SIGMA = radiansFromDegrees(0.1);
/** An arm of 18 mm with the rod along the shaft. */
const ARM = 0.018;
const perMoment = (pitch: number) => -1 / (ARM * Math.cos(pitch));
const perMomentSlope = (pitch: number) => perMoment(pitch) * Math.tan(pitch);
const travel = (pitch: number) => ARM * Math.sin(pitch);
/** Pitch goes so with the scale's marks. */
const MARKS = [-8, -5, -2, 0, 2, 5, 8];
const truePitch = (mark: number) => 0.01 + 0.045 * mark;

export interface LadderChoices {
  readonly noiseKnown: boolean;
  readonly calibrated: boolean;
  /** Times what the fit is told of the shared errors: 1 is honest. */
  readonly sharedTold?: number;
}

/**
 * A ladder measured on one invented bench: gain, arm, speed, zero of the pitch scale, calibration and drag at rest are drawn
 * once and lie in all four rungs alike; noise, settings, steps and the gauge's zero belong to each. The steps as the page
 * works them out.
 */
export function sharedLadder(seed: number, choices: LadderChoices): readonly LadderStep[] {
  const random = seeded(seed);
  const normal = () => normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random.unit())));
  const gain = 1 + (USUAL_SHARED.gainPercent / 100) * normal();
  const lever = 1 + (USUAL_SHARED.leverPercent / 100) * normal();
  const speed = 1 + (USUAL_SHARED.speedPercent / 100) * normal();
  const zero = radiansFromDegrees(USUAL_SHARED.pitchZeroDeg * normal());
  const calibration = choices.calibrated ? calibrated(zero, normal) : null;
  const gauge: Gauge = { step: STEP_N, noise: choices.noiseKnown ? 0.05 : null };
  const plan: VirtualPlan = {
    pitches: MARKS.map((mark) => radians(truePitch(mark))),
    senses: [1, -1],
    speeds: [750 / speed, 1068 / speed],
    repeats: 1,
    dragTravels: [-0.007, 0, 0.007],
    dragRepeats: 2,
    precone: radians(0),
    forcePerMoment: (pitch) => gain * lever * perMoment(pitch),
    travel,
  };
  const told = (reading: BenchReading, k: number): BenchReading => {
    const mark = MARKS[k % MARKS.length];
    const pitch = calibration?.pitchAt(mark) ?? radians(reading.pitch - zero);
    return {
      ...reading,
      pitch,
      angularSpeed: reading.angularSpeed * speed,
      forcePerMoment: perMoment(pitch),
      forcePerMomentSlope: perMomentSlope(pitch),
      travel: travel(pitch),
      ...(calibration ? { scaleShifts: calibration.shiftsAt(mark) } : {}),
    };
  };
  let drag: readonly RestDrag[] = [];
  const rungs = TRUTH.map((truth, k): MeasuredRung => {
    const hidden = {
      ...truth,
      frictionMoment: 0.004,
      zeros: [0.2 * normal(), 0.2 * normal()],
      restDrag: (at: number) => gain * (0.35 + 20 * Math.abs(at)),
      noise: 0.05,
      pitchSigma: PITCH_SIGMA,
      wrongShare: 0,
      wrongBy: 0,
    };
    const made = virtualReadings(plan, hidden, gauge, 4 * seed + k);
    if (k === 0) drag = made.drag;
    const readings = made.readings.map(told);
    const setup = setupOf(drag, calibration, choices.sharedTold ?? 1);
    const found = benchFit({ readings, gauge, pitchSigma: PITCH_SIGMA }, setup);
    const measured = found.ok ? estimatedOf(found.value) : null;
    if (!measured) throw new Error('no fit');
    return { key: RUNG_KEYS[k + 1], added: [], model: truth, measured };
  });
  return ladderSteps(rungs);
}

/** Seven pairs of an angle gauge that reads to 0.2 degrees about its zero. */
function calibrated(zero: number, normal: () => number): Calibration {
  const pairs = [-8, -5, -3, 0, 3, 5, 8].map((scale) => ({
    scale,
    pitch: radians(truePitch(scale) - zero + radiansFromDegrees(0.2 * normal())),
  }));
  const made = lineCalibration(pairs);
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
}

function setupOf(
  drag: readonly RestDrag[],
  calibration: Calibration | null,
  told: number,
): BenchSetup {
  const { gainPercent, leverPercent, speedPercent, pitchZeroDeg } = USUAL_SHARED;
  const choice = {
    gainPercent: told * gainPercent,
    leverPercent: told * leverPercent,
    speedPercent: told * speedPercent,
    pitchZeroDeg: told * pitchZeroDeg,
  };
  return {
    friction: 'moment',
    zeros: 'free',
    extras: [],
    drag,
    precone: radians(0),
    shared: sharedErrors(choice, told === 0 ? null : calibration),
  };
}

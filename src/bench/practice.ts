import type { Design } from '../design/design';
import type { DesignFault } from '../design/fault';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import { virtualReadings } from '../engine/identify/virtualBench';
import { philox } from '../engine/math/philox';
import { fail, type Result, succeed } from '../engine/result';
import { angularSpeedFromRpm, radians, radiansFromDegrees } from '../engine/units';
import {
  GaugeHead,
  type GaugeHeadFault,
  type GaugePlace,
  type SpreadAndProduct,
} from './gaugeHead';
import { type BenchPlan, benchPlan, type PlanChoices } from './plan';
import { drawErrors, type HiddenErrors, withErrors } from './practiceErrors';
import type { Reading, RunMetadata, Travel } from './readings/types';
import { writeReadings } from './readings/writeReadings';
import { buildRungs, type RungKey, rungFileName } from './rungs';

export interface PracticeChoices extends Omit<PlanChoices, 'gaugeLimit'> {
  readonly seed: number;
  /** Smallest step of the gauge, N. */
  readonly gaugeStep: number;
  /** Left out: drawn by the seed (`drawErrors`). */
  readonly errors?: HiddenErrors;
  readonly repeats?: number;
  /** First words of the note in each run. */
  readonly note?: string;
}

export interface PracticeRun {
  readonly key: RungKey;
  /** CSV as `writeReadings` has it, fit to be read again. */
  readonly text: string;
  readonly readings: readonly Reading[];
  /** The true J_yy - J_zz and J_yz of the head in this run, kg m^2. */
  readonly truth: SpreadAndProduct;
}

export interface PracticeBench {
  readonly seed: number;
  readonly errors: HiddenErrors;
  /** What the design would be if it told the truth. */
  readonly trueDesign: Design;
  /** The plan as it follows from the design that was given, errors and all unknown. */
  readonly plan: BenchPlan;
  readonly gauge: Gauge;
  readonly runs: readonly PracticeRun[];
}

export type PracticeFault =
  | GaugeHeadFault
  /** A hidden error that the head does not take. */
  | { readonly kind: 'error'; readonly fault: DesignFault };

/**
 * A virtual bench on a real design: hidden errors make a true head of it, and an invented gauge reads that head through the
 * whole ladder, pulling up and pushing back, at every speed of the plan. The readings follow the exact model of the true
 * head with everything that the design counts (rod, air, swinging blade); same seed, same readings.
 */
export function practiceBench(
  design: Design,
  choices: PracticeChoices,
): Result<PracticeBench, PracticeFault> {
  const plan = benchPlan(design, choices);
  if (!plan.ok) return plan;
  const errors = choices.errors ?? drawErrors(design, choices.seed);
  const { newParts, place } = plan.value;
  const truth = withErrors(design, errors);
  if (!truth.ok) return fail({ kind: 'error', fault: truth.error });
  const gauge: Gauge = { step: choices.gaugeStep, noise: errors.noiseN };
  const runs: PracticeRun[] = [];
  const rungs = buildRungs(truth.value, { ...choices, newParts }).rungs;
  for (const [k, rung] of rungs.entries()) {
    const head = GaugeHead.of(rung.design, place);
    if (!head.ok) return head;
    const speeds = rung.key === 'drag' ? [0] : plan.value.speedsRpm;
    const { pitchesDeg } = plan.value;
    const asked = { ...choices, gauge, errors, speeds, pitchesDeg, rung: k };
    const readings = readHead(head.value, asked).map(tableReading);
    runs.push({
      key: rung.key,
      readings,
      truth: head.value.totals,
      text: writeReadings(readings, metadataOf(rung.key, place, choices)),
    });
  }
  const { seed } = choices;
  return succeed({ seed, errors, trueDesign: truth.value, plan: plan.value, gauge, runs });
}

interface Asked {
  readonly seed: number;
  readonly repeats?: number;
  readonly gauge: Gauge;
  readonly errors: HiddenErrors;
  readonly speeds: readonly number[];
  readonly pitchesDeg: readonly number[];
  readonly rung: number;
}

/**
 * Readings of one head; each speed has draws of its own. What all runs have alike lies between what is and what is told: the
 * gauge shows more than pulls, the rotor turns slower than the tachometer says, the blade stands off its scale.
 */
function readHead(head: GaugeHead, asked: Asked): BenchReading[] {
  const { errors, gauge, repeats = 1 } = asked;
  const { gainShare = 0, leverShare = 0, speedShare = 0, pitchZeroDeg = 0 } = errors;
  const gain = 1 + gainShare;
  const perMoment = gain * (1 + leverShare);
  const off = radiansFromDegrees(pitchZeroDeg);
  return asked.speeds.flatMap((speedRpm, k) => {
    const told = angularSpeedFromRpm(speedRpm);
    const speed = told / (1 + speedShare);
    const flat = radiansFromDegrees(0);
    const { readings } = virtualReadings(
      {
        pitches: asked.pitchesDeg.map((deg) => radians(radiansFromDegrees(deg) + off)),
        senses: [1, -1],
        speeds: [speed],
        repeats,
        dragTravels: [],
        dragRepeats: 1,
        precone: head.forces.model.rotor.precone,
        forcePerMoment: (pitch) => perMoment * head.forcePerMoment(pitch),
        travel: (pitch) => head.travel(pitch),
        knownForce: (pitch, w) => perMoment * (head.knownForce(pitch, w) + head.airForce(pitch, w)),
      },
      {
        ...head.totals,
        frictionMoment: errors.frictionFactor * head.bearingMoment(flat, speed),
        zeros: [errors.zeroN],
        restDrag: (travel) => gain * errors.dragFactor * restDragAt(head, travel),
        noise: errors.noiseN,
        pitchSigma: radiansFromDegrees(errors.pitchSigmaDeg),
        wrongShare: 0,
        wrongBy: 0,
      },
      gauge,
      streamOf(asked.seed, asked.rung, k),
    );
    return readings.map((one) => ({
      ...one,
      angularSpeed: told,
      pitch: radians(one.pitch - off),
    }));
  });
}

function restDragAt(head: GaugeHead, travel: number): number {
  return head.frictionForce(head.pitchAtTravel(travel), 0);
}

/** A seed of its own for each rung and speed. */
function streamOf(seed: number, rung: number, speed: number): number {
  const words = philox([rung, speed, 0, 0], [seed, 0x6c616464], new Uint32Array(4));
  return words[0];
}

function tableReading({ force, sense, pitch, angularSpeed }: BenchReading, index: number): Reading {
  const travels: Readonly<Record<number, Travel>> = { 1: 'pull', 0: 'held', [-1]: 'push' };
  return {
    row: index + 1,
    column: 0,
    pitch,
    scale: null,
    force,
    moment: null,
    travel: travels[sense],
    speed: angularSpeed,
    time: null,
    run: '',
    note: '',
  };
}

function metadataOf(key: RungKey, place: GaugePlace, choices: PracticeChoices): RunMetadata {
  return {
    speed: null,
    fitted: rungFileName(key),
    arm: place.kind === 'arm' ? Math.abs(place.arm) : null,
    gauge: `virtual, at the ${place.kind}`,
    gaugeStep: choices.gaugeStep,
    date: '',
    note: `${choices.note ?? 'Invented readings of a virtual gauge'}, seed ${choices.seed}`,
  };
}

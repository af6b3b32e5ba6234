import type { Design } from '../design/design';
import { MODEL_SHARE } from '../design/massCard';
import { MEASURED_LIMITS } from '../design/measured';
import { ROTOR_SECTION } from '../design/sections/rotor';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
} from '../engine/feathering/harmonics';
import { M } from '../engine/mass/moments';
import { type Result, succeed } from '../engine/result';
import {
  angularSpeedFromRpm,
  gramsFromKilograms,
  type Radians,
  radiansFromDegrees,
} from '../engine/units';
import {
  GaugeHead,
  type GaugeHeadFault,
  type GaugePlace,
  type SpreadAndProduct,
} from './gaugeHead';
import { buildRungs, type MissingRung, type Rung, type RungChoices } from './rungs';

/** What the gauge should read at a pitch, N, tension positive. */
export interface ExpectedReading {
  readonly pitchDeg: number;
  /** Without friction: the force chart's number; NaN over centre and out of reach. */
  readonly force: number;
  /** What friction adds and takes away: pulling reads force + friction, pushing force - friction. */
  readonly friction: number;
  readonly pull: number;
  readonly push: number;
  /** Standard uncertainty from what the model's masses may be out; friction and air are not in it. */
  readonly sigma: number;
}

export interface PlannedRung extends Rung {
  readonly speedRpm: number;
  readonly model: SpreadAndProduct;
  readonly expected: readonly ExpectedReading[];
  /** Largest |reading| of the rung either way, N. */
  readonly highest: number;
}

export interface BenchPlan {
  readonly place: GaugePlace;
  readonly rungs: readonly PlannedRung[];
  readonly missing: readonly MissingRung[];
  readonly newParts: readonly string[];
  /** Ascending; gone through upward and then downward. */
  readonly pitchesDeg: readonly number[];
  /** Speeds of the runs, ascending, the design's own last. */
  readonly speedsRpm: readonly number[];
  /** Largest |reading| of all runs, N. */
  readonly highest: number;
  /** Share of the gauge's range that it takes; null where no range is given. Beyond 1 the gauge is too small. */
  readonly rangeShare: number | null;
  /** Gauge steps in the largest reading of the head as designed; null where no step is given. */
  readonly steps: number | null;
  readonly settleSeconds: number;
  /** The design counts friction and something gives it: else the bands are nothing. */
  readonly frictionKnown: boolean;
}

export interface PlanChoices extends RungChoices {
  readonly place?: GaugePlace;
  readonly pitchesDeg?: readonly number[];
  readonly speedsRpm?: readonly number[];
  /** Largest reading and smallest step of the gauge, N. */
  readonly gaugeLimit?: number;
  readonly gaugeStep?: number;
}

/** How long control and gauge are left alone at each pitch before the reading is taken (common practice). */
const SETTLE_SECONDS = 5;
/** Shares of the design's speed: slow first, and a second speed shows what goes with its square. */
const SPEED_SHARES = [0.7, 1];
/** In quarters of the pitch in use, and on to twice as far, where the air shows. */
const PITCH_SHARES = [0, 0.25, 0.5, 0.75, 1, 1.5, 2];

/** The bench's plan of a design: the ladder with what the gauge should read at every pitch. */
export function benchPlan(
  design: Design,
  choices: PlanChoices = {},
): Result<BenchPlan, GaugeHeadFault> {
  const place = choices.place ?? { kind: 'rod' };
  const whole = GaugeHead.of(design, place);
  if (!whole.ok) return whole;
  const { rungs, missing, newParts } = buildRungs(design, choices);
  const pitchesDeg = choices.pitchesDeg ?? usualPitches(whole.value);
  const planned: PlannedRung[] = [];
  for (const rung of rungs) {
    const head = GaugeHead.of(rung.design, place);
    if (!head.ok) return head;
    planned.push(plannedRung(rung, head.value, pitchesDeg));
  }
  const highest = Math.max(...planned.map((one) => one.highest));
  const { gaugeLimit, gaugeStep } = choices;
  const last = planned[planned.length - 1];
  return succeed({
    place,
    rungs: planned,
    missing,
    newParts,
    pitchesDeg,
    speedsRpm:
      choices.speedsRpm ?? SPEED_SHARES.map((share) => Math.round(share * design.rotor.speedRpm)),
    highest,
    rangeShare: gaugeLimit === undefined ? null : highest / gaugeLimit,
    steps: gaugeStep === undefined || !(gaugeStep > 0) ? null : last.highest / gaugeStep,
    settleSeconds: SETTLE_SECONDS,
    frictionKnown: whole.value.forces.friction?.known === true,
  });
}

/** Both ways, within 90 % of where the arm goes over centre or the rod does not reach. */
function usualPitches(head: GaugeHead): number[] {
  const used = head.design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const sign = Math.sign(head.forcePerMoment(radiansFromDegrees(0)));
  const all = PITCH_SHARES.flatMap((share) =>
    share === 0 ? [0] : [-share * used, share * used],
  ).toSorted((a, b) => a - b);
  return all.filter((deg) => {
    const beyond = radiansFromDegrees(deg / 0.9);
    return Math.sign(head.forcePerMoment(beyond)) === sign;
  });
}

function plannedRung(rung: Rung, head: GaugeHead, pitchesDeg: readonly number[]): PlannedRung {
  const speedRpm = rung.key === 'drag' ? 0 : rung.design.rotor.speedRpm;
  const expected = pitchesDeg.map((deg) => expectedReading(head, deg, speedRpm));
  const known = expected.flatMap(({ pull, push }) =>
    Number.isNaN(pull) ? [] : [Math.abs(pull), Math.abs(push)],
  );
  return { ...rung, speedRpm, model: head.totals, expected, highest: Math.max(0, ...known) };
}

/** What a head's gauge should read at a pitch and speed. */
export function expectedReading(
  head: GaugeHead,
  pitchDeg: number,
  speedRpm: number,
): ExpectedReading {
  const pitch = radiansFromDegrees(pitchDeg);
  const speed = angularSpeedFromRpm(speedRpm);
  const force = head.force(pitch, speed);
  const friction = head.frictionForce(pitch, speed);
  return {
    pitchDeg,
    force,
    friction,
    pull: force + friction,
    push: force - friction,
    sigma: massSigma(head, pitch, speed),
  };
}

/**
 * What the masses of the parts may be out, at the gauge: a part that was weighed by its scale's step, another by 2 % of its
 * mass (common practice), each by itself, its place and form taken as true.
 */
function massSigma(head: GaugeHead, pitch: Radians, angularSpeed: number): number {
  const { model } = head.forces;
  const share = createHarmonics();
  let variance = 0;
  for (const { part, carriedBy, moments_G } of model.parts) {
    if (part.hidden || carriedBy !== 'grip') continue;
    const mass = gramsFromKilograms(moments_G[M]);
    const step = part.measured?.massStepGrams ?? MEASURED_LIMITS.massStepGrams.standard;
    const out = part.measured?.massGrams === undefined ? MODEL_SHARE : step / Math.sqrt(12) / mass;
    const moment = featheringMoment(featheringHarmonics(moments_G, model.rotor, share), pitch);
    variance += (out * moment) ** 2;
  }
  const speeds = (angularSpeed / head.designSpeed) ** 2;
  return Math.abs(head.forcePerMoment(pitch)) * speeds * Math.sqrt(variance);
}

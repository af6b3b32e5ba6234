import type { Design } from '../design/design';
import type { BenchSense } from '../design/sections/bench';
import { ROTOR_SECTION } from '../design/sections/rotor';
import { type Result, succeed } from '../engine/result';
import { angularSpeedFromRpm, radiansFromDegrees } from '../engine/units';
import {
  GaugeHead,
  type GaugeHeadFault,
  type GaugePlace,
  type SpreadAndProduct,
} from './gaugeHead';
import { type BandFrom, modelBand } from './modelBand';
import { isBetweenStops } from './planLimits';
import {
  buildRungs,
  type MissingRung,
  madeRungs,
  type Rung,
  type RungChoices,
  type RungKey,
} from './rungs';

/** What the gauge should read at a pitch, N, tension positive. */
export interface ExpectedReading {
  readonly pitchDeg: number;
  /** Without friction: the force chart's number; NaN over centre and out of reach. */
  readonly force: number;
  /** What friction adds and takes away: pulling reads force + friction, pushing force - friction. */
  readonly friction: number;
  readonly pull: number;
  readonly push: number;
  /** Standard uncertainty from how the head is made (`modelBand`); friction and air are not in it. */
  readonly sigma: number;
}

/** A run of a rung: what the gauge should read at one speed. */
export interface PlannedSpeed {
  readonly speedRpm: number;
  readonly expected: readonly ExpectedReading[];
  /** Largest |reading| either way, N. */
  readonly highest: number;
}

export interface PlannedRung extends Rung {
  /** The highest of its speeds, which `expected` is of. */
  readonly speedRpm: number;
  /** Ascending. */
  readonly speeds: readonly PlannedSpeed[];
  readonly model: SpreadAndProduct;
  /** What the expected readings' uncertainties rest on. */
  readonly bandFrom: BandFrom;
  readonly expected: readonly ExpectedReading[];
  /** Largest |reading| of the rung either way, N. */
  readonly highest: number;
}

export interface BenchPlan {
  readonly place: GaugePlace;
  readonly rungs: readonly PlannedRung[];
  /** Rungs that the person does not make. */
  readonly leftOut: readonly RungKey[];
  readonly missing: readonly MissingRung[];
  readonly newParts: readonly string[];
  /** Ascending; gone through upward and then downward. */
  readonly pitchesDeg: readonly number[];
  /** A pull raises the leading edge: pulling goes up through the pitches, pushing down. */
  readonly pullRaises: boolean;
  /** How every pitch is read. */
  readonly senses: readonly BenchSense[];
  /** Speeds of the runs, ascending. */
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
  readonly senses?: readonly BenchSense[];
  readonly leftOut?: readonly RungKey[];
  readonly settleSeconds?: number;
  /** Largest reading and smallest step of the gauge, N. */
  readonly gaugeLimit?: number;
  readonly gaugeStep?: number;
}

/** How long control and gauge are left alone at each pitch before the reading is taken (common practice). */
export const SETTLE_SECONDS = 5;
/** Shares of the design's speed (common practice): slow first, and a second speed shows what goes with its square. */
const SPEED_SHARES = [0.7, 1];
/** Friction shows as the difference of the two ways. */
const USUAL_SENSES: readonly BenchSense[] = ['pull', 'push'];
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
  const { gaugeLimit, gaugeStep, senses = USUAL_SENSES, settleSeconds = SETTLE_SECONDS } = choices;
  const pitchesDeg = ascending(choices.pitchesDeg ?? usualPitches(whole.value));
  const speedsRpm = ascending(choices.speedsRpm ?? usualSpeeds(design));
  const leftOut = choices.leftOut?.filter((key) => rungs.some((rung) => rung.key === key)) ?? [];
  const planned: PlannedRung[] = [];
  for (const rung of madeRungs(rungs, leftOut)) {
    const head = GaugeHead.of(rung.design, place);
    if (!head.ok) return head;
    planned.push(plannedRung(rung, head.value, { pitchesDeg, speedsRpm, senses }));
  }
  const highest = Math.max(0, ...planned.map((one) => one.highest));
  const last = planned[planned.length - 1];
  return succeed({
    place,
    rungs: planned,
    leftOut,
    missing,
    newParts,
    pitchesDeg,
    pullRaises: whole.value.forcePerMoment(radiansFromDegrees(0)) < 0,
    senses,
    speedsRpm,
    highest,
    rangeShare: gaugeLimit === undefined ? null : highest / gaugeLimit,
    steps: gaugeStep === undefined || !(gaugeStep > 0) || !last ? null : last.highest / gaugeStep,
    settleSeconds,
    frictionKnown: whole.value.forces.friction?.known === true,
  });
}

function ascending(numbers: readonly number[]): number[] {
  return [...new Set(numbers)].toSorted((a, b) => a - b);
}

/** A slow run first, then the design's speed. */
export function usualSpeeds(design: Design): number[] {
  return SPEED_SHARES.map((share) => Math.round(share * design.rotor.speedRpm));
}

/** Both ways, within 90 % of where the arm goes over centre or the rod does not reach, and between the slider's stops. */
export function usualPitches(head: GaugeHead): number[] {
  const used = head.design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const sign = Math.sign(head.forcePerMoment(radiansFromDegrees(0)));
  const all = PITCH_SHARES.flatMap((share) =>
    share === 0 ? [0] : [-share * used, share * used],
  ).toSorted((a, b) => a - b);
  return all.filter((deg) => {
    const beyond = radiansFromDegrees(deg / 0.9);
    return Math.sign(head.forcePerMoment(beyond)) === sign && isBetweenStops(head, deg);
  });
}

type Runs = Pick<BenchPlan, 'pitchesDeg' | 'speedsRpm' | 'senses'>;

function plannedRung(rung: Rung, head: GaugeHead, runs: Runs): PlannedRung {
  const isStill = rung.key === 'drag';
  const band = modelBand(head, isStill ? [] : runs.pitchesDeg);
  const speeds = (isStill ? [0] : runs.speedsRpm).map((speedRpm) => {
    const expected = runs.pitchesDeg.map((deg, i) =>
      expectedReading(head, deg, speedRpm, band.sigma[i] ?? 0),
    );
    return { speedRpm, expected, highest: highestOf(expected, runs.senses) };
  });
  const { speedRpm, expected } = speeds[speeds.length - 1];
  const highest = Math.max(...speeds.map((one) => one.highest));
  return { ...rung, speedRpm, speeds, model: head.totals, bandFrom: band.from, expected, highest };
}

/** A gauge that is held may read anything between pulling and pushing. */
function highestOf(expected: readonly ExpectedReading[], senses: readonly BenchSense[]): number {
  const [pulls, pushes] = (['pull', 'push'] as const).map(
    (sense) => senses.includes(sense) || senses.includes('held'),
  );
  const known = expected.flatMap(({ pull, push }) => [
    ...(pulls && !Number.isNaN(pull) ? [Math.abs(pull)] : []),
    ...(pushes && !Number.isNaN(push) ? [Math.abs(push)] : []),
  ]);
  return Math.max(0, ...known);
}

/** What a head's gauge should read at a pitch and speed; `sigma` is the model's at the design's speed, N. */
function expectedReading(
  head: GaugeHead,
  pitchDeg: number,
  speedRpm: number,
  sigma: number,
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
    sigma: sigma * (speed / head.designSpeed) ** 2,
  };
}

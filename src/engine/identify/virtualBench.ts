import { normalQuantile } from '../math/normal';
import { openUnit, philox } from '../math/philox';
import { type Radians, radians } from '../units';
import type { BenchReading, Gauge, RestDrag, Sense } from './benchReading';

/** What is hidden in a virtual bench. SI. */
export interface HiddenTruth {
  /** J_yy - J_zz and J_yz, kg m^2. */
  readonly spread: number;
  readonly product: number;
  /** Moment of friction beside the drag at rest, N m. */
  readonly frictionMoment: number;
  /** Of each zero of the gauge, N. */
  readonly zeros: readonly number[];
  /** Drag at rest by travel, N. */
  readonly restDrag: (travel: number) => number;
  /** Standard deviations: of a reading (N), and of a pitch setting (rad). */
  readonly noise: number;
  readonly pitchSigma: number;
  /** Share of readings that are wrong altogether, and by how much at most, N. */
  readonly wrongShare: number;
  readonly wrongBy: number;
}

/** What is to be read. */
export interface VirtualPlan {
  readonly pitches: readonly Radians[];
  readonly senses: readonly Sense[];
  /** rad/s; each with a zero of its own where `truth.zeros` has more than one. */
  readonly speeds: readonly number[];
  readonly repeats: number;
  /** Travels at which drag at rest is measured, ascending, and how often each. */
  readonly dragTravels: readonly number[];
  readonly dragRepeats: number;
  readonly precone: Radians;
  readonly forcePerMoment: (pitch: Radians) => number;
  readonly travel: (pitch: Radians) => number;
  /** Force beyond the inertial moment, N at a speed (a modelled air): both in the readings and told as known. */
  readonly knownForce?: (pitch: Radians, angularSpeed: number) => number;
}

export interface VirtualReadings {
  readonly readings: readonly BenchReading[];
  readonly drag: readonly RestDrag[];
  /** Places of the readings that are wrong altogether. */
  readonly wrong: readonly number[];
}

/**
 * Readings of an invented gauge: the bench model of `benchDesign` with hidden numbers, normal noise on force and pitch
 * setting, then rounded to the gauge's step. The same seed gives the same readings (Philox), whatever was drawn before. The
 * pitch told is the one that was meant, the force that of the one that was set.
 */
export function virtualReadings(
  plan: VirtualPlan,
  truth: HiddenTruth,
  gauge: Gauge,
  seed: number,
): VirtualReadings {
  const draw = drawsOf(seed, 0x62656e63);
  const readings: BenchReading[] = [];
  const wrong: number[] = [];
  plan.speeds.forEach((angularSpeed, run) => {
    for (const sense of plan.senses) {
      for (const meant of plan.pitches) {
        for (let k = 0; k < plan.repeats; k++) {
          const set = radians(meant + truth.pitchSigma * draw.normal());
          const zero = run % Math.max(1, truth.zeros.length);
          const slip = sense === 0 ? 2 * draw.unit() - 1 : sense;
          let force =
            trueForce(plan, truth, set, angularSpeed, slip) +
            (truth.zeros[zero] ?? 0) +
            truth.noise * draw.normal();
          if (draw.unit() < truth.wrongShare) {
            wrong.push(readings.length);
            force += (draw.unit() < 0.5 ? -1 : 1) * truth.wrongBy * (0.5 + 0.5 * draw.unit());
          }
          readings.push({
            force: rounded(force, gauge.step),
            sense,
            pitch: meant,
            angularSpeed,
            forcePerMoment: plan.forcePerMoment(meant),
            forcePerMomentSlope: slopeOf(plan.forcePerMoment, meant),
            travel: plan.travel(meant),
            zero,
            knownForce: plan.knownForce?.(meant, angularSpeed) ?? 0,
          });
        }
      }
    }
  });
  return { readings, drag: restRows(plan, truth, gauge, draw), wrong };
}

/** By central difference; its error, about 1e-8 of the curve's third derivative, matters nowhere. */
function slopeOf(curve: (pitch: Radians) => number, pitch: Radians): number {
  const h = 1e-4;
  return (curve(radians(pitch + h)) - curve(radians(pitch - h))) / (2 * h);
}

/** Without zero and noise; `slip` from -1 to 1 says where between its ends friction stands. */
function trueForce(
  plan: VirtualPlan,
  truth: HiddenTruth,
  pitch: Radians,
  angularSpeed: number,
  slip: number,
): number {
  const perMoment = plan.forcePerMoment(pitch);
  const moment =
    -((angularSpeed * Math.cos(plan.precone)) ** 2) *
    ((truth.spread / 2) * Math.sin(2 * pitch) + truth.product * Math.cos(2 * pitch));
  const friction = truth.frictionMoment * Math.abs(perMoment) + truth.restDrag(plan.travel(pitch));
  return perMoment * moment + slip * friction + (plan.knownForce?.(pitch, angularSpeed) ?? 0);
}

/**
 * Drag at rest: half of pull less push, the mean of repeats. The gauge stands elsewhere in its step each time (it is tared by
 * hand), so rounding is uniform.
 */
function restRows(plan: VirtualPlan, truth: HiddenTruth, gauge: Gauge, draw: Draws): RestDrag[] {
  const each = Math.sqrt(truth.noise ** 2 + gauge.step ** 2 / 12);
  const read = (force: number): number => {
    const tare = gauge.step * draw.unit();
    return rounded(force + truth.noise * draw.normal() + tare, gauge.step) - tare;
  };
  return plan.dragTravels.map((travel) => {
    const drag = truth.restDrag(travel);
    let sum = 0;
    for (let k = 0; k < plan.dragRepeats; k++) sum += (read(drag) - read(-drag)) / 2;
    return {
      travel,
      force: sum / plan.dragRepeats,
      sigma: each / Math.sqrt(2 * plan.dragRepeats),
    };
  });
}

function rounded(force: number, step: number): number {
  return step > 0 ? Math.round(force / step) * step : force;
}

type Draws = ReturnType<typeof drawsOf>;

/** Draws of a seed, evenly between 0 and 1 and normal; `stream` keeps those of two purposes apart. */
export function drawsOf(seed: number, stream: number) {
  const words = new Uint32Array(4);
  let drawn = 0;
  function unit(): number {
    if (drawn % 4 === 0) philox([drawn / 4, 0, 0, 0], [seed, stream], words);
    return openUnit(words[drawn++ % 4]);
  }
  return { unit, normal: () => normalQuantile(unit()) };
}

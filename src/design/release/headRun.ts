import { type ReleaseOutcome, releaseOutcome } from '../../engine/release/outcome';
import { createRelease, type Release } from '../../engine/release/release';
import {
  type ReleaseFault,
  type ReleaseSystem,
  rateScale,
} from '../../engine/release/releaseSystem';
import { createTrace, type Trace } from '../../engine/release/trace';
import { fail, type Result, succeed } from '../../engine/result';
import type { Radians } from '../../engine/units';
import type { HeadForces } from '../forces/headForces';
import { type Hand, handMoment, type Softness, softHand } from './hand';
import type { ReleaseChoices } from './releaseChoices';
import { type HeadRelease, type HeadReleaseFault, releaseOf } from './releaseOf';

export type RunFault = HeadReleaseFault | ReleaseFault;

/** What took the energy of a run, J. */
export interface TakenBy {
  readonly friction: number;
  readonly damping: number;
  readonly stops: number;
}

/** One letting go of a head, with a hand that may push it on the way. */
export interface HeadRun {
  readonly head: HeadRelease;
  readonly release: Release;
  readonly trace: Trace;
  readonly from: Radians;
  readonly soft: Softness;
  /** Time since it was let go, s; stands where it has come to rest. */
  readonly time: number;
  /** Time of a swing, s, as far as it can be told beforehand: for the slowness and for steps. */
  readonly swing: number;
  readonly taken: TakenBy;
  readonly hand: Hand;
  hold(hand: Hand): void;
  /** Goes on by `duration` s. False where that would have taken too many steps. */
  advance(duration: number): boolean;
  /** Goes on until it has ended, at most some 60 swings. False: it still moves. */
  finish(): boolean;
  outcome(): ReleaseOutcome;
}

const TRACE_SAMPLES = 2048;
/** The hand's moment is renewed so often in a swing. */
const HAND_STEPS = 60;
const MOST_SWINGS = 60;
/** Steps of `finish`: below a second. */
const MOST_STEPS = 20_000;

/** Lets a head go at a pitch, with the total moment, friction and linkage of `forces` as they are. */
export function createHeadRun(
  forces: HeadForces,
  choices: ReleaseChoices,
  from: Radians,
): Result<HeadRun, RunFault> {
  const head = releaseOf(forces, choices);
  if (!head.ok) return head;
  const { system, known } = head.value;
  if (from < known.low || from > known.high) {
    return fail({ kind: 'outsideTravel', pitch: from, ...known });
  }
  const made = createRelease(system, { pitch: from, rate: 0 });
  if (!made.ok) return made;
  return succeed(new Run(head.value, made.value, from, swingTime(system, from)));
}

/** Twice the time to the first standstill; where it comes to none, the fastest that this head swings. */
function swingTime(system: ReleaseSystem, from: Radians): number {
  const start = { pitch: from, rate: 0 };
  const fastest = (2 * Math.PI) / rateScale(system, start);
  const made = createRelease(system, start);
  if (!made.ok) return fastest;
  const release = made.value;
  for (let i = 0; i < 40; i++) {
    if (release.phase !== 'sliding' || release.turns + release.hits > 0 || release.ended) break;
    release.advance(fastest / 8);
  }
  const time = release.ended?.time ?? release.time;
  return time > 0 && release.moved ? Math.max(fastest, 2 * time) : fastest;
}

class Run implements HeadRun {
  readonly trace = createTrace(TRACE_SAMPLES);
  readonly soft: Softness;
  hand: Hand = { kind: 'off' };
  private byFriction = 0;
  private byDamping = 0;
  private readonly before = { pitch: 0, rate: 0, time: 0, friction: 0 };
  private steps = 0;

  constructor(
    readonly head: HeadRelease,
    readonly release: Release,
    readonly from: Radians,
    readonly swing: number,
  ) {
    const { low, high } = head.known;
    this.soft = softHand(head.system, low, high);
    this.note();
    this.trace.add(release);
  }

  get time(): number {
    return this.release.ended?.time ?? this.release.time;
  }

  get taken(): TakenBy {
    const { taken } = this.release.energy;
    const { hits } = this.release;
    const { damping } = this.head.system;
    const { byFriction, byDamping } = this;
    // One of them alone has taken what the ledger says, exactly; of several the last is what is left of it, and where the
    // sums of `visit` come to more than it by their own error, nothing.
    if (hits > 0) {
      return {
        friction: byFriction,
        damping: byDamping,
        stops: Math.max(0, taken - byFriction - byDamping),
      };
    }
    if (damping === 0) return { friction: taken, damping: 0, stops: 0 };
    return { friction: byFriction, damping: Math.max(0, taken - byFriction), stops: 0 };
  }

  hold(hand: Hand): void {
    this.hand = hand;
    this.renewHand();
  }

  advance(duration: number): boolean {
    const { release } = this;
    const until = release.time + duration;
    if (this.hand.kind !== 'spring') return this.go(duration);
    const longest = this.swing / HAND_STEPS;
    while (release.time < until) {
      this.renewHand();
      if (!this.go(Math.min(longest, until - release.time))) return false;
    }
    return true;
  }

  finish(): boolean {
    const piece = this.swing / 4;
    this.steps = 0;
    for (let i = 0; i < 4 * MOST_SWINGS; i++) {
      if (this.release.ended || this.steps > MOST_STEPS) break;
      if (!this.advance(piece)) break;
    }
    return this.release.ended !== null;
  }

  outcome(): ReleaseOutcome {
    return releaseOutcome(this.release, this.head.system);
  }

  private renewHand(): void {
    const { release, hand, soft } = this;
    release.push(handMoment(hand, soft, release.pitch, release.rate));
  }

  private go(duration: number): boolean {
    return this.release.advance(duration, () => this.visit());
  }

  /** After a step of one way: what friction and damping took in it, by the trapezium and Simpson's rule. */
  private visit(): void {
    const { before, release } = this;
    this.steps++;
    const { rate } = before;
    const passed = release.time - before.time;
    const path = Math.abs(release.pitch - before.pitch);
    const friction = this.head.system.friction(release.pitch);
    this.byFriction += ((before.friction + friction) / 2) * path;
    // A blow changes the rate at the end of a step; the mean over the step stands in for it.
    const mean = passed > 0 ? path / passed : 0;
    const square = (rate * rate + 4 * mean * mean + (2 * mean - Math.abs(rate)) ** 2) / 6;
    this.byDamping += this.head.system.damping * square * passed;
    this.note(friction);
    this.trace.add(release);
  }

  private note(friction = this.head.system.friction(this.release.pitch)): void {
    const { before, release } = this;
    before.pitch = release.pitch;
    before.rate = release.rate;
    before.time = release.time;
    before.friction = friction;
  }
}

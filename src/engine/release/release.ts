import { type Result, succeed } from '../result';
import { type Radians, radians } from '../units';
import { type Ledger, openLedger } from './energyLedger';
import {
  checkRelease,
  type ReleaseFault,
  type ReleaseStart,
  type ReleaseSystem,
  rateScale,
} from './releaseSystem';
import { settlesByDamping } from './settling';
import { createSlide, PITCH, RATE, type SlideEnd, TAKEN } from './sliding';

/** What the grip does now. */
export type ReleasePhase =
  | 'sliding'
  /** At rest, |moment + hand| <= friction: only another hand moment ends it. */
  | 'stuck'
  /** At rest on a stop that carries what friction does not. */
  | 'atStop'
  /** It has come to a pitch beyond which no moment is known: nothing is said of what follows. */
  | 'gap';

export type Stop = 'low' | 'high';
export type ReleaseEnd = 'friction' | 'damping' | 'stop' | 'gap';

/** Default for `settledWithin`, rad: about 0.006 degrees, less than any mark on a chart shows. */
const SETTLED_WITHIN = 1e-4;
/** A rebound that would rise less than this, rad, is none: the grip rests on the stop. */
const LEAST_REBOUND = 1e-9;
/** Steps that one call of `advance` may take; a swing takes about 250. */
const MOST_STEPS = 50_000;

/** A grip that has been let go. All numbers are those of `time`; nothing is allocated by a step. */
export interface Release {
  /** s since it was let go. */
  readonly time: number;
  readonly pitch: Radians;
  /** rad/s. */
  readonly rate: number;
  readonly phase: ReleasePhase;
  readonly hand: number;
  readonly energy: Ledger;
  /** Standstills so far at which it turned back or stuck. */
  readonly turns: number;
  /** Where the last two swings ended, at a standstill or on a stop; NaN before there are any. */
  readonly lastEnd: number;
  readonly endBefore: number;
  /** Blows on the stops, and the first of them, with the rate at which it came (rad/s). */
  readonly hits: number;
  readonly firstHit: { readonly stop: Stop; readonly time: number; readonly rate: number } | null;
  /** Whether it has moved at all. */
  readonly moved: boolean;
  /** When it came to rest for good under the present hand (or to a gap), and by what; null while it moves. */
  readonly ended: { readonly time: number; readonly by: ReleaseEnd } | null;
  /**
   * Goes on by `duration` s, in steps of its own length whose ends `visit` sees. False where that would have taken more than
   * 50,000 of them and it stopped early: hundreds of swings, or damping / inertia far above the rate of a swing.
   */
  advance(duration: number, visit?: (release: Release) => void): boolean;
  /** The hand's moment from now on, N m. */
  push(moment: number): void;
}

/**
 * Lets a grip go. Friction is Coulomb's, with true stick and slip: each stretch of one direction is integrated on its own
 * and ends exactly at standstill (`createSlide`); there the grip sticks if |moment + hand| <= friction, and otherwise turns
 * or goes on, and what is stuck moves again only once a hand exceeds that. A stop gives back the share `restitution` of
 * the rate; a rebound lower than 1e-9 rad is taken as rest, which is early by less than 1e-4 / (1 - restitution)
 * swings. Standstill at an exact equilibrium without friction is rest too.
 *
 * Errors: pitch and rate some 1e-10 of the swing per swing without friction; energy, checked after every step against
 * what was taken and given (`energy.error`), better than 1e-6 of the swing's over 1,000 swings; times of a swing that turns
 * within d rad of a flee angle some 1e-12 / d^2 of themselves. Damping alone never ends a motion: it counts as settled once
 * it stays within `settledWithin` rad of a rest angle.
 */
export function createRelease(
  system: ReleaseSystem,
  start: ReleaseStart,
  settledWithin = SETTLED_WITHIN,
): Result<Release, ReleaseFault> {
  const checked = checkRelease(system, start);
  if (!checked.ok) return checked;
  return succeed(new ReleaseMotion(system, start, settledWithin));
}

class ReleaseMotion implements Release {
  time = 0;
  phase: ReleasePhase = 'sliding';
  turns = 0;
  lastEnd = Number.NaN;
  endBefore = Number.NaN;
  hits = 0;
  firstHit: Release['firstHit'] = null;
  moved = false;
  ended: Release['ended'] = null;
  readonly energy: Ledger;
  private readonly slide;
  private readonly y: Float64Array;

  constructor(
    private readonly system: ReleaseSystem,
    start: ReleaseStart,
    private readonly within: number,
  ) {
    this.slide = createSlide(system, [start.pitch, start.rate, 0], rateScale(system, start));
    this.slide.hand = start.hand ?? 0;
    this.y = this.slide.stepper.y;
    this.energy = openLedger(system, this.y);
    this.begin();
    this.energy.check(system, this.y);
  }

  get pitch(): Radians {
    return radians(this.y[PITCH]);
  }
  get rate(): number {
    return this.y[RATE];
  }
  get hand(): number {
    return this.slide.hand;
  }

  advance(duration: number, visit?: (release: Release) => void): boolean {
    if (!(duration >= 0 && duration < Infinity)) {
      throw new RangeError(`advance(): duration is negative or not finite: ${duration}`);
    }
    const until = this.time + duration;
    for (let steps = 0; this.phase === 'sliding' && this.time < until; steps++) {
      if (steps === MOST_STEPS) return false;
      const left = until - this.time;
      this.stepOnce(left);
      // The last step's end is `until` itself, free of the rounding of the sum.
      if (this.slide.taken === left) this.time = until;
      visit?.(this);
    }
    this.time = Math.max(this.time, until);
    return true;
  }

  push(moment: number): void {
    if (!Number.isFinite(moment)) throw new RangeError(`push(): moment is not finite: ${moment}`);
    if (this.phase === 'gap' || moment === this.slide.hand) return;
    this.slide.hand = moment;
    this.ended = null;
    this.begin();
    this.energy.check(this.system, this.y);
  }

  private stepOnce(longest: number): void {
    const { slide, y } = this;
    const from = y[PITCH];
    const ended = slide.step(longest);
    this.time += slide.taken;
    this.moved ||= slide.taken > 0;
    this.energy.give(slide.hand * (y[PITCH] - from));
    this.end(ended);
    this.energy.check(this.system, y);
  }

  private end(ended: SlideEnd): void {
    switch (ended) {
      case 'slid':
        this.watchDamping();
        return;
      case 'turned':
        this.turns++;
        this.endSwing();
        this.fromRest();
        return;
      case 'gap':
        this.phase = 'gap';
        this.ended = { time: this.time, by: 'gap' };
        return;
      default:
        this.strike(ended);
    }
  }

  /** Chooses the phase from pitch and rate as they are. */
  private begin(): void {
    const { y, system } = this;
    const rate = y[RATE];
    if (rate === 0) return this.fromRest();
    this.go(rate > 0 ? 1 : -1);
    // Let go on a stop and toward it.
    if (rate > 0 && y[PITCH] === system.high) this.strike('high');
    if (rate < 0 && y[PITCH] === system.low) this.strike('low');
  }

  private go(way: -1 | 1): void {
    this.slide.way = way;
    this.slide.stepper.restart();
    this.phase = 'sliding';
  }

  /** Sticks where |moment + hand| <= friction, rests where a stop carries the rest of it, slides otherwise. */
  private fromRest(): void {
    const { pitch, system } = this;
    const drive = system.moment(pitch) + this.slide.hand;
    const onStop = drive > 0 ? pitch === system.high : pitch === system.low;
    if (Math.abs(drive) <= system.friction(pitch)) this.rest('stuck');
    else if (onStop) this.rest('atStop');
    else this.go(drive > 0 ? 1 : -1);
  }

  private rest(phase: 'stuck' | 'atStop'): void {
    this.phase = phase;
    this.ended = { time: this.time, by: phase === 'stuck' ? 'friction' : 'stop' };
  }

  private endSwing(): void {
    this.endBefore = this.lastEnd;
    this.lastEnd = this.y[PITCH];
  }

  /** The blow on a stop. */
  private strike(stop: Stop): void {
    const { y, system, pitch } = this;
    const side = stop === 'high' ? 1 : -1;
    this.hits++;
    this.endSwing();
    this.firstHit ??= { stop, time: this.time, rate: y[RATE] };
    const inertia = system.inertia.value(pitch);
    const before = (inertia * y[RATE] * y[RATE]) / 2;
    y[RATE] *= -system.restitution;
    const after = (inertia * y[RATE] * y[RATE]) / 2;
    const into = side * (system.moment(pitch) + this.slide.hand);
    const friction = system.friction(pitch);
    const low = into > friction && after <= LEAST_REBOUND * (into + friction);
    const none = after === 0 || low || system.low === system.high;
    if (none) y[RATE] = 0;
    y[TAKEN] += none ? before : before - after;
    if (none) this.fromRest();
    else this.go(side > 0 ? -1 : 1);
  }

  private watchDamping(): void {
    const { system, slide, y, within } = this;
    if (this.ended || !settlesByDamping(system, y, slide.hand, within)) return;
    this.ended = { time: this.time, by: 'damping' };
  }
}

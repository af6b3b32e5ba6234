import type { Vec3 } from '../../engine/math/vector';
import { createSlowClock } from '../../engine/release/slowMotion';
import { createTumbling, type Tumbling } from '../../engine/release/tumbling';
import type { Radians } from '../../engine/units';
import type { Happenings } from '../../state/happenings';
import type { RacketAxis } from './racketBody';
import { DURATION, flipsBy, type RacketThrow, throwRacket } from './racketThrow';

/** The motion is shown so many times slower. */
export const SLOWNESS = 2;

/** One throw after another, in time: what picture, plot and words follow. */
export interface RacketRun {
  readonly thrown: RacketThrow;
  readonly beside: Radians;
  readonly time: number;
  readonly playing: boolean;
  /** Spin and attitude at the present time. */
  readonly motion: Tumbling;
  choose(axis: RacketAxis, beside: Radians): void;
  setTime(time: number): void;
  play(): void;
  pause(): void;
  subscribe(listener: () => void): () => void;
  destroy(): void;
}

export function createRacketRun(inertia: Vec3, happenings: Happenings, first: Radians): RacketRun {
  const listeners = new Set<() => void>();
  const clock = createSlowClock(SLOWNESS);
  let beside = first;
  let thrown = throwRacket(inertia, 'middle', beside);
  let motion = start();
  let playing = false;
  let frame = 0;
  let told = -1;

  /** So that the angular momentum, which stays, points up. */
  function start(): Tumbling {
    const momentum = inertia.map((I, k) => I * thrown.spin[k]);
    const size = Math.hypot(...momentum);
    const [x, y, z] = momentum.map((part) => part / size);
    const q = [1 + z, y, -x, 0];
    const norm = Math.hypot(...q);
    const [w, i, j, k] = q.map((part) => part / norm);
    return createTumbling(inertia, thrown.spin, [w, i, j, k]);
  }

  function tell(): void {
    for (const listener of listeners) listener();
  }

  function goTo(time: number): void {
    if (time < motion.time) motion = start();
    motion.advance(time - motion.time);
    // Over by itself, or not at all to the end: both are worth knowing.
    const flips = flipsBy(thrown, time);
    const seen = time >= DURATION || flips > 0 ? flips : -1;
    if (seen !== told && seen >= 0) {
      happenings.tell({ kind: 'racket', axis: thrown.axis, flips });
    }
    told = seen;
    tell();
  }

  function next(now: number): void {
    const time = Math.min(DURATION, motion.time + clock.tick(now / 1000));
    if (time >= DURATION) playing = false;
    goTo(time);
    if (playing) frame = requestAnimationFrame(next);
  }

  function pause(): void {
    if (playing) cancelAnimationFrame(frame);
    playing = false;
    clock.pause();
  }

  return {
    get thrown() {
      return thrown;
    },
    get beside() {
      return beside;
    },
    get time() {
      return motion.time;
    },
    get playing() {
      return playing;
    },
    get motion() {
      return motion;
    },
    choose(axis, angle) {
      pause();
      beside = angle;
      thrown = throwRacket(inertia, axis, angle);
      motion = start();
      told = -1;
      tell();
    },
    setTime(time) {
      pause();
      goTo(Math.max(0, Math.min(DURATION, time)));
    },
    play() {
      if (motion.time >= DURATION) {
        motion = start();
        told = -1;
      }
      playing = true;
      frame = requestAnimationFrame(next);
      tell();
    },
    pause() {
      pause();
      tell();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    destroy: pause,
  };
}

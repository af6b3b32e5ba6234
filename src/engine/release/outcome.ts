import { type Result, succeed } from '../result';
import { type Radians, radians } from '../units';
import { createRelease, type Release, type Stop } from './release';
import type { ReleaseFault, ReleaseStart, ReleaseSystem } from './releaseSystem';

/** What a released grip has done so far, for a page to put into words. Times s since it was let go. */
export type ReleaseOutcome =
  /** It never moved. `at`: the stop it rests on, if any. */
  | { readonly kind: 'stays'; readonly pitch: Radians; readonly at: Stop | null }
  /** It came to rest away from the stops (which it may have struck before). */
  | {
      readonly kind: 'settles';
      readonly pitch: Radians;
      readonly time: number;
      readonly by: 'friction' | 'damping';
    }
  /** It came to rest on a stop: first touched at `reached`, at rest from `time` on. */
  | {
      readonly kind: 'runsToStop';
      readonly stop: Stop;
      readonly pitch: Radians;
      readonly reached: number;
      readonly time: number;
    }
  /** It still moves, and its last two swings ended here and there, at a standstill or on a stop. */
  | { readonly kind: 'oscillates'; readonly low: Radians; readonly high: Radians }
  /** It still moves and has not swung yet. */
  | { readonly kind: 'moves'; readonly pitch: Radians; readonly rate: number }
  /** It came to a pitch beyond which nothing is known. */
  | { readonly kind: 'noMoment'; readonly pitch: Radians; readonly time: number };

export function releaseOutcome(release: Release, system: ReleaseSystem): ReleaseOutcome {
  const { pitch, phase, ended } = release;
  const at = pitch === system.high ? 'high' : pitch === system.low ? 'low' : null;
  const resting = phase === 'stuck' || phase === 'atStop';
  if (resting && !release.moved) return { kind: 'stays', pitch, at };
  if (ended) {
    const { time, by } = ended;
    if (by === 'gap') return { kind: 'noMoment', pitch, time };
    if (resting && at) {
      return { kind: 'runsToStop', stop: at, pitch, reached: release.firstHit?.time ?? time, time };
    }
    return { kind: 'settles', pitch, time, by: by === 'damping' ? 'damping' : 'friction' };
  }
  const [one, other] = [release.lastEnd, release.endBefore];
  if (Number.isNaN(one + other)) return { kind: 'moves', pitch, rate: release.rate };
  const [low, high] = [radians(Math.min(one, other)), radians(Math.max(one, other))];
  return { kind: 'oscillates', low, high };
}

/** How a release ends, and the motion as it stood then. */
export interface ReleaseRun {
  readonly outcome: ReleaseOutcome;
  readonly release: Release;
  /** False where the motion took too many steps (hundreds of swings, heavy damping) to be followed to the end. */
  readonly complete: boolean;
}

/** Between looks whether a run has ended, as a share of its length. */
const LOOKS = 200;
/** Steps of a run: some 400 swings, within a second. */
const MOST_STEPS = 100_000;

/**
 * Follows a release until it is at rest, or `longest` s have passed. At once: a few thousand steps as a rule. A damped motion
 * is not followed beyond `ended`.
 */
export function runRelease(
  system: ReleaseSystem,
  start: ReleaseStart,
  longest: number,
  visit?: (release: Release) => void,
): Result<ReleaseRun, ReleaseFault> {
  const made = createRelease(system, start);
  if (!made.ok) return made;
  const release = made.value;
  let steps = 0;
  let complete = true;
  for (let i = 0; i < LOOKS && complete; i++) {
    if (release.phase !== 'sliding' || release.ended) break;
    const all = release.advance(longest / LOOKS, (now) => {
      steps++;
      visit?.(now);
    });
    complete = all && (steps < MOST_STEPS || i === LOOKS - 1);
  }
  return succeed({ outcome: releaseOutcome(release, system), release, complete });
}

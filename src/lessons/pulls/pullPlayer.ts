import { pullTally } from '../../state/pullTally';
import type { Session } from '../../state/session';
import { wantsNoMotion } from '../../state/wantsNoMotion';

/** Takes the build-up forward and back, one step at a time or by itself. */
export interface PullPlayer {
  readonly playing: boolean;
  /** To a count of whole steps, from 0 to all of them; `grow`: the last arrow grows before the eye. */
  goTo(added: number, grow?: boolean): void;
  step(by: 1 | -1): void;
  play(): void;
  pause(): void;
  /** Steps there are, and how many of them stand. */
  count(): { readonly added: number; readonly of: number };
  destroy(): void;
}

/** An arrow grows in so many ms, and then stands for so long before the next. */
const GROW = 450;
const STAND = 1100;

export function createPullPlayer(session: Session, changed: () => void): PullPlayer {
  const { pullsShow, happenings, live, store } = session;
  let playing = false;
  let frame = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function count() {
    const { grain, progress, speedRpm } = pullsShow.shown;
    const of = pullTally(live.reading, store.getState().pitchDeg, grain, speedRpm).entries.length;
    return { added: Math.min(of, Math.ceil(progress)), of };
  }

  function still(): void {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  }

  function goTo(wanted: number, grow = false): void {
    still();
    const { of } = count();
    const added = Math.max(0, Math.min(of, wanted));
    if (grow && !wantsNoMotion()) growTo(added);
    else pullsShow.set({ progress: added });
    happenings.tell({ kind: 'pulls', added, of });
    if (playing && added >= of) playing = false;
    if (playing) timer = setTimeout(() => goTo(added + 1, true), GROW + STAND);
    changed();
  }

  function growTo(added: number): void {
    const start = performance.now();
    function next(): void {
      const share = Math.min(1, (performance.now() - start) / GROW);
      // A hair of it stands at once: the step is taken.
      pullsShow.set({ progress: added - 1 + Math.max(0.02, share) });
      if (share < 1) frame = requestAnimationFrame(next);
    }
    next();
  }

  return {
    get playing() {
      return playing;
    },
    goTo(added, grow) {
      playing = false;
      goTo(added, grow);
    },
    step(by) {
      playing = false;
      goTo(count().added + by, by > 0 && count().added < count().of);
    },
    play() {
      const { added, of } = count();
      playing = true;
      goTo(added >= of ? 1 : added + 1, true);
    },
    pause() {
      playing = false;
      clearTimeout(timer);
      changed();
    },
    count,
    destroy: still,
  };
}

import { createStore } from 'zustand/vanilla';
import type { Hand } from '../design/release/hand';
import type { createHeadRun, HeadRun } from '../design/release/headRun';
import { FIRST_RELEASE_CHOICES } from '../design/release/releaseChoices';
import type { ReleaseOutcome } from '../engine/release/outcome';
import { createSlowClock, roundSlowness, type SlowClock } from '../engine/release/slowMotion';
import { degreesFromRadians, radiansFromDegrees } from '../engine/units';
import type { Happening, Happenings } from './happenings';
import type { LetGoChoices, LetGoDesk, LetGoPorts, LetGoState } from './letGoTypes';
import type { Live } from './live';
import type { AppStore } from './store';

export const FIRST_LET_GO: LetGoChoices = { ...FIRST_RELEASE_CHOICES, slowness: null };

/** A swing is shown in about so long, s. */
const SHOWN_SWING = 1.2;
const STEPS_A_SWING = 40;
const NO_HAND: Hand = { kind: 'off' };
const PER_DEGREE = 1000;

/**
 * A person's hand on the pitch, a drag of anything and every change of the design end a run: what moves is always the head
 * that is shown. The end of a movement is told to `happenings`, once a run and again after each push.
 */
export function createLetGoDesk(
  page: { readonly store: AppStore; readonly live: Live; readonly happenings: Happenings },
  ports: LetGoPorts,
): LetGoDesk {
  const { live, happenings } = page;
  const store = createStore<LetGoState>(() => ({
    status: 'held',
    choices: FIRST_LET_GO,
    fault: null,
    slowness: 1,
    pushing: false,
  }));
  const listeners = new Set<() => void>();
  let make: typeof createHeadRun | null = null;
  let run: HeadRun | null = null;
  let clock: SlowClock = createSlowClock(1);
  let callOff: (() => void) | null = null;
  /** The pitch is being set from here. */
  let ours = false;

  const status = () => store.getState().status;
  const loose = () => status() === 'running' || status() === 'paused';

  function set(change: Partial<LetGoState>): void {
    store.setState(change);
    tell();
  }
  function tell(): void {
    for (const listener of listeners) listener();
  }

  function showPitch(pitchDeg: number): void {
    if (page.store.getState().pitchDeg === pitchDeg) return;
    ours = true;
    page.store.setState({ pitchDeg });
    ours = false;
    live.flush();
  }
  function showRun(): void {
    if (run?.release.moved) showPitch(shownPitch(run));
  }

  function halt(): void {
    callOff?.();
    callOff = null;
    clock.pause();
  }
  function play(): void {
    callOff?.();
    callOff = ports.frame(tick);
  }
  function tick(now: number): void {
    callOff = null;
    if (!run || status() !== 'running') return;
    run.advance(clock.tick(now));
    showRun();
    // Showing it may have stopped it.
    if (status() !== 'running') return;
    if (restsNow(run)) rest();
    else {
      play();
      tell();
    }
  }
  function restsNow({ release, hand }: HeadRun): boolean {
    return release.ended !== null && (hand.kind === 'off' || release.phase === 'gap');
  }
  function rest(): void {
    halt();
    run?.hold(NO_HAND);
    set({ status: 'resting', pushing: false });
    report();
  }
  function report(): void {
    if (run) happenings.tell(happeningOf(run));
  }

  function begin(): void {
    if (!make) return;
    const { choices } = store.getState();
    const from = radiansFromDegrees(page.store.getState().pitchDeg);
    const made = make(live.forces, choices, from);
    if (!made.ok) {
      run = null;
      return set({ status: 'held', fault: made.error, pushing: false });
    }
    run = made.value;
    const slowness = choices.slowness ?? roundSlowness(run.swing, SHOWN_SWING);
    clock = createSlowClock(slowness);
    set({ status: 'running', fault: null, slowness, pushing: false });
    if (ports.calm()) return toEnd();
    if (restsNow(run)) return rest();
    play();
  }

  function letGo(): void {
    halt();
    page.store.setState({ notice: null });
    if (make) return begin();
    set({ status: 'starting', fault: null });
    ports.load().then(
      (loaded) => {
        make = loaded;
        if (status() === 'starting') begin();
      },
      (error: unknown) => {
        const reason = error instanceof Error ? error.message : String(error);
        set({ status: 'held', fault: { kind: 'notFetched', reason } });
      },
    );
  }

  function stop(): void {
    const moved = loose();
    halt();
    if (status() === 'held') return;
    set({ status: 'held', pushing: false });
    if (moved) report();
  }

  function toEnd(): void {
    if (!run || !loose()) return;
    halt();
    run.hold(NO_HAND);
    const ended = run.finish();
    showRun();
    if (ended) return rest();
    set({ status: 'paused', pushing: false });
    report();
  }

  page.store.subscribe((state, before) => {
    if (state.design !== before.design) {
      stop();
      if (run || store.getState().fault) {
        run = null;
        set({ fault: null });
      }
      return;
    }
    const byHand = state.pitchDeg !== before.pitchDeg && !ours;
    if (byHand || (state.gesture && !before.gesture && loose())) stop();
    if (byHand && store.getState().fault) set({ fault: null });
  });

  return {
    store,
    get run() {
      return run;
    },
    get loose() {
      return loose() || status() === 'starting';
    },
    get moving() {
      return status() === 'running';
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    choose(change) {
      const choices = { ...store.getState().choices, ...change };
      // Damping and the like change the motion: what is under way would be neither.
      if (Object.keys(change).some((field) => field !== 'slowness')) stop();
      const slowness = choices.slowness ?? (run ? roundSlowness(run.swing, SHOWN_SWING) : 1);
      clock.setSlowness(slowness);
      set({ choices, slowness });
    },
    letGo,
    replay() {
      if (!run) return;
      const fromDeg = degreesFromRadians(run.from);
      stop();
      showPitch(fromDeg);
      letGo();
    },
    pause() {
      if (status() !== 'running') return;
      halt();
      run?.hold(NO_HAND);
      set({ status: 'paused', pushing: false });
    },
    goOn() {
      if (status() !== 'paused') return;
      set({ status: 'running' });
      play();
    },
    step() {
      if (!run || status() !== 'paused') return;
      run.advance(run.swing / STEPS_A_SWING);
      showRun();
      if (status() !== 'paused') return;
      if (restsNow(run)) rest();
      else tell();
    },
    toEnd,
    stop,
    push(hand) {
      if (!run || !(status() === 'running' || status() === 'resting')) return;
      if (status() === 'resting' && (hand.kind === 'off' || run.release.phase === 'gap')) return;
      run.hold(hand);
      const pushing = hand.kind !== 'off';
      if (status() === 'resting') {
        set({ status: 'running', pushing });
        play();
      } else if (store.getState().pushing !== pushing) set({ pushing });
      // Nothing to wait for.
      if (!pushing && restsNow(run)) rest();
    },
  };
}

/** To a thousandth of a degree, so that the dial's moment is the run's to its three digits; where that lies beyond an end, the next inside. */
function shownPitch({ release, head }: HeadRun): number {
  const shown = Math.round(degreesFromRadians(release.pitch) * PER_DEGREE) / PER_DEGREE;
  const [low, high] = [head.known.low, head.known.high].map(degreesFromRadians);
  if (shown > high) return Math.floor(high * PER_DEGREE) / PER_DEGREE;
  return shown < low ? Math.ceil(low * PER_DEGREE) / PER_DEGREE : shown;
}

function happeningOf(run: HeadRun): Happening {
  return {
    kind: 'letGo',
    fromDeg: degreesFromRadians(run.from),
    endDeg: degreesFromRadians(run.release.pitch),
    outcome: OUTCOMES[run.outcome().kind],
  };
}

/** What jams over centre lies against the end of its travel as what meets a stop does. */
const OUTCOMES: Readonly<
  Record<ReleaseOutcome['kind'], Extract<Happening, { readonly kind: 'letGo' }>['outcome']>
> = {
  stays: 'stays',
  settles: 'settles',
  runsToStop: 'stop',
  noMoment: 'stop',
  oscillates: 'moving',
  moves: 'moving',
};

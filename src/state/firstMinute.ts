import { createStore, type StoreApi } from 'zustand/vanilla';
import type { LocalNotes } from './localNotes';
import type { Session } from './session';

/** What a newcomer may try first, in this order. */
export const FIRST_STEPS = ['bolt', 'dial', 'find'] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

export interface FirstMinuteState {
  readonly shown: boolean;
  readonly done: Readonly<Record<FirstStep, boolean>>;
}

/** Three things to try, each ticked when it was done, however it was done. */
export interface FirstMinute {
  readonly store: StoreApi<FirstMinuteState>;
  /** Not to be seen again, in this visit and the next. */
  dismiss(): void;
  /** Shows the list once more, with nothing ticked. */
  again(): void;
}

const NOTE = 'firstMinute';
/** From here the pitch was turned on purpose, degrees. */
const TURNED_DEG = 15;
const NOTHING_DONE: FirstMinuteState['done'] = { bolt: false, dial: false, find: false };

/**
 * Watches the own design while the list is shown. `newcomer`: nothing is known of an earlier visit, and no design came with
 * the address.
 */
export function createFirstMinute(
  session: Pick<Session, 'store' | 'live' | 'plan'>,
  notes: LocalNotes,
  newcomer: boolean,
): FirstMinute {
  const store = createStore<FirstMinuteState>(() => ({
    shown: newcomer && notes.read(NOTE) === null,
    done: NOTHING_DONE,
  }));
  let stop: (() => void) | null = null;

  function tick(step: FirstStep): void {
    const { done } = store.getState();
    if (done[step]) return;
    const next = { ...done, [step]: true };
    store.setState({ done: next });
    // Whoever has done all of it has seen it.
    if (FIRST_STEPS.every((one) => next[one])) {
      notes.write(NOTE, 'done');
      unwatch();
    }
  }

  function watch(): void {
    stop ??= watchSteps(session, tick);
  }
  function unwatch(): void {
    stop?.();
    stop = null;
  }

  if (store.getState().shown) watch();
  return {
    store,
    dismiss() {
      unwatch();
      notes.write(NOTE, 'dismissed');
      store.setState({ shown: false });
    },
    again() {
      unwatch();
      notes.remove(NOTE);
      store.setState({ shown: true, done: NOTHING_DONE });
      watch();
    },
  };
}

/** Tells of each step when it happens; returns a function that stops. */
function watchSteps(
  { store, live, plan }: Pick<Session, 'store' | 'live' | 'plan'>,
  tick: (step: FirstStep) => void,
): () => void {
  function begin() {
    const { opening, design } = store.getState();
    return { opening, count: design.parts.length, kind: live.reading.verdict().kind };
  }
  let from = begin();
  let { parts } = store.getState().design;

  /**
   * The parts were changed until the verdict is another one. Another design that was opened is no change of parts, and one
   * that was taken away or added is not what was asked for.
   */
  function lookAtVerdict(): void {
    const { opening, design } = store.getState();
    if (design.parts === parts && opening === from.opening) return;
    parts = design.parts;
    if (opening !== from.opening) from = begin();
    else if (parts.length === from.count && live.reading.verdict().kind !== from.kind) tick('bolt');
  }

  const stops = [
    live.subscribe((changes) => {
      if (changes.design) lookAtVerdict();
    }),
    store.subscribe(({ pitchDeg }, before) => {
      if (pitchDeg !== before.pitchDeg && Math.abs(pitchDeg) >= TURNED_DEG) tick('dial');
    }),
    plan.search.store.subscribe(({ job }) => {
      if (job.kind === 'done') tick('find');
    }),
  ];
  return () => {
    for (const end of stops) end();
  };
}

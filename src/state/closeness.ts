import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../design/design';
import { ROTOR_SECTION } from '../design/sections/rotor';
import type { Derivative } from '../neutralise/closeness/derivatives';
import type { ToleranceAnswer } from '../neutralise/closeness/runTolerances';
import type { SlopeQuestion, SlopeReply } from '../neutralise/closeness/slopeMessages';
import { WORKER_ENDED } from '../worker/life';
import { createJob, type Job, type JobWorker, workerFault } from './job';
import type { AppStore } from './store';

/** Pitches of the bars as shares of the pitch in use. */
export const SLOPE_PITCHES = [-1, -0.5, 0, 0.5, 1] as const;

export const SLOPE_QUANTITIES = ['force', 'difference', 'product'] as const;

/** How the head answers to each of its numbers. */
export interface Slopes {
  /** The design that they are of. */
  readonly design: Design;
  readonly pitchesDeg: readonly number[];
  readonly derivatives: readonly Derivative[];
  /** 'nominal': the air of a changed blade is still being solved. */
  readonly terms: SlopeReply['terms'];
}

/** What is looked at in the room; kept while the tab is switched. */
export interface ClosenessView {
  /** Place in `SLOPE_PITCHES`. */
  readonly pitch: number;
  readonly rank: 'step' | 'tolerance';
  /** Of the push-rod force, of J_yy - J_zz, or of J_yz. */
  readonly of: (typeof SLOPE_QUANTITIES)[number];
}

export interface ClosenessState {
  readonly view: ClosenessView;
  readonly slopes: Slopes | null;
  /** Why there are none: the worker stopped. */
  readonly failed: string | null;
}

/** How closely the parts must be made: derivatives that follow the design, and tolerance runs. */
export interface ClosenessDesk {
  readonly store: StoreApi<ClosenessState>;
  readonly run: Job<Design, ToleranceAnswer>;
  setView(change: Partial<ClosenessView>): void;
  /** Asks for the derivatives of the open design, unless they are there or asked for already. */
  ask(): void;
  /** Begins a tolerance run of the open design. */
  start(): void;
}

/** What the desk asks of the worker that differentiates. */
export type SlopeWorker = Pick<Worker, 'postMessage' | 'addEventListener' | 'terminate'>;

export interface ClosenessWorkers {
  readonly slopes: () => SlopeWorker;
  readonly tolerances: () => JobWorker;
}

export function createClosenessDesk(app: AppStore, workers: ClosenessWorkers): ClosenessDesk {
  const store = createStore<ClosenessState>(() => ({
    view: { pitch: SLOPE_PITCHES.length - 1, rank: 'step', of: 'force' },
    slopes: null,
    failed: null,
  }));
  const run = createJob<Design, ToleranceAnswer>(workers.tolerances);
  let worker: SlopeWorker | null = null;
  let asked: SlopeQuestion | null = null;
  let last = 0;
  let isAgain = false;

  app.subscribe((state, before) => {
    if (state.opening !== before.opening) run.clear();
  });

  function startSlopes(): SlopeWorker {
    const own = workers.slopes();
    own.addEventListener('message', ({ data }: MessageEvent<SlopeReply>) => {
      const { id, terms, derivatives } = data;
      isAgain = false;
      if (id !== asked?.id) return;
      const { design, pitchesDeg } = asked;
      store.setState({ slopes: { design, pitchesDeg, derivatives, terms }, failed: null });
    });
    own.addEventListener('error', ({ message }) => {
      if (worker !== own) return;
      own.terminate();
      worker = null;
      asked = null;
      // Ended from outside it is started anew, once between two answers.
      if (message === WORKER_ENDED && !isAgain) {
        isAgain = true;
        ask();
      } else store.setState({ failed: workerFault(message) });
    });
    return own;
  }

  function ask(): void {
    const { design } = app.getState();
    if (asked && sameForces(asked.design, design)) return;
    const used = design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
    worker ??= startSlopes();
    last++;
    asked = {
      id: last,
      design: withoutTryOuts(design),
      pitchesDeg: SLOPE_PITCHES.map((share) => share * used),
    };
    // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
    worker.postMessage(asked);
  }

  return {
    store,
    run,
    setView(change) {
      store.setState({ view: { ...store.getState().view, ...change } });
    },
    ask,
    start() {
      run.start(withoutTryOuts(app.getState().design));
    },
  };
}

/** Variants that are not on the stage need not go to a worker. */
function withoutTryOuts(design: Design): Design {
  const { tryOuts: _, ...rest } = design;
  return rest;
}

/** Whether two designs have the same forces and the same slopes: all that enters them is the same object. */
export function sameForces(a: Design, b: Design): boolean {
  return (
    a.parts === b.parts &&
    a.rotor === b.rotor &&
    a.counted === b.counted &&
    a.control === b.control &&
    a.air === b.air &&
    a.bladeBolt === b.bladeBolt &&
    a.materials === b.materials
  );
}

/** Whether a tolerance run of one design holds for another. */
export function sameHeadAndTolerances(a: Design, b: Design): boolean {
  return sameForces(a, b) && a.tolerance === b.tolerance;
}

import { describeFault } from '../design/faultText';
import type { Session } from '../state/session';
import type { BenchDesk, BenchState } from './deskTypes';
import { keptOf, recordOf } from './record';
import { say } from './say';

/** What is typed is kept when it rests so long, ms: one undo step, not one a letter. */
const RESTS = 500;

/**
 * Keeps the desk and the open design alike for as long as the page lives: a run that is taken is in the design at once, and
 * a design that is opened, or an undo, brings its runs to the desk.
 */
export function keepBench({ store, live }: Session, desk: BenchDesk): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let written = store.getState().design.bench;
  let isLoading = false;

  function load(): void {
    clearTimeout(timer);
    written = store.getState().design.bench;
    isLoading = true;
    const kept = keptOf(written, desk.store.getState());
    const { chosen } = desk.store.getState();
    const isThere = kept.runs.some(({ id }) => id === chosen);
    desk.store.setState({ ...kept, chosen: isThere ? chosen : (kept.runs[0]?.id ?? null) });
    isLoading = false;
  }
  function put(): void {
    clearTimeout(timer);
    const { design, gesture } = store.getState();
    if (gesture) {
      timer = setTimeout(put, RESTS);
      return;
    }
    const bench = recordOf(desk.store.getState());
    if (JSON.stringify(bench) === JSON.stringify(design.bench)) return;
    const { bench: _, ...rest } = design;
    written = bench;
    const outcome = live.commitDesign(bench ? { ...rest, bench } : rest);
    if (outcome.ok) return;
    const text = say('benchRoom.notKept', { reason: describeFault(outcome.error) });
    store.setState({ notice: { tone: 'warning', text } });
  }

  desk.store.subscribe((now, before) => {
    if (isLoading || !differs(now, before)) return;
    clearTimeout(timer);
    if (now.runs.length === before.runs.length && now.plan === before.plan)
      timer = setTimeout(put, RESTS);
    else put();
  });
  store.subscribe((now, before) => {
    if (now.opening !== before.opening) {
      desk.store.setState({ practice: null, removed: null });
      load();
    } else if (now.design.bench !== before.design.bench && now.design.bench !== written) load();
  });
  load();
}

const KEPT = [
  'runs',
  'place',
  'pullsAlong',
  'gaugeStepN',
  'gaugeLimitN',
  'pairs',
  'scaleUnit',
  'calibration',
  'fit',
  'plan',
  'ticked',
] as const satisfies readonly (keyof BenchState)[];

function differs(now: BenchState, before: BenchState): boolean {
  return KEPT.some((key) => now[key] !== before[key]);
}

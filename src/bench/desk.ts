import { createStore } from 'zustand/vanilla';
import { MAX_BENCH_RUNS, MAX_BENCH_TEXT } from '../design/sections/bench';
import { readDraft, readRemembered, writeDraft, writeRemembered } from './deskNotes';
import type { BenchDesk, BenchPorts, BenchState, TakeFault } from './deskTypes';
import { FIRST_FIT } from './fitChoice';
import { createReader, type Offered } from './offerReader';
import { type BenchRun, runFromTable } from './readings/benchSection';
import { storedFrom } from './readings/preview';
import { rememberMapping } from './readings/remembered';
import { USUAL_STEP_N } from './record';
import { runActions } from './runActions';

export function createBenchDesk(ports: BenchPorts): BenchDesk {
  const store = createStore<BenchState>(() => ({
    runs: [],
    chosen: null,
    removed: null,
    offered: null,
    waiting: [],
    pairs: [],
    scaleUnit: 'mm',
    calibration: 'line',
    fit: FIRST_FIT,
    gaugeStepN: USUAL_STEP_N,
    gaugeLimitN: null,
    place: 'rod',
    pullsAlong: 1,
    rung: null,
    plan: {},
    ticked: [],
    tickedOn: '',
    naming: null,
    draft: readDraft(ports.notes),
    practice: null,
    remembered: readRemembered(ports.notes),
  }));
  // What is being typed outlives the tab, like everything else.
  store.subscribe(({ draft }, before) => {
    if (draft !== before.draft) writeDraft(ports.notes, draft);
  });
  const reader = createReader(ports.reader, (offered) => store.setState({ offered }));
  const addRun = (run: Omit<BenchRun, 'id'>): TakeFault | null => {
    const { runs } = store.getState();
    const fault = roomFault(runs, run);
    if (fault) return fault;
    let id = ports.newId();
    while (runs.some((one) => one.id === id)) id = ports.newId();
    const tryOut = ports.tryOut?.();
    const measured = tryOut === undefined ? run : { tryOut, ...run };
    store.setState({ runs: [...runs, { ...measured, id }], chosen: id });
    return null;
  };

  const next = () => {
    const [first, ...waiting] = store.getState().waiting;
    store.setState({ waiting });
    if (first) reader.read({ ...first, choices: { remembered: store.getState().remembered } });
    else reader.drop();
  };
  const take = (): TakeFault | null => {
    const { offered, remembered } = store.getState();
    if (offered?.kind !== 'ready' || !offered.preview.derived.ok) return 'notReady';
    const { preview, name } = offered;
    const { id: _, ...run } = runFromTable('', storedFrom(name, preview));
    const fault = addRun(run);
    if (fault) return fault;
    if (preview.mappingFrom === 'person') {
      const memory = rememberMapping(remembered, preview.table.headings, preview.mapping);
      store.setState({ remembered: memory });
      writeRemembered(ports.notes, memory);
    }
    next();
    return null;
  };

  return {
    store,
    set: (change) => store.setState(change),
    offer(...sources) {
      const { waiting, offered } = store.getState();
      store.setState({ waiting: [...waiting, ...sources] });
      if (offered === null) next();
    },
    reread: (change) => reader.again(change),
    dismiss: next,
    take,
    takeAll() {
      for (let taken = 0; taken === 0 || isClear(store.getState().offered); taken++) {
        const fault = take();
        if (fault) return fault;
      }
      return null;
    },
    ...runActions(store, addRun),
  };
}

/** Nothing of it is refused: it can be taken unseen beside others that were looked at. */
function isClear(offered: Offered | null): boolean {
  return (
    offered?.kind === 'ready' &&
    offered.preview.derived.ok &&
    offered.preview.derived.value.refusedRows === 0
  );
}

function roomFault(
  runs: readonly BenchRun[],
  run: Pick<BenchRun, 'table'>,
): 'tooManyRuns' | 'tooMuchText' | null {
  if (runs.length >= MAX_BENCH_RUNS) return 'tooManyRuns';
  const kept = runs.reduce((sum, { table }) => sum + (table?.text.length ?? 0), 0);
  return kept + (run.table?.text.length ?? 0) > MAX_BENCH_TEXT ? 'tooMuchText' : null;
}

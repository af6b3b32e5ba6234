import { createStore } from 'zustand/vanilla';
import type { BenchDesk, BenchPorts, BenchState, TakeFault } from './deskTypes';
import { FIRST_FIT } from './fitChoice';
import { createReader, type Offered } from './offerReader';
import { type BenchRun, MAX_BENCH_TEXT, MAX_RUNS, runFromTable } from './readings/benchSection';
import { storedFrom } from './readings/preview';
import { type RememberedMappings, rememberMapping } from './readings/remembered';
import { USUAL_STEP_N } from './record';
import { runActions } from './runActions';
import type { GridDraft } from './typedRows';

const NOTE = 'bench.columns';
const DRAFT_NOTE = 'bench.draft';

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
    if (draft !== before.draft) ports.notes.write(DRAFT_NOTE, draft ? JSON.stringify(draft) : '');
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
      ports.notes.write(NOTE, JSON.stringify(memory));
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
  if (runs.length >= MAX_RUNS) return 'tooManyRuns';
  const kept = runs.reduce((sum, { table }) => sum + (table?.text.length ?? 0), 0);
  return kept + (run.table?.text.length ?? 0) > MAX_BENCH_TEXT ? 'tooMuchText' : null;
}

function readRemembered(notes: BenchPorts['notes']): RememberedMappings {
  const text = notes.read(NOTE);
  if (text === null) return {};
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === 'object' && found !== null ? (found as RememberedMappings) : {};
  } catch {
    return {};
  }
}

function readDraft(notes: BenchPorts['notes']): GridDraft | null {
  try {
    const found: unknown = JSON.parse(notes.read(DRAFT_NOTE) || 'null');
    return isDraft(found) ? { ...found, run: null } : null;
  } catch {
    return null;
  }
}

/** Written by this program, perhaps by another version of it. */
function isDraft(found: unknown): found is GridDraft {
  if (typeof found !== 'object' || found === null) return false;
  const { place, unit, rows, about } = found as Partial<GridDraft>;
  return (
    (place === 'pitch' || place === 'scale') &&
    (unit === 'N' || unit === 'ozf') &&
    typeof about === 'object' &&
    Array.isArray(rows) &&
    rows.every((row) =>
      [row.pitch, row.force, row.travel, row.note].every((c) => typeof c === 'string'),
    )
  );
}

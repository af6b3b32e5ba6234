import type { StoreApi } from 'zustand/vanilla';
import type { BenchDesk, BenchState } from './deskTypes';
import type { BenchRun } from './readings/benchSection';

type RunActions = Pick<
  BenchDesk,
  'addRun' | 'changeRun' | 'removeRun' | 'putBack' | 'setAside' | 'countRun'
>;

/** What is done with runs that were taken; their tables stay as they are. */
export function runActions(store: StoreApi<BenchState>, addRun: BenchDesk['addRun']): RunActions {
  return {
    addRun,
    changeRun(id, change) {
      const runs = store
        .getState()
        .runs.map((run) => (run.id === id ? withoutUnknown({ ...run, ...change }) : run));
      store.setState({ runs });
    },
    countRun(id, counts) {
      const runs = store.getState().runs.map((run) => {
        if (run.id !== id) return run;
        const { uncounted: _, tryOut, ...rest } = run;
        if (counts) return rest;
        return { ...rest, ...(tryOut === undefined ? {} : { tryOut }), uncounted: true };
      });
      store.setState({ runs });
    },
    removeRun(id) {
      const { runs, chosen } = store.getState();
      const at = runs.findIndex((run) => run.id === id);
      if (at < 0) return;
      const left = runs.filter((run) => run.id !== id);
      const next = left[Math.min(at, left.length - 1)]?.id ?? null;
      store.setState({
        runs: left,
        removed: { run: runs[at], at },
        chosen: chosen === id ? next : chosen,
      });
    },
    putBack() {
      const { runs, removed } = store.getState();
      if (!removed) return;
      const { run, at } = removed;
      store.setState({
        runs: [...runs.slice(0, at), run, ...runs.slice(at)],
        removed: null,
        chosen: run.id,
      });
    },
    setAside(id, reading, aside) {
      const runs = store.getState().runs.map((run) => {
        if (run.id !== id) return run;
        const others = (run.setAside ?? []).filter((one) => one !== reading);
        return {
          ...run,
          setAside: (aside ? [...others, reading] : others).toSorted((a, b) => a - b),
        };
      });
      store.setState({ runs });
    },
  };
}

/** What is not known is left out, not kept as nothing. */
function withoutUnknown(run: object): BenchRun {
  const known = Object.entries(run).filter(([, value]) => value !== undefined);
  return Object.fromEntries(known) as unknown as BenchRun;
}

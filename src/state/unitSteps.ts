import type { DisplayUnits } from './settings';
import { type AppStore, HISTORY_LIMIT, type UndoStep } from './store';

/**
 * A change of the display units is one undo step among those of the design, though units are no part of it: its entry in
 * the history holds the units of before, and the design as it stands. The library that keeps the history knows designs
 * only, so these steps are taken here.
 */
export interface UnitSteps {
  /** Shows other units; nothing is recorded where they are the same. */
  set(units: DisplayUnits): void;
  /** True where the last step was a change of units, which is now undone. */
  undo(): boolean;
  redo(): boolean;
}

export function createUnitSteps(store: AppStore): UnitSteps {
  const shown = () => store.getState().settings.units;

  function show(units: DisplayUnits): void {
    store.setState({ settings: { ...store.getState().settings, units } });
  }

  /** The step as it stands now, for the other side of the history. */
  function current(): UndoStep {
    const { design, opening } = store.getState();
    return { design, opening, units: shown() };
  }

  /** Takes the last step of one side over to the other. */
  function take(from: 'pastStates' | 'futureStates', to: 'pastStates' | 'futureStates'): boolean {
    const history = store.temporal.getState();
    const units = history[from].at(-1)?.units;
    if (!units) return false;
    store.temporal.setState({
      [from]: history[from].slice(0, -1),
      [to]: [...history[to], current()],
    });
    show(units);
    return true;
  }

  return {
    set(units) {
      if (sameUnits(units, shown())) return;
      const past = [...store.temporal.getState().pastStates, current()];
      store.temporal.setState({ pastStates: past.slice(-HISTORY_LIMIT), futureStates: [] });
      show(units);
    },
    undo: () => take('pastStates', 'futureStates'),
    redo: () => take('futureStates', 'pastStates'),
  };
}

export function sameUnits(a: DisplayUnits, b: DisplayUnits): boolean {
  return a.length === b.length && a.mass === b.mass && a.force === b.force && a.moment === b.moment;
}

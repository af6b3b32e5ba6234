import type { AppState, AppStore } from './store';

/** The states that undo and redo can bring back, and the present one. Of a gesture's only the design is known. */
export function withinUndo(
  store: AppStore,
): readonly Partial<Pick<AppState, 'design' | 'opening'>>[] {
  const { pastStates, futureStates } = store.temporal.getState();
  return [...pastStates, ...futureStates, store.getState()];
}

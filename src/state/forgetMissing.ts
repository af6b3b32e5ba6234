import type { AppStore } from './store';

/** Lets go of a selection, and of picks, on a part that is no longer in the head. */
export function forgetMissingSelection(store: AppStore): void {
  const { design, selection, picking } = store.getState();
  const gone = (id: string) => !design.parts.some((part) => part.id === id);
  if (selection !== null && gone(selection)) store.setState({ selection: null });
  if (picking !== null && gone(picking.part)) store.setState({ picking: null });
}

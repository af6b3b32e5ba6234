import type { Part } from '../design/design';
import { recastPart } from '../design/recast';
import { fail, type Result } from '../engine/result';
import type { Live } from './live';
import type { Refusal } from './refusal';
import { replacePart } from './replacePart';
import type { AppStore } from './store';

export interface KeepOutActions {
  /** A body from a mesh becomes a keep-out, such a keep-out a body again: one undo step. */
  recastPart(id: string): Result<Part, Refusal>;
}

export function createKeepOutActions(store: AppStore, live: Live): KeepOutActions {
  return {
    recastPart(id) {
      const placed = live.model.placed(id);
      const next = placed && recastPart(placed.part, store.getState().design.rotor);
      return next ? replacePart(live, id, () => next) : fail({ field: id, rule: 'unknownPart' });
    },
  };
}

import { describe, expect, it } from 'vitest';
import { createSession } from '../../src/state/createSession';
import { workOf } from '../../src/state/keep/page';
import { EMPTY_DESIGN } from '../../src/state/store';
import { withinUndo } from '../../src/state/withinUndo';
import { seeded } from '../support/seeded';

describe('what undo and redo can bring back', () => {
  it('is known beforehand, with the openings: openings, changes, drags and undo in any order', () => {
    const random = seeded(5);
    const session = createSession(undefined, () => {});
    const { store, actions } = session;
    const work = workOf(session, () => undefined);
    for (let round = 0; round < 15; round++) {
      for (let i = 0; i < 8; i++) move(random.whole(0, 4), `${round}-${i}`);
      const designs = new Set(withinUndo(store).map(({ design }) => design));
      const openings = work.openings();
      const steps = store.temporal.getState().pastStates.length;
      const met = () => {
        const { design, opening } = store.getState();
        expect(designs.has(design)).toBe(true);
        expect(openings.has(opening)).toBe(true);
      };
      for (let k = 0; k < steps; k++) {
        actions.undo();
        met();
      }
      while (store.temporal.getState().futureStates.length > 0) {
        actions.redo();
        met();
      }
    }

    function move(what: number, name: string): void {
      if (what === 0) actions.openDesign({ ...EMPTY_DESIGN, name });
      else if (what === 1) actions.setDesignName(name);
      else if (what === 2) actions.undo();
      else {
        const drag = actions.gesture.begin();
        actions.setDesignName(`${name}, half`);
        actions.setDesignName(name);
        drag.end();
      }
    }
  });
});

import { beforeEach, expect, it } from 'vitest';
import { HeldKey } from '../../../src/panels/fields/heldKey';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

let session: Session;
let key: HeldKey;
/** Of a field that is empty at first: what the page shows of it, which in a gesture is not what the design holds. */
let shown: number | undefined;

beforeEach(() => {
  session = createSession(undefined, () => {});
  key = new HeldKey(session.actions.gesture);
  shown = 20;
  session.actions.setSection('rotor', { hubMassGrams: 20 });
});

const held = () => session.store.getState().design.rotor.hubMassGrams;

/** One repeat of the key, as the fields take it. */
function step(): void {
  const from = key.from(shown) ?? Number.NaN;
  key.press();
  expect(session.actions.setSection('rotor', { hubMassGrams: from + 1 }).ok).toBe(true);
  key.wrote(from + 1);
}

it('loses no repeat of a held key while the page still shows the value it began with, and is one undo step', () => {
  for (let k = 0; k < 15; k++) step();
  expect(held()).toBe(35);
  key.release();
  session.actions.undo();
  expect(held()).toBe(20);
});

it('goes on from what is shown after an undo in the middle, and when the key is pressed anew', () => {
  step();
  step();
  session.actions.undo();
  expect(held()).toBe(20);
  step();
  expect(held()).toBe(21);
  key.release();
  shown = 50;
  step();
  expect(held()).toBe(51);
});

import { expect, it } from 'vitest';
import { tellSteps } from '../../src/app/stepsSaid';
import { createSession } from '../../src/state/createSession';
import { DEMOS, demo } from '../output/solids/heads';

it('Undo and Redo are told with what is left of them, and nothing of any other change', () => {
  const session = createSession(demo(DEMOS[0]));
  const { actions } = session;
  const said: string[] = [];
  const stop = tellSteps(session, (text) => said.push(text));
  const rename = (name: string) => actions.setDesignName(name);
  rename('one');
  rename('two');
  expect(said.filter((text) => text !== '')).toEqual([]);
  actions.undo();
  expect(said.at(-1)).toBe('One step undone. Steps left to undo: 1.');
  actions.undo();
  expect(said.at(-1)).toBe('One step undone. Steps left to undo: 0.');
  actions.redo();
  expect(said.at(-1)).toBe('One step done again. Steps left to do again: 1.');
  // One to do again is left, and a change drops it: that is no Redo.
  rename('three');
  expect(said.at(-1)).toBe('');
  stop();
  const before = said.length;
  actions.undo();
  expect(said.length).toBe(before);
});

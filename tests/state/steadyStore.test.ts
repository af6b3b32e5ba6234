import { beforeEach, expect, it } from 'vitest';
import type { Changes } from '../../src/state/changes';
import { createSteadyStore, type SteadyStore } from '../../src/state/steadyStore';
import { type AppStore, createAppStore, EMPTY_DESIGN } from '../../src/state/store';

let store: AppStore;
let steady: SteadyStore;
let heard: (readonly [name: string, before: string])[];
/** The page's turn has come. */
let turn: (changes: Changes) => void;

const NOW = {} as Changes;
const named = (name: string) => ({ ...EMPTY_DESIGN, name });

beforeEach(() => {
  store = createAppStore(named('a'));
  steady = createSteadyStore(store, {
    subscribe(listener, asked) {
      expect(asked).toBe('page');
      turn = listener;
      return () => {};
    },
  });
  heard = [];
  steady.subscribe((state, before) => heard.push([state.design.name, before.design.name]));
});

it('tells at once what happens outside a drag, and not a second time at the turn', () => {
  store.setState({ design: named('b') });
  expect(heard).toEqual([['b', 'a']]);
  turn(NOW);
  expect(heard.length).toBe(1);
});

it('keeps the steps of a drag until the turn, and then tells the last of them against what was told before', () => {
  store.setState({ gesture: true });
  heard = [];
  for (const name of ['b', 'c', 'd']) store.setState({ design: named(name) });
  expect(heard).toEqual([]);
  expect(steady.getState().design.name).toBe('d');
  turn(NOW);
  expect(heard).toEqual([['d', 'a']]);
  turn(NOW);
  expect(heard.length).toBe(1);
});

it('tells at once whatever else changes in a drag, and its end', () => {
  store.setState({ gesture: true });
  store.setState({ design: named('b') });
  heard = [];
  store.setState({ notice: { tone: 'warning', text: 'no farther' } });
  expect(heard).toEqual([['b', 'a']]);
  store.setState({ design: named('c') });
  store.setState({ design: named('d'), selection: 'bolt' });
  expect(heard.at(-1)).toEqual(['d', 'b']);
  store.setState({ design: named('e') });
  store.setState({ gesture: false });
  expect(heard.at(-1)).toEqual(['e', 'd']);
});

it('forgets who no longer listens', () => {
  const stop = steady.subscribe(() => heard.push(['stopped', '']));
  stop();
  store.setState({ design: named('b') });
  expect(heard).toEqual([['b', 'a']]);
});

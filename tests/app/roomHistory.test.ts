import { describe, expect, it } from 'vitest';
import { type HistoryWindow, keepRoomsInHistory } from '../../src/app/roomHistory';
import { createSession } from '../../src/state/createSession';
import { DEMOS, demo } from '../output/solids/heads';

/**
 * A window's history as the HTML standard has it ("Session history", history.pushState and traversal): a new entry drops
 * those ahead, going elsewhere tells the page the state of the entry that it comes to.
 */
function windowWith(first: unknown) {
  const entries = [first];
  let at = 0;
  const listeners = new Set<(event: PopStateEvent) => void>();
  const page: HistoryWindow = {
    history: {
      get state() {
        return entries[at];
      },
      pushState(state: unknown) {
        entries.splice(++at, Number.POSITIVE_INFINITY, state);
      },
      replaceState(state: unknown) {
        entries[at] = state;
      },
    },
    addEventListener: (_, listener) => void listeners.add(listener),
    removeEventListener: (_, listener) => void listeners.delete(listener),
  };
  const go = (by: number) => {
    at += by;
    for (const listener of listeners) listener({ state: entries[at] } as PopStateEvent);
  };
  return { page, go, entries };
}

describe('Back and Forward', () => {
  const open = (first: unknown = null) => {
    const session = createSession(demo(DEMOS[2]), () => {});
    const browser = windowWith(first);
    const stop = keepRoomsInHistory(session, browser.page);
    const room = () => session.store.getState().settings.room;
    const enter = (name: ReturnType<typeof room>) => session.actions.setSettings({ room: name });
    return { ...browser, session, stop, room, enter };
  };

  it('go through the rooms that were gone through, and a room entered anew drops those ahead', () => {
    const { go, entries, room, enter } = open();
    enter('neutralise');
    enter('make');
    enter('make');
    expect(entries).toHaveLength(3);
    go(-1);
    expect(room()).toBe('neutralise');
    go(-1);
    expect(room()).toBe('head');
    go(2);
    expect(room()).toBe('make');
    go(-1);
    enter('bench');
    expect(entries.map((entry) => (entry as { room: string }).room)).toEqual([
      'head',
      'neutralise',
      'bench',
    ]);
  });

  it('change no design and no undo step, and leave alone what others keep in the history', () => {
    const { go, entries, session, room, enter } = open({ other: 1 });
    const { design } = session.store.getState();
    enter('learn');
    expect(entries[0]).toEqual({ other: 1, room: 'head' });
    entries.push({ room: 'attic' }, null);
    go(1);
    go(1);
    expect(room()).toBe('learn');
    go(-3);
    expect(room()).toBe('head');
    expect(session.store.getState().design).toBe(design);
    expect(session.store.temporal.getState().pastStates).toHaveLength(0);
  });

  it('are left alone once it has stopped', () => {
    const { go, stop, entries, room, enter } = open();
    enter('make');
    stop();
    enter('bench');
    expect(entries).toHaveLength(2);
    go(-1);
    expect(room()).toBe('bench');
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../src/design/file';
import { createSession } from '../../src/state/createSession';
import { createFirstMinute } from '../../src/state/firstMinute';
import type { LocalNotes } from '../../src/state/localNotes';

function design(name: string) {
  const text = readFileSync(new URL(`../../assets/designs/${name}.json`, import.meta.url), 'utf8');
  const read = parseDesign(text);
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

function memory(): LocalNotes {
  const held = new Map<string, string>();
  return {
    read: (name) => held.get(name) ?? null,
    write: (name, text) => Boolean(held.set(name, text)),
    remove: (name) => void held.delete(name),
  };
}

function begin(newcomer = true, notes = memory()) {
  // As on the page: told once a frame, here when it is flushed.
  const session = createSession(design('3-ordinary-bolt'), () => {});
  const first = createFirstMinute(session, notes, newcomer);
  return { session, notes, first, done: () => first.store.getState().done };
}

describe('the three things to try', () => {
  it('are shown to a newcomer only, and nothing is ticked', () => {
    expect(begin().first.store.getState()).toEqual({
      shown: true,
      done: { bolt: false, dial: false, find: false },
    });
    expect(begin(false).first.store.getState().shown).toBe(false);
  });

  it('are ticked by a head that is long enough to change the verdict, not by any length', () => {
    const { session, done } = begin();
    session.actions.setParameter('bolt', 'headHeightMm', 4);
    session.live.flush();
    expect(done().bolt).toBe(false);
    // 12 mm is past neutral for this head: the grip flees flat pitch.
    session.actions.setParameter('bolt', 'headHeightMm', 12);
    session.live.flush();
    expect(done().bolt).toBe(true);
  });

  it('are not ticked by opening another head, nor by selecting, nor by a small turn', () => {
    const { session, done } = begin();
    session.actions.openDesign(design('2-long-bolt'));
    session.live.flush();
    session.actions.select('grip');
    session.actions.setPitch(5);
    expect(done()).toEqual({ bolt: false, dial: false, find: false });
  });

  it('are not ticked by taking parts away, though the verdict is another then', () => {
    const { session, done } = begin();
    const kind = () => session.live.reading.verdict().kind;
    const before = kind();
    for (const part of ['blade', 'grip']) {
      session.actions.removePart(part);
      session.live.flush();
      expect(kind()).not.toBe(before);
    }
    expect(done().bolt).toBe(false);
  });

  it('are ticked by the dial turned to 20 degrees, either way', () => {
    const { session, done } = begin();
    session.actions.setPitch(-20);
    expect(done().dial).toBe(true);
  });

  it('dismissed stay away on the next visit, until they are asked for again', () => {
    const { first, notes, session } = begin();
    first.dismiss();
    expect(first.store.getState().shown).toBe(false);
    session.actions.setPitch(30);
    expect(first.store.getState().done.dial).toBe(false);
    const next = begin(true, notes);
    expect(next.first.store.getState().shown).toBe(false);
    next.first.again();
    expect(next.first.store.getState().shown).toBe(true);
    next.session.actions.setPitch(30);
    expect(next.done().dial).toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import { createSession } from '../../src/state/createSession';
import type { LocalNotes } from '../../src/state/localNotes';
import { DEFAULT_SETTINGS, INCH_UNITS } from '../../src/state/settings';
import { keepSettings, readSettings } from '../../src/state/storedSettings';

function createNotes(): LocalNotes {
  const held = new Map<string, string>();
  return {
    read: (name) => held.get(name) ?? null,
    write: (name, text) => Boolean(held.set(name, text)),
    remove: (name) => void held.delete(name),
  };
}
const open = () => createSession(undefined, (callback) => callback());

describe('the settings', () => {
  it('come back as they were left', () => {
    const notes = createNotes();
    const session = open();
    keepSettings(session.store, notes);
    session.actions.setSettings({ units: INCH_UNITS, theme: 'dark', chartShares: false });
    expect(readSettings(notes)).toEqual(session.store.getState().settings);
  });

  it('fall back one by one where a note is not understood', () => {
    const notes = createNotes();
    for (const text of ['', 'null', '7', '{"units":null,"layers":[1],"theme":"pink"}', '{']) {
      notes.write('settings', text);
      expect(readSettings(notes)).toEqual(DEFAULT_SETTINGS);
    }
    notes.write('settings', '{"units":{"force":"ozf","mass":"stone"},"chartQuantity":"energy"}');
    expect(readSettings(notes)).toMatchObject({
      units: { force: 'ozf', mass: 'g' },
      chartQuantity: 'energy',
    });
  });
});

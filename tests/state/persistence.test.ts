import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { createSession } from '../../src/state/createSession';
import type { DesignDatabase, SavedDesign } from '../../src/state/designDatabase';
import type { LocalNotes } from '../../src/state/localNotes';
import { type PersistencePorts, restoreDesign, startAutosave } from '../../src/state/persistence';
import { DEFAULT_SETTINGS, INCH_UNITS } from '../../src/state/settings';
import { EMPTY_DESIGN } from '../../src/state/store';
import { keepSettings, readSettings } from '../../src/state/storedSettings';

/** A browser with one database, one set of local notes, and one lock for all its tabs. */
function createBrowser() {
  const browser = {
    current: null as SavedDesign | null,
    aside: [] as SavedDesign[],
    notes: new Map<string, string>(),
    clock: 1000,
    broken: false,
    notesFull: false,
    writes: 0,
    locked: false,
    waiting: [] as (() => void)[],
  };
  const database: DesignDatabase = {
    read: async () => browser.current,
    async write(saved) {
      if (browser.broken) throw new Error('quota');
      browser.writes++;
      browser.current = saved;
    },
    async setAside(saved) {
      browser.aside.push(saved);
    },
  };
  const notes: LocalNotes = {
    read: (name) => browser.notes.get(name) ?? null,
    write(name, text) {
      if (browser.notesFull) return false;
      browser.notes.set(name, text);
      return true;
    },
    remove: (name) => void browser.notes.delete(name),
  };
  const ports: PersistencePorts = {
    async database() {
      if (browser.broken) throw new Error('no database');
      return database;
    },
    notes,
    lock(report) {
      if (browser.locked) {
        browser.waiting.push(() => report(true));
        return report(false);
      }
      browser.locked = true;
      report(true);
    },
    now: () => browser.clock++,
  };
  return { browser, ports, notes };
}

const named = (name: string) => serializeDesign({ ...EMPTY_DESIGN, name });
const open = () => createSession(undefined, (callback) => callback());

async function nameAfterReload(ports: PersistencePorts): Promise<string | undefined> {
  return (await restoreDesign(ports)).design?.name;
}

describe('the autosave', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('keeps a change within half a second, and the next visit has it', async () => {
    const { browser, ports } = createBrowser();
    const session = open();
    const autosave = startAutosave(session, ports, null);
    await vi.advanceTimersByTimeAsync(10);
    expect(browser.writes).toBe(0);
    session.actions.setDesignName('first');
    await vi.advanceTimersByTimeAsync(500);
    expect(await nameAfterReload(ports)).toBe('first');
    expect(autosave.state.getState().state).toBe('saving');
  });

  it('writes at most once in that time however often the design changes', async () => {
    const { browser, ports } = createBrowser();
    const session = open();
    startAutosave(session, ports, null);
    await vi.advanceTimersByTimeAsync(10);
    for (let i = 0; i < 100; i++) {
      session.actions.setDesignName(`n${i}`);
      await vi.advanceTimersByTimeAsync(10);
    }
    await vi.advanceTimersByTimeAsync(500);
    expect(browser.writes).toBeLessThanOrEqual(3);
    expect(await nameAfterReload(ports)).toBe('n99');
  });

  it('does not write before it has changed anything, so a fresh start wipes nothing', async () => {
    const { browser, ports } = createBrowser();
    browser.current = { text: named('old'), savedAt: 5 };
    startAutosave(open(), ports, null);
    await vi.advanceTimersByTimeAsync(2000);
    expect(browser.current.text).toBe(named('old'));
  });

  it('sets aside what it did not start from before it writes over it', async () => {
    const { browser, ports } = createBrowser();
    browser.current = { text: named('unread'), savedAt: 5 };
    const session = open();
    startAutosave(session, ports, null);
    session.actions.setDesignName('new');
    await vi.advanceTimersByTimeAsync(500);
    expect(browser.aside.map((saved) => saved.text)).toEqual([named('unread')]);
    session.actions.setDesignName('newer');
    await vi.advanceTimersByTimeAsync(500);
    expect(browser.aside).toHaveLength(1);
  });

  it('keeps the last change at once when the page is left', async () => {
    const { browser, ports } = createBrowser();
    const page = stubPage();
    const session = open();
    startAutosave(session, ports, null);
    await vi.advanceTimersByTimeAsync(10);
    session.actions.setDesignName('in the last moment');
    browser.broken = true;
    page.leave();
    browser.broken = false;
    expect(await nameAfterReload(ports)).toBe('in the last moment');
  });

  it('opens the newer of the two places', async () => {
    const { browser, ports } = createBrowser();
    browser.current = { text: named('older'), savedAt: 1 };
    browser.notes.set('rescue', JSON.stringify({ text: named('newer'), savedAt: 2 }));
    expect(await nameAfterReload(ports)).toBe('newer');
    browser.current = { text: named('newest'), savedAt: 3 };
    expect(await nameAfterReload(ports)).toBe('newest');
  });

  it('keeps a damaged save aside, says so, and falls back on the other one', async () => {
    const { browser, ports } = createBrowser();
    browser.current = { text: named('cut off').slice(0, 60), savedAt: 2 };
    browser.notes.set('rescue', JSON.stringify({ text: named('sound'), savedAt: 1 }));
    const restored = await restoreDesign(ports);
    expect(restored.design?.name).toBe('sound');
    expect(restored.notice?.tone).toBe('warning');
    expect(browser.aside[0].text).toBe(named('cut off').slice(0, 60));
  });

  it('survives notes that hold anything', async () => {
    const { browser, ports } = createBrowser();
    for (const text of [
      '',
      '{',
      '[]',
      'null',
      '{"text":3,"savedAt":1}',
      '{"text":"","savedAt":1}',
    ]) {
      browser.notes.set('rescue', text);
      expect((await restoreDesign(ports)).design).toBeNull();
    }
  });

  it('says when a database that held work has come back empty', async () => {
    const { browser, ports } = createBrowser();
    const session = open();
    startAutosave(session, ports, null);
    session.actions.setDesignName('kept');
    await vi.advanceTimersByTimeAsync(500);
    browser.current = null;
    expect((await restoreDesign(ports)).notice?.text).toContain('file');
    expect((await restoreDesign(ports)).notice).toBeNull();
  });

  it('keeps the work in local notes when the database fails, and says nothing', async () => {
    const { browser, ports } = createBrowser();
    browser.broken = true;
    const session = open();
    startAutosave(session, ports, null);
    session.actions.setDesignName('no database');
    await vi.advanceTimersByTimeAsync(500);
    expect(session.store.getState().notice).toBeNull();
    expect(await nameAfterReload(ports)).toBe('no database');
  });

  it('says once when the work can be kept nowhere', async () => {
    const { browser, ports } = createBrowser();
    browser.broken = true;
    browser.notesFull = true;
    const session = open();
    const autosave = startAutosave(session, ports, null);
    session.actions.setDesignName('one');
    await vi.advanceTimersByTimeAsync(500);
    expect(session.store.getState().notice?.tone).toBe('warning');
    session.actions.notify(null);
    session.actions.setDesignName('two');
    await vi.advanceTimersByTimeAsync(500);
    expect(session.store.getState().notice).toBeNull();
    expect(autosave.state.getState().state).toBe('failed');
    browser.broken = false;
    session.actions.setDesignName('three');
    await vi.advanceTimersByTimeAsync(500);
    expect(autosave.state.getState().state).toBe('saving');
    expect(await nameAfterReload(ports)).toBe('three');
  });

  it('lets one tab write; the other says that it does not, and takes over when the first closes', async () => {
    const { browser, ports } = createBrowser();
    const page = stubPage();
    const first = open();
    const second = open();
    startAutosave(first, ports, null);
    const other = startAutosave(second, ports, null);
    await vi.advanceTimersByTimeAsync(10);
    first.actions.setDesignName('first tab');
    second.actions.setDesignName('second tab');
    await vi.advanceTimersByTimeAsync(500);
    page.leave();
    await vi.advanceTimersByTimeAsync(500);
    expect(parseDesign(browser.current?.text ?? '')).toMatchObject({
      value: { name: 'first tab' },
    });
    expect(await nameAfterReload(ports)).toBe('first tab');
    expect(other.state.getState().state).toBe('otherTab');
    expect(second.store.getState().notice?.tone).toBe('warning');

    // The first tab closes: the second is let in, and its work is kept; the first one's is set aside, not lost.
    browser.waiting.shift()?.();
    await vi.advanceTimersByTimeAsync(500);
    expect(other.state.getState().state).toBe('saving');
    expect(await nameAfterReload(ports)).toBe('second tab');
    expect(browser.aside.map((saved) => parseDesign(saved.text))).toMatchObject([
      { value: { name: 'first tab' } },
    ]);
  });
});

describe('the settings', () => {
  it('come back as they were left', () => {
    const { notes } = createBrowser();
    const session = open();
    keepSettings(session.store, notes);
    session.actions.setSettings({ units: INCH_UNITS, theme: 'dark', chartShares: false });
    expect(readSettings(notes)).toEqual(session.store.getState().settings);
  });

  it('fall back one by one where a note is not understood', () => {
    const { notes } = createBrowser();
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

/** A document and window that can be left. */
function stubPage() {
  const target = new EventTarget();
  vi.stubGlobal('document', Object.assign(target, { hidden: false }));
  const frame = new EventTarget();
  vi.stubGlobal('window', frame);
  return { leave: () => frame.dispatchEvent(new Event('pagehide')) };
}

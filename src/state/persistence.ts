import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../design/design';
import { describeFault } from '../design/faultText';
import { parseDesign, serializeDesign } from '../design/file';
import { t } from '../messages';
import { type DesignDatabase, isSaved, type SavedDesign } from './designDatabase';
import type { LocalNotes } from './localNotes';
import type { Session } from './session';
import type { Notice } from './store';

/**
 * Nothing that was done is lost by closing the page. The design's text goes to the browser's database at most half a
 * second after a change, and when the page is hidden or left also into local notes, which are written at once: a
 * database write begun then may never finish. The newer of the two is what the next visit opens.
 *
 * One tab writes, the one that holds the lock; another says that it does not.
 */
export interface PersistencePorts {
  readonly database: () => Promise<DesignDatabase>;
  readonly notes: LocalNotes;
  /** Settles with true once this tab alone may write, with false when another tab keeps that right. */
  readonly lock: (report: (granted: boolean) => void) => void;
  readonly now: () => number;
}

export interface Restored {
  readonly design: Design | null;
  /** The text it was read from; null where nothing was restored. */
  readonly text: string | null;
  readonly notice: Notice | null;
}

/** Whether the work of this tab is being kept. */
export type AutosaveState = 'starting' | 'saving' | 'otherTab' | 'failed';

export interface Autosave {
  readonly state: StoreApi<{ readonly state: AutosaveState }>;
  /** Keeps the design as it is now; resolves when the database has it. */
  flush(): Promise<void>;
  stop(): void;
}

const RESCUE = 'rescue';
/** Says that work was kept here, should the database come back empty. */
const CANARY = 'kept';
const SAVE_WITHIN = 400;

/** The work of the last visit. Never throws; what cannot be read is kept aside and said. */
export async function restoreDesign(ports: PersistencePorts): Promise<Restored> {
  const database = await ports.database().catch(() => null);
  const kept = (await database?.read().catch(() => null)) ?? null;
  const rescued = rescueNote(ports.notes);
  const candidates = [kept, rescued].filter((saved) => saved !== null);
  candidates.sort((a, b) => b.savedAt - a.savedAt);
  let notice: Notice | null = null;
  for (const saved of candidates) {
    const read = parseDesign(saved.text);
    if (read.ok) return { design: read.value, text: saved.text, notice };
    await database?.setAside(saved).catch(() => undefined);
    if (saved === rescued) ports.notes.remove(RESCUE);
    notice = {
      tone: 'warning',
      text: t('app.autosaveDamaged', { reason: describeFault(read.error) }),
    };
  }
  if (candidates.length === 0 && ports.notes.read(CANARY) !== null) {
    notice = { tone: 'warning', text: t('app.autosaveGone') };
    ports.notes.remove(CANARY);
  }
  return { design: null, text: null, notice };
}

/** Keeps the session's design from now on. Call after `restoreDesign`, with the text it read. */
export function startAutosave(
  session: Session,
  ports: PersistencePorts,
  restoredText: string | null,
): Autosave {
  const { store, actions } = session;
  const state = createStore(() => ({ state: 'starting' as AutosaveState }));
  let database: DesignDatabase | null = null;
  let mayWrite = false;
  let lastKept: Design | null = store.getState().design;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();
  let firstWrite = true;
  let complained = false;

  function complain(now: AutosaveState, text: string): void {
    state.setState({ state: now });
    if (complained) return;
    complained = true;
    actions.notify({ tone: 'warning', text });
  }

  function current(): SavedDesign {
    return { text: serializeDesign(store.getState().design), savedAt: ports.now() };
  }

  /** What lies in the database and is not what this tab started from is somebody's work too. */
  async function keepStranger(target: DesignDatabase): Promise<void> {
    const found = await target.read();
    if (found && found.text !== restoredText) await target.setAside(found);
    firstWrite = false;
  }

  async function write(): Promise<void> {
    const { design } = store.getState();
    if (!mayWrite || design === lastKept) return;
    const saved = current();
    try {
      database ??= await ports.database();
      if (firstWrite) await keepStranger(database);
      await database.write(saved);
      lastKept = design;
      ports.notes.write(CANARY, String(saved.savedAt));
      const note = rescueNote(ports.notes);
      if (note && note.savedAt <= saved.savedAt) ports.notes.remove(RESCUE);
      state.setState({ state: 'saving' });
    } catch {
      database = null;
      if (ports.notes.write(RESCUE, JSON.stringify(saved))) lastKept = design;
      else complain('failed', t('app.autosaveFailed'));
    }
  }

  function flush(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    writing = writing.then(write);
    return writing;
  }

  /** The page may be gone before the next task: only what is written at once counts. */
  function rescue(): void {
    if (!mayWrite || store.getState().design === lastKept) return;
    ports.notes.write(RESCUE, JSON.stringify(current()));
    void flush();
  }
  /** Work that this tab cannot keep is not left without a question. */
  function ask(event: BeforeUnloadEvent): void {
    const stuck = ['otherTab', 'failed'].includes(state.getState().state);
    if (stuck && store.getState().design !== lastKept) event.preventDefault();
  }
  function onVisibility(): void {
    if (document.hidden) rescue();
  }

  const unsubscribe = store.subscribe((now, before) => {
    if (now.design !== before.design) timer ??= setTimeout(flush, SAVE_WITHIN);
  });
  if (typeof document !== 'undefined') {
    document.addEventListener('visibilitychange', onVisibility);
    window.addEventListener('pagehide', rescue);
    window.addEventListener('beforeunload', ask);
  }
  ports.lock((granted) => {
    mayWrite = granted;
    if (!granted) return complain('otherTab', t('app.otherTab'));
    state.setState({ state: 'saving' });
    // What was said of another tab is no longer so.
    if (store.getState().notice?.text === t('app.otherTab')) actions.notify(null);
    void flush();
  });

  return {
    state,
    flush,
    stop() {
      clearTimeout(timer);
      unsubscribe();
      if (typeof document === 'undefined') return;
      document.removeEventListener('visibilitychange', onVisibility);
      window.removeEventListener('pagehide', rescue);
      window.removeEventListener('beforeunload', ask);
    },
  };
}

function rescueNote(notes: LocalNotes): SavedDesign | null {
  const text = notes.read(RESCUE);
  if (text === null) return null;
  try {
    const value: unknown = JSON.parse(text);
    if (isSaved(value)) return value;
  } catch {
    // Cut off in the middle: there is nothing in it to rescue.
  }
  notes.remove(RESCUE);
  return null;
}

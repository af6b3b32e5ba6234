import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { parseDesign, serializeDesign } from '../../design/file';
import { browserLater, inTime } from '../inTime';
import type { Session } from '../session';
import { withinUndo } from '../withinUndo';
import { type Keeper, startKeeper } from './keeper';
import type { Begun } from './keeping';
import { hasLegacy } from './legacyPlaces';
import { browserLocks } from './locks';
import type { KeepPorts, Message, Work, WorkState } from './ports';
import { openRecordStore } from './recordStore';
import { rescueNotes } from './rescue';
import { PATIENCE, type Reader, type Restored, restoreWork } from './restore';
import { slip } from './slip';
import { SilentError } from './trouble';

/** The keeper's ports in a real browser. */
export function browserPorts(newId: () => string, tell: (message: Message) => void): KeepPorts {
  return {
    store: openRecordStore,
    locks: browserLocks(),
    notes: rescueNotes(() => localStorage),
    canary: slip(() => localStorage, 'stillgrip.kept'),
    lastOpen: slip(() => sessionStorage, 'stillgrip.open'),
    now: Date.now,
    newId,
    later: browserLater,
    hidden: () => document.hidden,
    askToStay: () => void navigator.storage?.persist?.().catch(() => false),
    tell,
  };
}

/** What the last visit left, with what an earlier build kept. */
export async function restoreDesign(ports: KeepPorts): Promise<Restored<Design>> {
  // What is not brought over in time is at the next visit.
  await inTime(bringOverOld(ports), PATIENCE, () => new SilentError(), ports.later).catch(
    () => undefined,
  );
  return restoreWork(ports, readDesign);
}

async function bringOverOld(ports: KeepPorts): Promise<void> {
  if (!(await hasLegacy())) return;
  const { bringOver } = await import('./legacy');
  const store = await ports.store();
  await bringOver(store);
  store.close();
}

const readDesign: Reader<Design> = (text) => {
  const read = parseDesign(text);
  if (read.ok) return { ok: true, design: read.value };
  const newer = read.error.reason.code === 'newerVersion';
  return { ok: false, newer, reason: describeFault(read.error) };
};

/** Keeps a session's design from now on, and what is behind when the page is hidden or left. */
export function keepSession(
  session: Session,
  open: (design: Design) => void,
  ports: KeepPorts,
  begun: Begun,
): Keeper {
  const keeper = startKeeper(workOf(session, open), ports, begun);
  const rescue = () => keeper.rescue();
  const onVisibility = () => {
    if (document.hidden) rescue();
  };
  // Work that is kept nowhere is not left without a question.
  const ask = (event: BeforeUnloadEvent) => {
    if (keeper.atRisk()) event.preventDefault();
  };
  document.addEventListener('visibilitychange', onVisibility);
  window.addEventListener('pagehide', rescue);
  window.addEventListener('beforeunload', ask);
  return {
    ...keeper,
    stop() {
      keeper.stop();
      document.removeEventListener('visibilitychange', onVisibility);
      window.removeEventListener('pagehide', rescue);
      window.removeEventListener('beforeunload', ask);
    },
  };
}

/**
 * A session's design as the keeper sees it. `open` puts a sound design on its stage, with the file that it has, if any.
 */
export function workOf(session: Session, open: (design: Design) => void): Work {
  const { store } = session;
  return {
    state: () => store.getState(),
    subscribe: (listener) =>
      store.subscribe((now, before) => {
        if (now.design !== before.design || now.opening !== before.opening) listener(now, before);
      }),
    textOf: (state: WorkState) => serializeDesign(state.design as Design),
    openings: () => new Set(withinUndo(store).map(({ opening }) => opening)),
    open(text) {
      const read = parseDesign(text);
      if (read.ok) open(read.value);
      return read.ok;
    },
  };
}

import { type FileWithHandle, fileOpen } from 'browser-fs-access';
import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { parseDesign, serializeDesign } from '../../design/file';
import { t } from '../../messages';
import { openAndSelect } from '../../state/firstSelection';
import type { Session } from '../../state/session';
import { EMPTY_DESIGN } from '../../state/store';
import { withinUndo } from '../../state/withinUndo';
import { isCancelled, reasonOf, utf8Text } from '../../ui/fileErrors';
import { fileSave, savedText } from '../../ui/fileSave';
import { fileStem } from '../../ui/fileStem';
import { CARRIERS, carriedIn, isCarrierName, isPackageName } from './carriers';
import type { ReadingsDoor } from './readingsDoor';
import { takeTables } from './takeTables';

/** Opening and saving design files. A file that is not sound leaves the open design as it is. */
export interface FileDesk {
  open(): Promise<void>;
  openFile(file: FileWithHandle): Promise<void>;
  openSample(name: string, text: string): void;
  /** Opens a sound design that has no file of its own, and says so. */
  openDesign(design: Design, notice: string): void;
  /** Says that designs beside the one that is opened were left alone. */
  sayOneOnly(left: number): void;
  /** True where the file was written. */
  save(): Promise<boolean>;
  saveAs(): Promise<boolean>;
  startNew(): void;
}

/** Larger files are not even read. */
const MAX_BYTES = 64 * 1024 * 1024;
const FILES = {
  description: 'Stillgrip design',
  extensions: ['.json'],
  mimeTypes: ['application/json'],
  id: 'stillgrip-design',
};

/** Takes a file of another kind; true where it is one. */
type TakesOthers = (text: string, file: string) => boolean;

/** Files that carry a design, tables of readings and of blade sections are opened like designs; they are no design's home. */
const OPENED = {
  ...FILES,
  description: 'Stillgrip design, file that carries one, or table',
  extensions: [...FILES.extensions, ...CARRIERS, '.csv', '.tsv', '.txt', '.dat', '.log'],
  mimeTypes: [
    ...FILES.mimeTypes,
    'image/svg+xml',
    'image/png',
    'model/3mf',
    'text/csv',
    'text/tab-separated-values',
    'text/plain',
  ],
};

export function createFileDesk(
  session: Session,
  takesOthers: TakesOthers = () => false,
  readings: ReadingsDoor | null = null,
): FileDesk {
  const { store, actions } = session;
  const homes = rememberHomes(session);
  let writings: Promise<boolean> | null = null;

  function warn(text: string): void {
    actions.notify({ tone: 'warning', text });
  }

  async function openFile(file: FileWithHandle): Promise<void> {
    if (readings?.isName(file.name)) return takeTables(session, readings, [file]);
    if (file.size > MAX_BYTES) {
      const reason = t('app.fileTooLarge', { limit: MAX_BYTES / 1024 / 1024 });
      return warn(t('app.fileRefused', { file: file.name, reason }));
    }
    if (isCarrierName(file.name)) return openCarrier(file);
    const text = await utf8Text(file);
    if (text === null) {
      return warn(t('app.fileRefused', { file: file.name, reason: t('app.notUtf8') }));
    }
    if (takesOthers(text, file.name)) return;
    const read = parseDesign(text);
    if (!read.ok) {
      return warn(t('app.fileRefused', { file: file.name, reason: describeFault(read.error) }));
    }
    homes.move(file.handle ?? null, () => openAndSelect(session, read.value));
    actions.notify({ tone: 'plain', text: t('app.opened', { name: file.name }) });
  }

  /** What carries a design is a copy of it: saving asks for a place and never writes over a picture. */
  async function openCarrier(file: File): Promise<void> {
    const carried = await carriedIn(file);
    if (!carried.ok) {
      return warn(t('app.fileRefused', { file: file.name, reason: carried.error }));
    }
    const names = { name: carried.value.name, file: file.name };
    openDesign(
      carried.value,
      t(isPackageName(file.name) ? 'app.openedBodies' : 'app.openedCarried', names),
    );
  }

  /** A design that comes with the page: it has no file of its own. */
  function openSample(name: string, text: string): void {
    const read = parseDesign(text);
    if (read.ok) homes.move(null, () => openAndSelect(session, read.value));
    else warn(t('app.fileRefused', { file: name, reason: describeFault(read.error) }));
  }

  function openDesign(design: Design, notice: string): void {
    homes.move(null, () => openAndSelect(session, design));
    actions.notify({ tone: 'plain', text: notice });
  }

  /** One after another: of two writings at the same time the older might end last. What waits on one that was not done is not. */
  function inTurn(writing: () => Promise<boolean>): Promise<boolean> {
    const before = writings;
    const mine = before ? before.then((done) => done && writing()) : writing();
    writings = mine;
    return mine.finally(() => {
      if (writings === mine) writings = null;
    });
  }

  async function write(handle: FileSystemFileHandle | null): Promise<boolean> {
    session.live.flush();
    const { design } = store.getState();
    const fileName = `${fileStem(design.name, 'design')}.json`;
    const text = new Blob([serializeDesign(design)], { type: 'application/json' });
    try {
      const saved = await fileSave(text, { ...FILES, fileName }, handle);
      homes.keep(saved);
      actions.notify({ tone: 'plain', text: savedText(saved, fileName) });
      return true;
    } catch (error) {
      if (!isCancelled(error)) warn(t('app.saveFailed', { reason: reasonOf(error) }));
      return false;
    }
  }

  return {
    async open() {
      try {
        await openFile(await fileOpen(readings ? OPENED : FILES));
      } catch (error) {
        if (!isCancelled(error)) warn(t('app.openFailed', { reason: reasonOf(error) }));
      }
    },
    openFile: (file) =>
      openFile(file).catch((error) => warn(t('app.openFailed', { reason: reasonOf(error) }))),
    openSample,
    openDesign,
    sayOneOnly: (left) => warn(t('app.oneOnly', { count: left })),
    save: () => inTurn(() => write(homes.current())),
    saveAs: () => inTurn(() => write(null)),
    startNew() {
      openDesign({ ...EMPTY_DESIGN }, t('app.started'));
    },
  };
}

/** From one design and its file to another and its own. */
interface Move {
  readonly before: Design;
  readonly after: Design;
  readonly from: FileSystemFileHandle | null;
  readonly to: FileSystemFileHandle | null;
}

/**
 * Which file "save" writes to. Undoing the opening of a file brings back the design before it, and with it that
 * design's own file: one design is never saved over another's file.
 */
function rememberHomes({ store }: Session) {
  let home: FileSystemFileHandle | null = null;
  let moves: readonly Move[] = [];
  store.subscribe((state, old) => {
    if (state.design === old.design) return;
    const back = moves.find((move) => move.after === old.design && move.before === state.design);
    const forth = moves.find((move) => move.before === old.design && move.after === state.design);
    if (back) home = back.from;
    else if (forth) home = forth.to;
  });
  return {
    current: () => home,
    keep(handle: FileSystemFileHandle | null) {
      if (handle) home = handle;
    },
    move(to: FileSystemFileHandle | null, open: () => void) {
      const before = store.getState().design;
      const from = home;
      open();
      home = to;
      moves = [...moves, { before, after: store.getState().design, from, to }];
      // A move holds two whole designs: those that undo and redo cannot make are let go.
      const near = new Set(withinUndo(store).map(({ design }) => design));
      moves = moves.filter((move) => near.has(move.before) && near.has(move.after));
    },
  };
}

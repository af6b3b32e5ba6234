import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createSession } from '../../../src/state/createSession';
import { EMPTY_DESIGN, HISTORY_LIMIT } from '../../../src/state/store';
import { collected } from '../../support/collected';

// One design is never saved over another's file, however much was opened in between: what is undone has its own file again.

async function withFile() {
  const saved: string[] = [];
  const handle = {
    kind: 'file',
    name: 'own.json',
    getFile: async () => new File([''], 'own.json'),
    createWritable: async () =>
      new WritableStream<Uint8Array>({
        write: (piece) => void saved.push(new TextDecoder().decode(piece)),
      }),
  } as unknown as FileSystemFileHandle;
  const pick = vi.fn(async () => handle);
  vi.stubGlobal('self', globalThis);
  vi.stubGlobal('window', globalThis);
  vi.stubGlobal('showOpenFilePicker', pick);
  vi.stubGlobal('showSaveFilePicker', pick);
  vi.resetModules();
  const { createFileDesk } = await import('../../../src/panels/files/fileDesk');
  const session = createSession(undefined, () => {});
  return { session, desk: createFileDesk(session), pick, saved };
}

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

describe('the file of a design', () => {
  it('is its own again after any number of openings that were undone', async () => {
    const { session, desk, pick, saved } = await withFile();
    expect(await desk.save()).toBe(true);
    desk.openDesign({ ...EMPTY_DESIGN, name: 'other' }, '');
    for (let i = 0; i <= HISTORY_LIMIT; i++) {
      desk.openDesign({ ...EMPTY_DESIGN, name: `undone ${i}` }, '');
      session.actions.undo();
    }
    session.actions.undo();
    session.actions.setDesignName('own');
    expect(await desk.save()).toBe(true);
    // The place was asked for once, at the first saving.
    expect(pick).toHaveBeenCalledTimes(1);
    expect(JSON.parse(saved.at(-1) ?? '').name).toBe('own');
  });

  it('is remembered as far as undo goes: designs beyond it are held by nobody', async () => {
    const { session, desk } = await withFile();
    const opened: WeakRef<object>[] = [];
    for (let i = 0; i < HISTORY_LIMIT + 50; i++) {
      desk.openDesign({ ...EMPTY_DESIGN, name: `design ${i}` }, '');
      opened.push(new WeakRef(session.store.getState().design));
    }
    expect(await collected(opened.slice(0, 48))).toBe(48);
    expect(await collected(opened.slice(50))).toBe(0);
  });
});

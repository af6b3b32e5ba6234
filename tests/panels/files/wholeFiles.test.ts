import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FileDesk } from '../../../src/panels/files/fileDesk';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

// Files are written whole or not at all. The model of a file is that of the standard (WHATWG File System, "create a writable":
// writes go to a buffer that takes the file's place when the stream is closed; a stream that is aborted leaves the file;
// closing may be refused with an AbortError by the browser's own check of the file).

/** A file, and how it fails: at the Nth call, 1 being the opening of the stream. */
function createFile(content: string, failAt: number, error = 'UnknownError') {
  const file = { content, calls: 0, closed: 0, slow: 0 };
  function step(): void {
    if (++file.calls === failAt) throw new DOMException('injected', error);
  }
  const handle = {
    kind: 'file',
    name: 'head.json',
    getFile: async () => new File([file.content], 'head.json'),
    async createWritable() {
      step();
      let buffer = '';
      return new WritableStream<Uint8Array>({
        write(piece) {
          step();
          buffer += new TextDecoder().decode(piece);
        },
        async close() {
          await new Promise((done) => setTimeout(done, file.slow));
          step();
          file.closed++;
          file.content = buffer;
        },
      });
    },
  };
  return { file, handle: handle as unknown as FileSystemFileHandle };
}

/** The library looks once, when it is loaded, whether the browser writes files. */
async function deskWith(pick: () => Promise<FileSystemFileHandle>) {
  vi.stubGlobal('self', globalThis);
  vi.stubGlobal('window', globalThis);
  vi.stubGlobal('showOpenFilePicker', pick);
  vi.stubGlobal('showSaveFilePicker', pick);
  vi.resetModules();
  const { createFileDesk } = await import('../../../src/panels/files/fileDesk');
  const session = createSession(undefined, () => {});
  return { session, desk: createFileDesk(session) };
}

const said = (session: Session) => session.store.getState().notice;

async function saves(desk: FileDesk, session: Session, name: string): Promise<boolean> {
  session.actions.setDesignName(name);
  return desk.save();
}

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

describe('a file that is saved', () => {
  it('is whole, or as it was, at whatever step the writing fails, and a failure is said', async () => {
    // Opening, one piece or more, closing.
    let failures = 0;
    for (let failAt = 1; failAt < 20; failAt++) {
      const { file, handle } = createFile('before', failAt);
      const { session, desk } = await deskWith(async () => handle);
      const done = await saves(desk, session, 'After');
      if (done) {
        expect(JSON.parse(file.content).name).toBe('After');
        return expect(failures).toBeGreaterThanOrEqual(3);
      }
      failures++;
      expect(file.content).toBe('before');
      expect(said(session)?.tone).toBe('warning');
    }
    expect.fail('it never succeeded');
  });

  it('is said not to be where the browser breaks the writing off, though that bears the name of a closed window', async () => {
    const { file, handle } = createFile('before', 3, 'AbortError');
    const { session, desk } = await deskWith(async () => handle);
    expect(await saves(desk, session, 'After')).toBe(false);
    expect(said(session)?.text).toContain('broke off');
    expect(file.content).toBe('before');
    // The same over the file that was chosen before.
    expect(await saves(desk, session, 'Again')).toBe(true);
    file.calls = 0;
    expect(await saves(desk, session, 'Third')).toBe(false);
    expect(said(session)?.text).toContain('broke off');
    expect(JSON.parse(file.content).name).toBe('Again');
  });

  it('and a window that was closed is no failure', async () => {
    const { session, desk } = await deskWith(() =>
      Promise.reject(new DOMException('closed', 'AbortError')),
    );
    session.actions.notify(null);
    expect(await saves(desk, session, 'x')).toBe(false);
    expect(said(session)).toBeNull();
  });

  it('twice in a moment has the newer text in the end, however slow the first was', async () => {
    const { file, handle } = createFile('before', 0);
    const { session, desk } = await deskWith(async () => handle);
    await saves(desk, session, 'Home');
    file.slow = 40;
    const first = saves(desk, session, 'Older');
    await new Promise((done) => setTimeout(done, 5));
    file.slow = 0;
    const second = saves(desk, session, 'Newer');
    expect(await Promise.all([first, second])).toEqual([true, true]);
    expect(JSON.parse(file.content).name).toBe('Newer');
    expect(file.closed).toBe(3);
  });
});

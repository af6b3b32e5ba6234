import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { offerFiles } from '../../src/bench/arrivals';
import { benchDeskOf } from '../../src/bench/deskOf';
import { MAX_NAME } from '../../src/design/limits';
import { importMesh } from '../../src/meshes/importMesh';
import { takePartsFile } from '../../src/panels/balance/gripEdits';
import { createFileDesk } from '../../src/panels/files/fileDesk';
import { createSession } from '../../src/state/createSession';
import type { Session } from '../../src/state/session';
import { EMPTY_DESIGN } from '../../src/state/store';

const kernel = vi.hoisted(() => ({ fetched: 0 }));
vi.mock('../../src/meshes/readers/step', () => {
  kernel.fetched++;
  return { readStep: () => ({ ok: false, error: { kind: 'readerFailed', detail: 'no kernel' } }) };
});

const MEGA = 1024 * 1024;

function newSession(): Session {
  return createSession(EMPTY_DESIGN, () => {});
}

/** A file that says it is of a size, and whose reading is counted: no such file is made. */
function fileOf(size: number, name: string) {
  const file = new File(['{}'], name);
  let reads = 0;
  const bytes = file.arrayBuffer.bind(file);
  Object.defineProperty(file, 'size', { value: size });
  file.arrayBuffer = () => {
    reads++;
    return bytes();
  };
  return { file, reads: () => reads };
}

const told = (session: Session) => session.store.getState().notice?.text ?? '';

describe('a file that is too large', () => {
  it('is not even read as readings beyond 128 MB, and that is said with its name', async () => {
    const session = newSession();
    const { file, reads } = fileOf(128 * MEGA + 1, 'pulls.csv');
    await offerFiles(session, [file]);
    expect(reads()).toBe(0);
    expect(told(session)).toMatch(/pulls\.csv.*128/);
    expect(benchDeskOf(session).store.getState()).toMatchObject({ offered: null, waiting: [] });
  });

  it('is not even read as another grip beyond 64 MB, nor as a design', async () => {
    const session = newSession();
    const grip = fileOf(64 * MEGA + 1, 'b.json');
    expect(await takePartsFile(session, 1, grip.file)).toContain('64');
    const design = fileOf(64 * MEGA + 1, 'c.json');
    await createFileDesk(session).openFile(design.file);
    expect(told(session)).toMatch(/c\.json.*64/);
    expect([grip.reads(), design.reads()]).toEqual([0, 0]);
    expect(session.store.getState().design).toBe(EMPTY_DESIGN);
    // At the limit it is read, and refused for what is in it.
    const most = fileOf(64 * MEGA, 'd.json');
    expect(await takePartsFile(session, 1, most.file)).not.toContain('64');
    expect(most.reads()).toBe(1);
  });
});

describe('a file with a name of 255 letters', () => {
  const long = 'n'.repeat(251);

  it('gives its readings and its body a name that a design can keep', async () => {
    const session = newSession();
    const offer = vi.spyOn(benchDeskOf(session), 'offer').mockImplementation(() => {});
    await offerFiles(session, [new File(['pitch (deg),force (N)\n0,1\n'], `${long}.csv`)]);
    expect(offer.mock.calls).toMatchObject([[{ name: 'n'.repeat(MAX_NAME) }]]);
    const body = await importMesh(`${long}.obj`, new TextEncoder().encode(TETRAHEDRON), () => {});
    expect(body.ok && body.value.name).toBe('n'.repeat(MAX_NAME));
  });
});

const TETRAHEDRON = 'v 0 0 0\nv 1 0 0\nv 0 1 0\nv 0 0 1\nf 1 3 2\nf 1 2 4\nf 1 4 3\nf 2 3 4\n';

describe('a STEP file', () => {
  it('cut short is refused before the CAD kernel is fetched; a whole one fetches it', async () => {
    const bytes = new Uint8Array(readFileSync(new URL('../meshes/block.step', import.meta.url)));
    for (const share of [0.1, 0.5, 0.9, 0.99]) {
      const cut = bytes.slice(0, Math.floor(share * bytes.length));
      const read = await importMesh('a.step', cut, () => {});
      expect(read).toMatchObject({ ok: false, error: { kind: 'malformed' } });
      expect(kernel.fetched, `cut at ${share}`).toBe(0);
    }
    await importMesh('a.step', bytes, () => {});
    expect(kernel.fetched).toBe(1);
  });
});

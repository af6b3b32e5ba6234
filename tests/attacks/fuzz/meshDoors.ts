import { DESIGN_FORMAT, DESIGN_VERSION, type Design } from '../../../src/design/design';
import { designFrom } from '../../../src/design/file';
import { bodyPart } from '../../../src/meshes/bodyPart';
import { importMesh } from '../../../src/meshes/importMesh';
import { detectFormat } from '../../../src/meshes/readers/detect';
import { stepHeadFault } from '../../../src/meshes/readers/stepHead';
import type { MeshImport } from '../../../src/meshes/types';
import { meshFaultText, reportLines } from '../../../src/panels/import/meshReportText';
import { type Door, designFlaw, hasNonNumber, type Opened, refused, taken } from './door';

async function importedMesh(name: string, bytes: Uint8Array): Promise<Opened> {
  // Another good file whole, spliced in: what the CAD kernel makes of it is tests/meshes' affair.
  if (detectFormat(bytes, '') === 'step' && !stepHeadFault(bytes)) return refused('a STEP file');
  const read = await importMesh(name, bytes, () => {});
  if (!read.ok) {
    const words = meshFaultText(read.error);
    // A reader of our own never gives up: it knows what is wrong.
    return read.error.kind === 'readerFailed' ? taken(`gave up: ${words}`) : refused(words);
  }
  if (reportLines(read.value.report).some(({ text }) => text === '')) return taken('no words');
  const { volumeMoments } = read.value;
  if (!volumeMoments) return refused('it does not close');
  return taken(hasNonNumber(volumeMoments) ? 'a moment is no number' : bodyFlaw(read.value));
}

/** A body that is good for a part makes one, of a size that parts may have. */
function bodyFlaw(read: MeshImport): string | null {
  const part = { id: 'a', name: 'a', ...bodyPart(read, { unit: 'mm', role: 'part' }) };
  const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
  const made = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: 'a',
    rotor: { speedRpm: 1000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
    parts: [{ ...part, densityKgM3: 1000, pose }],
  });
  if (made.ok) return designFlaw(made.value as Design);
  return `a body that weighs is no part: ${JSON.stringify(made.error)}`;
}

function meshDoor(name: string, file: string, form: Door['form'], good: Door['good']): Door {
  const entries = ['src/panels/import/meshDesk.ts', 'src/meshes/worker.ts'];
  return { name, entries, form, good, open: (bytes) => importedMesh(file, bytes) };
}

/** Doors behind which a body is read. */
export const MESH_DOORS: readonly Door[] = [
  meshDoor('STL, text', 'a.stl', 'text', ['STL text']),
  meshDoor('STL, binary', 'a.stl', 'bytes', ['STL binary', 'STL of our own']),
  meshDoor('OBJ', 'a.obj', 'text', ['OBJ']),
  {
    ...meshDoor('3MF', 'a.3mf', 'zip', ['3MF', '3MF of our own']),
    entries: ['src/panels/import/meshDesk.ts', 'src/meshes/readers/zip.ts'],
  },
  {
    ...meshDoor('GLB', 'a.glb', 'glb', ['GLB', 'GLB of our own']),
    entries: ['src/panels/import/meshDesk.ts', 'src/meshes/readers/glbContainer.ts'],
  },
  {
    name: 'STEP, before the kernel',
    entries: ['src/meshes/readers/step.ts'],
    form: 'text',
    good: ['STEP block', 'STEP pin'],
    open(bytes) {
      const fault = stepHeadFault(bytes);
      return fault ? refused(meshFaultText(fault)) : taken();
    },
  },
];

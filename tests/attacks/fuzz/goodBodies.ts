import { readFileSync } from 'node:fs';
import { unzipSync, zipSync } from 'fflate';
import { DESIGN_FORMAT, DESIGN_VERSION, type Design } from '../../../src/design/design';
import { designFrom } from '../../../src/design/file';
import { bodyPart } from '../../../src/meshes/bodyPart';
import { writeStl } from '../../../src/meshes/writeStl';
import { glbFile } from '../../../src/output/solids/glbFile';
import { threeMfFile } from '../../../src/output/solids/threeMfFile';
import { glb, importOf, objText, stlText, TONON, threeMf } from '../../meshes/files';
import { bodyOf } from '../../output/solids/heads';
import { boxMesh } from '../../support/meshes';
import { asset } from './asset';

/** Meshes and STEP files, of other writers and of our own. */
export async function meshes(): Promise<Record<string, Uint8Array>> {
  const block = bodyOf('block', { sizeMm: [20, 10, 5] });
  const options = { title: 'Head', description: 'Test', unit: 'mm', segmentsPerTurn: 12 } as const;
  const design = asset('designs/1-bare-grip.json');
  const ours = threeMfFile([block, block], { ...options, date: '2026-01-31', design });
  return {
    'STL text': stlText(TONON),
    'STL binary': writeStl([TONON], 1, 'tetrahedron'),
    'STL of our own': writeStl([boxMesh(20, 10, 5)], 1, 'box'),
    OBJ: objText(TONON),
    '3MF': undated(threeMf(TONON)),
    '3MF of our own': undated(ours),
    GLB: await glb(TONON),
    'GLB of our own': glbFile([block], 'Head', 12),
    'STEP block': readFileSync(new URL('../../meshes/block.step', import.meta.url)),
    'STEP pin': readFileSync(new URL('../../meshes/pin.step', import.meta.url)),
  };
}

/** A package without the hour of its making. */
export function undated(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { mtime: '2026-01-31T12:00:00', level: 6 });
}

/** A design with a body from a file in it. */
export async function meshDesign(): Promise<Design> {
  const body = bodyPart(await importOf('box.stl', writeStl([boxMesh(20, 10, 5)], 1, 'box')), {
    unit: 'mm',
    role: 'part',
  });
  const pose = { positionMm: [30, 0, 0], rotationDeg: [0, 0, 0] };
  const made = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: 'Mesh',
    rotor: { speedRpm: 9000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
    parts: [{ id: 'box', name: 'Box', ...body, densityKgM3: 1140, pose }],
  });
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

import { meshVolumeMoments } from '../engine/mass/mesh';
import { createMoments, M } from '../engine/mass/moments';
import { fail, type Result, succeed } from '../engine/result';
import { meshData } from '../parts/meshBody/body';
import { packPicture } from '../parts/meshBody/picture';
import { checkMesh } from './checkMesh';
import { detectFormat, extensionFits } from './readers/detect';
import { readGlb } from './readers/glb';
import { readObj } from './readers/obj';
import { faultOf, type MeshReader, malformed } from './readers/signal';
import { stepHeadFault } from './readers/stepHead';
import { readStlBinary } from './readers/stlBinary';
import { readStlText } from './readers/stlText';
import { read3mf } from './readers/threeMf';
import { pictureOf } from './reduce';
import type { Rest } from './rest';
import {
  MAX_FILE_BYTES,
  type MeshFileFault,
  type MeshFormat,
  type MeshImport,
  type MeshProgress,
  type RawMesh,
} from './types';

const READERS: Readonly<Record<Exclude<MeshFormat, 'step'>, MeshReader>> = {
  stlBinary: readStlBinary,
  stlText: readStlText,
  obj: readObj,
  '3mf': read3mf,
  glb: readGlb,
};

/**
 * A mesh file from its bytes to what a design needs: format by content, reading, checks, moments, picture. Ends in a
 * Result whatever the bytes are. Runs in the worker; nothing in it needs a page. `rest` is awaited between its steps: there a
 * worker can be ended.
 */
export async function importMesh(
  fileName: string,
  bytes: Uint8Array,
  progress: (progress: MeshProgress) => void,
  rest: Rest = async () => {},
): Promise<Result<MeshImport, MeshFileFault>> {
  try {
    if (bytes.length === 0) return fail({ kind: 'empty' });
    if (bytes.length > MAX_FILE_BYTES) {
      return fail({ kind: 'fileTooLarge', bytes: bytes.length, limit: MAX_FILE_BYTES });
    }
    const { name, extension } = splitName(fileName);
    const format = detectFormat(bytes, extension);
    if (!format) return fail({ kind: 'unknownFormat', extension });
    const read = await readAs(format, bytes, progress);
    if (!read.ok) return read;
    await rest();
    return succeed(await finish(read.value, { name, extension, format, progress, rest }));
  } catch (thrown) {
    return fail(faultOf(thrown));
  }
}

function splitName(fileName: string): { name: string; extension: string } {
  const file = fileName.replace(/^.*[/\\]/, '');
  const dot = file.lastIndexOf('.');
  if (dot <= 0) return { name: file.slice(0, 200), extension: '' };
  return { name: file.slice(0, dot).slice(0, 200), extension: file.slice(dot + 1).toLowerCase() };
}

async function readAs(
  format: MeshFormat,
  bytes: Uint8Array,
  progress: (progress: MeshProgress) => void,
): Promise<Result<RawMesh, MeshFileFault>> {
  if (format === 'step') {
    const fault = stepHeadFault(bytes);
    if (fault) return fail(fault);
    progress({ step: 'kernel' });
    // The CAD kernel is a file of its own, fetched for the first STEP file and never before.
    const { readStep } = await import('./readers/step');
    return readStep(bytes);
  }
  const step = format === '3mf' ? 'unpack' : 'read';
  return READERS[format](bytes, (share) => progress({ step, share }));
}

interface Finishing {
  readonly name: string;
  readonly extension: string;
  readonly format: MeshFormat;
  readonly progress: (progress: MeshProgress) => void;
  readonly rest: Rest;
}

async function finish(
  raw: RawMesh,
  { name, extension, format, progress, rest }: Finishing,
): Promise<MeshImport> {
  const differs = !extensionFits(extension, format);
  const notes = differs
    ? [{ kind: 'extensionDiffers', extension, format } as const, ...raw.notes]
    : raw.notes;
  const { mesh, report, moments } = await checkMesh({ ...raw, notes }, format, progress, rest);
  await rest();
  progress({ step: 'picture' });
  const picture = await pictureOf(mesh);
  const drawn = meshVolumeMoments(picture, createMoments())[M];
  const packed = picture.triangles.length > 0 ? packPicture(picture) : '';
  const volumeMoments = moments ? [...moments] : null;
  if (volumeMoments) checkBody(format, packed, volumeMoments, mesh.triangles.length / 3);
  return {
    name,
    volumeMoments,
    picture: packed,
    report: {
      ...report,
      picture: {
        triangles: picture.triangles.length / 3,
        reduced: picture.reduced,
        volumeRatio: moments ? drawn / moments[M] : null,
      },
    },
  };
}

/**
 * What is said to weigh must be good for a part. A body may be so thin for its size, or lie so far from the file's origin,
 * that rounding leaves nothing of its volume or of its spread.
 */
function checkBody(
  format: MeshFormat,
  picture: string,
  volumeMoments: readonly number[],
  triangles: number,
): void {
  const [problem] = meshData(picture, volumeMoments, triangles).problems;
  if (!problem) return;
  malformed(
    format,
    `gives a body that cannot be weighed (${problem.detail}): it is too thin for its size or too far from its origin`,
  );
}

import { meshVolumeMoments } from '../../engine/mass/mesh';
import { createMoments, MOMENT_COUNT } from '../../engine/mass/moments';
import { type Pose, rotationFixedXyz } from '../../engine/math/pose';
import { metresFromMm, radiansFromDegrees } from '../../engine/units';
import type {
  ChoiceParameter,
  NumbersParameter,
  TextParameter,
  ValueOf,
  VectorParameter,
} from '../contract';
import { type MeshData, type MeshUnit, meshData } from './body';
import { MAX_PICTURE_TEXT, packPicture } from './picture';

/**
 * What any part that comes from a mesh file holds: the packed surface with its moments, the unit of its numbers, and where
 * the file's frame lies in the part's.
 */
const CUBE_CORNERS = [
  [0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4],
  [2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5],
].flat();
/** A cube of 10 units about the origin. */
const CUBE = {
  positions: Float64Array.from({ length: 24 }, (_, i) => {
    const corner = Math.floor(i / 3);
    return (corner >> (i % 3)) & 1 ? 5 : -5;
  }),
  triangles: Uint32Array.from(CUBE_CORNERS),
};

const unit: ChoiceParameter<MeshUnit> = {
  type: 'choice',
  label: 'Unit of the file',
  help: 'What one unit of length in the file stands for; it scales the whole body.',
  options: ['mm', 'cm', 'm', 'in', 'micron', 'ft'],
  optionLabels: { mm: 'mm', cm: 'cm', m: 'm', in: 'inch', micron: 'micron', ft: 'foot' },
  default: 'mm',
};
const picture: TextParameter = {
  type: 'text',
  label: 'Picture',
  help: 'The surface that is drawn, packed as text when the file was read.',
  default: packPicture(CUBE),
  maxLength: MAX_PICTURE_TEXT,
};
const volumeMoments: NumbersParameter = {
  type: 'numbers',
  unit: '1',
  label: 'Volume moments',
  help: 'Volume, first and second moments of volume about the origin of the file, in its units.',
  default: [...meshVolumeMoments(CUBE, createMoments())],
  min: -1e50,
  max: 1e50,
  maxCount: MOMENT_COUNT,
};
const triangleCount: NumbersParameter = {
  type: 'numbers',
  unit: '1',
  label: 'Triangles',
  help: 'How many triangles were weighed; the picture may have fewer.',
  default: [12],
  min: 1,
  max: 5_000_000,
  maxCount: 1,
};
const sourceName: TextParameter = {
  type: 'text',
  label: 'Source',
  help: 'Name of the file that the body was read from.',
  default: '',
  maxLength: 200,
};
const turnDeg: VectorParameter = {
  type: 'vector',
  unit: 'deg',
  label: 'Turn of the file',
  help: "Turns the file's axes about the part's fixed x, then y, then z.",
  default: [0, 0, 0],
  axes: ['x', 'y', 'z'],
  min: -360,
  max: 360,
  step: 1,
  optional: true,
};
const shiftMm: VectorParameter = {
  type: 'vector',
  unit: 'mm',
  label: 'Shift of the file',
  help: "Where the file's origin lies in the part, after the turn.",
  default: [0, 0, 0],
  axes: ['x', 'y', 'z'],
  min: -10000,
  max: 10000,
  step: 0.1,
  optional: true,
};

export const meshParameters = {
  unit,
  turnDeg,
  shiftMm,
  sourceName,
  triangleCount,
  volumeMoments,
  picture,
} as const;

type MeshValues = {
  readonly [K in keyof typeof meshParameters]: ValueOf<(typeof meshParameters)[K]>;
};

/** What is written of a mesh, to be carried into another part. */
export function writtenMesh(
  written: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> {
  const keys = Object.keys(meshParameters).filter((key) => written[key] !== undefined);
  return Object.fromEntries(keys.map((key) => [key, written[key]]));
}

/** Unpacked and checked. */
export function meshDataOf(values: MeshValues): MeshData {
  return meshData(values.picture, values.volumeMoments, values.triangleCount[0] ?? 0);
}

/** The file's frame in the part's. */
export function filePose(values: Pick<MeshValues, 'turnDeg' | 'shiftMm'>): Pose {
  const [x, y, z] = values.turnDeg.map(radiansFromDegrees);
  const [px, py, pz] = values.shiftMm.map(metresFromMm);
  return { rotation: rotationFixedXyz(x, y, z), translation: [px, py, pz] };
}

import { meshVolumeMoments } from '../../engine/mass/mesh';
import { createMoments, MOMENT_COUNT } from '../../engine/mass/moments';
import {
  type ChoiceParameter,
  densityKgM3,
  lengthMm,
  type NumbersParameter,
  type ParameterSet,
  type TextParameter,
  type ValuesOf,
  type VectorParameter,
} from '../contract';
import type { MeshUnit } from './body';
import { MAX_PICTURE_TEXT, packPicture } from './picture';

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
const role: ChoiceParameter<'part' | 'grip'> = {
  type: 'choice',
  label: 'Takes the place of',
  help: 'A grip offers seats for the pitch arm, the bolt and the blade, at the places given below.',
  options: ['part', 'grip'],
  optionLabels: { part: 'Nothing', grip: 'The blade grip' },
  default: 'part',
  optional: true,
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

/** The places of a grip's seats have the names, meanings and defaults of the part type `grip`. */
export const meshBodyParameters = {
  unit,
  densityKgM3: densityKgM3(1140),
  role,
  armSeatMm: lengthMm({
    label: 'Arm station',
    help: 'As a grip: station at which the pitch arm sits, along x from the origin.',
    default: 20,
    min: 0,
    max: 1500,
    usedWhen: { key: 'role', is: 'grip' },
    optional: true,
  }),
  boltStationMm: lengthMm({
    label: 'Bolt station',
    help: 'As a grip: distance of the bolt axis from the origin, along x.',
    default: 38,
    min: 1,
    max: 2000,
    usedWhen: { key: 'role', is: 'grip' },
    optional: true,
  }),
  boltSeatHeightMm: lengthMm({
    label: 'Bolt seat height',
    help: 'As a grip: height above the feathering axis of the face that the bolt head bears on.',
    default: 5.3,
    min: 0.1,
    max: 500,
    usedWhen: { key: 'role', is: 'grip' },
    optional: true,
  }),
  nutSeatDepthMm: lengthMm({
    label: 'Nut seat depth',
    help: 'As a grip: depth below the feathering axis of the face that the nut bears on.',
    default: 5.3,
    min: 0.1,
    max: 500,
    usedWhen: { key: 'role', is: 'grip' },
    optional: true,
  }),
  turnDeg,
  shiftMm,
  sourceName,
  triangleCount,
  volumeMoments,
  picture,
} as const satisfies ParameterSet;

export type MeshBodyValues = ValuesOf<typeof meshBodyParameters>;

import {
  type ChoiceParameter,
  lengthMm,
  type ParameterSet,
  type ValuesOf,
  type VectorParameter,
} from '../contract';
import { meshParameters } from '../meshBody/meshParameters';

export const KEEP_OUT_SHAPES = ['plane', 'box', 'cylinder', 'mesh'] as const;
export type KeepOutForm = (typeof KEEP_OUT_SHAPES)[number];

const form: ChoiceParameter<KeepOutForm> = {
  type: 'choice',
  label: 'Form',
  help: 'What must stay free: all that lies under a plane, a box, a cylinder, or a body from a mesh file.',
  options: KEEP_OUT_SHAPES,
  optionLabels: { plane: 'Plane', box: 'Box', cylinder: 'Cylinder', mesh: 'Body from a mesh' },
  default: 'plane',
};
const fixedTo: ChoiceParameter<'hub' | 'case'> = {
  type: 'choice',
  label: 'Fixed to',
  help: 'The case stands still, so the shaft turns every part past it; the hub turns with the shaft, not with the pitch.',
  options: ['case', 'hub'],
  optionLabels: { case: 'The case', hub: 'The hub' },
  default: 'case',
};
const sizeMm: VectorParameter = {
  type: 'vector',
  unit: 'mm',
  label: 'Size',
  help: 'Of a box: full length of the three edges, along its x, y and z.',
  default: [30, 30, 10],
  axes: ['x', 'y', 'z'],
  min: 0.05,
  max: 5000,
  step: 0.1,
  usedWhen: { key: 'form', is: 'box' },
  optional: true,
};
const ofMesh = { usedWhen: { key: 'form', is: 'mesh' }, optional: true } as const;

/** What comes from a mesh has the names and meanings of the part type `meshBody`. */
export const keepOutParameters = {
  form,
  fixedTo,
  shownMm: lengthMm({
    label: 'Drawn side',
    help: 'Of a plane: side of the square that is drawn of it; it goes on without end.',
    default: 120,
    min: 1,
    max: 5000,
    step: 1,
    usedWhen: { key: 'form', is: 'plane' },
    optional: true,
  }),
  sizeMm,
  diameterMm: lengthMm({
    label: 'Diameter',
    help: 'Of a cylinder: its diameter.',
    default: 24,
    min: 0.05,
    max: 5000,
    usedWhen: { key: 'form', is: 'cylinder' },
    optional: true,
  }),
  lengthMm: lengthMm({
    label: 'Length',
    help: 'Of a cylinder: distance between its two end faces, along its z.',
    default: 20,
    min: 0.05,
    max: 5000,
    usedWhen: { key: 'form', is: 'cylinder' },
    optional: true,
  }),
  unit: { ...meshParameters.unit, ...ofMesh },
  turnDeg: { ...meshParameters.turnDeg, ...ofMesh },
  shiftMm: { ...meshParameters.shiftMm, ...ofMesh },
  sourceName: { ...meshParameters.sourceName, ...ofMesh },
  triangleCount: { ...meshParameters.triangleCount, ...ofMesh },
  volumeMoments: { ...meshParameters.volumeMoments, ...ofMesh },
  picture: { ...meshParameters.picture, ...ofMesh },
} as const satisfies ParameterSet;

export type KeepOutValues = ValuesOf<typeof keepOutParameters>;

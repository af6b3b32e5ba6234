import {
  type ChoiceParameter,
  densityKgM3,
  lengthMm,
  type ParameterSet,
  type ValuesOf,
} from '../contract';
import { meshParameters } from './meshParameters';

const role: ChoiceParameter<'part' | 'grip'> = {
  type: 'choice',
  label: 'Takes the place of',
  help: 'A grip offers seats for the pitch arm, the bolt and the blade, at the places given below.',
  options: ['part', 'grip'],
  optionLabels: { part: 'Nothing', grip: 'The blade grip' },
  default: 'part',
  optional: true,
};
/** The places of a grip's seats have the names, meanings and defaults of the part type `grip`. */
export const meshBodyParameters = {
  unit: meshParameters.unit,
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
  turnDeg: meshParameters.turnDeg,
  shiftMm: meshParameters.shiftMm,
  sourceName: meshParameters.sourceName,
  triangleCount: meshParameters.triangleCount,
  volumeMoments: meshParameters.volumeMoments,
  picture: meshParameters.picture,
} as const satisfies ParameterSet;

export type MeshBodyValues = ValuesOf<typeof meshBodyParameters>;

import { densityKgM3, lengthMm, type ParameterSet, type Problem, type ValuesOf } from '../contract';
import { demand, requirePitch } from '../rules';

/** Defaults: a plain M3 hexagon nut (ISO 4032). */
export const nutParameters = {
  form: {
    type: 'choice',
    label: 'Form',
    help: 'Hexagonal, or turned round.',
    options: ['hex', 'round'],
    optionLabels: { hex: 'Hexagon', round: 'Round' },
    default: 'hex',
  },
  acrossMm: lengthMm({
    label: 'Across',
    help: 'Distance across the flats of a hexagon nut, or diameter of a round one.',
    default: 5.5,
    min: 0.6,
    max: 200,
  }),
  heightMm: lengthMm({
    label: 'Height',
    help: 'Height of the body from the clamped face, without collar and closed end.',
    default: 2.4,
    min: 0.1,
    max: 300,
  }),
  threadDiameterMm: lengthMm({
    label: 'Thread diameter',
    help: 'Nominal (major) diameter of the thread.',
    default: 3,
    min: 0.5,
    max: 100,
  }),
  threadPitchMm: lengthMm({
    label: 'Thread pitch',
    help: 'Distance from one thread crest to the next.',
    default: 0.5,
    min: 0.05,
    max: 12,
    step: 0.05,
  }),
  collarDiameterMm: lengthMm({
    label: 'Collar diameter',
    help: 'Diameter of the round collar beyond the body, such as holds a locking ring.',
    default: 5,
    min: 0.6,
    max: 200,
  }),
  collarHeightMm: lengthMm({
    label: 'Collar height',
    help: 'Height that the threaded collar adds to the body; 0 for none.',
    default: 0,
    min: 0,
    max: 100,
  }),
  closedEndMm: lengthMm({
    label: 'Closed end',
    help: 'Solid length that closes the far end beyond the thread; 0 for an open nut.',
    default: 0,
    min: 0,
    max: 300,
  }),
  densityKgM3: densityKgM3(7850),
} as const satisfies ParameterSet;

export type NutValues = ValuesOf<typeof nutParameters>;

export function nutProblems(values: NutValues): Problem[] {
  const { threadDiameterMm, collarHeightMm } = values;
  const wider = (field: 'acrossMm' | 'collarDiameterMm') =>
    demand(field, values[field], 'above', threadDiameterMm, 'threadDiameterMm');
  return [
    ...wider('acrossMm'),
    ...(collarHeightMm > 0 ? wider('collarDiameterMm') : []),
    ...requirePitch(values.threadPitchMm, threadDiameterMm),
  ];
}

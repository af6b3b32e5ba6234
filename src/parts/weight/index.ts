import { metresFromMm } from '../../engine/units';
import { below, definePart, densityKgM3, lengthMm } from '../contract';
import { revolution, tubeProfile } from '../shapes';

/**
 * A turned weight on the end or the head of the bolt: origin in the middle of its seat, z away from the seat. The stalk
 * comes first, the weight after it; the bore goes right through both.
 */
export const weight = definePart({
  kind: 'weight',
  label: 'Weight',
  help: 'A turned weight, plain or on a stalk, on the end or the head of the bolt.',
  parameters: {
    diameterMm: lengthMm({
      label: 'Diameter',
      help: 'Outer diameter of the weight.',
      default: 6,
      min: 0.3,
      max: 300,
    }),
    lengthMm: lengthMm({
      label: 'Length',
      help: 'Length of the weight itself, along the bolt.',
      default: 4,
      min: 0.1,
      max: 300,
    }),
    boreMm: lengthMm({
      label: 'Bore',
      help: 'Diameter of a hole right through weight and stalk; 0 for none.',
      default: 0,
      min: 0,
      max: 200,
    }),
    stalkDiameterMm: lengthMm({
      label: 'Stalk diameter',
      help: 'Diameter of the stalk between seat and weight.',
      default: 3,
      usedWhen: { key: 'stalkLengthMm' },
      min: 0.2,
      max: 200,
    }),
    stalkLengthMm: lengthMm({
      label: 'Stalk length',
      help: 'Distance from the seat to the weight; 0 for a weight right on the seat.',
      default: 0,
      min: 0,
      max: 500,
    }),
    densityKgM3: densityKgM3(7850),
  },
  mates: ['boltEnd', 'headTop'],
  solids: (values) => {
    const bore = metresFromMm(values.boreMm) / 2;
    const radius = metresFromMm(values.diameterMm) / 2;
    const seat = metresFromMm(values.stalkLengthMm);
    const end = seat + metresFromMm(values.lengthMm);
    const body = revolution('weight', values.densityKgM3, tubeProfile(bore, radius, seat, end));
    if (values.stalkLengthMm === 0) return [body];
    const stalk = tubeProfile(bore, metresFromMm(values.stalkDiameterMm) / 2, 0, seat);
    return [revolution('stalk', values.densityKgM3, stalk), body];
  },
  sockets: () => [],
  handles: (values) => {
    const radius = metresFromMm(values.diameterMm) / 2;
    const seat = metresFromMm(values.stalkLengthMm);
    const end = seat + metresFromMm(values.lengthMm);
    return [
      {
        kind: 'linear',
        parameter: 'diameterMm',
        position: [radius, 0, (seat + end) / 2],
        direction: [1, 0, 0],
        perMm: 2,
      },
      {
        kind: 'linear',
        parameter: 'lengthMm',
        position: [0, 0, end],
        direction: [0, 0, 1],
        perMm: 1,
      },
      {
        kind: 'linear',
        parameter: 'stalkLengthMm',
        position: [0, radius, seat],
        direction: [0, 0, 1],
        perMm: 1,
      },
    ];
  },
  problems: (values) => [
    ...below(values, 'boreMm', 'diameterMm'),
    ...(values.stalkLengthMm > 0 ? below(values, 'boreMm', 'stalkDiameterMm') : []),
  ],
  retention: () => 'plain',
  trims: () => [
    { length: 'lengthMm', diameter: 'diameterMm' },
    { length: 'stalkLengthMm', diameter: 'stalkDiameterMm' },
  ],
  finish: 'metal',
});

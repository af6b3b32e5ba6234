import { metresFromMm } from '../../engine/units';
import { below, definePart, densityKgM3, lengthMm } from '../contract';
import { revolution, tubeProfile } from '../shapes';
import { washerCatalogue } from './catalogue';

/** A flat washer: origin in the middle of the face that it sits on, z through its thickness. Default M3, ISO 7089. */
export const washer = definePart({
  kind: 'washer',
  label: 'Washer',
  help: 'A flat washer under a bolt head or a nut.',
  parameters: {
    outerDiameterMm: lengthMm({
      label: 'Outer diameter',
      help: 'Diameter of the rim.',
      default: 7,
      min: 0.5,
      max: 200,
    }),
    innerDiameterMm: lengthMm({
      label: 'Inner diameter',
      help: 'Diameter of the hole.',
      default: 3.2,
      min: 0.3,
      max: 190,
    }),
    thicknessMm: lengthMm({
      label: 'Thickness',
      help: 'Height that it adds under the head or the nut.',
      default: 0.5,
      min: 0.02,
      max: 50,
      step: 0.05,
    }),
    densityKgM3: densityKgM3(7850),
  },
  mates: ['underHead', 'nutFace'],
  solids: (values) => {
    const inner = metresFromMm(values.innerDiameterMm) / 2;
    const outer = metresFromMm(values.outerDiameterMm) / 2;
    const profile = tubeProfile(inner, outer, 0, metresFromMm(values.thicknessMm));
    return [revolution('washer', values.densityKgM3, profile)];
  },
  sockets: () => [],
  handles: (values) => [
    {
      kind: 'linear',
      parameter: 'outerDiameterMm',
      position: [metresFromMm(values.outerDiameterMm) / 2, 0, metresFromMm(values.thicknessMm) / 2],
      direction: [1, 0, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'thicknessMm',
      position: [0, metresFromMm(values.outerDiameterMm) / 2, metresFromMm(values.thicknessMm)],
      direction: [0, 0, 1],
      perMm: 1,
    },
  ],
  problems: (values) => below(values, 'innerDiameterMm', 'outerDiameterMm'),
  seatSize: (values) => ({ kind: 'hole', diameterMm: values.innerDiameterMm }),
  stackHeight: (values) => metresFromMm(values.thicknessMm),
  catalogue: washerCatalogue,
  finish: 'metal',
});

import { metresFromMm } from '../../engine/units';
import { cylinderHandles } from '../centredHandles';
import { below, definePart, densityKgM3, lengthMm } from '../contract';
import { revolution, tubeProfile } from '../shapes';

/** A cylinder or tube along its own z, about the origin of its own frame. */
export const cylinder = definePart({
  kind: 'cylinder',
  label: 'Cylinder',
  help: 'A plain cylinder or tube, placed by its middle.',
  parameters: {
    diameterMm: lengthMm({
      label: 'Diameter',
      help: 'Outer diameter.',
      default: 6,
      min: 0.05,
      max: 2000,
    }),
    boreMm: lengthMm({
      label: 'Bore',
      help: 'Diameter of the hole right through; 0 for a solid cylinder.',
      default: 0,
      min: 0,
      max: 2000,
    }),
    lengthMm: lengthMm({
      label: 'Length',
      help: 'Distance between the two end faces.',
      default: 10,
      min: 0.05,
      max: 2000,
    }),
    densityKgM3: densityKgM3(7850),
  },
  mates: [],
  solids: (values) => {
    const inner = metresFromMm(values.boreMm) / 2;
    const outer = metresFromMm(values.diameterMm) / 2;
    const half = metresFromMm(values.lengthMm) / 2;
    return [revolution('cylinder', values.densityKgM3, tubeProfile(inner, outer, -half, half))];
  },
  sockets: () => [],
  handles: cylinderHandles,
  problems: (values) => below(values, 'boreMm', 'diameterMm'),
  finish: 'neutral',
});

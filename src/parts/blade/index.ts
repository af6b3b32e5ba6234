import { metresFromMm } from '../../engine/units';
import { definePart } from '../contract';
import { bladeSolids, lagPose } from './bladeSolids';
import { bladeHandles } from './handles';
import { bladeStations } from './lifting';
import { bladeParameters } from './parameters';
import { bladeProblems } from './problems';
import { bladeProfile } from './profile';

/**
 * A blade: origin on the bolt axis at mid thickness, x outboard, y toward the leading edge, z up, all at zero lag (the
 * blade's own axes); lag turns the blade in this frame about z, positive toward -y. A root block with the bolt hole and
 * perhaps a bushing, then a tapered, untwisted airfoil whose axis (the same share of the chord all along) runs straight
 * from the sweep at its root to the sweep at its tip: a four-digit section (NACA Report 460) or own coordinates. Solid,
 * or a skin over a core; two spars and two weights inside. What the model leaves out (glue, paint, the true lay-up) is
 * corrected by what was measured.
 */
export const blade = definePart({
  kind: 'blade',
  label: 'Blade',
  help: 'A blade with its root block, on the bolt in the fork.',
  parameters: bladeParameters,
  mates: ['bladeSeat'],
  solids: bladeSolids,
  sockets: () => [],
  handles: bladeHandles,
  problems: bladeProblems,
  bodyPose: lagPose,
  spanProfile: bladeProfile,
  lifting: bladeStations,
  hinged: true,
  bladeRoot: (values) => ({
    thickness: metresFromMm(values.rootBlockThicknessMm),
    bushing: values.bushDiameterMm > 0 ? metresFromMm(values.bushDiameterMm) : null,
  }),
  finish: 'composite',
});

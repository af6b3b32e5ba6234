import { createLinkState, linkState } from '../../src/engine/linkage/linkage';
import { overCentreAngles, reachableIntervals } from '../../src/engine/linkage/reach';
import { radians } from '../../src/engine/units';
import { randomLinkage, randomRotor } from './linkages';
import type { Seeded } from './seeded';

const STEPS = 360;
const CELL = (2 * Math.PI) / STEPS;

/**
 * Over-centre angles and reach of seeded linkages beside a scan of the whole turn in steps of a degree: changes of sign of
 * the lever, how many of the scan's cells or samples say otherwise, the least distance of two angles, and the greatest
 * lever at one as a share of the arm.
 */
export function scanOverCentre(random: Seeded, linkages: number) {
  const state = createLinkState();
  const seen = { crossings: 0, wrong: 0, nearest: Infinity, worst: 0 };
  for (let n = 0; n < linkages; n++) {
    const rotor = randomRotor(random);
    const linkage = randomLinkage(random, rotor);
    const found = overCentreAngles(linkage, rotor, radians(-Math.PI), radians(Math.PI));
    const reach = reachableIntervals(linkage, rotor, radians(-Math.PI), radians(Math.PI));
    found.forEach((pitch, i) => {
      if (i > 0) seen.nearest = Math.min(seen.nearest, pitch - found[i - 1]);
      const { lever, reach: arm } = linkState(linkage, rotor, pitch, state);
      seen.worst = Math.max(seen.worst, Math.abs(lever) / arm);
    });
    // An edge that lies between two samples of the scan would be neither.
    let before = Number.NaN;
    for (let k = 0; k <= STEPS; k++) {
      const pitch = -Math.PI + 1e-3 + ((2 * Math.PI - 2e-3) * k) / STEPS;
      const { lever, reachable } = linkState(linkage, rotor, radians(pitch), state);
      const inside = reach.some(([low, high]) => pitch >= low && pitch <= high);
      if (inside !== reachable) seen.wrong++;
      if (before * lever < 0) seen.crossings++;
      const roots = found.filter((root) => root >= pitch - CELL && root <= pitch).length;
      if (before * lever < 0 && roots % 2 !== 1) seen.wrong++;
      before = lever;
    }
  }
  return seen;
}

import { describe, expect, test } from 'vitest';
import { createLinkState, linkState } from '../../../src/engine/linkage/linkage';
import { overCentreAngles, reachableIntervals } from '../../../src/engine/linkage/reach';
import { radians } from '../../../src/engine/units';
import { randomLinkage, randomRotor } from '../../support/linkages';
import { seeded } from '../../support/seeded';

const TURN = radians(Math.PI);

/** Slow, apart from the others so that `npm run mutants` can leave it out. */
describe('over-centre and reach of very many linkages', () => {
  test('are where a fine scan finds a change of sign, none missed and none twice, in 2,000 seeded linkages', () => {
    const random = seeded(21);
    const state = createLinkState();
    let crossings = 0;
    let wrong = 0;
    for (let n = 0; n < 2000; n++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const found = overCentreAngles(linkage, rotor, radians(-Math.PI), TURN);
      const reach = reachableIntervals(linkage, rotor, radians(-Math.PI), TURN);
      found.forEach((pitch, i) => {
        if (i > 0) expect(pitch - found[i - 1]).toBeGreaterThan(1e-9);
        const { lever, reach: arm } = linkState(linkage, rotor, pitch, state);
        expect(Math.abs(lever)).toBeLessThan(1e-7 * arm);
      });
      // An edge that lies between two samples of the scan would be neither.
      let before = Number.NaN;
      const steps = 360;
      for (let k = 0; k <= steps; k++) {
        const pitch = -Math.PI + 1e-3 + ((2 * Math.PI - 2e-3) * k) / steps;
        const { lever, reachable } = linkState(linkage, rotor, radians(pitch), state);
        const inside = reach.some(([low, high]) => pitch >= low && pitch <= high);
        if (inside !== reachable) wrong++;
        if (before * lever < 0) {
          crossings++;
          const low = pitch - (2 * Math.PI) / steps;
          if (found.filter((root) => root >= low && root <= pitch).length % 2 !== 1) wrong++;
        }
        before = lever;
      }
    }
    expect(wrong).toBe(0);
    expect(crossings).toBeGreaterThan(1500);
  });
});

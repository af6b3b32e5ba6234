import { expect, test } from 'vitest';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { symmetricSection } from '../../../src/engine/air/section';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { ELEMENTS, randomBlade, randomConditions } from './randomRotors';

// The proof in StationInflow: a root exists for every continuous section with drag. Rounding of the two sides is some 1e-15.
test('of 10,000 seeded rotors has an inflow at each station, at which blade and momentum agree to 1e-8', () => {
  const random = seeded(20261125);
  const section = symmetricSection();
  const solution = createHoverSolution(ELEMENTS);
  let worst = 0;
  let worstThrust = 0;
  for (let k = 0; k < 10_000; k++) {
    const blade = randomBlade(random);
    const conditions = randomConditions(random);
    const pitch = random.pick([
      random.between(-Math.PI, Math.PI),
      random.between(-0.4, 0.4),
      (random.whole(-4, 4) * Math.PI) / 4,
      random.between(-1e-6, 1e-6),
    ]);
    solveHover(blade, section, conditions, radians(pitch), solution);
    if (solution.unsolved > 0) expect.fail(`rotor ${k}: ${solution.unsolved} without solution`);
    const { thrust, shaftTorque, featheringMoment, flapMoment, dragForce } = solution;
    if (!Number.isFinite(thrust + shaftTorque + featheringMoment + flapMoment + dragForce))
      expect.fail(`rotor ${k} is not finite`);
    if (!(shaftTorque > 0)) expect.fail(`rotor ${k} drives its shaft: ${shaftTorque}`);
    const scale = solution.thrustPerLength.reduce((sum, t) => sum + Math.abs(t), 0);
    const area = (blade.tipRadius - blade.rootRadius) / ELEMENTS;
    const gap = Math.abs(thrust - solution.momentumThrust);
    if (scale > 1e-9)
      worstThrust = Math.max(worstThrust, gap / (scale * area * conditions.bladeCount));
    worst = Math.max(worst, solution.worstResidual);
  }
  expect(worst).toBeLessThan(1e-8);
  // Halving alone takes some 50 evaluations beyond the walk outward; 15 were seen with interpolation.
  expect(solution.station.evaluations / (10_000 * ELEMENTS)).toBeLessThan(20);
  expect(worstThrust).toBeLessThan(1e-8);
});

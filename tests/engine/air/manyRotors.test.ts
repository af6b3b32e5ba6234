import { expect, test } from 'vitest';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { symmetricSection } from '../../../src/engine/air/section';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { ELEMENTS, randomBlade, randomConditions } from './randomRotors';
import { DEGREE } from './rotors';

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

// Attached everywhere (|angle of attack| below 8 degrees) lift rises with the angle, so thrust must.
test('has more thrust at more pitch as long as all of it is attached', () => {
  const random = seeded(7);
  const section = symmetricSection();
  const less = createHoverSolution(ELEMENTS);
  const more = createHoverSolution(ELEMENTS);
  let seen = 0;
  for (let k = 0; k < 3000; k++) {
    const blade = randomBlade(random);
    const conditions = randomConditions(random);
    const pitch = random.between(-0.3, 0.3);
    solveHover(blade, section, conditions, radians(pitch), less);
    solveHover(blade, section, conditions, radians(pitch + 0.01), more);
    const attached = [...less.angleOfAttack, ...more.angleOfAttack].every(
      (a) => Math.abs(a) < 8 * DEGREE,
    );
    if (!attached) continue;
    seen++;
    if (!(more.thrust > less.thrust)) expect.fail(`rotor ${k} at ${pitch}`);
  }
  expect(seen).toBeGreaterThan(800);
});

// Brute force: g scanned in steps of 0.001 rad over the quarter turn. Not proven, seen: lift of the built-in section falls
// too little past stall for a second inflow.
test('the inflow that is taken is the only one for the built-in section, in 300 seeded rotors about stall', () => {
  const random = seeded(17);
  const section = symmetricSection();
  const solution = createHoverSolution(ELEMENTS);
  for (let k = 0; k < 300; k++) {
    const pitch = radiansFromDegrees(random.between(5, 60));
    solveHover(randomBlade(random), section, randomConditions(random), pitch, solution);
    // The solver still holds the outermost station, which it solved last.
    const { station } = solution;
    const taken = solution.inflowAngle[ELEMENTS - 1];
    const side = Math.sign(station.residualAt(0));
    let changes = 0;
    for (let j = 1; j <= 1570; j++) {
      const before = side * station.residualAt(side * (j - 1) * 0.001) > 0;
      if (before === side * station.residualAt(side * j * 0.001) > 0) continue;
      changes++;
      expect(Math.abs(Math.abs(taken) - (j - 0.5) * 0.001)).toBeLessThan(0.000501);
    }
    expect(changes).toBe(1);
  }
});

import { describe, expect, test } from 'vitest';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { NO_BRACKET, SECTION_JUMPS, SECTION_NOT_FINITE } from '../../../src/engine/air/inflow';
import { symmetricSection } from '../../../src/engine/air/section';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { ELEMENTS, randomBlade, randomConditions } from './randomRotors';
import { conditionsAt, DEGREE, plainBlade, sectionOf, thrustCoefficient } from './rotors';

describe('any rotor at any pitch', () => {
  test('without twist and offset up is the mirror image at the opposite pitch', () => {
    const random = seeded(11);
    const section = symmetricSection();
    const plus = createHoverSolution(ELEMENTS);
    const minus = createHoverSolution(ELEMENTS);
    for (let k = 0; k < 500; k++) {
      const blade = randomBlade(random);
      blade.twist.fill(0);
      blade.quarterChordZ.fill(0);
      const conditions = randomConditions(random);
      const pitch = random.between(0, Math.PI);
      solveHover(blade, section, conditions, radians(pitch), plus);
      solveHover(blade, section, conditions, radians(-pitch), minus);
      // To the bit: the search takes the same steps on either side.
      expect(minus.thrust).toBe(-plus.thrust);
      expect(minus.shaftTorque).toBe(plus.shaftTorque);
      expect(minus.featheringMoment).toBe(-plus.featheringMoment);
    }
  });

  // Dimensional analysis: without Reynolds number every force is density times W^2 times a function of shape.
  test('has forces in proportion to density and to the square of the speed', () => {
    const random = seeded(13);
    const section = symmetricSection();
    const one = createHoverSolution(ELEMENTS);
    const other = createHoverSolution(ELEMENTS);
    for (let k = 0; k < 300; k++) {
      const blade = randomBlade(random);
      const conditions = randomConditions(random);
      const pitch = radians(random.between(-1.5, 1.5));
      solveHover(blade, section, conditions, pitch, one);
      const changed = {
        ...conditions,
        density: conditions.density * 0.7,
        angularSpeed: conditions.angularSpeed * 3,
      };
      solveHover(blade, section, changed, pitch, other);
      for (const key of ['thrust', 'shaftTorque', 'featheringMoment', 'flapMoment'] as const) {
        // The sums may cancel: held against the largest force times the largest arm.
        const size = 6.3 * (Math.abs(one.shaftTorque) + Math.abs(one.thrust));
        expect(Math.abs(other[key] - 6.3 * one[key])).toBeLessThan(1e-11 * size);
      }
    }
  });
});

describe('the blade cut into more elements', () => {
  // Lift at the tip falls like sqrt(R - r), whose midpoint rule errs with width^1.5 once the tip is resolved and with the
  // width before: doubling takes the error by 2 to 2.8.
  test('converges, and 24 elements are within 1 % of 1,000', () => {
    const section = symmetricSection();
    const conditions = conditionsAt(3000, 2);
    const at = (count: number) =>
      thrustCoefficient(plainBlade(0.08, 0.4, 0.035, count), section, conditions, 8);
    const fine = at(1000);
    const errors = [12, 24, 48, 96].map((count) => Math.abs(at(count) / fine - 1));
    expect(errors[1]).toBeLessThan(0.01);
    for (let k = 1; k < errors.length; k++) expect(errors[k]).toBeLessThan(errors[k - 1] / 2);
  });

  test('loses thrust at tip and root where the losses are counted', () => {
    const section = symmetricSection();
    const blade = plainBlade(0.08, 0.4, 0.035, 60);
    const plain = { ...conditionsAt(3000, 2), tipLoss: false, rootLoss: false };
    const none = thrustCoefficient(blade, section, plain, 8);
    const tip = thrustCoefficient(blade, section, { ...plain, tipLoss: true }, 8);
    const both = thrustCoefficient(blade, section, { ...plain, tipLoss: true, rootLoss: true }, 8);
    expect(tip).toBeLessThan(none);
    expect(both).toBeLessThan(tip);
    // Common practice: an effective radius of 0.92 to 0.98, thrust some 2 to 12 % less.
    expect(both / none).toBeGreaterThan(0.88);
  });
});

describe('a station without solution', () => {
  const blade = plainBlade(0.1, 0.5, 0.04, 6);
  const solution = createHoverSolution(6);
  const go = (section: ReturnType<typeof sectionOf>, pitch = 0.2) =>
    solveHover(blade, section, conditionsAt(2000, 2), radians(pitch), solution);

  test('says that the section is not finite, and the totals are no numbers', () => {
    go(sectionOf((a) => (a > 0.1 ? Number.NaN : a)));
    expect(solution.unsolved).toBe(6);
    expect([...solution.status]).toEqual(new Array(6).fill(SECTION_NOT_FINITE));
    expect(solution.thrust).toBeNaN();
    expect(solution.featheringMoment).toBeNaN();
  });

  test('says that a jump of the section was met where one is', () => {
    // Lift that is there above 0.19 rad only: the inflow lowers the angle past the jump, and no inflow fits.
    go(sectionOf((a) => (a > 0.19 ? 1 : 0)));
    expect([...solution.status]).toContain(SECTION_JUMPS);
    expect(solution.thrust).toBeNaN();
  });

  test('says that no bracket exists where the drag is negative enough to pull', () => {
    go(
      sectionOf(
        () => 1,
        () => -1000,
      ),
    );
    expect([...solution.status]).toContain(NO_BRACKET);
  });
});

describe('the inflow that is taken', () => {
  // A section whose lift falls from 1.04 to 0.1 between 10 and 11 degrees, at 16 degrees with s/4 = 0.05 and no drag:
  // stalled, 0.05 x 0.1 cos p = sin^2 p at p = 4.05 degrees (angle 11.95); attached, also near 10 degrees (angle 6).
  test('is the stalled one of smallest inflow where a deep stall allows several', () => {
    const section = sectionOf((a) => {
      const d = Math.abs(a) / DEGREE;
      const peak = 6 * Math.sin(10 * DEGREE);
      if (d < 10) return 6 * Math.sin(a);
      return Math.sign(a) * (d < 11 ? peak + (0.1 - peak) * (d - 10) : 0.1);
    });
    const blade = plainBlade(0.2, 0.4, 0.05 * 4 * Math.PI * 0.3, 1);
    const solution = createHoverSolution(1);
    const conditions = { ...conditionsAt(1000, 2), tipLoss: false };
    solveHover(blade, section, conditions, radiansFromDegrees(16), solution);
    const { station } = solution;
    expect(station.residualAt(7 * DEGREE)).toBeGreaterThan(0);
    expect(station.residualAt(11 * DEGREE)).toBeLessThan(0);
    const p = solution.inflowAngle[0];
    expect(p / DEGREE).toBeLessThan(5);
    expect(Math.abs(0.005 * Math.cos(p) - Math.sin(p) ** 2)).toBeLessThan(1e-12);
  });
});

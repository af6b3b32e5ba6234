import { describe, expect, test } from 'vitest';
import { type AirTable, buildAirTable } from '../../../src/engine/air/airTable';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { symmetricSection } from '../../../src/engine/air/section';
import { gaussLegendre } from '../../../src/engine/math/gaussLegendre';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { conditionsAt, DEGREE, plainBlade, sectionOf } from './rotors';

const section = symmetricSection();
const blade = plainBlade(0.05, 0.35, 0.03, 24, { y: 0.002, z: 0 });
const conditions = conditionsAt(5000, 2);

/** Largest difference to direct solves between two pitches, and the largest moment and thrust there. */
function errors(table: AirTable, fromDeg: number, toDeg: number) {
  const solution = createHoverSolution(24);
  const seen = { moment: 0, thrust: 0, torque: 0, largestMoment: 0, largestThrust: 0 };
  for (let deg = fromDeg; deg <= toDeg; deg += 0.137) {
    const pitch = radiansFromDegrees(deg);
    solveHover(blade, section, conditions, pitch, solution);
    const { featheringMoment, thrust, shaftTorque } = solution;
    seen.moment = Math.max(seen.moment, Math.abs(table.moment(pitch) - featheringMoment));
    seen.thrust = Math.max(seen.thrust, Math.abs(table.thrust(pitch) - thrust));
    seen.torque = Math.max(seen.torque, Math.abs(table.torque(pitch) - shaftTorque));
    seen.largestMoment = Math.max(seen.largestMoment, Math.abs(featheringMoment));
    seen.largestThrust = Math.max(seen.largestThrust, Math.abs(thrust));
  }
  return seen;
}

describe('air over a range of pitches', () => {
  const wholeTable = () => buildAirTable(blade, section, conditions, -90, 90);

  test('is solved once a degree, closer at the changes of sign of lift, and meets direct solves at the nodes', () => {
    const table = wholeTable();
    // 181 degrees; eight more about zero, four inside either end.
    expect(table.solves).toBe(181 + 8 + 4 + 4);
    expect(table.nodesDeg).toHaveLength(table.solves);
    expect(table.gaps).toBe(0);
    const solution = createHoverSolution(24);
    for (const deg of [-90, -37, -1, 0, 1, 20, 89, 90]) {
      solveHover(blade, section, conditions, radiansFromDegrees(deg), solution);
      // Degrees to radians and back may miss the node by rounding.
      expect(
        Math.abs(table.moment(radiansFromDegrees(deg)) - solution.featheringMoment),
      ).toBeLessThan(1e-12);
    }
    expect(table.moment(radians(0))).toBe(0);
    expect(table.thrust(radians(0))).toBe(0);
  });

  // Seen: 0.0006 of 0.78 N m next to 90 degrees, 0.0002 where stations begin to stall (a corner of the second slope), less
  // elsewhere. 0.5 % is what the interpolation may add to an estimate that is worth 10 % at best.
  test('differs between the nodes from direct solves by less than 0.5 % of the largest value', () => {
    const table = wholeTable();
    const seen = errors(table, -89.9, 89.9);
    expect(seen.moment).toBeLessThan(0.005 * seen.largestMoment);
    expect(seen.thrust).toBeLessThan(0.005 * seen.largestThrust);
  });

  // Near flat pitch the inflow takes nearly all of the angle and thrust starts like t|t| (hand: the closed inflow of the
  // linear section), so that the slope at zero is that of the drag alone, y sin t times it. The moment at one degree, 0.003
  // N m, makes k = 10 N m/rad^2 of k t|t|; three nodes a sixteenth of a degree apart see k h = 0.011 of slope. Nodes a
  // degree apart alone would see 0.14.
  test('has the flat start of the moment at flat pitch', () => {
    const table = wholeTable();
    const solution = createHoverSolution(24);
    const h = 1e-5;
    solveHover(blade, section, conditions, radians(h), solution);
    const slope = 0.002 * solution.dragForce;
    expect(Math.abs(solution.featheringMoment / h - slope)).toBeLessThan(2 * 10 * h);
    expect(Math.abs(table.slope(radians(0)) - slope)).toBeLessThan(0.015);
    const near = errors(table, -1, 1);
    expect(near.moment).toBeLessThan(0.005 * near.largestMoment);
    expect(near.thrust).toBeLessThan(0.005 * near.largestThrust);
  });

  // A blade set nose up by 3.3 degrees on its grip has its flat start at -3.3; one twisted by 8 degrees has none.
  test('adds its closer nodes where the blade itself is flat, for a blade without twist along it', () => {
    const table = wholeTable();
    const set = { ...blade, twist: new Float64Array(24).fill(3.3 * DEGREE) };
    const moved = buildAirTable(set, section, conditions, -20, 20);
    expect(moved.solves).toBe(41 + 9);
    expect(moved.nodesDeg.some((deg) => Math.abs(deg + 3.3) < 1e-12)).toBe(true);
    expect(Math.abs(moved.slope(radians(-3.3 * DEGREE)) - table.slope(radians(0)))).toBeLessThan(
      0.01,
    );
    const twisted = { ...blade, twist: set.twist.map((angle, i) => angle + (i * 8 * DEGREE) / 23) };
    expect(buildAirTable(twisted, section, conditions, -20, 20).solves).toBe(41);
  });

  test('gets better with a finer step', () => {
    const table = wholeTable();
    const coarse = errors(table, 2, 30);
    const fine = errors(buildAirTable(blade, section, conditions, -90, 90, 0.25), 2, 30);
    // Joints of the second slope at stall leave an error of second order: a quarter of the step, a sixteenth of the error, and
    // twice that for where the joints fall between the nodes.
    expect(fine.moment).toBeLessThan(coarse.moment / 8);
  });

  test('has a slope that is the slope of its moment, without a jump at the nodes', () => {
    const table = wholeTable();
    const h = 1e-5;
    for (let t = -1.5; t < 1.5; t += 0.0173) {
      const hand = (table.moment(radians(t + h)) - table.moment(radians(t - h))) / (2 * h);
      // h^2 M'''/6, M''' below 1e4 (three degrees of one per cent in a step), and a corner of second slope when a node lies between.
      expect(Math.abs(table.slope(radians(t)) - hand)).toBeLessThan(1e-3);
    }
    for (let deg = -89; deg < 90; deg++) {
      const t = deg * DEGREE;
      expect(
        Math.abs(table.slope(radians(t - 1e-9)) - table.slope(radians(t + 1e-9))),
      ).toBeLessThan(1e-6);
    }
  });

  // An independent route: Gauss-Legendre between every two nodes, exact for a cubic.
  test('has the energy whose slope is minus the moment: zero at flat pitch, minus the integral elsewhere', () => {
    const table = wholeTable();
    const rule = gaussLegendre(4);
    expect(table.energy(radians(0))).toBe(0);
    for (const end of [-90, -41, 17, 90]) {
      let integral = 0;
      for (let k = 0; k + 1 < table.solves; k++) {
        const [low, high] = [table.nodesDeg[k], table.nodesDeg[k + 1]];
        if (end > 0 ? low < 0 || high > end : low < end || high > 0) continue;
        for (const [i, x] of rule.nodes.entries()) {
          const pitch = radiansFromDegrees((low + high + (high - low) * x) / 2);
          integral += ((rule.weights[i] * (high - low)) / 2) * DEGREE * table.moment(pitch);
        }
      }
      integral *= Math.sign(end);
      expect(Math.abs(table.energy(radiansFromDegrees(end)) + integral)).toBeLessThan(1e-13);
    }
    const h = 1e-4;
    for (let t = -1.5; t < 1.5; t += 0.1) {
      const slope = (table.energy(radians(t + h)) - table.energy(radians(t - h))) / (2 * h);
      expect(Math.abs(slope + table.moment(radians(t)))).toBeLessThan(1e-6);
    }
  });

  test('is no number outside its range', () => {
    const table = wholeTable();
    for (const curve of [table.moment, table.slope, table.energy, table.thrust, table.torque]) {
      expect(curve(radiansFromDegrees(90.01))).toBeNaN();
      expect(curve(radiansFromDegrees(-91))).toBeNaN();
    }
  });

  test('has its zero of energy off the nodes too, and at its near end where flat pitch is not in it', () => {
    const table = wholeTable();
    const odd = buildAirTable(blade, section, conditions, -10.3, 20.4, 1);
    expect(Math.abs(odd.energy(radians(0)))).toBeLessThan(1e-18);
    expect(Math.abs(odd.energy(radians(0.2)) - table.energy(radians(0.2)))).toBeLessThan(1e-4);
    const above = buildAirTable(blade, section, conditions, 5, 9);
    expect(above.energy(radiansFromDegrees(5))).toBe(0);
    expect(above.energy(radiansFromDegrees(9))).not.toBe(0);
    const below = buildAirTable(blade, section, conditions, -9, -5);
    expect(below.energy(radiansFromDegrees(-5))).toBe(0);
  });

  test('leaves a gap where a pitch has no solution, and no energy beyond it', () => {
    const broken = sectionOf(
      (a) => (Math.abs(a - 0.3) < 0.02 ? Number.NaN : Math.sin(a)),
      () => 0.02,
    );
    const gappy = buildAirTable(blade, broken, conditions, -30, 60);
    expect(gappy.gaps).toBeGreaterThan(0);
    expect(gappy.gaps).toBeLessThan(40);
    const first = gappy.nodesDeg[gappy.unsolved.findIndex((count) => count > 0)];
    expect(gappy.moment(radiansFromDegrees(first))).toBeNaN();
    expect(gappy.moment(radiansFromDegrees(first - 0.5))).toBeNaN();
    expect(gappy.moment(radiansFromDegrees(first - 1))).not.toBeNaN();
    expect(gappy.energy(radiansFromDegrees(first - 1.5))).not.toBeNaN();
    expect(gappy.energy(radiansFromDegrees(59))).toBeNaN();
    expect(gappy.moment(radiansFromDegrees(59))).not.toBeNaN();
  });

  test('is refused for an empty range or a step that is none', () => {
    expect(() => buildAirTable(blade, section, conditions, 5, 5)).toThrow(/range/);
    expect(() => buildAirTable(blade, section, conditions, 0, 5, 0)).toThrow(/step/);
    expect(() => buildAirTable(blade, section, conditions, 0, 5, 1e-9)).toThrow(/step/);
    expect(() => buildAirTable(blade, section, conditions, Number.NaN, 5)).toThrow(/range/);
  });
});

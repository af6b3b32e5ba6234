import { describe, expect, test } from 'vitest';
import { buildAirTable } from '../../../src/engine/air/airTable';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { SECTION_NOT_FINITE, SOLVED, StationInflow } from '../../../src/engine/air/inflow';
import { createCoefficients, symmetricSection } from '../../../src/engine/air/section';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { conditionsAt, DEGREE, plainBlade, sectionOf } from './rotors';

describe('a rotor in balance', () => {
  const conditions = { ...conditionsAt(3000, 3), rootLoss: true };
  const section = sectionOf(
    (a) => 5.5 * Math.sin(a),
    (a) => 0.02 + 0.3 * a * a,
  );
  function solved() {
    const blade = plainBlade(0.06, 0.5, 0.04, 8, { y: 0.003, z: 0.001 });
    blade.twist.forEach((_, i) => (blade.twist[i] = 0.05 - 0.01 * i));
    const solution = createHoverSolution(8);
    return { blade, solution: solveHover(blade, section, conditions, radians(0.22), solution) };
  }

  test('has as much thrust by its blades as by the momentum of its annuli', () => {
    const { blade, solution } = solved();
    expect(solution.momentumThrust / solution.thrust).toBeCloseTo(1, 10);
    expect(solution.thrust).toBeGreaterThan(1);
    let thrust = 0;
    for (let i = 0; i < 8; i++) {
      // dT = 4 pi rho r F v^2, by hand from the inflow.
      const p = solution.inflowAngle[i];
      const r = blade.stations[i];
      const v = conditions.angularSpeed * r * Math.tan(p);
      const F = (f: number) => (2 / Math.PI) * Math.acos(Math.exp(-f / Math.sin(p)));
      const loss = F((1.5 * (0.5 - r)) / r) * F((1.5 * (r - 0.06)) / 0.06);
      thrust += 4 * Math.PI * 1.225 * r * loss * v * v * blade.widths[i];
      expect(Math.abs(solution.residual[i]) / solution.thrustPerLength[i]).toBeLessThan(1e-10);
      expect(solution.angleOfAttack[i]).toBeCloseTo(0.22 + blade.twist[i] - p, 14);
    }
    expect(solution.momentumThrust / thrust).toBeCloseTo(1, 12);
    expect(solution.worstResidual).toBeLessThan(1e-10);
  });

  test('spends its power on the inflow and on the drag along the wind, V times half rho V^2 c C_d', () => {
    const { blade, solution } = solved();
    let profile = 0;
    let torque = 0;
    for (let i = 0; i < 8; i++) {
      const p = solution.inflowAngle[i];
      const V = (conditions.angularSpeed * blade.stations[i]) / Math.cos(p);
      const drag = 0.02 + 0.3 * solution.angleOfAttack[i] ** 2;
      profile += 3 * 0.5 * 1.225 * V ** 3 * 0.04 * drag * blade.widths[i];
      torque += solution.torquePerLength[i] * blade.widths[i];
    }
    expect((solution.power - solution.inducedPower) / profile).toBeCloseTo(1, 11);
    expect(torque / solution.dragTorque).toBeCloseTo(1, 12);
    expect(
      solution.momentPerLength.reduce((sum, one, i) => sum + one * blade.widths[i], 0),
    ).toBeCloseTo(solution.featheringMoment, 12);
  });

  test('says how far the worst of its stations is from balance, as a share of the largest force', () => {
    // Lift that jumps: blade and momentum differ at every station, by as much as the section says.
    const { blade } = solved();
    const jumpy = sectionOf(
      (a) => (a > 0.15 ? 1 : 0.2),
      () => 0.1,
    );
    const solution = createHoverSolution(8);
    solveHover(blade, jumpy, { ...conditions, rootLoss: false }, radians(0.2), solution);
    const known = [...solution.status.keys()].filter((i) => solution.status[i] === SOLVED);
    expect(known.length).toBeLessThan(8);
    expect(solution.worstResidual).toBeNaN();
  });

  test('is the same over a table, curve by curve', () => {
    const { blade } = solved();
    const table = buildAirTable(blade, section, conditions, 10, 14.5, 2);
    expect(table.stepDeg).toBeCloseTo(1.5, 14);
    const solution = createHoverSolution(8);
    for (const deg of [10, 11.5, 13, 14.5]) {
      const pitch = radiansFromDegrees(deg);
      solveHover(blade, section, conditions, pitch, solution);
      expect(table.flapMoment(pitch) / solution.flapMoment).toBeCloseTo(1, 9);
      expect(table.dragForce(pitch) / solution.dragForce).toBeCloseTo(1, 9);
      expect(table.dragTorque(pitch) / solution.dragTorque).toBeCloseTo(1, 9);
      expect(table.torque(pitch) / solution.shaftTorque).toBeCloseTo(1, 9);
    }
    expect(() => buildAirTable(blade, section, conditions, 10, 14, -1)).toThrow('step');
  });
});

describe('the search for an inflow', () => {
  const station = (lift: (angle: number) => number, more: object = {}) => {
    const one = new StationInflow(sectionOf(lift, () => 0.02));
    return Object.assign(one, { pitch: 0.2, quarterSolidity: 0.02, reynolds: 1e5, ...more });
  };

  test('comes to its root in few steps beyond the walk outward: halving would take fifty', () => {
    const spent: number[] = [];
    for (const lift of [0.05, 0.3, 0.8, 1.2, -0.5, -1.1]) {
      for (const slope of [0, 3, 6]) {
        const one = station((a) => lift + slope * (a - 0.2) * Math.sign(lift), {
          tipFactor: slope === 3 ? 0.4 : 5,
        });
        expect(one.solve()).toBe(SOLVED);
        const walked = Math.ceil(Math.abs(one.inflow) / DEGREE) + 1;
        spent.push(one.evaluations - walked);
        expect(Math.abs(one.residual)).toBeLessThan(1e-16);
      }
    }
    // Six beyond it as a rule, nine at most: the last one for the answer.
    expect(Math.max(...spent)).toBeLessThan(10);
    expect(spent.reduce((sum, one) => sum + one, 0)).toBeLessThan(6.5 * spent.length);
  });

  test('finds a root that stands exactly where a step ends', () => {
    // Lift such that s/4 C cos p = sin^2 p at 7 degrees, without drag.
    const p = 7 * DEGREE;
    const one = new StationInflow(sectionOf(() => Math.sin(p) ** 2 / Math.cos(p) / 0.02));
    Object.assign(one, { pitch: 0.2, quarterSolidity: 0.02, reynolds: 1e5 });
    expect(one.solve()).toBe(SOLVED);
    expect(one.inflow).toBeCloseTo(p, 14);
  });

  test('says at once that a section is no number at no inflow', () => {
    const one = station((a) => (a === 0.2 ? Number.NaN : 1));
    expect([one.solve(), one.inflow, one.evaluations]).toEqual([SECTION_NOT_FINITE, 0, 1]);
  });

  test('goes as far as 90 degrees', () => {
    // A wide solidity and a drag that only the last degree can bear: g(89.5 degrees) is 0 for a lift of this size.
    const p = 89.5 * DEGREE;
    const lift = (Math.sin(p) ** 2 / 50 + 0.02 * Math.sin(p)) / Math.cos(p);
    const one = station(() => lift, { quarterSolidity: 50 });
    expect(one.solve()).toBe(SOLVED);
    expect(one.inflow).toBeCloseTo(p, 9);
  });
});

describe('the symmetric section by its formulas', () => {
  const at = (deg: number) => {
    const out = symmetricSection().coefficients(deg * DEGREE, 1e5, createCoefficients());
    return { ...out };
  };
  const step = (t: number) => t * t * (3 - 2 * t);

  test('attached: C_l = 6 sin b, C_d = floor + 0.4 sin^2 b, from behind with twice the floor', () => {
    const sine = Math.sin(4 * DEGREE);
    expect(at(4)).toMatchObject({ lift: 6 * sine, moment: -0, outside: 0 });
    expect(at(4).drag).toBeCloseTo(0.012 + 0.4 * sine ** 2, 14);
    expect(at(176).drag).toBeCloseTo(0.024 + 0.4 * sine ** 2, 14);
    expect(at(176).lift).toBeCloseTo(-6 * sine, 12);
  });

  test('separated: a plate with its floor of friction', () => {
    // C_n = sin b / (0.222 + 0.283 sin b) at 30 degrees, and 0.012 cos^2.
    expect(at(30).drag).toBeCloseTo((0.5 / 0.3635) * 0.5 + 0.012 * 0.75, 12);
    expect(at(150).drag).toBeCloseTo((0.5 / 0.3635) * 0.5 + 0.012 * 0.75, 12);
    expect(at(30).lift).toBeCloseTo((0.5 / 0.3635) * Math.sqrt(0.75), 12);
  });

  test('between the two in shares of a smooth step, from behind three sevenths of the way at 172 degrees', () => {
    const [sine, cosine] = [Math.sin(8 * DEGREE), Math.cos(8 * DEGREE)];
    const s = step(3 / 7);
    const plate = sine / (0.222 + 0.283 * sine);
    const friction = (0.012 + 0.012 * (1 - s)) * cosine ** 2;
    const drag = (1 - s) * (0.024 + 0.4 * sine ** 2) + s * (plate * sine + friction);
    expect(at(172).drag).toBeCloseTo(drag, 12);
    expect(at(172).lift).toBeCloseTo(-((1 - s) * 6 * sine + s * plate * cosine), 12);
  });
});

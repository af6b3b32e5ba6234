import { beforeAll, describe, expect, test } from 'vitest';
import {
  createLinkState,
  type Linkage,
  linkState,
  pushRodForce,
  sliderForce,
  travelAtPitch,
} from '../../../src/engine/linkage/linkage';
import {
  rodEndTension,
  rodEnergy,
  rodMoment,
  rodMomentSlope,
  rodPullAtBall,
} from '../../../src/engine/linkage/rodMass';
import { gaussLegendre } from '../../../src/engine/math/gaussLegendre';
import { radians } from '../../../src/engine/units';
import { cylinderRod, randomLinkage, randomRotor } from '../../support/linkages';
import { type MultibodyEngine, startMultibodyEngine } from '../../support/multibody';
import { seeded } from '../../support/seeded';

let oracle: MultibodyEngine;
beforeAll(async () => {
  oracle = await startMultibodyEngine();
});

const FLAT = { angularSpeed: 1000, torqueOffset: 0, precone: radians(0) };
const at = (linkage: Linkage, pitch: number, rotor = FLAT) =>
  linkState(linkage, rotor, radians(pitch), createLinkState());

describe('the place of the rod', () => {
  test('keeps its length and meets both balls, at any pitch, precone and torque offset', () => {
    const random = seeded(11);
    let seen = 0;
    for (let i = 0; i < 400; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const state = at(linkage, random.between(-1.5, 1.5), rotor);
      if (!state.reachable) continue;
      seen++;
      const length = linkage.length ?? 0;
      const [bx, by, bz] = state.ball;
      const gap = [
        bx + length * state.axis[0] - linkage.sliderX,
        by + length * state.axis[1] - linkage.sliderY,
        bz + length * state.axis[2] - state.sliderZ,
      ];
      expect(Math.hypot(...gap)).toBeLessThan(1e-15);
      expect(Math.sign(state.axis[2])).toBe(linkage.side);
    }
    expect(seen).toBeGreaterThan(200);
  });

  test('out of reach there is no number, and says so', () => {
    const linkage: Linkage = {
      ball_G: [0, 0.02, 0],
      side: -1,
      length: 0.01,
      sliderX: 0,
      sliderY: 0.02,
      rod: cylinderRod(0.001, 0.01, 0.001),
    };
    // 0.02 (1 - cos t) > 0.01 beyond 60 degrees.
    expect(at(linkage, 1.04).reachable).toBe(true);
    const lost = at(linkage, 1.05);
    expect(lost.reachable).toBe(false);
    for (const value of [lost.lever, lost.ratio, lost.sliderZ]) expect(value).toBeNaN();
    expect(pushRodForce(1, lost)).toBeNull();
    expect(rodMoment(linkage, FLAT, radians(1.05))).toBeNaN();
    expect(rodEnergy(linkage, FLAT, radians(1.05))).toBeNaN();
    expect(travelAtPitch(linkage, FLAT, radians(1.05))).toBeNaN();
  });

  test('the slider moves by the ratio: travel against pitch, central difference', () => {
    const random = seeded(12);
    for (let i = 0; i < 200; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const pitch = random.between(-0.5, 0.5);
      const h = 1e-5;
      const slope =
        (travelAtPitch(linkage, rotor, radians(pitch + h)) -
          travelAtPitch(linkage, rotor, radians(pitch - h))) /
        (2 * h);
      const { ratio, axis } = at(linkage, pitch, rotor);
      // h^2 z'''/6, and z''' grows with the fifth power of the slant 1 / e_z near the edge of reach.
      if (!(Math.abs(axis[2]) > 0.2)) continue;
      expect(Math.abs(slope - ratio)).toBeLessThan(2e-8);
    }
  });
});

describe("the rod's own mass", () => {
  // Published in no book: derived, and confirmed below by the multibody engine.
  test('a thin even rod turns the grip by W^2 m [B.B\u2032/3 + S.B\u2032/6]', () => {
    const random = seeded(13);
    for (let i = 0; i < 200; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const mass = linkage.rod?.mass ?? 0;
      const thin = { ...linkage, rod: cylinderRod(mass, linkage.length ?? 0, 0) };
      const pitch = random.between(-0.8, 0.8);
      const state = at(thin, pitch, rotor);
      if (!state.reachable) continue;
      const [, y, z] = thin.ball_G;
      const h = y * Math.cos(pitch) - z * Math.sin(pitch);
      const k = y * Math.sin(pitch) + z * Math.cos(pitch);
      const v = [-h * Math.sin(rotor.precone), -k];
      const own = state.ball[0] * v[0] + state.ball[1] * v[1];
      const far = thin.sliderX * v[0] + thin.sliderY * v[1];
      const hand = rotor.angularSpeed ** 2 * mass * (own / 3 + far / 6);
      const scale = rotor.angularSpeed ** 2 * mass * 0.05 * 0.03;
      expect(Math.abs(rodMoment(thin, rotor, radians(pitch)) - hand)).toBeLessThan(1e-13 * scale);
    }
  });

  test('an independent multibody engine finds the same moment in the closed loop', () => {
    const random = seeded(14);
    let worst = 0;
    let seen = 0;
    for (let i = 0; i < 120; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const length = linkage.length ?? 0;
      const rod = linkage.rod ?? cylinderRod(0, 0, 0);
      const radius = Math.sqrt((4 * rod.transverse) / rod.mass);
      const pitch = random.between(-0.6, 0.6);
      const state = at(linkage, pitch, rotor);
      if (!(state.reachable && Math.abs(state.axis[2]) > 0.3)) continue;
      seen++;
      // The rod as a free body of the hub: three slides of its ball end, then tilted about X and Y.
      const middle = (linkage.side * length) / 2;
      const body = `<body><joint type="slide" axis="1 0 0"/><joint type="slide" axis="0 1 0"/>
        <joint type="slide" axis="0 0 1"/><joint type="hinge" axis="1 0 0"/><joint type="hinge" axis="0 1 0"/>
        <geom type="cylinder" size="${radius} ${length / 2}" pos="0 0 ${middle}" mass="${rod.mass}"/></body>`;
      // How the closed loop moves those five with the pitch, from the place of the two balls alone.
      const coordinates = (t: number) => {
        const { ball, axis } = at(linkage, t, rotor);
        const [ex, ey, ez] = axis.map((one) => linkage.side * one);
        return [ball[0], ball[1], ball[2], Math.atan2(-ey, ez), Math.asin(ex)];
      };
      const step = 1e-5;
      const before = coordinates(pitch - step);
      const after = coordinates(pitch + step);
      const forces = oracle.spinForces(body, rotor.angularSpeed, coordinates(pitch));
      const moment = forces.reduce(
        (sum, f, k) => sum + (f * (after[k] - before[k])) / (2 * step),
        0,
      );
      const scale = rotor.angularSpeed ** 2 * rod.mass * (length + 0.05) ** 2;
      worst = Math.max(worst, Math.abs(rodMoment(linkage, rotor, radians(pitch)) - moment) / scale);
    }
    expect(seen).toBeGreaterThan(60);
    // Central difference of the loop: step^2 times third derivatives of slants up to 1 / 0.3: 1e-8 of the scale.
    expect(worst).toBeLessThan(1e-8);
  });

  test('is minus the slope of its energy, and has the slope it says', () => {
    const random = seeded(15);
    for (let i = 0; i < 200; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const pitch = random.between(-0.5, 0.5);
      if (!(Math.abs(at(linkage, pitch, rotor).axis[2]) > 0.3)) continue;
      const h = 1e-4;
      const energy = (t: number) => rodEnergy(linkage, rotor, radians(t));
      const moment = (t: number) => rodMoment(linkage, rotor, radians(t));
      const scale = rotor.angularSpeed ** 2 * (linkage.rod?.mass ?? 0) * 0.06 ** 2;
      const slope = (energy(pitch + h) - energy(pitch - h)) / (2 * h);
      // h^2 / 6 times third derivatives, which a slant of 1 / 0.3 raises to some thousands.
      expect(Math.abs(slope + moment(pitch))).toBeLessThan(2e-5 * scale);
      const bend = (moment(pitch + h) - moment(pitch - h)) / (2 * h);
      expect(Math.abs(bend - rodMomentSlope(linkage, rotor, radians(pitch)))).toBeLessThan(
        2e-4 * scale,
      );
    }
    const linkage = randomLinkage(seeded(1), FLAT);
    expect(rodEnergy(linkage, FLAT, radians(0))).toBeCloseTo(0, 20);
  });

  test('goes exactly with the square of the speed', () => {
    const linkage = randomLinkage(seeded(3), FLAT);
    const double = { ...FLAT, angularSpeed: 2 * FLAT.angularSpeed };
    for (const f of [rodMoment, rodMomentSlope, rodEnergy]) {
      expect(f(linkage, double, radians(0.2))).toBe(4 * f(linkage, FLAT, radians(0.2)));
    }
  });

  test('a rod parallel to the shaft is the limit of long ones, and a lump at its ball', () => {
    const parallel: Linkage = {
      ball_G: [0.02, 0.017, 0.004],
      side: -1,
      length: null,
      sliderX: 0,
      sliderY: 0,
      rod: { mass: 0.001, first: 0, second: 0, transverse: 0 },
    };
    const { ball } = at(parallel, 0.3);
    const k = 0.017 * Math.sin(0.3) + 0.004 * Math.cos(0.3);
    expect(rodMoment(parallel, FLAT, radians(0.3))).toBeCloseTo(1e6 * 0.001 * ball[1] * -k, 15);
    for (const length of [10, 100]) {
      const long: Linkage = { ...parallel, length, sliderX: 0.02, sliderY: 0.017 };
      const state = at(long, 0.3);
      // The slant is the ball's 1.8 mm sideways over the length.
      expect(Math.abs(state.lever - at(parallel, 0.3).lever)).toBeLessThan(4e-5 / length);
    }
  });
});

describe('forces', () => {
  test('the slider does the work of the moment: F dZ = -n M dt', () => {
    const random = seeded(16);
    for (let i = 0; i < 100; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const state = at(linkage, random.between(-0.5, 0.5), rotor);
      const force = sliderForce(0.37, state, 3);
      if (force === null) continue;
      expect(Math.abs(force * state.ratio + 3 * 0.37)).toBeLessThan(1e-12);
    }
  });

  test('over centre there is no force', () => {
    const linkage: Linkage = {
      ball_G: [0, 0.02, 0],
      side: -1,
      length: null,
      sliderX: 0,
      sliderY: 0,
      rod: null,
    };
    expect(pushRodForce(1, at(linkage, Math.PI / 2))).toBeNull();
    expect(pushRodForce(1, at(linkage, 0))).toBeCloseTo(1 / 0.02, 12);
  });

  // Free bodies: the rod under its load by quadrature, hinged at both ends; the grip under its own moment and the rod.
  test("the tension at the arm's ball and the pull across the rod balance rod and grip", () => {
    const random = seeded(17);
    const rule = gaussLegendre(4);
    for (let i = 0; i < 100; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const length = linkage.length ?? 0;
      const mass = linkage.rod?.mass ?? 0;
      const thin = { ...linkage, rod: cylinderRod(mass, length, 0) };
      const pitch = radians(random.between(-0.5, 0.5));
      const state = at(thin, pitch, rotor);
      if (!(Math.abs(state.axis[2]) > 0.2 && Math.abs(state.lever) > 1e-3)) continue;
      const e = [...state.axis];
      const ball = [...state.ball];
      const load = [0, 0, 0];
      rule.nodes.forEach((node, q) => {
        const s = ((1 + node) * length) / 2;
        const dm = (rule.weights[q] * mass) / 2;
        for (const k of [0, 1]) {
          load[k] += (1 - s / length) * rotor.angularSpeed ** 2 * dm * (ball[k] + s * e[k]);
        }
      });
      const pull = rodPullAtBall(thin, rotor, state);
      for (const k of [0, 1])
        expect(Math.abs(pull[k] - load[k])).toBeLessThan(1e-12 * Math.hypot(...load));
      const own = 0.05;
      const tension = rodEndTension(thin, rotor, own + rodMoment(thin, rotor, pitch), state) ?? NaN;
      // On the grip at the ball: T e and what of the load is square to the rod.
      const along = load[0] * e[0] + load[1] * e[1];
      const force = e.map((one, k) => tension * one + load[k] - along * one);
      const [, y, z] = thin.ball_G;
      const h = y * Math.cos(pitch) - z * Math.sin(pitch);
      const k = y * Math.sin(pitch) + z * Math.cos(pitch);
      const v = [-h * Math.sin(rotor.precone), -k, h * Math.cos(rotor.precone)];
      const turning = own + force.reduce((sum, f, n) => sum + f * v[n], 0);
      expect(Math.abs(turning)).toBeLessThan(1e-12);
    }
  });
});

import { describe, expect, test } from 'vitest';
import { gripPose } from '../../../src/engine/feathering/gripPose';
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
import { transformPoint } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { cylinderRod, randomLinkage, randomRotor } from '../../support/linkages';
import { seeded } from '../../support/seeded';

const FLAT = { angularSpeed: 1000, torqueOffset: 0, precone: radians(0) };
const placed = (linkage: Linkage, pitch: number, rotor = FLAT) =>
  linkState(linkage, rotor, radians(pitch), createLinkState());

/** Stays parallel to the shaft: a lump at its ball. */
const parallel: Linkage = {
  ball_G: [0.02, 0.01, 0],
  side: -1,
  length: null,
  sliderX: 0,
  sliderY: 0,
  rod: { mass: 0.002, first: 0, second: 0, transverse: 0 },
};

describe('a rod parallel to the shaft', () => {
  test('lets the slider go up and down with its ball, whatever side it stands on', () => {
    for (const side of [-1, 1] as const) {
      const state = placed({ ...parallel, side }, 0.4);
      expect(state.reachable).toBe(true);
      expect([...state.axis]).toEqual([0, 0, side]);
      expect(state.sliderZ).toBeCloseTo(0.01 * Math.sin(0.4), 16);
      expect(state.ratio).toBeCloseTo(0.01 * Math.cos(0.4), 16);
      expect(state.lever).toBeCloseTo(side * 0.01 * Math.cos(0.4), 16);
      expect(state.reach).toBeCloseTo(0.01, 16);
      expect(travelAtPitch({ ...parallel, side }, FLAT, radians(0.4))).toBeCloseTo(
        0.01 * Math.sin(0.4),
        16,
      );
    }
  });

  // W^2 m Y k of a lump at Y = y cos t, k = y sin t: M = -W^2 m y^2 sin 2t / 2, its slope and its energy.
  test('turns the grip as a lump at its ball does, with that slope and that energy', () => {
    for (const pitch of [-0.7, 0.2, 1.1]) {
      const size = 1e6 * 0.002 * 0.01 ** 2;
      const at = radians(pitch);
      expect(rodMoment(parallel, FLAT, at) / size).toBeCloseTo(-Math.sin(2 * pitch) / 2, 14);
      expect(rodMomentSlope(parallel, FLAT, at) / size).toBeCloseTo(-Math.cos(2 * pitch), 14);
      expect(rodEnergy(parallel, FLAT, at) / size).toBeCloseTo(Math.sin(pitch) ** 2 / 2, 14);
    }
  });

  test('hangs on the arm\u2019s ball with all of its pull, and its tension is that of the moment alone', () => {
    const state = placed(parallel, 0.3);
    const pull = rodPullAtBall(parallel, FLAT, state);
    expect(pull[0]).toBeCloseTo(1e6 * 0.002 * 0.02, 12);
    expect(pull[1]).toBeCloseTo(1e6 * 0.002 * 0.01 * Math.cos(0.3), 12);
    expect(pull[2]).toBe(0);
    expect(rodEndTension(parallel, FLAT, 0.05, state)).toBeCloseTo(-0.05 / state.lever, 12);
  });
});

describe('a rod that weighs nothing', () => {
  test('does nothing by itself', () => {
    const random = seeded(51);
    for (let i = 0; i < 20; i++) {
      const rotor = randomRotor(random);
      const light = { ...randomLinkage(random, rotor), rod: null };
      const pitch = radians(random.between(-0.3, 0.3));
      for (const share of [rodMoment, rodMomentSlope, rodEnergy]) {
        expect(share(light, rotor, pitch)).toBe(0);
      }
      const state = placed(light, pitch, rotor);
      expect(rodPullAtBall(light, rotor, state)).toEqual([0, 0, 0]);
      expect(rodEndTension(light, rotor, 0.07, state)).toBe(pushRodForce(0.07, state));
    }
  });
});

describe('close to over-centre', () => {
  // The lever of a parallel rod is y cos t: a share e of its reach at a quarter turn less e.
  test.each([
    [2e-9, true],
    [0.5e-9, false],
  ])('a lever of %d of the reach: there is a force: %s', (share, exists) => {
    const state = placed(parallel, Math.PI / 2 - share);
    expect(pushRodForce(1, state) !== null).toBe(exists);
    expect(sliderForce(1, state, 2) !== null).toBe(exists);
    expect(rodEndTension(parallel, FLAT, 1, state) !== null).toBe(exists);
  });

  test('a lever to the other side has a force to the other side', () => {
    const [before, after] = [placed(parallel, 1.2), placed(parallel, Math.PI - 1.2)];
    expect(pushRodForce(1, after)).toBeCloseTo(-(pushRodForce(1, before) ?? NaN), 9);
    expect(rodEndTension(parallel, FLAT, 1, after)).toBeCloseTo(
      -(rodEndTension(parallel, FLAT, 1, before) ?? NaN),
      9,
    );
  });
});

describe('the place of the ball', () => {
  test('is that of a point of the grip, with precone and torque offset', () => {
    const random = seeded(52);
    for (let i = 0; i < 50; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const pitch = radians(random.between(-1, 1));
      const there = transformPoint(gripPose(rotor, pitch), linkage.ball_G);
      const { ball } = placed(linkage, pitch, rotor);
      there.forEach((one, k) => expect(Math.abs(ball[k] - one)).toBeLessThan(1e-16));
    }
  });

  test('on the feathering axis has no lever, and so no force', () => {
    const state = placed({ ...parallel, ball_G: [0.02, 0, 0] }, 0.3);
    expect(pushRodForce(1, state)).toBeNull();
    expect(rodEndTension(parallel, FLAT, 1, state)).toBeNull();
  });
});

describe('at the edge of reach', () => {
  test('a rod that lies exactly square to the shaft does not reach', () => {
    // Half a metre, in numbers that a double holds.
    const square: Linkage = {
      ball_G: [0, 0.25, 0],
      side: 1,
      length: 0.5,
      sliderX: 0,
      sliderY: 0.75,
      rod: null,
    };
    expect(placed(square, 0).reachable).toBe(false);
  });

  // Ball and slider 12 mm apart across the shaft at flat pitch; L^2 - d^2 at 13 mm: 5 mm up or down (5, 12, 13).
  const across = (side: -1 | 1, length: number): Linkage => ({
    ball_G: [0.02, 0.01, 0],
    side,
    length,
    sliderX: 0.02,
    sliderY: 0.022,
    rod: cylinderRod(0.001, length, 0.001),
  });

  test('the slider\u2019s ball stands where the right triangle says', () => {
    for (const side of [-1, 1] as const) {
      const state = placed(across(side, 0.013), 0);
      expect(state.sliderZ).toBeCloseTo(side * 0.005, 15);
      [0, 12 / 13, (side * 5) / 13].forEach((one, k) => expect(state.axis[k]).toBeCloseTo(one, 14));
      // Lever of the rod's line about the axis at flat pitch: y e_z.
      expect(state.lever).toBeCloseTo((side * 0.01 * 5) / 13, 15);
      expect(state.ratio).toBeCloseTo(0.01, 15);
    }
  });

  test('a rod that lies square to the shaft does not reach, nor a shorter one; all but the ball is no number', () => {
    for (const length of [0.012 - 1e-15, 0.011]) {
      const state = placed(across(1, length), 0);
      expect(state.reachable).toBe(false);
      expect([...state.axis]).toEqual([NaN, NaN, NaN]);
      for (const value of [state.sliderZ, state.lever, state.ratio]) expect(value).toBeNaN();
      expect([...state.ball]).toEqual([0.02, 0.01, 0]);
      expect(rodEndTension(across(1, length), FLAT, 1, state)).toBeNull();
      expect(sliderForce(1, state, 2)).toBeNull();
    }
    expect(placed(across(1, 0.0120001), 0).reachable).toBe(true);
  });
});

import { describe, expect, test } from 'vitest';
import {
  boltFrictionTorque,
  featheringChange,
  freeLag,
  hingedBody,
  lagBand,
  lagTorque,
} from '../../../src/engine/lag/lag';
import { createMoments, JXX, JXY, JYY, M, SX, SY } from '../../../src/engine/mass/moments';
import { type Pose, rotationAboutZ } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';

/**
 * The pendulum in the spin's field, by hand: a lump m at r from a hinge that stands at h on a radius (no torque offset, no
 * precone, flat pitch) is pulled back with T = -W^2 m h r sin d. (Lever of the pull W^2 m R about the hinge: h sin of the
 * angle at the shaft, and R times that is r sin d.)
 */
const W = 900;
const m = 0.006;
const h = 0.04;
const r = 0.07;
const PULL = W * W * m * h * r;
const FLAT = { angularSpeed: W, torqueOffset: 0, precone: radians(0) };
const LEVEL = radians(0);

/** Drawn at the angle `drawn` to the radius. */
function pendulum(drawn = 0, length = r) {
  const [x, y] = [h + length * Math.cos(drawn), length * Math.sin(drawn)];
  const moments = createMoments();
  moments[M] = m;
  moments[SX] = m * x;
  moments[SY] = m * y;
  moments[JXX] = m * x * x;
  moments[JYY] = m * y * y;
  moments[JXY] = m * x * y;
  const hinge: Pose = { rotation: rotationAboutZ(radians(0)), translation: [h, 0, 0] };
  return hingedBody(moments, hinge);
}

describe('a pendulum in the spin\u2019s field', () => {
  test('is pulled back with W^2 m h r sin d, to both sides, far out too', () => {
    for (const d of [-3, -1.2, -0.3, 0, 0.1, 0.8, 1.5, 2.9]) {
      const torque = lagTorque(pendulum(), FLAT, LEVEL, radians(d));
      expect(Math.abs(torque + PULL * Math.sin(d))).toBeLessThan(1e-13 * PULL);
    }
  });

  test('drawn straight it hangs straight, drawn aside it swings back by as much', () => {
    expect(freeLag(pendulum(), FLAT, LEVEL)).toBe(0);
    for (const drawn of [-1.4, -0.5, -0.01, 0.02, 0.7, 1.5]) {
      expect(freeLag(pendulum(drawn), FLAT, LEVEL)).toBeCloseTo(-drawn, 13);
    }
  });

  test('that points inward has no stable angle within a quarter turn', () => {
    expect(freeLag(pendulum(0, -r), FLAT, LEVEL)).toBeNull();
    expect(freeLag(pendulum(1.6), FLAT, LEVEL)).toBeNull();
    expect(freeLag(pendulum(-1.6), FLAT, LEVEL)).toBeNull();
    // A quarter turn itself counts.
    expect(freeLag(pendulum(1.5707), FLAT, LEVEL)).toBeCloseTo(-1.5707, 12);
  });

  test('held by a torque hangs where the sine says, until it is thrown over', () => {
    for (const share of [-0.99, -0.4, -1e-6, 0.3, 0.999]) {
      expect(freeLag(pendulum(), FLAT, LEVEL, share * PULL)).toBeCloseTo(Math.asin(share), 12);
    }
    for (const share of [-1.001, 1.001]) {
      expect(freeLag(pendulum(), FLAT, LEVEL, share * PULL)).toBeNull();
    }
  });

  // 1 - cos d: the torque is nothing where it hangs level and the same way on either side.
  test.each([1, -1])('on the very point of being thrown over it does not hang (%d)', (way) => {
    const body = pendulum((way * Math.PI) / 2);
    const drive = -lagTorque(body, FLAT, LEVEL, radians(0));
    expect(Math.abs(drive / PULL - way)).toBeLessThan(1e-12);
    expect(freeLag(body, FLAT, LEVEL, drive)).toBeNull();
  });

  // At a quarter turn of pitch only X counts: two lumps at r along and +-s across have sum X^2 / 2 =
  // (h + r cos d)^2 + s^2 sin^2 d, greatest at cos d = r h / (s^2 - r^2), on either side; straight is its least.
  test.each([1, -1])(
    'of two stable angles it goes to the one that the torque points to (%d)',
    (way) => {
      const [along, across] = [0.01, 0.06];
      const moments = createMoments();
      moments[M] = 2 * m;
      moments[SX] = 2 * m * (h + along);
      moments[JXX] = 2 * m * (h + along) ** 2;
      moments[JYY] = 2 * m * across ** 2;
      const hinge: Pose = { rotation: rotationAboutZ(radians(0)), translation: [h, 0, 0] };
      const body = hingedBody(moments, hinge);
      const edge = radians(Math.PI / 2);
      const size = W * W * m * across * across;
      const free = freeLag(body, FLAT, edge, way * 1e-9 * size) ?? NaN;
      const expected = Math.acos((along * h) / (across ** 2 - along ** 2));
      expect(free).toBeCloseTo(way * expected, 7);
    },
  );

  test('drawn aside and held by a torque, it goes the shorter way', () => {
    // sin(d + drawn) = share.
    for (const [drawn, share] of [
      [0.3, 0.6],
      [0.3, -0.2],
      [-0.6, 0.1],
      [1.2, 0.99],
    ]) {
      expect(freeLag(pendulum(drawn), FLAT, LEVEL, share * PULL)).toBeCloseTo(
        Math.asin(share) - drawn,
        12,
      );
    }
  });

  test('is held by friction where the pull does not exceed it: between two arcs of the sine', () => {
    for (const [drive, friction] of [
      [0, 0.2],
      [0.3, 0.1],
      [-0.5, 0.4],
    ]) {
      const free = freeLag(pendulum(), FLAT, LEVEL, drive * PULL) ?? radians(NaN);
      const band = lagBand(pendulum(), FLAT, LEVEL, free, drive * PULL, friction * PULL);
      expect(band[0]).toBeCloseTo(Math.asin(drive - friction), 12);
      expect(band[1]).toBeCloseTo(Math.asin(drive + friction), 12);
    }
    // One side within reach and one not.
    const free = radians(Math.asin(0.5));
    const band = lagBand(pendulum(), FLAT, LEVEL, free, 0.5 * PULL, 0.6 * PULL);
    expect(band).toEqual([expect.closeTo(Math.asin(-0.1), 12), Infinity]);
    const under = lagBand(pendulum(), FLAT, LEVEL, radians(-free), -0.5 * PULL, 0.6 * PULL);
    expect(under).toEqual([-Infinity, expect.closeTo(Math.asin(0.1), 12)]);
  });

  test('does not turn the grip at flat pitch; at another as its lumps do', () => {
    // J_yy of the lump aside is m (r sin d)^2: M = -W^2 (J_yy / 2) sin 2t.
    const [d, pitch] = [0.4, 0.3];
    const side = m * (r * Math.sin(d)) ** 2;
    const expected = (-W * W * side * Math.sin(2 * pitch)) / 2;
    const change = featheringChange(pendulum(), FLAT, radians(pitch), radians(d));
    expect(change / expected).toBeCloseTo(1, 12);
    // Less what it was as drawn.
    expect(featheringChange(pendulum(d), FLAT, radians(pitch), radians(-d)) / expected).toBeCloseTo(
      -1,
      12,
    );
  });

  test('friction of the bolt has the share of the bore and the share of the cheeks, by hand', () => {
    const bolt = {
      coefficient: 0.2,
      pull: 0,
      boltDiameter: 0.004,
      clampForce: 0,
      faceRadius: 0.005,
    };
    // 0.2 x 500 N x 2 mm, and 0.2 x 2 faces x 150 N x 5 mm.
    expect(boltFrictionTorque({ ...bolt, pull: 500 })).toBeCloseTo(0.2, 15);
    expect(boltFrictionTorque({ ...bolt, clampForce: 150 })).toBeCloseTo(0.3, 15);
  });
});

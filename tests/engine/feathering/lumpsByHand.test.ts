import { describe, expect, test } from 'vitest';
import { freeFeatheringFrequency } from '../../../src/engine/feathering/freeFeathering';
import { gripPose } from '../../../src/engine/feathering/gripPose';
import {
  axisDirection,
  halves,
  type Lump,
  lumpPull,
  partLumps,
} from '../../../src/engine/feathering/lumps';
import { createMoments, JYY, JZZ } from '../../../src/engine/mass/moments';
import { radians } from '../../../src/engine/units';
import { rotor } from '../../support/feathering';
import { randomVector, seeded } from '../../support/seeded';
import { type CloudPoint, cloudMoments } from '../../support/shapes';

const FLAT = rotor(1000);
const TILTED = rotor(1000, 0.004, 0.07);

function momentsOf(lumps: readonly Lump[]) {
  return cloudMoments(lumps.map(({ mass, p_G: [x, y, z] }): CloudPoint => [mass, x, y, z]));
}
const dot = (a: readonly number[], b: readonly number[]) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

describe('lumps of a part, by hand', () => {
  test('of two equal points across the span are the two points', () => {
    const points: CloudPoint[] = [
      [0.003, 0.05, 0.012, 0.005],
      [0.003, 0.05, -0.004, -0.007],
    ];
    const lumps = partLumps(cloudMoments(points), FLAT);
    expect(lumps).toHaveLength(2);
    for (const { mass } of lumps) expect(mass).toBeCloseTo(0.003, 15);
    const places = lumps.map(({ p_G }) => p_G).toSorted((a, b) => b[1] - a[1]);
    places.forEach((place, k) =>
      place.forEach((one, axis) => expect(one).toBeCloseTo(points[k][axis + 1], 12)),
    );
  });

  test('of a body as wide as it is thick but askew lie on its wide diagonal', () => {
    // Points on y = z: J_yy = J_zz, all of the spread in J_yz.
    const lumps = partLumps(
      cloudMoments([
        [0.001, 0.05, 0.01, 0.01],
        [0.001, 0.05, -0.01, -0.01],
      ]),
      FLAT,
    );
    expect(lumps).toHaveLength(2);
    for (const { p_G } of lumps) expect(p_G[1]).toBeCloseTo(p_G[2], 14);
    expect(Math.abs(lumps[0].p_G[1])).toBeCloseTo(0.01, 12);
  });

  // m d^2 is the difference of the principal second moments: 4 and 1 with m = 3 is d = 1.
  test('lie as far out as the difference of the two spreads asks', () => {
    const J = { xx: 9, yy: 4, zz: 1, xy: 0, xz: 0, yz: 0 };
    const [one, two] = halves(3, [0, 0, 0], J, 0);
    expect([one.mass, two.mass]).toEqual([1.5, 1.5]);
    expect(one.p_G.map(Math.abs)).toEqual([0, 1, 0].map((v) => expect.closeTo(v, 15)));
    expect(two.p_G).toEqual(one.p_G.map((v) => expect.closeTo(-v, 15)));
    const [upright] = halves(3, [0, 0, 0], { ...J, yy: 1, zz: 4 }, 0);
    expect(upright.p_G.map(Math.abs)).toEqual([0, 0, 1].map((v) => expect.closeTo(v, 15)));
    // As far as `least` they are one, a hair farther two.
    expect(halves(3, [1, 2, 3], J, 1)).toEqual([{ mass: 3, p_G: [1, 2, 3] }]);
    expect(halves(3, [1, 2, 3], J, 0.999)).toHaveLength(2);
  });

  test('with precone have all ten moments of a slanted part, in four; without it in two, whatever the slant', () => {
    const random = seeded(91);
    for (let i = 0; i < 50; i++) {
      const points = Array.from({ length: 5 }, (): CloudPoint => {
        const [x, y, z] = randomVector(random, 0.05);
        return [random.between(0.001, 0.01), x, y, z];
      });
      const moments = cloudMoments(points);
      const four = partLumps(moments, TILTED);
      expect(four).toHaveLength(4);
      for (const { mass } of four) expect(mass).toBeCloseTo(moments[0] / 4, 15);
      const again = momentsOf(four);
      const size = moments[4] + moments[5] + moments[6];
      again.forEach((one, k) =>
        expect(Math.abs(one - moments[k])).toBeLessThan(k < 4 ? 1e-15 : 1e-13 * size),
      );
      expect(partLumps(moments, FLAT)).toHaveLength(2);
      expect(partLumps(moments, rotor(1000, 0.004))).toHaveLength(2);
    }
  });

  test('with precone of a part that is not slanted are two all the same', () => {
    const box: CloudPoint[] = [1, -1].flatMap((s) =>
      [1, -1].flatMap((t) =>
        [1, -1].map((u): CloudPoint => [0.001, 0.05 + 0.02 * s, 0.01 * t, 0.003 * u]),
      ),
    );
    expect(partLumps(cloudMoments(box), TILTED)).toHaveLength(2);
    // Slanted in the chord alone, or in the thickness alone, are four.
    for (const lean of [
      [0.001, 0],
      [0, 0.001],
    ]) {
      const slanted = box.map(
        ([m, x, y, z]): CloudPoint => [
          m,
          x,
          y + lean[0] * Math.sign(x - 0.05),
          z + lean[1] * Math.sign(x - 0.05),
        ],
      );
      expect(partLumps(cloudMoments(slanted), TILTED)).toHaveLength(4);
    }
  });

  test('with precone of a flat sheet are four in its plane, for all that rounding leaves of its thickness', () => {
    const sheet: CloudPoint[] = [
      [0.001, 0.03, 0.01, 0.002],
      [0.001, 0.05, -0.013, 0.002],
      [0.002, 0.061, 0.007, 0.002],
    ];
    const four = partLumps(cloudMoments(sheet), TILTED);
    expect(four).toHaveLength(4);
    // A root of rounding, 1e-16 of the spread.
    for (const { p_G } of four) expect(Math.abs(p_G[2] - 0.002)).toBeLessThan(1e-9);
  });
});

describe('the pull on a lump, by hand', () => {
  test('without precone is W^2 m X out and W^2 m Y across; its lever is its distance from the axis', () => {
    const lump: Lump = { mass: 0.002, p_G: [0.05, 0.003, 0.004] };
    const pitch = 0.3;
    const pull = lumpPull(lump, rotor(1000, 0.01), gripPose(rotor(1000, 0.01), radians(pitch)));
    const h = 0.003 * Math.cos(pitch) - 0.004 * Math.sin(pitch);
    const k = 0.003 * Math.sin(pitch) + 0.004 * Math.cos(pitch);
    const near = (values: readonly number[]) => values.map((one) => expect.closeTo(one, 12));
    expect(pull.lump).toBe(lump);
    expect(pull.at).toEqual(near([0.05, 0.01 + h, k]));
    expect(pull.foot).toEqual(near([0.05, 0.01, 0]));
    expect(pull.force).toEqual(near([100, 2000 * (0.01 + h), 0]));
    expect(pull.lever).toBeCloseTo(0.005, 15);
    expect(pull.moment).toBeCloseTo(-2000 * (0.01 + h) * k, 12);
    // The way round at (h, k) is (-k, h) / 5 mm.
    const share = (-2000 * (0.01 + h) * k) / 0.005 / 0.005;
    expect(pull.turning).toEqual(near([0, -k * share, h * share]));
    expect(pull.still).toEqual(near([100, 2000 * (0.01 + h) + k * share, -h * share]));
  });

  test('falls into what turns and what does not, square to each other', () => {
    const random = seeded(92);
    for (let i = 0; i < 100; i++) {
      const at = rotor(
        random.between(100, 1000),
        random.between(-0.01, 0.01),
        random.between(-0.2, 0.2),
      );
      const X_RG = gripPose(at, radians(random.between(-1, 1)));
      const lump = { mass: 0.003, p_G: randomVector(random, 0.05) };
      const pull = lumpPull(lump, at, X_RG);
      const size = Math.hypot(...pull.force);
      const arm = pull.at.map((one, k) => one - pull.foot[k]);
      expect(Math.abs(dot(pull.turning, arm))).toBeLessThan(1e-15 * size);
      expect(Math.abs(dot(pull.turning, axisDirection(X_RG)))).toBeLessThan(1e-14 * size);
      expect(Math.abs(dot(pull.turning, pull.still))).toBeLessThan(1e-12 * size * size);
      pull.force.forEach((one, k) =>
        expect(Math.abs(one - pull.turning[k] - pull.still[k])).toBeLessThan(1e-13 * size),
      );
      expect(pull.lever).toBeCloseTo(Math.hypot(lump.p_G[1], lump.p_G[2]), 14);
      expect(Math.abs(dot(arm, axisDirection(X_RG)))).toBeLessThan(1e-16);
    }
  });

  test('on the feathering axis turns nothing', () => {
    const lump: Lump = { mass: 0.002, p_G: [0.05, 0, 0] };
    const pull = lumpPull(lump, FLAT, gripPose(FLAT, radians(0.3)));
    expect([pull.lever, pull.moment, pull.turning]).toEqual([0, 0, [0, 0, 0]]);
    expect(pull.still).toEqual(pull.force);
  });
});

describe('free feathering', () => {
  test('is the root of stiffness over inertia, and nothing without either', () => {
    const moments = createMoments();
    moments[JYY] = 3e-6;
    moments[JZZ] = 1e-6;
    expect(freeFeatheringFrequency(moments, 0.36)).toBeCloseTo(300, 10);
    for (const stiffness of [0, -1, NaN]) {
      expect(freeFeatheringFrequency(moments, stiffness)).toBeNull();
    }
    expect(freeFeatheringFrequency(createMoments(), 0.36)).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import type { Moments } from '../../../src/engine/mass/moments';
import { JYY, JZZ, M } from '../../../src/engine/mass/moments';
import { rotationAboutY, translation } from '../../../src/engine/math/pose';
import { angularSpeedFromRpm, radians } from '../../../src/engine/units';
import { featheringFrequencyOf, momentAt } from '../../support/feathering';
import {
  boxShape,
  cylinderShape,
  hexagonShape,
  pointAt,
  solid,
  weighed,
} from '../../support/shapes';

const SPEED = 1047.197551;
// Printed to nine decimals: half a unit of the last, and the speed is printed to 1e-9 of itself (moment: 2e-9 x 0.4).
const PRINTED = 1.5e-9;

/** 10 g, chord 30, thickness 3.6 mm, span 80 mm, its middle at `station`. */
function boxBlade(station: number) {
  const density = 0.01 / (0.08 * 0.03 * 0.0036);
  return solid(boxShape(0.08, 0.03, 0.0036), density, translation(station, 0, 0));
}

describe('box blade, 10 g, chord 30, thickness 3.6 mm, 10,000 rpm', () => {
  // Derived: M = -W^2 (m / 24) (c^2 - t^2) sin 2t; confirmed there with an independent multibody engine.
  test.each([
    [10, -0.138624784],
    [20, -0.260529374],
    [45, -0.405311754],
    [-15, 0.202655877],
  ])('at %d degrees the moment is %d N m', (degrees, expected) => {
    expect(Math.abs(momentAt(weighed(boxBlade(0.1)), SPEED, degrees) - expected)).toBeLessThan(
      PRINTED,
    );
  });

  test('the station along the feathering axis makes no difference', () => {
    for (const station of [0, 0.05, 1]) {
      const moment = momentAt(weighed(boxBlade(station)), SPEED, 20);
      expect(Math.abs(moment + 0.260529374)).toBeLessThan(PRINTED);
    }
  });

  test('10,000 rpm is the angular speed that the figures were printed for', () => {
    expect(Math.abs(angularSpeedFromRpm(10_000) - SPEED)).toBeLessThan(5e-7);
  });
});

describe('point mass of 0.8 g at (25, 12, 4) mm', () => {
  // Derived: M = -W^2 m [ (y^2 - z^2)/2 sin 2t + y z cos 2t ].
  test.each([
    [0, -0.042110312],
    [10, -0.058774183],
    [-10, -0.020367316],
    [30, -0.069679956],
  ])('at %d degrees the moment is %d N m', (degrees, expected) => {
    const point = weighed(pointAt(0.0008, 0.025, 0.012, 0.004));
    expect(Math.abs(momentAt(point, SPEED, degrees) - expected)).toBeLessThan(PRINTED);
  });
});

describe('counterweights square to the chord', () => {
  // Derived: A of the blade is m (c^2 - t^2) / 12 = 7.392e-7 kg m^2 = 2 x 3.696 g x (10 mm)^2.
  test('two points of 3.696 g at z = +-10 mm make the box blade neutral at every pitch and speed', () => {
    const balanced = weighed(
      boxBlade(0.1),
      pointAt(0.003696, 0, 0, 0.01),
      pointAt(0.003696, 0, 0, -0.01),
    );
    for (const speed of [1, SPEED, 1e4]) {
      for (let degrees = -90; degrees <= 90; degrees += 15) {
        // What is left is rounding of J_yy, 7.6e-7 kg m^2, by 1e-15 of itself.
        expect(Math.abs(momentAt(balanced, speed, degrees))).toBeLessThan(speed * speed * 1e-21);
      }
    }
  });

  test('half that counterweight leaves half the moment', () => {
    const half = weighed(
      boxBlade(0.1),
      pointAt(0.001848, 0, 0, 0.01),
      pointAt(0.001848, 0, 0, -0.01),
    );
    for (const degrees of [10, 20, 45]) {
      const ratio = momentAt(half, SPEED, degrees) / momentAt(weighed(boxBlade(0)), SPEED, degrees);
      expect(Math.abs(ratio - 0.5)).toBeLessThan(1e-13);
    }
  });
});

describe('the length at which a bolt counts for nothing', () => {
  const spread = (moments: Moments) => (moments[JYY] - moments[JZZ]) / moments[JYY];

  // Derived: J_yy = m r^2 / 4, J_zz = m L^2 / 12.
  test('a cylinder square to the chord counts for nothing at sqrt(3) radii, shorter ones add to A', () => {
    const r = 0.0015;
    const along = (factor: number) => spread(weighed(solid(cylinderShape(r, factor * r), 7850)));
    expect(Math.abs(along(Math.sqrt(3)))).toBeLessThan(1e-14);
    expect(along(1.7)).toBeGreaterThan(0.03);
    expect(along(1.76)).toBeLessThan(-0.03);
  });

  // Derived: a hexagon of side s has area 3 sqrt(3)/2 s^2 and second moment 5 sqrt(3)/16 s^4: L^2 = 5/2 s^2.
  test('a hexagonal prism counts for nothing at 1.58114 sides', () => {
    const s = 0.003;
    const along = (factor: number) => spread(weighed(solid(hexagonShape(s, factor * s), 7850)));
    expect(Math.abs(along(Math.sqrt(2.5)))).toBeLessThan(1e-14);
    expect(Math.sqrt(2.5).toFixed(5)).toBe('1.58114');
    expect(along(1.57)).toBeGreaterThan(0.01);
  });

  test('a 3 x 20 mm steel pin weighs 1.109767605 g with J_yy - J_zz = -3.636800922e-8 kg m^2', () => {
    const pin = weighed(solid(cylinderShape(0.0015, 0.02), 7850));
    expect(Math.abs(pin[M] - 1.109767605e-3)).toBeLessThan(0.6e-12);
    expect(Math.abs(pin[JYY] - pin[JZZ] + 3.636800922e-8)).toBeLessThan(0.6e-17);
  });

  test('the same pin along the feathering axis counts for nothing at any length', () => {
    const pose = {
      rotation: rotationAboutY(radians(Math.PI / 2)),
      translation: [0.03, 0, 0] as const,
    };
    const pin = weighed(solid(cylinderShape(0.0015, 0.02), 7850, pose));
    expect(pin[JYY] - pin[JZZ]).toBe(0);
  });
});

describe('free feathering about flat pitch', () => {
  // Published: R. Prouty, "Pitch-Link Loads": a thin blade free in feather oscillates at once per revolution.
  test('a plate of no thickness oscillates exactly once per revolution', () => {
    const plate = weighed(pointAt(0.001, 0.1, 0.01, 0), pointAt(0.001, 0.1, -0.01, 0));
    expect(Number(featheringFrequencyOf(plate, SPEED)) / SPEED).toBe(1);
  });

  // Derived: sqrt((c^2 - t^2) / (c^2 + t^2)) with t = 0.12 c.
  test('a box blade of 12 percent thickness oscillates at 0.985702 per revolution', () => {
    const rate = Number(featheringFrequencyOf(weighed(boxBlade(0.1)), SPEED)) / SPEED;
    expect(Math.abs(rate - 0.985702)).toBeLessThan(0.5e-6);
  });

  test('a blade that flees, or weighs nothing, has no frequency', () => {
    const bolt = weighed(solid(cylinderShape(0.0015, 0.02), 7850));
    expect(featheringFrequencyOf(bolt, SPEED)).toBeNull();
    expect(featheringFrequencyOf(weighed(), SPEED)).toBeNull();
  });
});

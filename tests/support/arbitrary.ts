import * as fc from 'fast-check';
import type { RotorConditions } from '../../src/engine/feathering/rotor';
import type { Pose } from '../../src/engine/math/pose';
import type { Mat3, Vec3 } from '../../src/engine/math/vector';
import { radians } from '../../src/engine/units';
import { quaternionMatrix } from './seeded';
import type { CloudPoint } from './shapes';

/** Seeded, so that a failing law fails again. */
export const LAW = { seed: 1910, numRuns: 300 } as const;

/**
 * A number between two limits. `fc.double` draws evenly among all doubles, of which nearly all are smaller than 1e-12: by
 * itself it makes laws of zeros (a dropped term went through). So four in five are drawn evenly by size; the rest are
 * its own, among them zero and the ends. Sizes below 1e-12 count as zero: the laws are about rounding, not underflow.
 */
export function real(low: number, high: number): fc.Arbitrary<number> {
  const even = fc
    .integer({ min: 0, max: 2 ** 31 - 1 })
    .map((k) => low + ((high - low) * k) / (2 ** 31 - 1));
  const any = fc.double({ min: low, max: high, noNaN: true, noDefaultInfinity: true });
  return fc
    .oneof({ weight: 4, arbitrary: even }, { weight: 1, arbitrary: any })
    .map((value) => (Math.abs(value) < 1e-12 ? 0 : value));
}

export const position: fc.Arbitrary<Vec3> = fc.tuple(
  real(-0.1, 0.1),
  real(-0.1, 0.1),
  real(-0.1, 0.1),
);

/** Points of 0.1 to 10 g within 0.1 m of the origin. */
export const cloud: fc.Arbitrary<CloudPoint[]> = fc.array(
  fc.tuple(real(1e-4, 1e-2), real(-0.1, 0.1), real(-0.1, 0.1), real(-0.1, 0.1)),
  { minLength: 1, maxLength: 12 },
);

export const rotation: fc.Arbitrary<Mat3> = fc
  .tuple(real(-1, 1), real(-1, 1), real(-1, 1), real(-1, 1))
  .filter((q) => Math.hypot(...q) > 0.1)
  .map((q) => {
    const n = Math.hypot(...q);
    return quaternionMatrix([q[0] / n, q[1] / n, q[2] / n, q[3] / n]);
  });

export const pose: fc.Arbitrary<Pose> = fc.record({ rotation, translation: position });

/** Any turn rate up to 2000 rad/s either way, torque offset to 30 mm, precone to 0.5 rad. */
export const conditions: fc.Arbitrary<RotorConditions> = fc.record({
  angularSpeed: real(-2000, 2000),
  torqueOffset: real(-0.03, 0.03),
  precone: real(-0.5, 0.5).map(radians),
});

export const pitchAngle = real(-Math.PI, Math.PI);

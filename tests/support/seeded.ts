import type { Pose } from '../../src/engine/math/pose';
import type { Mat3, Vec3 } from '../../src/engine/math/vector';

/** Repeatable random numbers: the same seed gives the same numbers on every machine. */
export interface Seeded {
  /** Uniform in [0, 1). */
  unit(): number;
  between(low: number, high: number): number;
  /** A whole number in [low, high]. */
  whole(low: number, high: number): number;
  pick<T>(items: readonly T[]): T;
}

/** Mulberry32, a 32-bit mixing generator (public domain, T. Ettinger). Good enough to choose test cases. */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  function unit(): number {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }
  const between = (low: number, high: number) => low + (high - low) * unit();
  const whole = (low: number, high: number) => low + Math.floor((high - low + 1) * unit());
  return { unit, between, whole, pick: (items) => items[whole(0, items.length - 1)] };
}

/** Unit quaternion (w, x, y, z), uniform over all rotations (K. Shoemake, Graphics Gems III, 1992). */
export type Quaternion = readonly [w: number, x: number, y: number, z: number];

export function randomQuaternion(random: Seeded): Quaternion {
  const u = random.unit();
  const v = 2 * Math.PI * random.unit();
  const w = 2 * Math.PI * random.unit();
  const a = Math.sqrt(1 - u);
  const b = Math.sqrt(u);
  return [b * Math.cos(w), a * Math.sin(v), a * Math.cos(v), b * Math.sin(w)];
}

/** The rotation matrix of a unit quaternion, textbook form. */
export function quaternionMatrix([w, x, y, z]: Quaternion): Mat3 {
  return [
    1 - 2 * (y * y + z * z),
    2 * (x * y - w * z),
    2 * (x * z + w * y),
    2 * (x * y + w * z),
    1 - 2 * (x * x + z * z),
    2 * (y * z - w * x),
    2 * (x * z - w * y),
    2 * (y * z + w * x),
    1 - 2 * (x * x + y * y),
  ];
}

export function randomVector(random: Seeded, reach: number): Vec3 {
  return [
    random.between(-reach, reach),
    random.between(-reach, reach),
    random.between(-reach, reach),
  ];
}

export function randomPose(random: Seeded, reach: number): Pose {
  return {
    rotation: quaternionMatrix(randomQuaternion(random)),
    translation: randomVector(random, reach),
  };
}

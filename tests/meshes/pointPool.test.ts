import { describe, expect, it } from 'vitest';
import { PointPool } from '../../src/meshes/readers/pointPool';

const COUNT = 20_000;
/**
 * Looks for each point, new or known, at a table that is at most half full: 2.5 by random placing (a handbook figure for
 * open addressing in a row, from memory), as much again for making the table larger, and as much again for bad luck. Points that
 * all fall on one another take half their number each: ten thousand.
 */
const MOST_LOOKS = 8;

/** The hash that was here before, whose constants a file could know. */
function openHash(words: Uint32Array): number {
  let h = 0;
  for (const word of words) {
    h = Math.imul(h ^ word, 0x9e3779b1);
    h ^= h >>> 15;
  }
  h = Math.imul(h, 0x85ebca6b);
  return (h ^ (h >>> 13)) >>> 0;
}

/** Points that all have the hash 0 of before: the last word of each is worked back from it. */
function craftedPoints(): number[][] {
  const points: number[][] = [];
  const numbers = new Float64Array(3);
  const words = new Uint32Array(numbers.buffer);
  numbers[0] = 1;
  numbers[1] = 2;
  for (let k = 1; points.length < COUNT; k++) {
    words[4] = k;
    let h = 0;
    for (const word of words.subarray(0, 5)) {
      h = Math.imul(h ^ word, 0x9e3779b1);
      h ^= h >>> 15;
    }
    words[5] = h;
    if (Math.abs(numbers[2]) <= 1e9) points.push([...numbers]);
  }
  return points;
}

const grid = (step: number) =>
  Array.from({ length: COUNT }, (_, k) => [
    (k % 30) * step,
    (Math.floor(k / 30) % 30) * step,
    Math.floor(k / 900) * step,
  ]);

/** Neighbours in their lowest bits, and in their sizes. */
const neighbours = Array.from({ length: COUNT }, (_, k) => [1 + k * Number.EPSILON, 0, 0]);
const sizes = Array.from({ length: COUNT }, (_, k) => [
  0,
  2 ** -(k % 1000),
  -(2 ** -Math.floor(k / 1000)),
]);

describe('the pool of points', () => {
  it('is met by points that all had one hash when its constants were known', () => {
    const hashes = craftedPoints().map((point) =>
      openHash(new Uint32Array(Float64Array.from(point).buffer)),
    );
    expect(new Set(hashes)).toEqual(new Set([0]));
  });

  it.each([
    ['crafted for the hash of before', craftedPoints()],
    ['in a grid of 1 mm', grid(1)],
    ['in a grid of a fraction that no double holds', grid(0.1)],
    ['that differ in their last bits', neighbours],
    ['that are powers of two', sizes],
  ])('looks at a few places of its table for each of 20,000 points %s', (_, points) => {
    const pool = new PointPool();
    const first = points.map(([x, y, z]) => pool.add(x, y, z));
    // Known ones again, in the other order.
    const again = points.toReversed().map(([x, y, z]) => pool.add(x, y, z));
    expect(again.toReversed()).toEqual(first);
    expect(pool.count).toBe(new Set(points.map(String)).size);
    expect(pool.looks).toBeLessThan(MOST_LOOKS * 2 * COUNT);
    expect(pool.looks).toBeGreaterThanOrEqual(2 * COUNT);
  });

  it('gives indices in the order of coming, whatever its secret is', () => {
    const numbered = () => {
      const pool = new PointPool();
      return [...grid(0.1), [-0, 0, -0]].map(([x, y, z]) => pool.add(x, y, z));
    };
    expect(numbered()).toEqual(numbered());
    expect(numbered().slice(0, COUNT)).toEqual(Array.from({ length: COUNT }, (_, k) => k));
    expect(numbered()[COUNT]).toBe(0);
  });
});

import { describe, expect, test } from 'vitest';
import { airNodes } from '../../../src/engine/air/airNodes';
import { DEGREE } from './rotors';

const FLAT = new Float64Array(4);
const nodes = (from: number, to: number, intervals: number, twist = FLAT) => [
  ...airNodes(from, to, intervals, twist),
];

/** Steps that the nodes are about a pitch, those within half a step. */
const about = (all: readonly number[], pitch: number, step: number) =>
  all.map((node) => (node - pitch) / step).filter((share) => Math.abs(share) <= 0.75);

describe('pitches at which the air is solved', () => {
  test('are equal steps where the lift nowhere changes sign', () => {
    expect(nodes(10, 20, 4)).toEqual([10, 12.5, 15, 17.5, 20]);
  });

  test('are closer about zero lift: a sixteenth, an eighth, a quarter and a half of a step to both sides', () => {
    const all = nodes(-8, 8, 4);
    expect(about(all, 0, 4)).toEqual([
      -1 / 2,
      -1 / 4,
      -1 / 8,
      -1 / 16,
      0,
      1 / 16,
      1 / 8,
      1 / 4,
      1 / 2,
    ]);
    expect(all).toHaveLength(5 + 8);
    expect(all).toEqual(all.toSorted((a, b) => a - b));
  });

  test('are closer every quarter turn, before and beyond the range as far as a step reaches', () => {
    const all = nodes(-90, 180, 27);
    for (const pitch of [0, 90]) expect(about(all, pitch, 10)).toHaveLength(9);
    expect(about(all, -90, 10)).toEqual([0, 1 / 16, 1 / 8, 1 / 4, 1 / 2]);
    expect(about(all, 180, 10)).toEqual([-1 / 2, -1 / 4, -1 / 8, -1 / 16, 0]);
    // Zero lies a quarter of a step outside either end: half a step from there is a quarter inside.
    expect(nodes(1, 9, 2)).toEqual([1, 2, 5, 9]);
    expect(nodes(-9, -1, 2)).toEqual([-9, -5, -2, -1]);
  });

  test('follow the twist of the blade, by the middle of it, unless it is more than a step', () => {
    const twist = Float64Array.from([2 * DEGREE, 4 * DEGREE, 3.5 * DEGREE]);
    const all = nodes(-8, 8, 4, twist);
    const shares = about(all, -3, 4).map((share) => share * 16);
    for (const share of [-8, -4, -2, -1, 0, 1, 2, 4, 8]) {
      expect(shares.some((one) => Math.abs(one - share) < 1e-9)).toBe(true);
    }
    const wide = Float64Array.from([-2.1 * DEGREE, 2 * DEGREE]);
    expect(nodes(-8, 8, 4, wide)).toEqual([-8, -4, 0, 4, 8]);
    const within = Float64Array.from([-2 * DEGREE, 1.9 * DEGREE]);
    expect(nodes(-8, 8, 4, within).length).toBeGreaterThan(5);
    expect(nodes(-8, 8, 4, new Float64Array(0))).toEqual([-8, -4, 0, 4, 8]);
  });

  test('are not nearer to an added one than a sixty-fourth of a step, the ends excepted', () => {
    // Flat at 0.01: the regular node at 0 goes, the added one at 0.01 stays.
    const all = nodes(-1, 1, 2, Float64Array.of(-0.01 * DEGREE));
    expect(all.filter((node) => Math.abs(node) < 0.03)).toHaveLength(1);
    const apart = nodes(-1, 1, 2, Float64Array.of(-0.02 * DEGREE));
    expect(apart.filter((node) => Math.abs(node) < 0.03)).toHaveLength(2);
    // An added node that would lie a hundredth of a step inside an end is left out.
    const ends = nodes(-0.51, 1, 2, FLAT);
    expect(ends[0]).toBe(-0.51);
    expect(ends[1] - ends[0]).toBeGreaterThan(0.755 / 64);
  });

  test('keep that distance in shares of the step, of two degrees too', () => {
    // 0.02 is a hundredth of the step of 2: the regular node at 0 goes, and so does a half step that is 0.015 inside an end.
    const all = nodes(-2, 2, 2, Float64Array.of(-0.02 * DEGREE));
    expect(all.filter((node) => Math.abs(node) < 0.03)).toHaveLength(1);
    const [low, second] = nodes(-1.02, 3, 2);
    expect([low, second > -0.99]).toEqual([-1.02, true]);
    const mirrored = nodes(-3, 1.02, 2).toReversed();
    expect([mirrored[0], mirrored[1] < 0.99]).toEqual([1.02, true]);
  });

  test('of a twisted blade are closer about its own quarter turns', () => {
    expect(about(nodes(80, 95, 15, Float64Array.of(3 * DEGREE)), 87, 1)).toHaveLength(9);
    expect(about(nodes(2, 6, 4, Float64Array.of(-3 * DEGREE)), 3, 1)).toHaveLength(9);
  });

  test('mirror with the range', () => {
    expect(nodes(-7, 3, 5).map((node) => 0 - node)).toEqual(nodes(-3, 7, 5).toReversed());
  });
});

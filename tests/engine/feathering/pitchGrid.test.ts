import { describe, expect, test } from 'vitest';
import { gridOfRange, PitchGrid } from '../../../src/engine/feathering/pitchGrid';
import { radians } from '../../../src/engine/units';

describe('a grid of pitches', () => {
  test('has sines, cosines and the sines of the halves: 30, 60 and 90 degrees by hand', () => {
    const [half, root2, root3] = [0.5, Math.SQRT1_2, Math.sqrt(3) / 2];
    const grid = new PitchGrid(
      Float64Array.of(Math.PI / 6, Math.PI / 3, Math.PI / 2, -Math.PI / 2),
    );
    const near = (values: readonly number[]) => values.map((value) => expect.closeTo(value, 15));
    expect([...grid.sines]).toEqual(near([half, root3, 1, -1]));
    expect([...grid.cosines]).toEqual(near([root3, half, 0, 0]));
    // sin 15 degrees is (sqrt 6 - sqrt 2) / 4.
    expect([...grid.halves]).toEqual(near([(Math.sqrt(6) - Math.SQRT2) / 4, half, root2, -root2]));
  });

  test('of a range is made once and kept while few others are asked for', () => {
    const made: string[] = [];
    const gridOf = gridOfRange((from, to) => {
      made.push(`${from} ${to}`);
      return Float64Array.of(from, to);
    });
    const of = (from: number, to: number) => gridOf(radians(from), radians(to));
    const first = of(0, 1);
    expect([...first.pitches]).toEqual([0, 1]);
    // Neither end alone makes it the same range.
    expect([...of(0, 2).pitches]).toEqual([0, 2]);
    expect([...of(-1, 1).pitches]).toEqual([-1, 1]);
    expect(of(0, 1)).toBe(first);
    expect(made).toHaveLength(3);
    expect(of(5, 6)).not.toBe(first);
    expect(of(0, 1)).toBe(first);
    // Four are kept: with a fifth the oldest goes, and no other.
    of(7, 8);
    const kept = made.length;
    for (const [from, to] of [
      [0, 2],
      [-1, 1],
      [5, 6],
      [7, 8],
    ])
      of(from, to);
    expect(made).toHaveLength(kept);
    expect(of(0, 1)).not.toBe(first);
    expect(made).toHaveLength(kept + 1);
  });
});

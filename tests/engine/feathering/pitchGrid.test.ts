import { describe, expect, it } from 'vitest';
import { gridOfRange, PitchGrid } from '../../../src/engine/feathering/pitchGrid';
import { radians } from '../../../src/engine/units';

describe('a grid of pitches', () => {
  it('holds sines, cosines and sines of the halves, by angles whose values are known', () => {
    const turn = Math.PI;
    const grid = new PitchGrid(Float64Array.of(0, turn / 6, turn / 2, -turn / 3));
    const root = Math.sqrt(3) / 2;
    const close = (found: Float64Array, wanted: readonly number[]) => {
      expect(found).toHaveLength(wanted.length);
      wanted.forEach((value, k) => expect(found[k]).toBeCloseTo(value, 15));
    };
    close(grid.sines, [0, 0.5, 1, -root]);
    close(grid.cosines, [1, root, 0, 0.5]);
    // Sine of 15 degrees: (root 6 - root 2) / 4.
    close(grid.halves, [0, (Math.sqrt(6) - Math.sqrt(2)) / 4, Math.SQRT1_2, -0.5]);
    expect([...grid.pitches]).toEqual([0, turn / 6, turn / 2, -turn / 3]);
  });
});

describe('the grid of a range', () => {
  const asked: number[][] = [];
  const gridOf = gridOfRange((from, to) => {
    asked.push([from, to]);
    return Float64Array.of(from, to);
  });
  const of = (from: number, to: number) => gridOf(radians(from), radians(to));

  it('is the same object while few others are asked for, and made anew after four', () => {
    asked.length = 0;
    const first = of(0, 1);
    expect([...first.pitches]).toEqual([0, 1]);
    // Each differs from the first in one end.
    const others = [of(0, 2), of(0.5, 1), of(2, 3)];
    expect(of(0, 1)).toBe(first);
    expect([of(0, 2), of(0.5, 1), of(2, 3)]).toEqual(others);
    expect(others.map(({ pitches }) => [...pitches])).toEqual([
      [0, 2],
      [0.5, 1],
      [2, 3],
    ]);
    expect(asked).toHaveLength(4);
    // A fifth puts the oldest out, and that one only.
    of(7, 8);
    expect(of(0, 2)).toBe(others[0]);
    expect(of(2, 3)).toBe(others[2]);
    expect(asked).toHaveLength(5);
    expect(of(0, 1)).not.toBe(first);
    expect(of(0, 1)).toEqual(first);
    expect(asked).toHaveLength(6);
  });
});

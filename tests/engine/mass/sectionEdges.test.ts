import { describe, expect, test } from 'vitest';
import { applyMeasured } from '../../../src/engine/mass/measured';
import { createMoments, JXX, JYY, JZZ, M } from '../../../src/engine/mass/moments';
import { addAreaMoments, createAreaMoments } from '../../../src/engine/mass/outline';
import { insetLimit, insetSection } from '../../../src/engine/mass/sectionInset';
import { fourDigitOutline, outlineClearance } from '../../../src/engine/mass/sectionOutline';

/** From the trailing edge over the top to the front and back: 1 to 5 along, 1 to 3 up. */
const RECTANGLE = Float64Array.of(5, 3, 1, 3, 1, 1, 5, 1);

describe('a section moved inward', () => {
  test('of a rectangle is the rectangle less the skin on all four sides', () => {
    const inner = insetSection(RECTANGLE, 0.25, 8);
    if (!inner) throw new Error('nothing is left');
    const along = [...inner].filter((_, i) => i % 2 === 0);
    const up = [...inner].filter((_, i) => i % 2 === 1);
    expect(Math.max(...along)).toBeCloseTo(4.75, 9);
    expect(Math.min(...along)).toBeCloseTo(1.25, 9);
    expect(Math.max(...up)).toBeCloseTo(2.75, 9);
    expect(Math.min(...up)).toBeCloseTo(1.25, 9);
  });

  test('is the same wherever the section stands', () => {
    const section = fourDigitOutline({ thickness: 0.12, camber: 0.02, position: 0.4 }, 24);
    const moved = section.map((value, i) => value + (i % 2 === 0 ? 3 : 0.5));
    expect(insetLimit(moved)).toBeCloseTo(insetLimit(section), 12);
    const [one, other] = [section, moved].map((outline) => insetSection(outline, 0.02, 12));
    one?.forEach((value, i) => expect(other?.[i]).toBeCloseTo(value + (i % 2 === 0 ? 3 : 0.5), 9));
    expect(one).not.toBeNull();
  });
});

test('a place is clear of a slanted triangle on its inner side of all three edges', () => {
  const corners = [
    [0, 0],
    [4, 1],
    [1, 5],
  ] as const;
  const triangle = Float64Array.from(corners.flat());
  for (let x = -0.93; x < 5; x += 0.37) {
    for (let y = -0.91; y < 6; y += 0.41) {
      const inside = corners.every(([ax, ay], i) => {
        const [bx, by] = corners[(i + 1) % 3];
        return (bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0;
      });
      expect(outlineClearance(triangle, x, y) > 0).toBe(inside);
    }
  }
});

test('areas are added by their sense: a square clockwise counts as taken away', () => {
  const out = createAreaMoments();
  addAreaMoments(
    [
      [1, 1],
      [1, 3],
      [3, 3],
      [3, 1],
    ],
    2,
    out,
  );
  // Area 4, first moments 8, second 4 (4 + 1/3), product 16; twice, and taken away.
  expect(out).toEqual({
    area: -8,
    x: -16,
    y: -16,
    xx: expect.closeTo((-8 * 13) / 3, 12),
    yy: expect.closeTo((-8 * 13) / 3, 12),
    xy: expect.closeTo(-32, 12),
  });
});

test('one timing sets the greater of its two spreads, whichever that is', () => {
  const spreads = (yy: number, zz: number) => {
    const model = createMoments();
    model[M] = 0.01;
    [model[JXX], model[JYY], model[JZZ]] = [9e-6, yy, zz];
    const out = createMoments();
    applyMeasured(model, { inertia: [{ axis: 0, moment: 6e-6 }] }, out);
    return [out[JXX], out[JYY], out[JZZ]].map((value) => Number((value * 1e6).toFixed(9)));
  };
  expect(spreads(1e-6, 4e-6)).toEqual([9, 1, 5]);
  expect(spreads(4e-6, 1e-6)).toEqual([9, 5, 1]);
});

import { describe, expect, test } from 'vitest';
import { bearingFriction } from '../../../src/engine/friction/bearingFriction';
import { beyondTable, dragAt } from '../../../src/engine/friction/dragTable';
import { holdingBands } from '../../../src/engine/friction/holdingBands';
import { radians } from '../../../src/engine/units';

describe('drag measured at rest', () => {
  const table = { travel: [-0.005, 0, 0.005], force: [0.4, 0.3, 0.5] };
  test('is linear between the readings and held beyond them, which is told', () => {
    expect(dragAt(table, 0.0025)).toBeCloseTo(0.4, 15);
    expect(dragAt(table, -0.005)).toBe(0.4);
    expect(dragAt(table, 0.02)).toBe(0.5);
    expect(beyondTable(table, 0.02)).toBe(true);
    expect(beyondTable(table, 0.005)).toBe(false);
    expect(beyondTable({ travel: [0], force: [0.3] }, 1)).toBe(false);
    expect(dragAt({ travel: [], force: [] }, 0)).toBe(0);
    expect(dragAt(table, NaN)).toBeNaN();
  });

  // Both ends and every row are the table's own; between them the line through two points (hand).
  test('needs no row at zero, and one row stands for every travel', () => {
    const uneven = { travel: [-0.002, 0.001, 0.005], force: [3, 1, 2] };
    const at = [-0.03, -0.002, -0.001, 0.001, 0.002, 0.005, 0.009];
    const expected = [3, 3, 1 + 4 / 3, 1, 1.25, 2, 2];
    for (const [k, travel] of at.entries()) {
      expect(dragAt(uneven, travel)).toBeCloseTo(expected[k], 14);
    }
    expect([-1, 0, 1].map((travel) => dragAt({ travel: [0], force: [0.3] }, travel))).toEqual([
      0.3, 0.3, 0.3,
    ]);
    expect([-0.00201, -0.002, 0.005].map((travel) => beyondTable(uneven, travel))).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe('friction of a bearing', () => {
  // Published: Jindal, Machine Design, Example 18-1: mu 0.0011, 16 kN, 40 mm bore: 0.352 N m.
  test('is half of coefficient, load and diameter', () => {
    expect(bearingFriction({ coefficient: 0.0011, load: 16_000, diameter: 0.04 })).toBeCloseTo(
      0.352,
      12,
    );
    // Up to twice the running friction to start (RoyMech).
    expect(bearingFriction({ coefficient: 0.0011, load: -16_000, diameter: 0.04 }, 2)).toBeCloseTo(
      0.704,
      12,
    );
  });
});

describe('holding bands', () => {
  const from = radians(-1.5);
  const to = radians(1.5);
  test('are where friction is at least the moment, ends to rounding', () => {
    // |-sin t| <= 0.1 about zero: asin 0.1 either way.
    const bands = holdingBands(
      (t) => -Math.sin(t),
      () => 0.1,
      from,
      to,
      0.01,
      [0],
    );
    expect(bands.length).toBe(1);
    expect(bands[0][0]).toBeCloseTo(-Math.asin(0.1), 13);
    expect(bands[0][1]).toBeCloseTo(Math.asin(0.1), 13);
  });
  test('one narrower than the step is found where it holds a rest or flee angle', () => {
    const bands = holdingBands(
      (t) => t - 0.1234,
      () => 1e-5,
      from,
      to,
      0.5,
      [0.1234],
    );
    expect(bands.length).toBe(1);
    expect(bands[0][0]).toBeCloseTo(0.12339, 12);
    expect(bands[0][1]).toBeCloseTo(0.12341, 12);
  });
  test('reach to the ends of the range, and are parted by a gap', () => {
    expect(
      holdingBands(
        () => 0,
        () => 1,
        from,
        to,
        0.1,
        [],
      ),
    ).toEqual([[from, to]]);
    expect(
      holdingBands(
        () => 2,
        () => 1,
        from,
        to,
        0.1,
        [],
      ),
    ).toEqual([]);
    const gap = (t: number) => (t > 0.05 && t < 0.35 ? NaN : 0);
    const parted = holdingBands(gap, () => 1, from, to, 0.1, []);
    expect(parted.length).toBe(2);
    expect(parted[0][1]).toBeLessThanOrEqual(0.05 + 1e-12);
    expect(parted[1][0]).toBeGreaterThanOrEqual(0.35 - 1e-12);
  });

  // A straight moment x - zero against friction f holds from zero - f to zero + f (hand).
  function straight(zero: number, f: number, equilibria: readonly number[]) {
    const moment = (t: number) => t - zero;
    return holdingBands(moment, () => f, radians(0), radians(10), 1, equilibria);
  }

  test('the last stretch of the range is looked at too', () => {
    const [[low, high]] = straight(0, 9.5, [0]);
    expect([low, high]).toEqual([0, expect.closeTo(9.5, 12)]);
    expect(straight(10, 0.25, [])).toEqual([[expect.closeTo(9.75, 12), 10]]);
  });

  test('a rest angle outside the range makes none', () => {
    expect(straight(-2, 0.1, [-2])).toEqual([]);
    expect(straight(12, 0.1, [12])).toEqual([]);
  });

  test('without friction a single angle is no band, and no moment at all is one', () => {
    for (const zero of [5, 5.5, 0, 10]) expect(straight(zero, 0, [zero])).toEqual([]);
    const none = () => 0;
    expect(holdingBands(none, none, radians(0), radians(10), 1, [])).toEqual([[0, 10]]);
  });

  test('beside a gap begin and end where numbers do', () => {
    const within = (t: number) => (t > 3.3 && t < 6.7 ? 0 : Number.NaN);
    expect(holdingBands(within, () => 1, radians(0), radians(10), 1, [])).toEqual([[4, 6]]);
  });
});

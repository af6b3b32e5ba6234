import { describe, expect, test } from 'vitest';
import { type PolarTable, tableSection } from '../../../src/engine/air/polar';
import {
  checkPolar,
  MOST_BLOCKS,
  MOST_ROWS,
  mirrorPolar,
  type PolarBlock,
  type PolarRow,
  polarFault,
} from '../../../src/engine/air/polarTable';
import { createCoefficients, OUTSIDE_ANGLE } from '../../../src/engine/air/section';
import { DEGREE } from './rotors';

const row = (angleDeg: number, lift = 0, drag = 0.01, moment = 0): PolarRow => ({
  angleDeg,
  lift,
  drag,
  moment,
});
const block = (reynolds: number | null, ...rows: PolarRow[]): PolarBlock => ({ reynolds, rows });
const table = (...blocks: PolarBlock[]): PolarTable => ({ name: 'any', blocks });
const pair = [row(0), row(5)];

function faultOf(one: PolarTable, lines?: readonly (readonly number[])[]) {
  const checked = checkPolar(one, lines);
  return checked.ok ? null : checked.error;
}

describe('a table that no section can be made of', () => {
  test.each([
    [table(block(1, row(0))), { kind: 'tooFewRows', line: 1, value: 1, limit: 2 }],
    [table(), { kind: 'tooFewRows', line: 1, value: 0, limit: 2 }],
    [table(block(1, ...pair), block(2)), { kind: 'tooFewRows', line: 3, value: 0 }],
    [table(block(1, ...pair), block(null, ...pair)), { kind: 'reynoldsMissing', line: 3 }],
    [table(block(0, ...pair)), { kind: 'reynoldsNotPositive', line: 1, value: 0, limit: 0 }],
    [table(block(Infinity, ...pair)), { kind: 'reynoldsNotPositive' }],
    [table(block(1, ...pair), block(1, ...pair)), { kind: 'reynoldsRepeated', value: 1 }],
    [table(block(1, row(0), row(0))), { kind: 'notAscending', line: 2, value: 0, limit: 0 }],
    [table(block(1, row(-181), row(0))), { kind: 'angleOutOfRange', value: -181, limit: 180 }],
    [table(block(1, row(0, -20.1), row(1))), { kind: 'coefficientOutOfRange', text: 'lift' }],
    [table(block(1, row(0), row(1, 0, 20.1))), { kind: 'coefficientOutOfRange', text: 'drag' }],
    [
      table(block(1, row(0), row(1, 0, 0, 20.1))),
      { kind: 'coefficientOutOfRange', line: 2, value: 20.1, limit: 20, text: 'moment' },
    ],
    [table(block(1, row(Number.NaN), row(1))), { kind: 'notFinite', text: 'angleDeg' }],
    [table(block(1, row(0), row(1, 0, 0, Infinity))), { kind: 'notFinite', text: 'moment' }],
    [table(block(1, row(0, 0, -1e-9), row(1))), { kind: 'dragNegative', text: 'drag', limit: 0 }],
  ])('is refused by what is wrong with it: %#', (one, fault) => {
    expect(faultOf(one)).toMatchObject(fault);
  });

  test('is not one at the limits themselves', () => {
    const edge = table(block(1, row(-180, -20, 0, 20), row(180, 20, 20, -20)));
    expect(faultOf(edge)).toBeNull();
  });

  test('has no more rows and blocks than a table may have', () => {
    const rows = (count: number) =>
      Array.from({ length: count }, (_, k) => row(-170 + (340 * k) / count));
    expect(faultOf(table(block(1, ...rows(MOST_ROWS))))).toBeNull();
    expect(faultOf(table(block(1, ...rows(MOST_ROWS + 1))))).toMatchObject({
      kind: 'tooManyRows',
      value: MOST_ROWS + 1,
      limit: MOST_ROWS,
    });
    const blocks = (count: number) =>
      table(...Array.from({ length: count }, (_, k) => block(k + 1, ...pair)));
    expect(faultOf(blocks(MOST_BLOCKS))).toBeNull();
    expect(faultOf(blocks(MOST_BLOCKS + 1))).toMatchObject({
      kind: 'tooManyBlocks',
      value: MOST_BLOCKS + 1,
      limit: MOST_BLOCKS,
    });
  });

  test('is named by the lines of its file where they are known', () => {
    const lines = [
      [11, 12],
      [15, 17],
    ];
    const second = (...rows: PolarRow[]) => table(block(9, ...pair), block(4, ...rows));
    expect(faultOf(second(row(0), row(0)), lines)).toMatchObject({ line: 17 });
    expect(faultOf(second(row(0)), lines)).toMatchObject({ line: 15 });
    const same = table(block(4, ...pair), block(4, ...pair));
    expect(faultOf(same, lines)).toMatchObject({ kind: 'reynoldsRepeated', line: 15 });
    expect(faultOf(same)).toMatchObject({ kind: 'reynoldsRepeated', line: 1 });
  });

  test('has its words cut at sixty letters', () => {
    expect(polarFault('noHeader', 3, 1, 2, 'z'.repeat(61))).toEqual({
      kind: 'noHeader',
      line: 3,
      value: 1,
      limit: 2,
      text: 'z'.repeat(60),
    });
    const fault = tableSection(table(block(1, row(0), row(0))));
    expect(fault).toMatchObject({ ok: false, error: { text: '' } });
  });
});

describe('a table completed by its mirror image', () => {
  test('has each row but that at zero twice', () => {
    const half = table(block(null, row(0, 0, 0.01), row(5, 0.5, 0.02, -0.01), row(9, 0.7, 0.03)));
    const whole = mirrorPolar(half);
    expect(whole).toMatchObject({
      value: {
        name: 'any',
        blocks: [
          {
            reynolds: null,
            rows: [
              row(-9, -0.7, 0.03, -0),
              row(-5, -0.5, 0.02, 0.01),
              row(0, 0, 0.01),
              row(5, 0.5, 0.02, -0.01),
              row(9, 0.7, 0.03),
            ],
          },
        ],
      },
    });
  });

  test.each([
    [[row(-1), row(5)], { line: 1, value: -1, limit: 0, text: 'angleDeg' }],
    [[row(0, 0, 0.01, 0.02), row(5)], { line: 1, value: 0.02, limit: 0, text: 'moment' }],
    [[row(0, 0.3, 0.01, 0.02), row(5)], { line: 1, value: 0.3, limit: 0, text: 'lift' }],
  ])('must be the half of a symmetric one: %#', (rows, fault) => {
    expect(mirrorPolar(table(block(1, ...rows)))).toMatchObject({
      ok: false,
      error: { kind: 'notSymmetric', ...fault },
    });
    const later = table(block(1, ...pair), block(2, ...rows));
    expect(mirrorPolar(later)).toMatchObject({ ok: false, error: { line: 3 } });
    expect(tableSection(later, { mirror: true })).toMatchObject({ ok: false, error: { line: 3 } });
    const short = tableSection(table(block(1, row(0))), { mirror: true });
    expect(short).toMatchObject({ ok: false, error: { kind: 'tooFewRows' } });
  });
});

describe('beyond the rows of a table', () => {
  const made = (one: PolarTable, interpolation: 'linear' | 'monotone' = 'linear') => {
    const section = tableSection(one, { interpolation });
    if (!section.ok) throw new Error(section.error.kind);
    return (deg: number, reynolds = 1) => ({
      ...section.value.coefficients(deg * DEGREE, reynolds, createCoefficients()),
    });
  };
  const level = (low: number, high: number) =>
    made(table(block(null, row(low, 9, 9, 9), row(high, 9, 9, 9))));

  test('the last row fades within fifteen degrees: half of it is left after half of them', () => {
    const at = level(-30, 60);
    const plate = made(table(block(null, row(-180, 0), row(-179.9, 0))));
    for (const [edge, way] of [
      [60, 1],
      [-30, -1],
    ]) {
      const half = at(edge + way * 7.5);
      const bare = plate(edge + way * 7.5);
      expect(half.lift).toBeCloseTo(4.5 + bare.lift / 2, 10);
      expect(half.drag).toBeCloseTo(4.5 + bare.drag / 2, 10);
      expect(half.moment).toBeCloseTo(4.5 + bare.moment / 2, 10);
      expect(half.outside).toBe(OUTSIDE_ANGLE);
      expect(at(edge + way * 15.01).lift).toBeCloseTo(plate(edge + way * 15.01).lift, 10);
      expect(at(edge + way * 3).lift).toBeGreaterThan(7);
    }
    expect([at(-30).outside, at(60).outside]).toEqual([0, 0]);
  });

  test('the fade takes half of a gap that is narrower than both fades', () => {
    // Twenty degrees about 180 without rows: ten on each side, half faded after five.
    const at = level(-170, 170);
    const plate = made(table(block(null, row(-1, 0), row(1, 0))));
    for (const deg of [175, -175]) {
      expect(at(deg).lift).toBeCloseTo(4.5 + plate(deg).lift / 2, 10);
      expect(at(deg).outside).toBe(OUTSIDE_ANGLE);
    }
    expect(at(180).lift).toBeCloseTo(0, 10);
  });

  test('a full circle of rows has no outside', () => {
    const at = made(table(block(null, row(-180, 2, 1), row(0, 1, 0.5), row(180, 2, 1))));
    for (const deg of [180, -180, 179.9999999, 540, 90]) expect(at(deg).outside).toBe(0);
    expect(at(-180).lift).toBeCloseTo(2, 12);
    expect(at(90).lift).toBeCloseTo(1.5, 12);
  });

  test('the far end of a lopsided table is nearer round the back', () => {
    // Rows from 100 to 170 degrees: at -170 twenty degrees past the end, at 90 ten before the beginning.
    const at = made(table(block(null, row(100, 1, 0.1), row(170, 5, 0.1))));
    expect(at(175).lift).toBeGreaterThan(3);
    expect(at(95).lift).toBeLessThan(1.6);
  });
});

describe('between the rows', () => {
  const x = [-10, 0, 5, 20];
  const cubic = (values: readonly number[], deg: number, at = x) => {
    const rows = at.map((angle, i) => row(angle, values[i]));
    const section = tableSection(table(block(null, ...rows)));
    if (!section.ok) throw new Error(section.error.kind);
    return section.value.coefficients(deg * DEGREE, 1, createCoefficients()).lift;
  };

  test('a straight line stays one, whatever the steps', () => {
    for (const deg of [-9, -3, 0.7, 4, 11, 19.5]) {
      expect(
        cubic(
          x.map((v) => 0.3 + v / 50),
          deg,
        ),
      ).toBeCloseTo(0.3 + deg / 50, 13);
    }
  });

  test('a turn is flat, and what only rises only rises', () => {
    // Rows 0, 1, 0, 0: flat at the 1 and along the two last.
    const turned = (deg: number) => cubic([0, 1, 0, 0], deg);
    expect(turned(0.01)).toBeLessThan(1);
    expect(turned(-0.01)).toBeLessThan(1);
    expect((turned(0.001) - 1) / 0.001).toBeCloseTo(0, 3);
    expect(turned(12)).toBe(0);
    let last = -1;
    for (let deg = -10; deg <= 20; deg += 0.25) {
      const next = cubic([0, 0.1, 1, 1.05], deg);
      expect(next).toBeGreaterThan(last);
      last = next;
    }
  });

  test('slopes are the weighted harmonic mean of Fritsch and Butland', () => {
    // SIAM J. Sci. Stat. Comput. 5 (1984), 300-304: at 0 with steps 10 and 5 and slopes 1/10 and 2/5 (per degree):
    // 3 (10 + 5) / ((2 5 + 10) / 0.1 + (5 + 2 10) / 0.4).
    const wanted = 45 / (20 / 0.1 + 25 / 0.4);
    const h = 1e-4;
    const slope = (cubic([0, 1, 3, 4], h) - cubic([0, 1, 3, 4], -h)) / (2 * h);
    // The curvature jumps at a row: h times half of the jump.
    expect(slope).toBeCloseTo(wanted, 4);
    // At 5 with steps 5 and 15 and slopes 2/5 and 1/15.
    const next = 60 / (35 / 0.4 + 25 * 15);
    const there = (cubic([0, 1, 3, 4], 5 + h) - cubic([0, 1, 3, 4], 5 - h)) / (2 * h);
    expect(there).toBeCloseTo(next, 4);
    // At the ends the slope of the first and last step.
    expect((cubic([0, 1, 3, 4], -10 + h) - 0) / h).toBeCloseTo(0.1, 4);
    expect((4 - cubic([0, 1, 3, 4], 20 - h)) / h).toBeCloseTo(1 / 15, 4);
  });
});

describe('Reynolds numbers', () => {
  const at = (one: PolarTable, reynolds: number) => {
    const section = tableSection(one);
    if (!section.ok) throw new Error(section.error.kind);
    return { ...section.value.coefficients(0, reynolds, createCoefficients()) };
  };
  const level = (reynolds: number | null, lift: number) =>
    block(reynolds, row(-5, lift), row(5, lift));

  test('do not matter to a table that names none', () => {
    for (const reynolds of [1e-3, 1, 1e5]) {
      expect(at(table(level(null, 0.4)), reynolds)).toMatchObject({ lift: 0.4, outside: 0 });
    }
  });

  test('of three blocks are met between the two about them, each at its own', () => {
    const three = table(level(1e4, 1), level(1e5, 2), level(1e6, 5));
    for (const [reynolds, lift] of [
      [1e4, 1],
      [Math.sqrt(1e9), 1.5],
      [1e5, 2],
      [Math.sqrt(1e11), 3.5],
      [1e6, 5],
    ]) {
      expect(at(three, reynolds).lift).toBeCloseTo(lift, 12);
      expect(at(three, reynolds).outside).toBe(0);
    }
    expect(at(three, Number.NaN).lift).toBe(1);
  });
});

describe('the coverage of a table', () => {
  test('is what all blocks have, over all their Reynolds numbers', () => {
    const section = tableSection(
      table(block(2e5, row(-5), row(0), row(9)), block(1e5, row(-3), row(12))),
    );
    expect(section.ok && section.value.coverage).toEqual({
      lowestDeg: -3,
      highestDeg: 9,
      lowestReynolds: 1e5,
      highestReynolds: 2e5,
      rows: 5,
    });
  });
});

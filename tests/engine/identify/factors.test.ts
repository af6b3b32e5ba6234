import { describe, expect, it } from 'vitest';
import { ExactSum } from '../../../src/engine/identify/exactSum';
import {
  applyFactor,
  applyTransposed,
  factorise,
  solveLower,
  solveUpper,
} from '../../../src/engine/identify/householder';
import { singular } from '../../../src/engine/identify/singular';
import { seeded } from '../../support/seeded';

describe('a sum of 32 digits', () => {
  it('keeps what rounding loses: 1 beside 1e16, a millionth beside 1e12', () => {
    const sum = new ExactSum();
    for (const x of [1e16, 1, -1e16]) sum.add(x);
    expect(sum.value).toBe(1);
    sum.set(1e-6);
    sum.add(1e12);
    sum.add(1e-6);
    sum.add(-1e12);
    expect(sum.value).toBeCloseTo(2e-6, 20);
  });

  it('keeps the last bit of a product: (1 + e)^2 less 1 + 2 e is e^2', () => {
    // e = 2^-30: e^2 lies below the last bit of the square. (1 + e)(1 - e) = 1 - e^2 as well.
    const e = 2 ** -30;
    const sum = new ExactSum();
    sum.addProduct(1 + e, 1 + e);
    sum.add(-1 - 2 * e);
    expect(sum.value).toBe(e * e);
    sum.set(-1, 0);
    sum.addProduct(1 + e, 1 - e);
    expect(sum.value).toBe(-e * e);
    // Both halves full: 1/3 is a whole number of 2^-54, its square as rounded one of 2^-56; whole numbers say what is lost.
    const third = 1 / 3;
    const whole = BigInt(third * 2 ** 54);
    const exact = whole * whole - BigInt(third * third * 2 ** 56) * 2n ** 52n;
    sum.set(0);
    sum.addProduct(third, third);
    sum.add(-third * third);
    expect(sum.value).toBe(Number(exact) / 2 ** 108);
  });

  it('starts from two pieces', () => {
    const sum = new ExactSum();
    sum.set(1, 2 ** -60);
    sum.add(-1);
    expect(sum.value).toBe(2 ** -60);
    sum.set(5);
    expect(sum.value).toBe(5);
  });
});

/** Rows as they are written, column by column. */
const columnsOf = (rows: readonly (readonly number[])[]) =>
  Float64Array.from(rows[0].flatMap((_, j) => rows.map((row) => row[j])));

describe('a matrix as a rotation and a triangle', () => {
  const random = seeded(11);
  const rows = Array.from({ length: 7 }, () =>
    [1, 30, 5, 0.2].map((size) => random.between(-size, size)),
  );

  it('gives the matrix back, its columns in the order of the triangle', () => {
    const factors = factorise(columnsOf(rows), 7, 4);
    expect(factors.order[0]).toBe(1);
    factors.order.forEach((from, k) => {
      const column = new Float64Array(7);
      for (let i = 0; i < 4; i++) column[i] = factors.r[i * 4 + k];
      applyFactor(factors, column);
      column.forEach((value, i) => expect(value).toBeCloseTo(rows[i][from], 12));
    });
    expect([...factors.order].toSorted()).toEqual([0, 1, 2, 3]);
  });

  it('has a diagonal that falls, and nothing below it', () => {
    const { r } = factorise(columnsOf(rows), 7, 4);
    const diagonal = [0, 1, 2, 3].map((k) => Math.abs(r[k * 5]));
    expect(diagonal).toEqual(diagonal.toSorted((a, b) => b - a));
    for (let i = 0; i < 4; i++) for (let j = 0; j < i; j++) expect(r[i * 4 + j]).toBe(0);
    // The first is the length of the longest column.
    expect(diagonal[0]).toBeCloseTo(Math.hypot(...rows.map((row) => row[1])), 12);
  });

  it('turns there and back, and turning keeps lengths', () => {
    const factors = factorise(columnsOf(rows), 7, 4);
    const x = Float64Array.from({ length: 7 }, (_, i) => i - 2.5);
    const turned = x.slice();
    applyTransposed(factors, turned);
    expect(Math.hypot(...turned)).toBeCloseTo(Math.hypot(...x), 12);
    expect(turned[0]).not.toBeCloseTo(x[0], 3);
    applyFactor(factors, turned);
    turned.forEach((value, i) => expect(value).toBeCloseTo(x[i], 12));
  });

  it('leaves columns of nothing for last', () => {
    const factors = factorise(
      columnsOf([
        [0, 3],
        [0, 0],
        [0, 4],
      ]),
      3,
      2,
    );
    expect([...factors.order]).toEqual([1, 0]);
    expect(Math.abs(factors.r[0])).toBeCloseTo(5, 14);
    expect([factors.r[1], factors.r[3]].map(Math.abs)).toEqual([0, 0]);
  });

  it('leaves the first of columns of one length where it is', () => {
    const alike = [
      [0, 3, 0],
      [3, 0, 0],
      [0, 0, 3],
    ];
    expect([...factorise(columnsOf(alike), 3, 3).order]).toEqual([0, 1, 2]);
  });

  it('needs as many rows as columns', () => {
    expect(() => factorise(new Float64Array(6), 2, 3)).toThrow(RangeError);
    expect(factorise(Float64Array.from([2, 0, 0, 1]), 2, 2).columns).toBe(2);
  });

  it('solves triangles of a leading part, by hand', () => {
    // [[2, 1, 9], [0, 4, 9], [0, 0, 9]] x = (4, 8): x = (1, 2). Its transpose: (2, 9): y1 = 1, y2 = (9 - 1) / 4 = 2.
    const factors = {
      ...factorise(new Float64Array(9), 3, 3),
      r: Float64Array.from([2, 1, 9, 0, 4, 9, 0, 0, 9]),
    };
    const x = Float64Array.from([4, 8, 7]);
    solveUpper(factors, 2, x);
    expect([...x]).toEqual([1, 2, 7]);
    const y = Float64Array.from([2, 9, 7]);
    solveLower(factors, 2, y);
    expect([...y]).toEqual([1, 2, 7]);
  });
});

describe('singular values', () => {
  it('of [[3, 0], [4, 5]] are sqrt 45 and sqrt 5, along the diagonals', () => {
    // G. Strang, Introduction to Linear Algebra, 7.2: A^T A = [[25, 20], [20, 25]] (from memory; it can be checked by hand).
    const { values, right } = singular(Float64Array.from([3, 0, 4, 5]), 2);
    expect(values[0]).toBeCloseTo(Math.sqrt(45), 13);
    expect(values[1]).toBeCloseTo(Math.sqrt(5), 13);
    const half = Math.SQRT1_2;
    const along = (k: number, u: number, w: number) => Math.abs(right[k] * u + right[2 + k] * w);
    expect(along(0, half, half)).toBeCloseTo(1, 13);
    expect(along(1, half, -half)).toBeCloseTo(1, 13);
  });

  it('of columns that are square to each other and of one length are that length', () => {
    const { values, right } = singular(Float64Array.from([0, -2, 2, 0]), 2);
    expect([...values]).toEqual([2, 2]);
    expect([...right]).toEqual([1, 0, 0, 1]);
    const mostly = new Float64Array(9);
    mostly[4] = 3;
    expect([...singular(mostly, 3).values]).toEqual([3, 0, 0]);
  });

  it('are those by which the right vectors grow, square to each other, whatever the matrix', () => {
    const random = seeded(4);
    const n = 5;
    const a = Float64Array.from({ length: n * n }, () => random.between(-1, 1));
    const { values, right } = singular(a, n);
    expect([...values]).toEqual([...values].toSorted((x, y) => y - x));
    const vector = (k: number) => Array.from({ length: n }, (_, i) => right[i * n + k]);
    const times = (v: readonly number[]) =>
      v.map((_, i) => v.reduce((sum, x, j) => sum + a[i * n + j] * x, 0));
    const dot = (u: readonly number[], w: readonly number[]) =>
      u.reduce((sum, x, i) => sum + x * w[i], 0);
    for (let k = 0; k < n; k++) {
      expect(Math.hypot(...times(vector(k)))).toBeCloseTo(values[k], 12);
      for (let l = 0; l < n; l++) {
        expect(dot(vector(k), vector(l))).toBeCloseTo(k === l ? 1 : 0, 12);
        if (k !== l) expect(dot(times(vector(k)), times(vector(l)))).toBeCloseTo(0, 12);
      }
    }
  });

  it('of a graded matrix keep the digits of the small ones', () => {
    // Demmel and Veselic: columns that differ by scale only. diag(1, 1e-20) turned from the left by 45 degrees.
    const c = Math.SQRT1_2;
    const { values } = singular(Float64Array.from([c, -c * 1e-20, c, c * 1e-20]), 2);
    expect(values[1] / 1e-20).toBeCloseTo(1, 12);
  });
});

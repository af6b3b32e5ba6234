import { describe, expect, it } from 'vitest';
import {
  chiSquareAbove,
  chiSquareQuantile,
  effectiveFreedom,
  factor95,
  fisherBelow,
  fisherQuantile,
  squaresAbove,
  studentBelow,
  studentQuantile,
} from '../../../src/engine/identify/distributions';
import { incompleteBeta, lnGamma } from '../../../src/engine/identify/specialFunctions';

function close(found: number, wanted: number, relative: number): void {
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(relative * Math.abs(wanted));
}

/**
 * Printed tables: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7 (upper critical values of t, F and chi-square),
 * values from memory; the long ones computed with SciPy 1.17.1 (scipy.stats, scipy.special), an independent library.
 */
describe('quantiles as the tables print them', () => {
  it.each([
    [0.975, 1, 12.706],
    [0.975, 2, 4.303],
    [0.975, 5, 2.571],
    [0.975, 30, 2.042],
    [0.95, 10, 1.812],
  ])('t of %d with %d degrees of freedom is %d', (p, freedom, printed) => {
    expect(studentQuantile(p, freedom).toFixed(3)).toBe(printed.toFixed(3));
  });

  it.each([
    [0.95, 1, 3.841],
    [0.95, 2, 5.991],
    [0.95, 10, 18.307],
    [0.05, 10, 3.94],
    [0.95, 100, 124.342],
  ])('chi-square of %d with %d degrees of freedom is %d', (p, freedom, printed) => {
    expect(chiSquareQuantile(p, freedom).toFixed(3)).toBe(printed.toFixed(3));
  });

  it.each([
    [1, 1, 161.448],
    [2, 10, 4.103],
    [5, 10, 3.326],
    [10, 20, 2.348],
  ])('F of 0.95 with %d and %d degrees of freedom is %d', (above, below, printed) => {
    expect(fisherQuantile(0.95, above, below).toFixed(3)).toBe(printed.toFixed(3));
  });
});

describe('quantiles and shares against SciPy, to 1e-9', () => {
  it.each([
    [0.975, 1, 12.706204736174694],
    [0.975, 5, 2.5705818356363146],
    [0.9995, 4, 8.610301581379522],
    [0.3, 7.5, -0.5474128775812613],
  ])('t of %d, %d', (p, freedom, wanted) => close(studentQuantile(p, freedom), wanted, 1e-9));

  it.each([
    [0.001, 3, 0.024297585815692732],
    [0.95, 2, 5.991464547107979],
    [0.99, 997, 1103.812805601013],
  ])('chi-square of %d, %d', (p, freedom, wanted) =>
    close(chiSquareQuantile(p, freedom), wanted, 1e-9),
  );

  it.each([
    [0.95, 2, 10, 4.1028210151304],
    [0.95, 3, 997, 2.6138303994566474],
    [0.05, 4, 6, 0.1622551576264002],
  ])('F of %d, %d, %d', (p, above, below, wanted) =>
    close(fisherQuantile(p, above, below), wanted, 1e-9),
  );

  it.each([
    [30, 10, 0.000856641210775301],
    [200, 10, 1.6139305336977317e-37],
    [5000, 5000, 0.4973403788923451],
  ])('share of chi-square above %d, %d', (x, freedom, wanted) =>
    close(chiSquareAbove(x, freedom), wanted, 1e-9),
  );

  it.each([
    [0.5, 0.5, 0.3, 0.36901011956554536],
    [2, 3, 0.9, 0.9963],
    [40, 60, 0.35, 0.15345812249917395],
    [500, 2.5, 0.99, 0.07340351154417352],
  ])('incomplete beta %d, %d, %d', (a, b, x, wanted) =>
    close(incompleteBeta(a, b, x), wanted, 1e-11),
  );
});

describe('identities', () => {
  it('ln gamma is ln (n-1)!', () => {
    let factorial = 1;
    for (let n = 2; n < 20; n++) {
      factorial *= n;
      close(lnGamma(n + 1), Math.log(factorial), 1e-13);
    }
  });

  it('t squared is F with one degree of freedom above, and F with infinite freedom is chi-square', () => {
    close(studentQuantile(0.975, 7) ** 2, fisherQuantile(0.95, 1, 7), 1e-9);
    close(fisherQuantile(0.95, 3, Infinity), chiSquareQuantile(0.95, 3) / 3, 1e-12);
  });

  it('a quantile gives its share back', () => {
    close(studentBelow(studentQuantile(0.9, 3), 3), 0.9, 1e-11);
    close(fisherBelow(fisherQuantile(0.2, 3, 8), 3, 8), 0.2, 1e-11);
  });

  it('no share outside (0, 1) has a quantile', () => {
    expect(() => studentQuantile(-0.2, 3)).toThrow(
      'studentQuantile(): p is not within (0, 1): -0.2',
    );
    expect(() => chiSquareQuantile(0, 3)).toThrow('chiSquareQuantile(): p is not within (0, 1): 0');
    expect(() => fisherQuantile(1, 3, 3)).toThrow('fisherQuantile(): p is not within (0, 1): 1');
  });

  it('a quantile too small for a number is refused', () => {
    // Of a thousandth of a degree of freedom the share goes with x^0.0005: half of it lies below 0.5^2000.
    expect(() => chiSquareQuantile(0.5, 1e-3)).toThrow('chiSquareQuantile(): no quantile for 0.5');
    expect(() => fisherQuantile(0.5, 1e-3, 4)).toThrow('fisherQuantile(): no quantile for 0.5');
  });
});

describe('closed forms', () => {
  it('t with one degree of freedom is Cauchy, with two it is algebraic (Abramowitz and Stegun, 26.7.2, 26.7.3)', () => {
    for (const x of [-30, -1, -0.1, 0, 0.1, 2, 100]) {
      close(studentBelow(x, 1), 0.5 + Math.atan(x) / Math.PI, 1e-11);
      close(studentBelow(x, 2), 0.5 + x / (2 * Math.sqrt(2 + x * x)), 1e-11);
    }
    // Turned round: tan(pi (p - 1/2)).
    for (const p of [0.02, 0.25, 0.7, 0.999]) {
      close(studentQuantile(p, 1), Math.tan(Math.PI * (p - 0.5)), 1e-9);
    }
    expect(studentQuantile(0.5, 3)).toBe(0);
  });

  it('chi-square of two is an exponential: -2 ln (1 - p)', () => {
    for (const p of [0.001, 0.3, 0.6321205588285577, 0.9999]) {
      close(chiSquareQuantile(p, 2), -2 * Math.log1p(-p), 1e-9);
    }
    expect(chiSquareAbove(-1, 2)).toBe(1);
    expect(chiSquareAbove(0, 2)).toBe(1);
  });

  it('F of two and two is x / (1 + x)', () => {
    close(fisherBelow(3, 2, 2), 0.75, 1e-12);
    close(fisherQuantile(0.5, 2, 2), 1, 1e-9);
    expect([fisherBelow(0, 2, 2), fisherBelow(-1, 2, 2)]).toEqual([0, 0]);
  });

  it('squares are above by chi-square or by F, and by nothing known without freedom', () => {
    close(squaresAbove(6, 2, Infinity), Math.exp(-3), 1e-12);
    // k F of 2 and 2 degrees of freedom: 6 / 2 = 3, above which lies a quarter.
    close(squaresAbove(6, 2, 2), 0.25, 1e-12);
    expect(squaresAbove(6, 2, 0)).toBeNaN();
    expect(squaresAbove(6, 2, Number.NaN)).toBeNaN();
  });
});

describe('degrees of freedom of a sum', () => {
  it('are those of the example of GUM G.4.1', () => {
    // JCGM 100:2008, G.4.1, example: relative uncertainties of 0.25, 0.57 and 0.82 % from 10, 5 and 15 readings give 19.0.
    const parts = [
      { variance: 0.25 ** 2, freedom: 9 },
      { variance: 0.57 ** 2, freedom: 4 },
      { variance: 0.82 ** 2, freedom: 14 },
    ];
    expect(effectiveFreedom(parts)).toBeCloseTo(19, 1);
    // What is nothing or below adds nothing.
    for (const more of [
      { variance: -0.1, freedom: 1 },
      { variance: 0, freedom: 0 },
    ]) {
      expect(effectiveFreedom([...parts, more])).toBe(effectiveFreedom(parts));
    }
  });

  it('are infinite where all is known, or nearly all', () => {
    expect(effectiveFreedom([{ variance: 2, freedom: Infinity }])).toBe(Infinity);
    // From a million on.
    expect(effectiveFreedom([{ variance: 1, freedom: 1e6 }])).toBe(Infinity);
    expect(effectiveFreedom([{ variance: 1, freedom: 999_999 }])).toBeCloseTo(999_999, 6);
    expect(
      effectiveFreedom([
        { variance: 1, freedom: Infinity },
        { variance: 1e-4, freedom: 3 },
      ]),
    ).toBe(Infinity);
  });

  it('give the factor of 95 %: 1.96 where known, Student below, none without', () => {
    expect(factor95(Infinity).toFixed(4)).toBe('1.9600');
    close(factor95(1), 12.706204736174694, 1e-9);
    expect(factor95(0)).toBeNaN();
    expect(factor95(Number.NaN)).toBeNaN();
  });
});

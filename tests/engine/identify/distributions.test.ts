import { describe, expect, it } from 'vitest';
import {
  chiSquareAbove,
  chiSquareQuantile,
  fisherBelow,
  fisherQuantile,
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
    expect(() => studentQuantile(1, 3)).toThrow(RangeError);
    expect(() => chiSquareQuantile(0, 3)).toThrow(RangeError);
  });
});

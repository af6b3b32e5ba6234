import { describe, expect, test } from 'vitest';
import {
  completeElliptic,
  createJacobi,
  incompleteElliptic,
  jacobi,
} from '../../../src/engine/release/elliptic';
import { seeded } from '../../support/seeded';

// K(m) of Abramowitz and Stegun, Handbook of Mathematical Functions, table 17.1, 15 figures (from memory, and the same
// figures given by mpmath 1.3, an independent library, at 30 digits).
const TABLE: readonly [number, number][] = [
  [0, 1.570796326794897],
  [0.1, 1.612441348720219],
  [0.3, 1.713889448178791],
  [0.5, 1.854074677301372],
  [0.7, 2.075363135292469],
  [0.9, 2.578092113348173],
  [0.99, 3.695637362989875],
];

// mpmath 1.3 (ellipfun, 30 digits). The first is also an example of Abramowitz and Stegun, 16 (sn(.20 | .81) = .19762,
// from memory).
const FUNCTIONS: readonly [number, number, number, number, number][] = [
  [0.2, 0.81, 0.1976208236718765, 0.9802785369736752, 0.9840560289645666],
  [0.672, 0.36, 0.6095196917919022, 0.7927709286533561, 0.9307281387786907],
  [0.5, 0.5, 0.47075047365565725, 0.8822663948904403, 0.9429724257773857],
  [1.7, 0.3, 0.9999324785875559, 0.011620596617518427, 0.836684236423589],
  [-3.1, 0.9, -0.9852736575663875, -0.17098485226988103, 0.3554043299330746],
  [12.5, 0.99, -0.9815517356556286, 0.19119673174880114, 0.2149200510169044],
  [0.3, 0, 0.2955202066613396, 0.955336489125606, 1],
  [40, 0.64, 0.0937184531793424, 0.9955987402230235, 0.9971854315931163],
];

describe('the complete elliptic integral of the first kind', () => {
  test.each(TABLE)('K(%d) is the tabulated one', (m, K) => {
    // Half a unit of the table's last place, and the rounding of 1 - m.
    expect(Math.abs(completeElliptic(1 - m) - K)).toBeLessThan(2e-15);
  });

  test('close to m = 1 the complement carries the digits', () => {
    // mpmath 1.3 at 30 digits.
    for (const [m1, K] of [
      [1e-4, 5.991589340506996],
      [1e-8, 10.59663475708766],
      [1e-12, 15.201804919087715],
    ]) {
      expect(Math.abs(completeElliptic(m1) / K - 1)).toBeLessThan(5e-16 * 2);
    }
    expect(completeElliptic(0)).toBe(Infinity);
  });
});

describe("Jacobi's functions", () => {
  test.each(FUNCTIONS)('sn, cn and dn at u = %d, m = %d', (u, m, sn, cn, dn) => {
    const found = jacobi(u, 1 - m, createJacobi());
    // u and m are rounded themselves: |du| 4e-15 at u = 40, and a few roundings more in the phases.
    const allowed = 1e-15 * (4 + 4 * Math.abs(u));
    expect(Math.abs(found.sn - sn)).toBeLessThan(allowed);
    expect(Math.abs(found.cn - cn)).toBeLessThan(allowed);
    expect(Math.abs(found.dn - dn)).toBeLessThan(allowed);
  });

  test('at half of K they are the closed forms of Abramowitz and Stegun, 16.5', () => {
    const random = seeded(165);
    for (let i = 0; i < 200; i++) {
      const m1 = 10 ** random.between(-10, 0);
      const root = Math.sqrt(m1);
      const found = jacobi(completeElliptic(m1) / 2, m1, createJacobi());
      // K / 2 is at most 7: some ten roundings of it (1e-15 each) in the phases, absolute.
      expect(Math.abs(found.sn - 1 / Math.sqrt(1 + root))).toBeLessThan(1.5e-14);
      expect(Math.abs(found.cn - Math.sqrt(root / (1 + root)))).toBeLessThan(1.5e-14);
      expect(Math.abs(found.dn - Math.sqrt(root))).toBeLessThan(1.5e-14);
    }
  });

  test('the addition theorem of Abramowitz and Stegun, 16.17, holds for any two arguments', () => {
    const random = seeded(1617);
    for (let i = 0; i < 500; i++) {
      const m1 = random.between(0.001, 1);
      const [u, v] = [random.between(-6, 6), random.between(-6, 6)];
      const [a, b, c] = [u, v, u + v].map((x) => jacobi(x, m1, createJacobi()));
      const below = 1 - (1 - m1) * (a.sn * b.sn) ** 2;
      const sn = (a.sn * b.cn * b.dn + b.sn * a.cn * a.dn) / below;
      // Below is never less than m1; the terms' roundings are divided by it.
      expect(Math.abs(c.sn - sn)).toBeLessThan(3e-14 / below);
    }
  });

  test('at the ends of m they are the circular and the hyperbolic functions', () => {
    for (const u of [-4, -0.3, 0, 1.2, 7]) {
      const flat = jacobi(u, 1, createJacobi());
      expect(flat.sn).toBeCloseTo(Math.sin(u), 14);
      expect(flat.cn).toBeCloseTo(Math.cos(u), 14);
      expect(flat.dn).toBeCloseTo(1, 15);
      const steep = jacobi(u, 0, createJacobi());
      expect(steep).toEqual({ sn: Math.tanh(u), cn: 1 / Math.cosh(u), dn: 1 / Math.cosh(u) });
    }
  });

  test('a parameter outside 0 to 1 is refused', () => {
    expect(() => jacobi(1, 1.1, createJacobi())).toThrow('complement');
    expect(() => completeElliptic(-0.1)).toThrow('complement');
    expect(() => incompleteElliptic(1, 0, Number.NaN)).toThrow('complement');
  });
});

describe('the incomplete elliptic integral', () => {
  // mpmath 1.3 (ellipf).
  test.each([
    [0.5, 0.5, 0.5104671356280047],
    [1.2, 0.9, 1.5648981345066717],
    [-0.7, 0.3, -0.7165177159853932],
    [2.5, 0.64, 3.3198755177924326],
    [1.5707, 0.99, 3.6946740951883856],
  ])('F(%d | %d) is the reference value', (phase, m, F) => {
    const found = incompleteElliptic(Math.cos(phase), Math.sin(phase), 1 - m);
    // Ten roundings.
    expect(Math.abs(found / F - 1)).toBeLessThan(2e-15);
  });

  test('it is the inverse of sn and cn over two periods, close to m = 1 too', () => {
    const random = seeded(22);
    for (let i = 0; i < 500; i++) {
      const m1 = 10 ** random.between(-12, 0);
      const u = random.between(-1.99, 1.99) * completeElliptic(m1);
      const { sn, cn, dn } = jacobi(u, m1, createJacobi());
      const back = incompleteElliptic(cn, sn, m1);
      // The phase of a u up to 30 is good to some roundings of 30, and dF = dphase / dn.
      expect(Math.abs(back - u)).toBeLessThan(4e-14 / dn);
    }
  });

  test('a pair of no direction has no phase, and the quarter turn of m = 1 is never reached', () => {
    expect(incompleteElliptic(0, 0, 0.5)).toBeNaN();
    expect(incompleteElliptic(0, 1, 0)).toBe(Infinity);
    expect(incompleteElliptic(0, -1, 0)).toBe(-Infinity);
  });
});

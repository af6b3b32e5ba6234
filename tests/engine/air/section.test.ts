import { describe, expect, test } from 'vitest';
import { createCoefficients, symmetricSection } from '../../../src/engine/air/section';
import { DEGREE } from './rotors';

const section = symmetricSection();

function at(angleDeg: number) {
  return section.coefficients(angleDeg * DEGREE, 2e5, createCoefficients());
}

// Published: Sheldahl and Klimas, SAND80-2114, NACA 0015.
describe('the built-in symmetric section against SAND80-2114', () => {
  // The two Reynolds numbers of the report, 160,000 and 360,000, differ by 5 % at 8 and by 13 % at 10 degrees: a section
  // without Reynolds number can be held to no less than that spread.
  test('has the attached lift of both Reynolds numbers within their spread of 13 % up to 8 degrees', () => {
    for (const [angle, lift] of [
      [5, 0.55],
      [8, 0.7851],
      [8, 0.824],
    ]) {
      expect(Math.abs(at(angle).lift / lift - 1)).toBeLessThan(0.13);
    }
  });

  test('has the lift around stall at 360,000 within the same 13 %', () => {
    for (const [angle, lift] of [
      [10, 0.944],
      [12, 0.9285],
    ]) {
      expect(Math.abs(at(angle).lift / lift - 1)).toBeLessThan(0.13);
    }
  });

  // The chosen law is the plate, and its own figures by hand, C_n = sin a / (0.222 + 0.283 sin a) split by the angle, are
  // lift 1.191 and drag 0.688 at 30 degrees, 1.184 and 1.184 at 45: 1.393, 1.207, 1.128 and 1.101 times the report's. So the
  // estimate may be too large by up to 1.40 and 1.15 there and never too small; the friction adds less than 0.01.
  test('past stall exceeds the report as the flat plate does: by up to 1.40 times at 30 degrees, 1.15 at 45', () => {
    const rows = [
      { angle: 30, lift: 0.855, drag: 0.57, most: 1.4 },
      { angle: 45, lift: 1.05, drag: 1.075, most: 1.15 },
    ];
    for (const row of rows) {
      const { lift, drag } = at(row.angle);
      for (const ratio of [lift / row.lift, drag / row.drag]) {
        expect(ratio).toBeGreaterThan(1);
        expect(ratio).toBeLessThan(row.most);
      }
    }
  });

  // 1.80 in the report, 2.08 in NACA TN 3361: between them is agreement. The report's lift there is 0.09.
  test('square to the wind has a drag of 1.8 to 2.1 and next to no lift', () => {
    expect(at(90).drag).toBeGreaterThan(1.8);
    expect(at(90).drag).toBeLessThan(2.1);
    expect(Math.abs(at(90).lift)).toBeLessThan(0.1);
  });

  // NACA 0012 at 360,000: +0.026 at 10, -0.050 at 12, -0.081 at 20 degrees. The model knows no bubble (its +0.026) and its
  // separated centre of pressure lies at 1/4 + 1/18 chord at 20 degrees, worth -0.060: 0.03 and 0.04 are those lacks.
  test('drops its nose at stall', () => {
    expect(Math.abs(at(10).moment - 0.026)).toBeLessThan(0.03);
    expect(Math.abs(at(12).moment + 0.05)).toBeLessThan(0.04);
    expect(Math.abs(at(20).moment + 0.081)).toBeLessThan(0.03);
    for (let angle = 8; angle < 90; angle++)
      expect(at(angle + 1).moment).toBeLessThan(at(angle).moment);
  });
});

describe('the built-in symmetric section', () => {
  // Hand formula: C_n = 1 / (0.222 + 0.283), centre of pressure at mid-chord.
  test('is a flat plate held at mid-chord at 90 degrees', () => {
    expect(at(90).drag).toBeCloseTo(1 / 0.505, 12);
    expect(at(90).moment).toBeCloseTo(-0.25 / 0.505, 12);
    // 30 degrees: C_n = 0.5 / 0.3635, arm 1/12 chord.
    expect(at(30).moment).toBeCloseTo(-0.5 / 0.3635 / 12, 12);
  });

  test('carries its force at three quarters of the chord when the wind comes from behind', () => {
    const { lift, drag, moment } = at(177);
    const normal = lift * Math.cos(177 * DEGREE) + drag * Math.sin(177 * DEGREE);
    expect(normal).toBeGreaterThan(0.2);
    expect(moment / normal).toBeCloseTo(-0.5, 12);
  });

  // Friction on both sides of a plate: laminar 2 x 1.328 / sqrt Re (Blasius), turbulent 2 x 0.074 / Re^0.2 (Prandtl) with
  // the form factor 1 + 2 t + 60 t^4 of a 12 % section (Hoerner); all memory.
  test('has a least drag between laminar and turbulent friction from 50,000 to 500,000', () => {
    for (const reynolds of [50e3, 100e3, 200e3, 500e3]) {
      expect(at(0).drag).toBeGreaterThan(2.656 / Math.sqrt(reynolds));
      expect(at(0).drag).toBeLessThan((0.148 / reynolds ** 0.2) * (1 + 0.24 + 60 * 0.12 ** 4));
    }
  });

  test('is odd in lift and moment, even in drag, and the same after a turn', () => {
    for (let angle = 0.37; angle < 180; angle += 1.13) {
      const plus = at(angle);
      const minus = at(-angle);
      expect(minus.lift).toBe(-plus.lift);
      expect(minus.moment).toBe(-plus.moment);
      expect(minus.drag).toBe(plus.drag);
      const turned = at(angle + 720);
      // A sum of two turns rounds the angle by 2e-15; slopes are below 10.
      expect(Math.abs(turned.lift - plus.lift)).toBeLessThan(1e-13);
      expect(Math.abs(turned.drag - plus.drag)).toBeLessThan(1e-13);
    }
  });

  // Second differences of a C1 curve with |f''| < k are below k h^2 whatever joint lies between: for a jump of slope j
  // they would be j h. Curvatures here are below 800 (the smooth step of 7 degrees: 6 / 0.122^2 times about 1).
  test('has no jump and no corner at any angle', () => {
    for (const h of [1e-3, 1e-4]) {
      for (let angle = -Math.PI - 0.01; angle < Math.PI + 0.01; angle += h) {
        const [a, b, c] = [angle - h, angle, angle + h].map((x) =>
          section.coefficients(x, 2e5, createCoefficients()),
        );
        const second = Math.max(
          Math.abs(a.lift - 2 * b.lift + c.lift),
          Math.abs(a.drag - 2 * b.drag + c.drag),
          Math.abs(a.moment - 2 * b.moment + c.moment),
        );
        if (!(second < 800 * h * h)) expect.fail(`corner at ${angle / DEGREE}: ${second / h / h}`);
        if (!(b.drag > 0)) expect.fail(`drag at ${angle / DEGREE}: ${b.drag}`);
      }
    }
  });
});

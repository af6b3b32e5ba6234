import { describe, expect, test } from 'vitest';
import {
  AIRFOIL_SECTION,
  airfoilHalfThickness,
  camberLine,
} from '../../../src/engine/mass/airfoil';
import { fourDigitOutline, uprightCut } from '../../../src/engine/mass/sectionOutline';
import { grid } from '../../support/quadrature';
import { sectionArea } from '../../support/sections';

const NACA_2412 = { thickness: 0.12, camber: 0.02, position: 0.4 };
const NACA_4412 = { thickness: 0.12, camber: 0.04, position: 0.4 };

describe('the camber line of a four-digit section (NACA Report 460, definition)', () => {
  test.each([
    ['2412', NACA_2412],
    ['4412', NACA_4412],
    ['6.5 % at 62 %', { thickness: 0.1, camber: 0.065, position: 0.62 }],
  ])(
    '%s is as high as its first digit says, where its second digit says, and level there',
    (_, section) => {
      const { camber, position } = section;
      const top = camberLine(camber, position, position);
      expect(top.height).toBeCloseTo(camber, 15);
      expect(top.slope).toBe(0);
      for (const s of grid(0, 1, 5).map(([at]) => at)) {
        expect(camberLine(camber, position, s).height).toBeLessThan(camber);
      }
      expect(camberLine(camber, position, 0).height).toBe(0);
      expect(camberLine(camber, position, 1).height).toBeCloseTo(0, 15);
    },
  );

  test('has the slope of its own heights', () => {
    for (const s of [0.05, 0.39, 0.41, 0.9]) {
      const rise = camberLine(0.04, 0.4, s + 1e-6).height - camberLine(0.04, 0.4, s - 1e-6).height;
      // A central difference of a parabola is exact; 1e-17 of rounding over a step of 2e-6.
      expect(Math.abs(rise / 2e-6 - camberLine(0.04, 0.4, s).slope)).toBeLessThan(1e-10);
    }
  });
});

describe('a cambered section', () => {
  /*
   * Ordinates as printed in NACA Report 460 and later collections, in per cent of the chord; from memory. They were
   * worked by hand and printed to 0.01: most agree within a unit, the worst (2412 below at 60 %) is 0.0184 off. Two units
   * are allowed; thickness laid off upright instead of square to the line would miss by up to 0.30.
   */
  const PRINTED: readonly (readonly [typeof NACA_2412, readonly (readonly number[])[]])[] = [
    [
      NACA_2412,
      [
        [1.25, 2.15, -1.65],
        [2.5, 2.99, -2.27],
        [5, 4.13, -3.01],
        [10, 5.63, -3.75],
        [20, 7.26, -4.23],
        [30, 7.88, -4.12],
        [40, 7.8, -3.8],
        [50, 7.24, -3.34],
        [60, 6.36, -2.76],
        [80, 3.75, -1.5],
        [90, 2.08, -0.82],
        [95, 1.14, -0.48],
      ],
    ],
    [
      NACA_4412,
      [
        [1.25, 2.44, -1.43],
        [2.5, 3.39, -1.95],
        [5, 4.73, -2.49],
        [10, 6.59, -2.86],
        [20, 8.8, -2.74],
        [30, 9.76, -2.26],
        [40, 9.8, -1.8],
        [50, 9.19, -1.4],
        [60, 8.14, -1.0],
        [80, 4.89, -0.39],
        [90, 2.71, -0.22],
        [95, 1.47, -0.16],
      ],
    ],
  ];

  test('has the printed ordinates of 2412 and 4412', () => {
    for (const [section, rows] of PRINTED) {
      const outline = fourDigitOutline(section, 200);
      for (const [station, upper, lower] of rows) {
        const cut = uprightCut(outline, station / 100);
        expect(Math.abs(100 * (cut?.high ?? 0) - upper), `${station}`).toBeLessThan(0.02);
        expect(Math.abs(100 * (cut?.low ?? 0) - lower), `${station}`).toBeLessThan(0.02);
      }
    }
  });

  /*
   * Derived: thickness square to the line sweeps int (1 - k n) dn over [-y_t, y_t] per length of the line; the bend k
   * cancels, so the area is int 2 y_t sqrt(1 + z'^2) ds, whatever the camber. With s = u^2 the nose is smooth; the two
   * parabolas meet at s = 0.4, where a panel ends.
   */
  function derivedArea({ thickness, camber, position }: typeof NACA_2412): number {
    const knee = Math.sqrt(position);
    return [...grid(0, knee, 4), ...grid(knee, 1, 4)].reduce((sum, [u, du]) => {
      const length = Math.hypot(1, camberLine(camber, position, u * u).slope);
      return sum + 2 * thickness * airfoilHalfThickness(u * u) * length * 2 * u * du;
    }, 0);
  }

  test('has the area of its thickness laid along the bent line', () => {
    for (const section of [NACA_2412, NACA_4412]) {
      const { area } = sectionArea(fourDigitOutline(section, 48));
      expect(Math.abs(area / derivedArea(section) - 1)).toBeLessThan(2e-6);
      // 0.685083 t c: NACA polynomial, see the symmetric section. Camber of 4 % lengthens the line by 0.4 %.
      expect(area / (0.685083 * 0.12)).toBeGreaterThan(1);
      expect(area / (0.685083 * 0.12)).toBeLessThan(1.005);
    }
  });

  test('of 48 panels has area and second moments of the symmetric section within 2e-5', () => {
    const t = 0.12;
    const { area, xx, yy, x } = sectionArea(
      fourDigitOutline({ thickness: t, camber: 0, position: 0.4 }, 48),
    );
    const exact = AIRFOIL_SECTION;
    expect(Math.abs(area / (exact.area * t) - 1)).toBeLessThan(2e-6);
    expect(Math.abs(x / (exact.first * t) - 1)).toBeLessThan(5e-6);
    expect(Math.abs(xx / (exact.second * t) - 1)).toBeLessThan(5e-6);
    expect(Math.abs(yy / (exact.cube * t ** 3) - 1)).toBeLessThan(2e-5);
  });

  test('of 48 panels has the printed constants 0.685083, 0.420435, 0.039407, 0.037820 within 1e-4', () => {
    const t = 0.12;
    const { area, xx, yy, x } = sectionArea(
      fourDigitOutline({ thickness: t, camber: 0, position: 0.4 }, 48),
    );
    expect(Math.abs(area / t / 0.685083 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(x / area / 0.420435 - 1)).toBeLessThan(1e-4);
    expect(Math.abs(yy / t ** 3 / 0.039407 - 1)).toBeLessThan(1e-4);
    expect(Math.abs((xx - (x * x) / area) / t / 0.03782 - 1)).toBeLessThan(1e-4);
  });

  test('closes on its curve with the fourth power of the panels, not the second', () => {
    const section = NACA_4412;
    const error = (panels: number) =>
      Math.abs(sectionArea(fourDigitOutline(section, panels)).area / derivedArea(section) - 1);
    // Sixteenfold but for the open trailing edge, whose end points stay where they are.
    expect(error(16) / error(32)).toBeGreaterThan(10);
    expect(error(32) / error(64)).toBeGreaterThan(10);
  });
});

import { describe, expect, test } from 'vitest';
import { AIRFOIL_SECTION, airfoilHalfThickness } from '../../../src/engine/mass/airfoil';
import { JXX, JYY, JZZ, M, type Moments, SX, SY } from '../../../src/engine/mass/moments';
import { momentsDeviation } from '../../support/closeness';
import { grid, QUADRATURE } from '../../support/quadrature';
import { type CloudPoint, cloudMoments, volumeOf } from '../../support/shapes';

describe('an airfoil loft agrees with brute-force integration over its volume', () => {
  const root = { x: 2, chord: 3, thickness: 0.5, leadingEdgeY: 1, z: 0.2 };
  const tip = { x: 9, chord: 1.5, thickness: 0.1, leadingEdgeY: -0.5, z: -0.4 };

  function brute(): Moments {
    const points: CloudPoint[] = [];
    for (const [x, dx] of grid(2, 9, 1)) {
      const t = (x - 2) / 7;
      const mix = (a: number, b: number) => a + (b - a) * t;
      const chord = mix(root.chord, tip.chord);
      const thickness = mix(root.thickness, tip.thickness);
      // s = u^2 takes the square root out of the nose.
      for (const [u, du] of grid(0, 1, 2)) {
        const half = thickness * airfoilHalfThickness(u * u);
        const ds = 2 * u * du * chord;
        const y = mix(root.leadingEdgeY, tip.leadingEdgeY) - chord * u * u;
        const middle = mix(root.z, tip.z);
        for (const [z, dz] of grid(middle - half, middle + half, 1))
          points.push([dx * ds * dz, x, y, z]);
      }
    }
    return cloudMoments(points);
  }

  test('with taper in chord and thickness, sweep and dihedral', () => {
    const loft = volumeOf({ shape: 'airfoilLoft', root, tip });
    expect(momentsDeviation(loft, brute())).toBeLessThan(QUADRATURE);
  });

  test('whichever end is called the root', () => {
    const loft = volumeOf({ shape: 'airfoilLoft', root, tip });
    const turned = volumeOf({ shape: 'airfoilLoft', root: tip, tip: root });
    expect(momentsDeviation(turned, loft)).toBeLessThan(1e-14);
  });
});

describe('the four-digit section', () => {
  // Derived from the polynomial published in NACA Report 460 (open trailing edge, -0.1015), term by term:
  // int s^p f ds = 5 sum of a_k / (k + p + 1). Printed to six decimals.
  const PRINTED = 0.5e-6;
  const coefficients: readonly (readonly [power: number, factor: number])[] = [
    [0.5, 0.2969],
    [1, -0.126],
    [2, -0.3516],
    [3, 0.2843],
    [4, -0.1015],
  ];
  function chordwise(p: number): number {
    return 10 * coefficients.reduce((sum, [power, a]) => sum + a / (power + p + 1), 0);
  }
  function cubed(): number {
    let sum = 0;
    for (const [i, a] of coefficients) {
      for (const [j, b] of coefficients) {
        for (const [k, c] of coefficients) sum += (a * b * c) / (i + j + k + 1);
      }
    }
    return (250 / 3) * sum;
  }

  test('has the integrals of its polynomial, term by term', () => {
    // Terms of size 3 cancel to 0.04: 1e-15 of each leaves 1e-14.
    expect(Math.abs(AIRFOIL_SECTION.area - chordwise(0))).toBeLessThan(1e-14);
    expect(Math.abs(AIRFOIL_SECTION.first - chordwise(1))).toBeLessThan(1e-14);
    expect(Math.abs(AIRFOIL_SECTION.second - chordwise(2))).toBeLessThan(1e-14);
    expect(Math.abs(AIRFOIL_SECTION.cube - cubed())).toBeLessThan(1e-14);
  });

  test('has area 0.685083 t c, centroid 0.420435 c, second moments 0.039407 t^3 c and 0.037820 t c^3', () => {
    const { area, first, second, cube } = AIRFOIL_SECTION;
    expect(Math.abs(area - 0.685083)).toBeLessThan(PRINTED);
    expect(Math.abs(first / area - 0.420435)).toBeLessThan(PRINTED);
    expect(Math.abs(cube - 0.039407)).toBeLessThan(PRINTED);
    expect(Math.abs(second - (first * first) / area - 0.03782)).toBeLessThan(PRINTED);
  });

  test('at 12 percent has half-thickness 0.0600172 c at 0.3003177 c', () => {
    expect(Math.abs(0.12 * airfoilHalfThickness(0.3003177) - 0.0600172)).toBeLessThan(0.5e-7);
  });

  // Derived: the root of 0.2969 / (2 sqrt s) - 0.126 - 0.7032 s + 0.8529 s^2 - 0.406 s^3 is s = 0.29982788.
  test('is thickest at 0.299828 of the chord, where it is 1.00029 of its nominal thickness', () => {
    const rise = (s: number) => airfoilHalfThickness(s + 1e-6) - airfoilHalfThickness(s - 1e-6);
    expect(rise(0.299827)).toBeGreaterThan(0);
    expect(rise(0.299829)).toBeLessThan(0);
    expect(Math.abs(2 * airfoilHalfThickness(0.299828) - 1.0002879)).toBeLessThan(1e-7);
  });

  test('a straight blade weighs section times span, its chord runs aft of the leading edge', () => {
    const end = { chord: 0.03, thickness: 0.0036, leadingEdgeY: 0.0075, z: 0 };
    const blade = volumeOf({
      shape: 'airfoilLoft',
      root: { x: 0.04, ...end },
      tip: { x: 0.13, ...end },
    });
    const area = 0.685083 * 0.0036 * 0.03;
    const relative = (actual: number, expected: number) => Math.abs(actual / expected - 1);
    // Six printed digits of constants as small as 0.0378.
    expect(relative(blade[M], area * 0.09)).toBeLessThan(1e-6);
    expect(relative(blade[SX], area * 0.09 * 0.085)).toBeLessThan(1e-6);
    expect(relative(blade[SY] / blade[M], 0.0075 - 0.420435 * 0.03)).toBeLessThan(4e-6);
    expect(relative(blade[JZZ], 0.039407 * 0.0036 ** 3 * 0.03 * 0.09)).toBeLessThan(2e-5);
    const central = blade[JYY] - blade[SY] ** 2 / blade[M];
    expect(relative(central, 0.03782 * 0.0036 * 0.03 ** 3 * 0.09)).toBeLessThan(2e-5);
    expect(relative(blade[JXX], (area * (0.13 ** 3 - 0.04 ** 3)) / 3)).toBeLessThan(1e-6);
  });
});

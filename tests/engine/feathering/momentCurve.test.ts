import { describe, expect, test } from 'vitest';
import { findEquilibria, type MomentCurve } from '../../../src/engine/feathering/equilibria';
import { radians } from '../../../src/engine/units';

describe('any smooth moment curve with honest bounds', () => {
  const wave: MomentCurve = {
    value: (t) => Math.cos(40 * t) - 0.5 * t,
    slope: (t) => -40 * Math.sin(40 * t) - 0.5,
    slopeBound: 40.5,
    curvatureBound: 1600,
    scale: 2,
  };

  test('a ripple of forty turns loses none of its roots', () => {
    const found = findEquilibria(wave, radians(-3), radians(3));
    let changes = 0;
    for (let k = 0; k < 60_000; k++) {
      const t = -3 + k * 1e-4;
      if (wave.value(t) > 0 !== wave.value(t + 1e-4) > 0) changes++;
    }
    expect(changes).toBeGreaterThan(45);
    expect(found).toHaveLength(changes);
    for (const root of found) expect(Math.abs(wave.value(root.pitch))).toBeLessThan(1e-12);
  });

  test('loose bounds cost time and no roots', () => {
    const loose = { ...wave, slopeBound: 4000, curvatureBound: 160_000 };
    const pitches = (curve: MomentCurve) =>
      findEquilibria(curve, radians(-3), radians(3)).map((root) => root.pitch.toFixed(12));
    expect(pitches(loose)).toEqual(pitches(wave));
  });

  test('loose bounds do not turn a near miss into a touch', () => {
    const miss = (gap: number): MomentCurve => ({
      value: (t) => t * t + gap,
      slope: (t) => 2 * t,
      slopeBound: 10,
      curvatureBound: 1e4,
      scale: 1,
    });
    // Well above rounding (1e-15 of the scale), well below what cells of 5e-8 hide at that curvature, 3e-12.
    expect(findEquilibria(miss(1e-13), radians(-1), radians(1))).toEqual([]);
    expect(findEquilibria(miss(0), radians(-1), radians(1)).map((root) => root.kind)).toEqual([
      'tangent',
    ]);
  });

  test('bounds and scale that are not positive and finite are a fault that throws', () => {
    for (const name of ['slopeBound', 'curvatureBound', 'scale'] as const) {
      for (const bad of [0, -1, NaN, Infinity]) {
        expect(() => findEquilibria({ ...wave, [name]: bad }, radians(0), radians(1))).toThrow(
          RangeError,
        );
      }
    }
  });
});

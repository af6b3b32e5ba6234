import { describe, expect, test } from 'vitest';
import {
  curveThrough,
  integralFromNode,
  slopeAt,
  valueAt,
} from '../../../src/engine/math/smoothCurve';

const parabola = (x: number) => 2 - 3 * x + 0.5 * x * x;

describe('the curve of cubics through nodes', () => {
  // Three-point slopes are those of a parabola, five-point ones of a quartic: a parabola must come back to rounding.
  test('is the parabola itself, with uneven nodes, at the ends and beside a gap', () => {
    const nodes = Float64Array.of(-2, -1.5, -0.2, 0, 1, 2, 3, 4, 5, 5.1, 7);
    for (const gap of [-1, 5]) {
      const values = nodes.map((x, k) => (k === gap ? Number.NaN : parabola(x)));
      const curve = curveThrough(nodes, values);
      for (let x = -2; x <= 7; x += 0.07) {
        if (gap >= 0 && x > nodes[gap - 1] && x < nodes[gap + 1]) {
          expect(valueAt(curve, x)).toBeNaN();
          continue;
        }
        expect(Math.abs(valueAt(curve, x) - parabola(x))).toBeLessThan(1e-13);
        expect(Math.abs(slopeAt(curve, x) - (x - 3))).toBeLessThan(1e-12);
      }
      // Integral of the parabola from 0 to 0.6: 1.2 - 0.54 + 0.036.
      expect(Math.abs(integralFromNode(curve, 3, 0.6) - 0.696)).toBeLessThan(1e-14);
    }
  });

  test('is a straight line between two nodes that are alone', () => {
    const curve = curveThrough(Float64Array.of(0, 2), Float64Array.of(1, 5));
    expect(valueAt(curve, 0.5)).toBe(2);
    expect(slopeAt(curve, 1.7)).toBeCloseTo(2, 14);
    expect(slopeAt(curve, 2.1)).toBeNaN();
  });
});

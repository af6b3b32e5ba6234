import { describe, expect, test } from 'vitest';
import {
  curveThrough,
  integralFromNode,
  intervalOf,
  potentialAt,
  potentialOf,
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

describe('the slopes at its nodes', () => {
  const cube = (x: number) => x ** 3 - x;
  const quartic = (x: number) => x ** 4 - 2 * x ** 3;

  // Fornberg's table 1: the five-point difference is exact up to degree four; halves and quarters round nothing.
  test('over five even nodes are exact for a quartic, where three nodes are off by h^2', () => {
    const nodes = Float64Array.of(-1, -0.5, 0, 0.5, 1, 1.5, 2);
    const { slopes } = curveThrough(nodes, nodes.map(quartic));
    for (const k of [2, 3, 4]) {
      expect(slopes[k]).toBeCloseTo(4 * nodes[k] ** 3 - 6 * nodes[k] ** 2, 12);
    }
  });

  // A parabola through nodes at distances g and h misses the slope by g h / 6 of the third derivative (Taylor).
  test('over three nodes are those of the parabola: with uneven widths, and wherever one of five is missing', () => {
    const cases: readonly [number[], number, number][] = [
      [[-3, -2, -1, 0, 1.5], 2, 1],
      [[-3, -1, 0, 1, 2], 2, 1],
      [[-2, -1, 0, 2, 3], 2, 2],
      [[-2.5, -1.5, 0, 1, 2], 2, 1.5],
      [[-1, 0, 1, 2, 3], 1, 1],
      [[-3, -2, -1, 0, 1], 3, 1],
    ];
    for (const [list, k, product] of cases) {
      const nodes = Float64Array.from(list);
      const { slopes } = curveThrough(nodes, nodes.map(cube));
      expect(slopes[k]).toBeCloseTo(3 * nodes[k] ** 2 - 1 + product, 12);
    }
    const even = Float64Array.of(-2, -1, 0, 1, 2);
    for (const missing of [0, 4]) {
      const values = even.map((x, k) => (k === missing ? Number.NaN : cube(x)));
      expect(curveThrough(even, values).slopes[2]).toBeCloseTo(0, 12);
    }
  });

  test('are zero at a node between two gaps, which keeps its value', () => {
    const curve = curveThrough(Float64Array.of(0, 1, 2), Float64Array.of(NaN, 7, NaN));
    expect(curve.slopes[1]).toBe(0);
    expect(valueAt(curve, 1)).toBe(7);
    expect(valueAt(curve, 0.5)).toBeNaN();
  });
});

describe('where a curve is asked', () => {
  const nodes = Float64Array.of(-2, -1, 3, 4);

  test('a node begins the interval above it, the last one ends the last', () => {
    expect([-2, -1.5, -1, 2.9, 3, 4].map((x) => intervalOf(nodes, x))).toEqual([0, 0, 1, 1, 2, 2]);
  });

  test('an end is taken with the rounding of a change of unit and no farther', () => {
    expect([-2 - 5e-12, 4 + 5e-12].map((x) => intervalOf(nodes, x))).toEqual([0, 2]);
    expect([-2 - 7e-12, 4 + 7e-12, NaN].map((x) => intervalOf(nodes, x))).toEqual([-1, -1, -1]);
  });

  test('both nodes of an interval have their value though the other is a gap', () => {
    const left = curveThrough(Float64Array.of(0, 1, 2), Float64Array.of(4, NaN, 6));
    expect([0, 2].map((x) => valueAt(left, x))).toEqual([4, 6]);
  });
});

describe('the potential of a curve', () => {
  // Even nodes and a cubic: the curve is the cubic itself where both ends of an interval have five nodes.
  const cubic = (x: number) => 4 * x ** 3 - 3 * x ** 2 + 2 * x - 1;
  const whole = (x: number) => x ** 4 - x ** 3 + x ** 2 - x;
  function potentialFrom(low: number) {
    const nodes = Float64Array.from({ length: 17 }, (_, k) => low + k / 4);
    const curve = curveThrough(nodes, nodes.map(cubic));
    return { curve, nodes, potential: potentialOf(curve) };
  }

  test('falls as the curve rises: minus its integral, exactly, zero at zero', () => {
    for (const low of [-2, -2.125]) {
      const { curve, nodes, potential } = potentialFrom(low);
      for (let x = -1.4; x < 1.3; x += 0.111) {
        expect(potentialAt(curve, potential, x)).toBeCloseTo(-whole(x), 12);
      }
      for (const k of [3, 8, 12]) {
        expect(potential[k]).toBeCloseTo(-whole(nodes[k]), 12);
        expect(potentialAt(curve, potential, nodes[k])).toBe(potential[k]);
      }
    }
  });

  test('is zero at the end nearest to zero where zero lies outside', () => {
    for (const [low, at] of [
      [1, 0],
      [-5, 16],
    ]) {
      const { curve, nodes, potential } = potentialFrom(low);
      expect(potential[at]).toBeCloseTo(0, 12);
      const [a, b] = [nodes[5] + 0.1, nodes[9] + 0.03];
      const rise = potentialAt(curve, potential, b) - potentialAt(curve, potential, a);
      expect(rise).toBeCloseTo(-(whole(b) - whole(a)), 10);
      expect(potentialAt(curve, potential, nodes[0] - 1)).toBeNaN();
      expect(potentialAt(curve, potential, nodes[16])).toBe(potential[16]);
      expect(potentialAt(curve, potential, nodes[0])).toBe(potential[0]);
    }
  });

  test('ends at a gap', () => {
    const nodes = Float64Array.of(-1, 0, 1, 2, 3);
    const curve = curveThrough(nodes, Float64Array.of(1, 1, 1, NaN, 1));
    const potential = potentialOf(curve);
    expect(Array.from(potential)).toEqual([1, 0, -1, NaN, NaN]);
    expect(potentialAt(curve, potential, 0.5)).toBeCloseTo(-0.5, 14);
  });
});

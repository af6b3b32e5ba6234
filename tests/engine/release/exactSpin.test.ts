import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/engine/math/vector';
import {
  completeElliptic,
  createJacobi,
  incompleteElliptic,
  jacobi,
} from '../../../src/engine/release/elliptic';
import { createFreeBody } from '../../../src/engine/release/freeBody';
import { landscape, reachWithoutFriction } from '../../../src/engine/release/potential';
import { createTumbling } from '../../../src/engine/release/tumbling';
import { radians } from '../../../src/engine/units';

describe('elliptic functions at their edges', () => {
  test('begin as sn 0, cn 1, dn 1, and are refused by their own names', () => {
    expect(createJacobi()).toEqual({ sn: 0, cn: 1, dn: 1 });
    expect(() => jacobi(1, 2, createJacobi())).toThrow('jacobi()');
    expect(() => completeElliptic(2)).toThrow('completeElliptic()');
    expect(() => incompleteElliptic(1, 0, 2)).toThrow('incompleteElliptic()');
  });

  test('a million whole periods on, sn is zero to the last bit', () => {
    // A power of two of periods is a product without rounding.
    const period = 4 * completeElliptic(0.3);
    expect(jacobi(2 ** 20 * period, 0.3, createJacobi())).toEqual({ sn: 0, cn: 1, dn: 1 });
  });

  test('F(pi) is 2 K, F(0) nothing (Abramowitz and Stegun, 17.4.3), by pairs of any length', () => {
    const twice = 2 * completeElliptic(0.5);
    expect(incompleteElliptic(-1, 0, 0.5)).toBeCloseTo(twice, 14);
    expect(incompleteElliptic(1, 0, 0.5)).toBe(0);
    const [c, s] = [Math.cos(0.8), Math.sin(0.8)];
    const unit = incompleteElliptic(c, s, 0.5);
    for (const size of [0.1, 7]) {
      expect(incompleteElliptic(size * c, size * s, 0.5)).toBeCloseTo(unit, 14);
    }
  });
});

describe('a free body', () => {
  const made = (inertia: Vec3, spin: Vec3) => createFreeBody(inertia, spin);

  test('has the parameter of Landau and Lifshitz, par. 37', () => {
    // a = 1.5 x 0.16 + 0.36, b = 0.72 + 15: m = (I2 - I1) a / ((I3 - I2) b).
    const body = made([1, 2, 2.5], [0.4, 0.6, 2]);
    expect(body.ok && body.value.parameter).toBeCloseTo(0.6 / (0.5 * 15.72), 14);
  });

  test('that is small and impossible is refused as a large one is', () => {
    expect(made([1e-6, 1e-6, 2.000002e-6], [1, 1, 1])).toMatchObject({
      error: { kind: 'noSuchBody', axis: 2 },
    });
    expect(made([1, 1, 1], [1, Number.NaN, 1])).toMatchObject({
      error: { kind: 'outOfRange', field: 'spin', axis: 1 },
    });
  });
});

describe('the integrated spin', () => {
  test('a ball turns by spin times time at 1000 rad/s, its quaternion of length one throughout', () => {
    const ball = createTumbling([2, 2, 2], [0, 0, 1000]);
    let worst = 0;
    for (let i = 0; i < 50; i++) {
      ball.advance(0.002);
      worst = Math.max(worst, Math.abs(Math.hypot(...ball.attitude) - 1));
    }
    // A hundred radians, half of them in the quaternion.
    const off = Math.hypot(
      ball.attitude[0] - Math.cos(50),
      ball.attitude[1],
      ball.attitude[2],
      ball.attitude[3] - Math.sin(50),
    );
    expect(off).toBeLessThan(1e-11);
    expect(worst).toBeLessThan(5e-16);
  });

  test('moments as unequal as no mass has them keep energy and momentum', () => {
    // Euler's equations keep both for any three numbers; the first step is too long for these.
    const inertia = [1e-4, 1, 2];
    const tumbling = createTumbling([1e-4, 1, 2], [1, 1, 1]);
    tumbling.advance(0.5);
    const sum = (power: number) =>
      inertia.reduce((total, I, k) => total + I ** power * tumbling.spin[k] ** 2, 0);
    expect(sum(1)).toBeCloseTo(3.0001, 8);
    expect(sum(2)).toBeCloseTo(5.00000001, 8);
  });

  test('its time is the sum of what it was asked for, to the last bit', () => {
    const body = createTumbling([1, 2, 2.5], [0.4, 0.6, 2]);
    let sum = 0;
    for (let i = 1; i <= 60; i++) {
      body.advance(i / 300);
      sum += i / 300;
      expect(body.time).toBe(sum);
    }
    body.advance(0);
    expect(body.time).toBe(sum);
  });
});

describe('hills and reach', () => {
  const [LOW, HIGH] = [radians(-1), radians(1)];
  const place = (kind: 'stable' | 'unstable', pitch: number) => ({
    kind,
    pitch: radians(pitch),
    slope: 0,
  });

  test('a well is as deep as the hill on its right where that is the lower one', () => {
    const heights = [
      [-1, 5],
      [0, 0],
      [0.5, 2],
      [1, 9],
    ];
    const energy = (pitch: number) => heights.find(([at]) => at === pitch)?.[1] ?? Number.NaN;
    const roots = [place('stable', 0), place('unstable', 0.5)];
    const [well] = landscape(energy, { kind: 'roots', roots } as never, LOW, HIGH);
    expect(well.depth).toBe(2);
  });

  test('an end without a value is as high as a place up to 1e-3 rad inside', () => {
    const energy = (pitch: number) => (pitch < 1 - 2e-5 ? pitch * pitch : Number.NaN);
    const roots = [place('stable', 0)];
    const [well] = landscape(energy, { kind: 'roots', roots } as never, radians(-2), HIGH);
    expect(well.depth).toBeCloseTo((1 - 1e-4) ** 2, 12);
  });

  test('a hill half way is not overlooked, nor a turn just before the end', () => {
    const over = (pitch: number) => 1 - pitch * pitch;
    const halfWay = reachWithoutFriction(over, 0.5, LOW, LOW, HIGH).high;
    expect(halfWay.why).toBe('turns');
    expect(halfWay.pitch).toBeCloseTo(-Math.SQRT1_2, 12);
    const last = reachWithoutFriction((pitch) => pitch, 0.9999, radians(0), LOW, HIGH).high;
    expect(last.why).toBe('turns');
    expect(last.pitch).toBeCloseTo(0.9999, 12);
  });
});

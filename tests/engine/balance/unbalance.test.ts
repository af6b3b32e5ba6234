import { describe, expect, test } from 'vitest';
import {
  balanceGrade,
  correctionMoments,
  permissibleUnbalance,
  standardGrade,
  unbalanceOf,
} from '../../../src/engine/balance/unbalance';
import { seeded } from '../../support/seeded';

const SPIN = (10_000 * Math.PI) / 30;

describe('balance', () => {
  // Published: ISO 21940-11, worked value: 2 kg at 10,000 rpm in G 6.3 may have 12.03 g mm.
  test('2 kg at 10,000 rpm in G 6.3 may have 12.03 g mm, and has that grade then', () => {
    const unbalance = permissibleUnbalance(6.3e-3, 2, SPIN);
    expect(unbalance * 1e6).toBeCloseTo(12.03, 2);
    expect(balanceGrade(unbalance, 2, SPIN)).toBeCloseTo(6.3e-3, 15);
    expect(standardGrade(6.3e-3)).toBe(6.3);
    expect(standardGrade(6.31e-3)).toBe(16);
    expect(standardGrade(9)).toBeNull();
  });

  test('alike grips leave nothing; one heavier by a tenth leaves that tenth on its side', () => {
    const grips = (n: number, extra: number) =>
      Array.from({ length: n }, (_, i) => ({
        mass: i === 1 ? 0.02 + extra : 0.02,
        station: 0.05,
        ahead: -0.001,
        angle: (2 * Math.PI * i) / n,
      }));
    for (const n of [2, 3, 5]) {
      const even = unbalanceOf(grips(n, 0));
      expect(Math.hypot(even.x, even.y)).toBeLessThan(1e-17);
      const { x, y } = unbalanceOf(grips(n, 0.002));
      expect(Math.hypot(x, y)).toBeCloseTo(0.002 * Math.hypot(0.05, 0.001), 15);
    }
  });

  test('what is added cancels it: wholly on three or more grips, along the axis on two', () => {
    const random = seeded(51);
    for (let i = 0; i < 300; i++) {
      const n = random.whole(1, 6);
      const angles = Array.from({ length: n }, (_, k) => (2 * Math.PI * k) / n);
      const unbalance = { x: random.between(-1, 1), y: random.between(-1, 1) };
      const { added, left } = correctionMoments(unbalance, angles);
      expect(added.every((moment) => moment >= 0)).toBe(true);
      expect(added.filter((moment) => moment > 0).length).toBeLessThanOrEqual(2);
      const x = unbalance.x + added.reduce((sum, m, k) => sum + m * Math.cos(angles[k]), 0);
      const y = unbalance.y + added.reduce((sum, m, k) => sum + m * Math.sin(angles[k]), 0);
      expect(Math.abs(Math.hypot(x, y) - left)).toBeLessThan(1e-12);
      if (n >= 3) expect(left).toBeLessThan(1e-12);
      if (n === 2) expect(left).toBeCloseTo(Math.abs(unbalance.y), 12);
    }
    expect(correctionMoments({ x: -1, y: -1 }, [0, Math.PI]).added[1]).toBe(0);
    expect(correctionMoments({ x: 0, y: 0 }, [0, 2, 4])).toEqual({ added: [0, 0, 0], left: 0 });
  });

  // Hand: a grip at 90 degrees has its station along Y, and what lies ahead of its axis toward -X.
  test('a mass pulls to its own side', () => {
    const pull = (angle: number) =>
      unbalanceOf([{ mass: 0.01, station: 0.05, ahead: 0.002, angle }]);
    expect(pull(0)).toEqual({ x: expect.closeTo(5e-4, 16), y: expect.closeTo(2e-5, 16) });
    expect(pull(Math.PI / 2)).toEqual({
      x: expect.closeTo(-2e-5, 16),
      y: expect.closeTo(5e-4, 16),
    });
  });

  // Unbalances of a small rotor are some 1e-6 kg m; the grips may begin anywhere.
  test('what is added cancels it at any size and wherever the first grip stands', () => {
    const random = seeded(52);
    for (let i = 0; i < 300; i++) {
      const n = random.whole(1, 5);
      const start = random.between(-3, 3);
      const size = 10 ** random.between(-7, 3);
      const angles = Array.from({ length: n }, (_, k) => start + (2 * Math.PI * k) / n);
      const unbalance = { x: size * random.between(-1, 1), y: size * random.between(-1, 1) };
      const { added, left } = correctionMoments(unbalance, angles);
      const x = unbalance.x + added.reduce((sum, m, k) => sum + m * Math.cos(angles[k]), 0);
      const y = unbalance.y + added.reduce((sum, m, k) => sum + m * Math.sin(angles[k]), 0);
      expect(Math.abs(Math.hypot(x, y) - left)).toBeLessThan(1e-11 * size);
      if (n >= 3) expect(left).toBe(0);
      // One or two can only take away what lies along them: the rest is square to them.
      else expect(left).toBeLessThanOrEqual(Math.hypot(unbalance.x, unbalance.y) * (1 + 1e-12));
      if (n === 2) {
        const across = unbalance.x * Math.sin(start) - unbalance.y * Math.cos(start);
        expect(left).toBeCloseTo(Math.abs(across), 9);
        expect(Math.abs(left - Math.abs(across))).toBeLessThan(1e-11 * size);
      }
    }
  });

  test('what lies straight across from a grip is added to that grip alone', () => {
    for (const size of [1e-6, 1, 1e3]) {
      for (const [k, angle] of [0, 2, 4].map((one) => (one * Math.PI) / 3).entries()) {
        const unbalance = { x: -size * Math.cos(angle), y: -size * Math.sin(angle) };
        const { added } = correctionMoments(
          unbalance,
          [0, 2, 4].map((one) => (one * Math.PI) / 3),
        );
        added.forEach((moment, j) => {
          if (j === k) expect(moment / size).toBeCloseTo(1, 12);
          else expect(moment).toBe(0);
        });
      }
    }
  });
});

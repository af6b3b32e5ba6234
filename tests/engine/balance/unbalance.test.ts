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
});

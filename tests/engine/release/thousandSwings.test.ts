import { expect, test } from 'vitest';
import { completeElliptic } from '../../../src/engine/release/elliptic';
import { gripOf, letGo, SPEED } from './systems';

test.each([0.001, 0.7, 1.4])(
  'energy is kept to 1e-6 over 1,000 swings of %d rad without friction',
  (pitch) => {
    const w = SPEED * Math.sqrt(0.5);
    const swings = 1000;
    const period = (4 * completeElliptic(Math.cos(pitch) ** 2)) / w;
    const release = letGo(gripOf(6e-6, 2e-6), pitch);
    let worst = 0;
    let steps = 0;
    for (let i = 0; i < 100; i++) {
      const all = release.advance((swings / 100) * period, ({ energy }) => {
        worst = Math.max(worst, Math.abs(energy.error));
        steps++;
      });
      expect(all).toBe(true);
    }
    expect(release.turns).toBeGreaterThanOrEqual(2 * swings - 1);
    expect(steps).toBeGreaterThan(20 * swings);
    expect(worst / release.energy.scale).toBeLessThan(1e-6);
    // The law is held from outside the ledger as well: the amplitude is what it was.
    expect(Math.abs(Math.abs(release.lastEnd) / pitch - 1)).toBeLessThan(1e-6);
  },
  30_000,
);

import { expect, test } from 'vitest';
import { runRelease } from '../../../src/engine/release/outcome';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { randomSystem } from './systems';

// 2,000 in all.
test.each([1, 2, 3, 4])(
  '500 random grips (seed %d) end only where |moment| <= friction, or on a stop that carries the rest',
  (seed) => {
    const random = seeded(2000 + seed);
    const ends = { stuck: 0, low: 0, high: 0, moved: 0 };
    for (let i = 0; i < 500; i++) {
      const system = randomSystem(random);
      // Without stops a strong hand would turn it round and round.
      const hand = system.high < 1 ? random.pick([0, 0, random.between(-0.05, 0.05)]) : 0;
      const start = { pitch: radians(random.between(-0.7, 0.7)), rate: 0, hand };
      const made = runRelease(system, start, 100);
      if (!made.ok) throw new Error(JSON.stringify(made.error));
      const { release, complete } = made.value;
      expect(complete).toBe(true);
      const drive = system.moment(release.pitch) + hand;
      const friction = system.friction(release.pitch);
      if (release.moved) ends.moved++;
      if (release.phase === 'stuck') {
        ends.stuck++;
        expect(Math.abs(drive)).toBeLessThanOrEqual(friction);
      } else {
        expect(release.phase).toBe('atStop');
        const atHigh = release.pitch === system.high;
        ends[atHigh ? 'high' : 'low']++;
        expect(atHigh || release.pitch === system.low).toBe(true);
        expect(atHigh ? drive : -drive).toBeGreaterThan(friction);
      }
      expect(release.rate).toBe(0);
      expect(Math.abs(release.energy.error)).toBeLessThanOrEqual(1e-7 * release.energy.scale);
    }
    // The dice reached every case.
    expect(Math.min(...Object.values(ends))).toBeGreaterThan(15);
  },
  30_000,
);

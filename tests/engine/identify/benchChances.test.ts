import { describe, expect, it } from 'vitest';
import { findSteady } from '../../../src/engine/identify/pitchSteps';
import { sharedRounding } from '../../../src/engine/identify/quantisation';
import { normalQuantile } from '../../../src/engine/math/normal';
import { seeded } from '../../support/seeded';
import { flagsOf, gauge, truth } from './plainBench';

describe('outliers of many benches', () => {
  it('flags nearly every reading that is wrong altogether, and keeps all readings', () => {
    let [wrongs, caught] = [0, 0];
    for (let seed = 0; seed < 60; seed++) {
      const { readings, wrong, flags } = flagsOf(
        { ...truth, wrongShare: 0.08, wrongBy: 6 },
        seed,
        gauge,
      );
      const flagged = new Set(flags.map(({ index }) => index));
      wrongs += wrong.length;
      caught += wrong.filter((index) => flagged.has(index)).length;
      expect(readings).toHaveLength(36);
    }
    // Off by 3 to 6 N, 30 sigma and more. Three wrong ones that happen to share an end can hide one of them.
    expect(wrongs).toBeGreaterThan(100);
    expect(caught / wrongs).toBeGreaterThan(0.97);
  });

  it.each([
    { told: 0.08, name: 'known noise' },
    { told: null, name: 'unknown noise' },
  ])('cries wolf over some sound bench in twenty or so: $name', ({ told }) => {
    let alarms = 0;
    for (let seed = 0; seed < 200; seed++) {
      const { flags } = flagsOf(truth, seed, { ...gauge, noise: told });
      if (flags.length > 0) alarms++;
    }
    // 5 % are aimed at with a known scale; a scale learnt from the middle of 36 residuals is itself off by a tenth or two.
    expect(alarms / 200).toBeLessThan(told === null ? 0.25 : 0.1);
  });
});

describe('rounding shared by repeats', () => {
  it.each([0.05, 0.15, 0.3])('is what brute force finds with noise of %d steps', (noise) => {
    // Two repeats of one force, rounded to whole steps; forces anywhere in a step. Correlation of the two errors.
    const random = seeded(7);
    let [both, own] = [0, 0];
    const draws = 60_000;
    for (let k = 0; k < draws; k++) {
      const force = random.unit();
      const error = () => {
        const noisy = force + noise * normalQuantile(Math.max(random.unit(), 1e-12));
        return Math.round(noisy) - noisy;
      };
      const [a, b] = [error(), error()];
      both += a * b;
      own += (a * a + b * b) / 2;
    }
    // The correlation of so many pairs scatters by 1/sqrt(60,000) = 0.004: four of those.
    expect(Math.abs(both / own - sharedRounding(1, noise))).toBeLessThan(0.016);
  });
});

describe('a long log', () => {
  it('takes 200,000 samples in under two seconds', () => {
    const time = Array.from({ length: 200_000 }, (_, i) => i / 100);
    const random = seeded(5);
    const value = time.map((t) => 10 * Math.floor(t / 40) + random.between(-0.5, 0.5));
    const from = performance.now();
    expect(findSteady(time, value, { shortest: 0.5, smallest: 3, settling: 0.2 })).toHaveLength(50);
    expect(performance.now() - from).toBeLessThan(2000);
  });
});

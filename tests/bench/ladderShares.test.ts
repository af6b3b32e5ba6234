import { describe, expect, it } from 'vitest';
import type { Estimated } from '../../src/bench/fitRung';
import { ladderSteps, type MeasuredRung } from '../../src/bench/ladder';
import { type LadderChoices, sharedLadder, TRUTH } from './sharedLadder';

interface Tally {
  /** Share of ladders in which the truth lies inside the stated 95 %: of J_yy - J_zz, of J_yz, of both together. */
  readonly spread: number;
  readonly product: number;
  readonly both: number;
  /** Mean of (found - true) / stated standard uncertainty. */
  readonly lean: readonly [number, number];
}

function tally(benches: number, choices: LadderChoices): readonly Tally[] {
  const sums = TRUTH.map(() => [0, 0, 0, 0, 0]);
  for (let k = 0; k < benches; k++) {
    // The model is the truth: what is measured too much is the error.
    sharedLadder(5000 + k, choices).forEach(({ deficit, half95, agreement }, step) => {
      const own = sums[step];
      if (Math.abs(deficit.spread) <= half95.spread) own[0]++;
      if (Math.abs(deficit.product) <= half95.product) own[1]++;
      if (agreement.agrees) own[2]++;
      own[3] += deficit.spread / Math.sqrt(deficit.covariance[0]);
      own[4] += deficit.product / Math.sqrt(deficit.covariance[3]);
    });
  }
  return sums.map(([spread, product, both, a, p]) => ({
    spread: spread / benches,
    product: product / benches,
    both: both / benches,
    lean: [a / benches, p / benches],
  }));
}

/**
 * Brute force against the invented truth. Of 1,000 ladders with true 95 % intervals 950 hold the truth, give or take 6.9:
 * 930 to 970 are nearly three of them. The mean of deviations over sigma scatters by 0.032: 0.1 is three of those.
 */
describe('shares of a thousand ladders, gauge, arm, speed, pitch scale and drag wrong in all rungs alike', () => {
  it('hold the truth within the stated 95 % in 93 to 97 % of them, each share by itself, and do not lean', () => {
    for (const share of tally(1000, { noiseKnown: true, calibrated: true })) {
      for (const inside of [share.spread, share.product, share.both]) {
        expect(inside).toBeGreaterThanOrEqual(0.93);
        expect(inside).toBeLessThanOrEqual(0.97);
      }
      for (const lean of share.lean) expect(Math.abs(lean)).toBeLessThan(0.1);
    }
  }, 120_000);

  it('do so too where the noise is learnt from the readings and the pitch is read, not calibrated', () => {
    // 150 ladders: 1.8 % is one standard deviation; eight numbers, so four of them are allowed.
    for (const share of tally(150, { noiseKnown: false, calibrated: false })) {
      expect(share.spread).toBeGreaterThan(0.95 - 4 * 0.0178);
      expect(share.product).toBeGreaterThan(0.95 - 4 * 0.0178);
    }
  }, 120_000);

  it('would claim far too much for the blade if what is shared were left out', () => {
    const [, , blade] = tally(100, { noiseKnown: true, calibrated: true, sharedTold: 0 });
    expect(blade.spread).toBeLessThan(0.8);
  }, 120_000);
});

/** A rung with an own uncertainty of `own` and a gauge gain of a hundredth, kg m^2. */
function rung(spread: number, own: number): MeasuredRung {
  const gain = { id: 'gain', freedom: Infinity, spread: 0.01 * spread, product: 0 };
  const measured: Estimated = {
    spread,
    product: 0,
    covariance: [own ** 2 + gain.spread ** 2, 0, 0, 1],
    freedom: Infinity,
    shared: [gain],
  };
  return { key: 'bare', added: [], model: { spread, product: 0 }, measured };
}

describe('a difference of two rungs', () => {
  it('has the gain of the gauge once, by the share, and the own parts of both (by hand)', () => {
    const [, step] = ladderSteps([rung(300, 3), rung(400, 4)]);
    // sqrt(3^2 + 4^2 + (0.01 x 100)^2), not sqrt(25 + 3^2 + 4^2).
    expect(Math.sqrt(step.measured.covariance[0])).toBeCloseTo(Math.sqrt(26), 12);
    // GUM, JCGM 100:2008, 5.2.2, example: what is wholly correlated cancels. Two equal rungs have no error of gain.
    const [, none] = ladderSteps([rung(300, 3), rung(300, 4)]);
    expect(Math.sqrt(none.measured.covariance[0])).toBeCloseTo(5, 12);
  });

  it('rests on degrees of freedom by Welch and Satterthwaite', () => {
    // GUM, JCGM 100:2008, H.1.6 (from memory): 25, 9.7, 2.9 and 16.6 nm on 18, 25.6, 50 and 2 degrees give 16.7, so 16.
    const part = (variance: number, ownFreedom: number, shared: Estimated['shared'] = []) => ({
      ...rung(0, 1),
      measured: {
        spread: 0,
        product: 0,
        ownFreedom,
        freedom: ownFreedom,
        shared,
        covariance: [variance, 0, 0, variance] as const,
      },
    });
    const both = (id: string, size: number, freedom: number) => ({
      id,
      freedom,
      spread: size,
      product: size,
    });
    const shared = [both('one', 2.9, 50), both('other', 16.6, 2)];
    const [, step] = ladderSteps([
      part(9.7 ** 2, 25.6),
      part(25 ** 2 + 2.9 ** 2 + 16.6 ** 2, 18, shared),
    ]);
    expect(Math.abs(step.measured.freedom - 16.7)).toBeLessThan(0.1);
  });
});

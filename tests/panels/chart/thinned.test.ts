import { describe, expect, it } from 'vitest';
import { thinned } from '../../../src/panels/chart/thinned';

/** The kept samples as a list. */
function keptOf(
  ys: Float64Array,
  range: readonly [number, number],
  tolerance: number,
  breaks: readonly number[],
): number[] {
  const out = new Int32Array(xs.length);
  return Array.from(out.subarray(0, thinned(out, xs, ys, range, tolerance, breaks)));
}

const xs = Float64Array.from({ length: 721 }, (_, i) => -90 + i / 4);
const WHOLE = [0, 720] as const;

/** Largest distance of a sample from the line through those that are kept. */
function farthest(ys: Float64Array, kept: readonly number[]): number {
  let most = 0;
  for (let j = 0; j + 1 < kept.length; j++) {
    const [from, to] = [kept[j], kept[j + 1]];
    for (let k = from; k <= to; k++) {
      const share = (xs[k] - xs[from]) / (xs[to] - xs[from]);
      most = Math.max(most, Math.abs(ys[k] - (ys[from] + share * (ys[to] - ys[from]))));
    }
  }
  return most;
}

describe('the samples that a drawn curve goes through', () => {
  it('leave none of the others aside by more than asked, with a fraction of them', () => {
    const sine = xs.map((x) => 100 * Math.sin((x * Math.PI) / 90));
    const kept = keptOf(sine, WHOLE, 0.04, []);
    expect([kept[0], kept[kept.length - 1]]).toEqual([0, 720]);
    expect(farthest(sine, kept)).toBeLessThanOrEqual(0.04);
    expect(kept.length).toBeLessThan(200);
    // A chord of length s leaves a curve of curvature k by k s^2 / 8: fewer than these cannot do.
    const shortest = Math.sqrt((8 * 0.04) / (100 * (Math.PI / 90) ** 2));
    expect(kept.length).toBeGreaterThan(180 / shortest / 2);
  });

  it('are one in sixteen on a straight line, and all of them where it is wild', () => {
    const line = xs.map((x) => 3 * x - 7);
    expect(keptOf(line, WHOLE, 1e-9, []).length).toBe(720 / 16 + 1);
    const wild = xs.map((_, i) => (i % 2) * 5);
    expect(keptOf(wild, WHOLE, 0.04, []).length).toBe(721);
  });

  it('keep a kink, a gap with its edges, and both sides of a break', () => {
    const kink = xs.map((x) => Math.abs(x - 10.25));
    expect(keptOf(kink, WHOLE, 1e-6, [])).toContain(xs.indexOf(10.25));
    const gap = xs.map((x) => (x > 20 && x < 30 ? Number.NaN : 1));
    const kept = keptOf(gap, WHOLE, 0.04, []);
    for (const edge of [20, 20.25, 29.75, 30]) expect(kept).toContain(xs.indexOf(edge));
    const flat = xs.map(() => 1);
    const broken = keptOf(flat, WHOLE, 0.04, [33.1]);
    expect(broken).toContain(xs.indexOf(33));
    expect(broken).toContain(xs.indexOf(33.25));
  });

  it('begin and end where they are told', () => {
    const line = xs.map((x) => x);
    expect(keptOf(line, [101, 140], 0.04, [])).toEqual([101, 117, 133, 137, 139, 140]);
  });
});

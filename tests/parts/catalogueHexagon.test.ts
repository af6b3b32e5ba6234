import { describe, expect, it } from 'vitest';
import { accumulate, createMoments, JXX, JYY, JZZ, M } from '../../src/engine/mass/moments';
import { prismMoments } from '../../src/engine/mass/weigh';
import { chamferedHexagon } from '../../src/parts/chamferedHexagon';

/** Sums over one height and one turn of a hexagonal prism cut by two cones of 30 degrees: brute force, no closed form. */
function bruteForce(acrossFlats: number, height: number, lower: number, upper: number) {
  const corner = acrossFlats / Math.sqrt(3);
  const [layers, rays] = [4000, 200];
  let volume = 0;
  let polar = 0;
  let axial = 0;
  for (let k = 0; k < layers; k++) {
    const z = (height * (k + 0.5)) / layers;
    const cut = Math.sqrt(3) * Math.max(0, lower - z, upper - (height - z));
    for (let j = 0; j < rays; j++) {
      const angle = (((j + 0.5) / rays) * Math.PI) / 6;
      const r = Math.min(corner - cut, acrossFlats / 2 / Math.cos(angle));
      volume += r ** 2 / 2;
      polar += r ** 4 / 4;
      axial += (z * z * r ** 2) / 2;
    }
  }
  const weight = (height / layers) * (Math.PI / 6 / rays) * 12;
  return { volume: volume * weight, polar: polar * weight, axial: axial * weight };
}

function weighed(acrossFlats: number, height: number, lower: number, upper: number) {
  const sum = createMoments();
  const one = createMoments();
  for (const { outer, from, to } of chamferedHexagon(acrossFlats, [0, height], lower, upper)) {
    accumulate(sum, prismMoments({ shape: 'prism', outer, holes: [], from, to }, one));
  }
  return sum;
}

describe('a hexagon chamfered at 30 degrees', () => {
  /*
   * Midpoint sums of this fineness are good to 1e-6 (kinks of the cut, (1 / rays)^2 of the segments). Second moments: what
   * the docstring states for slices of cut corners.
   */
  it.each([
    [0.02, 1e-5, 1e-5],
    [0.059, 3e-4, 4e-4],
    [0.08, 5e-4, 1.2e-3],
  ])(
    'of height %f across flats has the volume of prism and cone, and nearly their second moments',
    (share, polar, axial) => {
      const [s, m] = [5.5, 2.4];
      const exact = bruteForce(s, m, share * s, share * s);
      const sum = weighed(s, m, share * s, share * s);
      expect(Math.abs(sum[M] / exact.volume - 1)).toBeLessThan(1e-6);
      expect(Math.abs((sum[JXX] + sum[JYY]) / exact.polar - 1)).toBeLessThan(polar);
      expect(Math.abs(sum[JZZ] / exact.axial - 1)).toBeLessThan(axial);
    },
  );

  it('on one face only, and on none, loses what each face is cut by', () => {
    const full = weighed(5.5, 2.4, 0, 0)[M];
    // ISO 4759-1 grade A hexagon: area (sqrt(3) / 2) s^2.
    expect(full).toBeCloseTo((Math.sqrt(3) / 2) * 5.5 ** 2 * 2.4, 12);
    const one = full - weighed(5.5, 2.4, 0, 0.3)[M];
    const both = full - weighed(5.5, 2.4, 0.3, 0.3)[M];
    expect(one).toBeGreaterThan(0);
    expect(both).toBeCloseTo(2 * one, 12);
    expect(weighed(5.5, 2.4, 0.3, 0)[M]).toBeCloseTo(full - one, 12);
  });
});

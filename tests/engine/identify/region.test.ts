import { describe, expect, it } from 'vitest';
import type { BenchFit } from '../../../src/engine/identify/benchFitTypes';
import {
  confidenceRegion,
  regionDistance,
  regionEllipse,
} from '../../../src/engine/identify/region';

/** Three numbers, of which only what a region reads is there. */
function fitWith(quantileFreedom: number, determined = [true, true, true]): BenchFit {
  const estimates = [10, 20, 30].map((value, j) => ({ value, determined: determined[j] }));
  const covariance = Float64Array.from([4, 1, 2, 1, 9, 3, 2, 3, 16]);
  return { estimates, covariance, quantileFreedom } as unknown as BenchFit;
}

describe('a joint region', () => {
  it('takes its own numbers out of the fit, in the order asked', () => {
    const region = confidenceRegion(fitWith(Infinity), [2, 0]);
    expect(region?.centre).toEqual([30, 10]);
    expect([...(region?.covariance ?? [])]).toEqual([16, 2, 2, 4]);
    expect(region?.parameters).toEqual([2, 0]);
  });

  it('is bounded by chi-square where noise is known, by F where it is learnt', () => {
    // Chi-square of 0.95 and two: -2 ln 0.05. F(0.95; 2, 10) = 4.103 as printed; of 0.5 and two, two: 1.
    expect(confidenceRegion(fitWith(Infinity), [0, 1])?.limit).toBeCloseTo(-2 * Math.log(0.05), 9);
    expect(confidenceRegion(fitWith(10), [0, 1])?.limit).toBeCloseTo(2 * 4.1028210151304, 8);
    expect(confidenceRegion(fitWith(2), [0, 1], 0.5)?.limit).toBeCloseTo(2, 9);
  });

  it('is none of a number that is not determined, not there, or without anything to learn noise from', () => {
    expect(confidenceRegion(fitWith(5, [true, false, true]), [0, 1])).toBeNull();
    expect(confidenceRegion(fitWith(5, [true, false, true]), [0, 2])).not.toBeNull();
    expect(confidenceRegion(fitWith(5), [0, 3])).toBeNull();
    expect(confidenceRegion(fitWith(0), [0, 1])).toBeNull();
    expect(confidenceRegion(fitWith(Number.NaN), [0, 1])).toBeNull();
  });
});

describe('the distance of a point', () => {
  it('is d^T C^-1 d: by the inverse of [[4, 1], [1, 9]], which is [[9, -1], [-1, 4]] / 35', () => {
    const region = confidenceRegion(fitWith(Infinity), [0, 1]);
    if (!region) throw new Error('no region');
    expect(regionDistance(region, [10, 20])).toBe(0);
    expect(regionDistance(region, [12, 17])).toBeCloseTo((9 * 4 + 2 * 6 + 4 * 9) / 35, 13);
    expect(regionDistance(region, [10, 21])).toBeCloseTo(4 / 35, 13);
  });

  it('of three numbers is that of the inverse by cofactors', () => {
    // C = [[4,1,2],[1,9,3],[2,3,16]]: det = 4(144-9) - (16-6) + 2(3-18) = 500; the first column of its inverse is (135, -10, -15) / 500.
    const region = confidenceRegion(fitWith(Infinity), [0, 1, 2]);
    if (!region) throw new Error('no region');
    expect(regionDistance(region, [11, 20, 30])).toBeCloseTo(135 / 500, 13);
    // The last: (3 - 18, -(12 - 2), 36 - 1) / 500.
    expect(regionDistance(region, [10, 20, 31])).toBeCloseTo(35 / 500, 13);
    expect(regionDistance(region, [11, 20, 31])).toBeCloseTo((135 + 35 - 30) / 500, 13);
  });
});

describe('the ellipse of two', () => {
  it('touches the limits of each: as far out as root limit times its own uncertainty', () => {
    const region = confidenceRegion(fitWith(Infinity), [0, 1]);
    if (!region) throw new Error('no region');
    const points = regionEllipse(region, 3600);
    const reach = (k: 0 | 1) => [
      Math.min(...points.map((point) => point[k])),
      Math.max(...points.map((point) => point[k])),
    ];
    const out = Math.sqrt(region.limit);
    // A thousandth of a turn from the top costs a millionth.
    expect(reach(0)[0]).toBeCloseTo(10 - 2 * out, 4);
    expect(reach(0)[1]).toBeCloseTo(10 + 2 * out, 4);
    expect(reach(1)[0]).toBeCloseTo(20 - 3 * out, 4);
    expect(reach(1)[1]).toBeCloseTo(20 + 3 * out, 4);
    for (const point of points.slice(0, 7)) {
      expect(regionDistance(region, point) / region.limit).toBeCloseTo(1, 12);
    }
  });

  it('is drawn one way round and has the area pi x limit x root of the determinant', () => {
    const region = confidenceRegion(fitWith(Infinity), [0, 1]);
    if (!region) throw new Error('no region');
    // By the shoelace formula, which is positive where the points go from the first axis to the second; determinant 4 x 9 - 1.
    const points = regionEllipse(region, 360);
    const area = points.reduce((sum, [x, y], k) => {
      const [u, v] = points[(k + 1) % points.length];
      return sum + (x * v - u * y) / 2;
    }, 0);
    const polygon = 180 * Math.sin((2 * Math.PI) / 360);
    expect(area / (polygon * region.limit * Math.sqrt(35))).toBeCloseTo(1, 12);
  });

  it('is drawn of two only', () => {
    const region = confidenceRegion(fitWith(Infinity), [0, 1, 2]);
    if (!region) throw new Error('no region');
    expect(() => regionEllipse(region, 8)).toThrow(RangeError);
  });
});

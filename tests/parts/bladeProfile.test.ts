import { describe, expect, it } from 'vitest';
import { createMoments, M, SX, SY } from '../../src/engine/mass/moments';
import { sumSolids } from '../../src/engine/mass/weigh';
import { transformPoint } from '../../src/engine/math/pose';
import { blade } from '../../src/parts/blade';
import type { BladeValues } from '../../src/parts/blade/parameters';
import { defaults } from './sample';

const PLAIN = defaults('blade') as unknown as BladeValues;
const mm = 1e-3;

function profileOf(values: BladeValues, count: number) {
  const profile = blade.spanProfile?.(values, count);
  if (!profile) throw new Error('no profile');
  return profile;
}

const FULL: Partial<BladeValues> = {
  build: 'skin',
  camberPercent: 3,
  tipChordMm: 20,
  rootThicknessPercent: 14,
  sweepMm: 4,
  skinThicknessMm: 0.25,
  sparDiameterMm: 1,
  sparBoreMm: 0.6,
  sparOffsetMm: -2,
  weightDiameterMm: 0.9,
  weightOffsetMm: -5,
  bushDiameterMm: 5,
};

describe('mass along the span', () => {
  it.each<[string, Partial<BladeValues>]>([
    ['the plain blade', {}],
    ['a tapered and swept one', { tipChordMm: 15, sweepMm: 6, rootSweepMm: 1 }],
    ['a skinned one with all that can be in it', FULL],
    ['a lagging one, in its own axes', { ...FULL, lagDeg: 30 }],
  ])('adds up to mass and first moments of %s', (_, change) => {
    const values = { ...PLAIN, ...change };
    expect(blade.problems(values)).toEqual([]);
    const count = 40001;
    const { x, massPerLength, centreY } = profileOf(values, count);
    const step = (x[count - 1] - x[0]) / (count - 1);
    const sum = { mass: 0, sx: 0, sy: 0 };
    for (let k = 0; k < count; k++) {
      const mass = massPerLength[k] * step * (k === 0 || k === count - 1 ? 0.5 : 1);
      if (mass === 0) continue;
      sum.mass += mass;
      sum.sx += mass * x[k];
      sum.sy += mass * centreY[k];
    }
    const exact = sumSolids(blade.solids({ ...values, lagDeg: 0 }), createMoments());
    // Each of at most nine steps along the span (block, spar, weight, edges of holes) is off by half a station at most.
    const lost = 9 * Math.max(...massPerLength) * (step / 2);
    expect(Math.abs(sum.mass - exact[M])).toBeLessThan(lost);
    expect(Math.abs(sum.sx - exact[SX])).toBeLessThan(lost * 92 * mm);
    expect(Math.abs(sum.sy - exact[SY])).toBeLessThan(lost * 20 * mm);
  });

  it('of the root block is width times thickness, less the hole, about the bolt axis', () => {
    const { x, massPerLength, centreY } = profileOf(PLAIN, 1001);
    for (let k = 1; x[k] < 12 * mm; k++) {
      const at = x[k] / mm;
      const width = at < 0 ? 2 * Math.sqrt(4.5 ** 2 - at ** 2) : 9;
      const hole = Math.abs(at) < 1.55 ? 2 * Math.sqrt(1.55 ** 2 - at ** 2) : 0;
      expect(massPerLength[k]).toBeCloseTo(1500 * (width - hole) * 4.8e-6, 12);
      expect(centreY[k]).toBe(0);
    }
    expect(Number.isNaN(centreY[0])).toBe(true);
  });

  it('of the airfoil is 0.685083 t c at 0.420435 of the chord', () => {
    // Derived from the polynomial of NACA Report 460, see the section's own tests.
    const { x, massPerLength, centreY } = profileOf(PLAIN, 100);
    expect(x[99]).toBe(92 * mm);
    expect(massPerLength[99]).toBeCloseTo(1500 * 0.685083 * 2.8 * 28 * 1e-6, 6);
    expect(centreY[99]).toBeCloseTo((0.3 - 0.420435) * 28 * mm, 7);
  });

  it('rises by the weight where the weight is', () => {
    const weight = {
      weightDiameterMm: 1,
      weightStationMm: 80,
      weightLengthMm: 6,
      weightDensityKgM3: 8500,
    };
    const [plain, loaded] = [profileOf(PLAIN, 969), profileOf({ ...PLAIN, ...weight }, 969)];
    const rise = (7000 * Math.PI * 1e-6) / 4;
    for (let k = 0; k < 969; k++) {
      // Stations are 0.0997 mm apart: none on the ends of the weight.
      const inside = Math.abs(plain.x[k] / mm - 80) < 3;
      const more = loaded.massPerLength[k] - plain.massPerLength[k];
      expect(more).toBeCloseTo(inside ? rise : 0, 12);
    }
  });
});

describe('axes of a lagging blade', () => {
  it('turn with it, about the bolt, toward the trailing edge', () => {
    const values = { ...PLAIN, lagDeg: 90 };
    const pose = blade.bodyPose?.(values);
    if (!pose) throw new Error('no body pose');
    expect(transformPoint(pose, [0.09, 0, 0])).toEqual([0, -0.09, 0]);
    const straight = sumSolids(blade.solids(PLAIN), createMoments());
    const lagging = sumSolids(blade.solids(values), createMoments());
    const [x, y] = transformPoint(pose, [straight[SX], straight[SY], 0]);
    expect(lagging[SX]).toBeCloseTo(x, 15);
    expect(lagging[SY]).toBeCloseTo(y, 15);
  });
});

describe('handles of a blade', () => {
  it('of spars and weights are there when they are', () => {
    const names = (change: Partial<BladeValues>) =>
      blade.handles({ ...PLAIN, ...change }).map((one) => one.parameter);
    expect(names({})).toContain('sweepMm');
    expect(names({}).filter((name) => /spar|weight/.test(name))).toEqual([]);
    expect(names({ sparDiameterMm: 1 })).toEqual(
      expect.arrayContaining(['sparOffsetMm', 'sparEndMm']),
    );
    expect(names({ weight2DiameterMm: 1 })).toContain('weight2StationMm');
  });
});

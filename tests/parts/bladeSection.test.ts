import { describe, expect, it } from 'vitest';
import { airfoilHalfThickness } from '../../src/engine/mass/airfoil';
import { inspectMesh, isWatertight, meshVolumeMoments } from '../../src/engine/mass/mesh';
import { accumulate, createMoments, M, type Moments } from '../../src/engine/mass/moments';
import { sumSolids } from '../../src/engine/mass/weigh';
import { blade } from '../../src/parts/blade';
import type { BladeValues } from '../../src/parts/blade/parameters';
import { weldedMeshes } from '../../src/parts/tessellate';
import { momentsDeviation } from '../support/closeness';
import { defaults } from './sample';

const PLAIN = defaults('blade') as unknown as BladeValues;

function weigh(change: Partial<BladeValues>): Moments {
  return sumSolids(blade.solids({ ...PLAIN, ...change }), createMoments());
}
function firstProblem(change: Partial<BladeValues>) {
  return blade.problems({ ...PLAIN, ...change })[0];
}

/** Points of the published thickness polynomial, joined straight, from the trailing edge over the top. */
function pointsOf(thickness: number, panels: number): number[] {
  return Array.from({ length: 2 * panels + 1 }, (_, k) => {
    const s = (1 - Math.cos(Math.PI * (1 - k / panels))) / 2;
    return [s, Math.sign(panels - k) * thickness * airfoilHalfThickness(s)];
  }).flat();
}

describe('own coordinates', () => {
  it('of the four-digit section weigh what the closed form weighs, as the points grow', () => {
    const exact = weigh({});
    const error = (panels: number) => {
      const sectionCoordinates = pointsOf(0.1, panels);
      // The greatest thickness stands between the points: asked for is that at the points, so nothing is stretched.
      const percent = 200 * Math.max(...sectionCoordinates.filter((_, i) => i % 2 === 1));
      const change = { rootThicknessPercent: percent, tipThicknessPercent: percent };
      return momentsDeviation(weigh({ sectionCoordinates, ...change }), exact);
    };
    // Straight between the points: as much is lost as of a circle, (pi / panels)^2 / 6; twice that of second moments.
    expect(error(50)).toBeLessThan(2 * ((Math.PI / 50) ** 2 / 6));
    expect(error(50) / error(100)).toBeGreaterThan(3.5);
    expect(error(50) / error(100)).toBeLessThan(4.5);
  });

  it('are stretched in height to the thickness asked for, whatever thickness they were drawn with', () => {
    const drawn = (thickness: number) => weigh({ sectionCoordinates: pointsOf(thickness, 60) });
    expect(momentsDeviation(drawn(0.15), drawn(0.06))).toBeLessThan(1e-14);
    const sectionCoordinates = pointsOf(0.12, 60);
    const thick = weigh({ sectionCoordinates, rootThicknessPercent: 20, tipThicknessPercent: 20 });
    const thin = weigh({ sectionCoordinates });
    const block = thin[M] - (thick[M] - thin[M]);
    // Twice the thickness, twice the airfoil: what remains is the block of 4.8 mm (hand formula).
    const area = 12 * 9 + (Math.PI / 2) * 4.5 ** 2 - (Math.PI / 4) * 3.1 ** 2;
    expect(block).toBeCloseTo(1500 * area * 4.8 * 1e-9, 15);
  });

  it.each([
    ['an odd count', [1, 0, 0.5], /3 numbers, which do not go in pairs/],
    ['too few points', [1, 0, 0.5, 0.1, 0, 0, 0.5, -0.1], /has 4 points, where 5/],
    ['too few but for the closing one', [1, 0, 0.5, 0.1, 0, 0, 0.5, -0.1, 1, 0], /has 4 points/],
    ['what is no number', [1, 0, 0.5, Number.NaN, 0, 0, 0.5, -0.1, 0.7, -0.1], /NaN.*number 4/],
    ['half a chord', [0.5, 0, 0.3, 0.1, 0, 0, 0.2, -0.1, 0.3, -0.1], /from 0 to 50 %/],
    ['the leading edge first', [0, 0, 0.5, -0.1, 1, 0, 0.7, 0.1, 0.3, 0.1], /trailing edge/],
    ['bottom first', [1, 0, 0.5, -0.1, 0, 0, 0.3, 0.1, 0.8, 0.05, 1, 0.01], /wrong way round/],
    ['a loop', [1, 0, 0.5, 0.1, 0, 0, 0.4, -0.1, 0.6, 0.2, 1, -0.05], /crosses itself/],
    [
      'a top that touches the bottom',
      [1, 0.05, 0.5, 0.1, 0.25, -0.0625, 0.125, 0.05, 0, 0, 0.5, -0.125, 0.9, -0.05],
      /crosses itself/,
    ],
    ['a point twice', [1, 0, 0.5, 0.1, 0.5, 0.1, 0, 0, 0.5, -0.1, 0.8, -0.05], /point 2 twice/],
    ['a spike', [1, 0, 0.5, 0.1, 0, 0, -0.02, 0, 0, 0, 0.5, -0.1], /turns back on itself/],
    ['a line', [1, 0.001, 0.5, 0.001, 0, 0, 0.5, -0.001, 1, -0.001], /% of its chord thick/],
  ])('with %s are refused in words', (_, sectionCoordinates, words) => {
    const problem = firstProblem({ sectionCoordinates });
    expect(problem).toMatchObject({ field: 'sectionCoordinates', rule: 'unsound' });
    expect(problem && 'detail' in problem ? problem.detail : '').toMatch(words);
  });

  it('with an overhang are taken solid and refused under a skin', () => {
    const sectionCoordinates = [
      1, 0.01, 0.5, 0.1, 0.6, 0.15, 0.3, 0.2, 0, 0, 0.5, -0.1, 0.9, -0.02,
    ];
    expect(firstProblem({ sectionCoordinates })).toBeUndefined();
    const problem = firstProblem({ sectionCoordinates, build: 'skin', skinThicknessMm: 0.05 });
    expect(problem).toMatchObject({ field: 'sectionCoordinates', rule: 'unsound' });
  });
});

describe('rules of a blade name the field and its limit', () => {
  it('camber needs a radius of bend greater than half the thickness', () => {
    const thick = { rootThicknessPercent: 50, camberPositionPercent: 20 };
    // t / 2 < q^2 / (2 m): m < 0.04 / 0.5.
    expect(firstProblem({ ...thick, camberPercent: 9 })).toMatchObject({
      field: 'camberPercent',
      rule: 'atMost',
      limit: 8,
    });
    expect(firstProblem({ ...thick, camberPercent: -9 })).toMatchObject({
      field: 'camberPercent',
      rule: 'atLeast',
      limit: -8,
    });
    expect(firstProblem({ ...thick, camberPercent: 8 })).toBeUndefined();
  });

  it('a skin must be thinner than half the thickness of the thinner end', () => {
    const problem = firstProblem({ build: 'skin', skinThicknessMm: 1.2, tipThicknessPercent: 6 });
    expect(problem).toMatchObject({ field: 'skinThicknessMm', rule: 'below' });
    // 6 % of 28 mm, halved; the middle line is looked at in 64 places.
    const limit = problem && 'limit' in problem ? problem.limit : 0;
    expect(limit).toBeGreaterThan(0.838);
    expect(limit).toBeLessThan(0.8403);
  });

  it.each<[string, Partial<BladeValues>, object]>([
    [
      'a spar thicker than the blade',
      { sparDiameterMm: 3 },
      { field: 'sparDiameterMm', rule: 'atMost' },
    ],
    [
      'a spar ahead of the nose',
      { sparDiameterMm: 1, sparOffsetMm: 9 },
      { field: 'sparOffsetMm', rule: 'atMost' },
    ],
    [
      'a spar behind the trailing edge',
      { sparDiameterMm: 1, sparOffsetMm: -25 },
      { field: 'sparOffsetMm', rule: 'atLeast' },
    ],
    [
      'a spar beyond the tip',
      { sparDiameterMm: 1, sparEndMm: 95 },
      { field: 'sparEndMm', rule: 'atMost', limit: 92 },
    ],
    [
      'a spar in the root block',
      { sparDiameterMm: 1, sparStartMm: 8 },
      { field: 'sparStartMm', rule: 'atLeast', limit: 12 },
    ],
    [
      'a spar that ends before it begins',
      { sparDiameterMm: 1, sparEndMm: 14 },
      { field: 'sparEndMm', rule: 'above', limit: 15 },
    ],
    [
      'a bore as wide as its tube',
      { sparDiameterMm: 1, sparBoreMm: 1 },
      { field: 'sparBoreMm', rule: 'atMost', limit: 0.95 },
    ],
    [
      'a weight out of the tip',
      { weightDiameterMm: 1, weightStationMm: 90 },
      { field: 'weightStationMm', rule: 'atMost', limit: 88 },
    ],
    [
      'a weight in a spar',
      { sparDiameterMm: 2, weightDiameterMm: 2, weightOffsetMm: 1.5 },
      { field: 'weightDiameterMm', rule: 'atMost', limit: 1 },
    ],
    [
      'a bushing smaller than the hole',
      { bushDiameterMm: 3 },
      { field: 'bushDiameterMm', rule: 'above', limit: 3.1 },
    ],
    [
      'a bushing as wide as the block',
      { bushDiameterMm: 9 },
      { field: 'bushDiameterMm', rule: 'atMost', limit: 0.95 * 9 },
    ],
  ])('%s', (_, change, problem) => {
    expect(firstProblem(change)).toMatchObject(problem);
  });

  it('a spar in a skinned blade stays in the core', () => {
    const spar = { sparDiameterMm: 2.2, sparOffsetMm: 0 };
    expect(firstProblem(spar)).toBeUndefined();
    const problem = firstProblem({ ...spar, build: 'skin', skinThicknessMm: 0.4 });
    // 2.8 mm less two skins of 0.4 mm, measured on the hollow's corners.
    expect(problem).toMatchObject({ field: 'sparDiameterMm', rule: 'atMost' });
    expect(problem && 'limit' in problem ? problem.limit : 0).toBeCloseTo(2.0, 2);
  });
});

describe('the drawn blade', () => {
  const CASES: readonly (readonly [string, Partial<BladeValues>])[] = [
    [
      'cambered, tapered in chord and thickness',
      { camberPercent: 4, tipChordMm: 16, rootThicknessPercent: 16 },
    ],
    ['skinned', { build: 'skin', tipChordMm: 18, rootThicknessPercent: 14, sweepMm: 5 }],
    [
      'skinned, cambered, with spar and weight',
      {
        build: 'skin',
        camberPercent: 3,
        tipChordMm: 20,
        rootThicknessPercent: 14,
        sparDiameterMm: 1,
        sparBoreMm: 0.6,
        weightDiameterMm: 0.9,
      },
    ],
    [
      'of own coordinates under a skin',
      {
        build: 'skin',
        sectionCoordinates: pointsOf(0.13, 20),
        tipChordMm: 20,
        rootThicknessPercent: 15,
      },
    ],
  ];

  it.each(CASES)('%s: every solid is closed and faces as its density says', (_, change) => {
    expect(firstProblem(change)).toBeUndefined();
    const solids = blade.solids({ ...PLAIN, ...change });
    weldedMeshes(solids).forEach((mesh, i) => {
      const faults = inspectMesh(mesh);
      expect(isWatertight(faults) && faults.degenerateTriangles === 0, mesh.name).toBe(true);
      const [solid] = [solids[i] as { density: number }];
      expect(Math.sign(meshVolumeMoments(mesh, createMoments())[M])).toBe(Math.sign(solid.density));
    });
  });

  it.each(CASES)(
    '%s: lofts and rods come four times closer with twice the segments',
    (_, change) => {
      const solids = blade.solids({ ...PLAIN, ...change });
      const drawn = (segmentsPerTurn: number) => {
        const sum = createMoments();
        weldedMeshes(solids, { segmentsPerTurn }).forEach((mesh, i) => {
          // The mesh of a hole faces inward: its volume is negative already.
          const density = Math.abs((solids[i] as { density: number }).density);
          accumulate(sum, meshVolumeMoments(mesh, createMoments()), density);
        });
        return sum;
      };
      const exact = sumSolids(solids, createMoments());
      const [coarse, fine] = [drawn(96), drawn(192)].map((one) => momentsDeviation(one, exact));
      expect(coarse).toBeLessThan(2e-3);
      expect(coarse / fine).toBeGreaterThan(3.4);
      expect(coarse / fine).toBeLessThan(4.7);
    },
  );
});

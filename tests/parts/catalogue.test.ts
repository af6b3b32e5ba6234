import { describe, expect, it, vi } from 'vitest';
import { inspectMesh, isWatertight, meshVolumeMoments } from '../../src/engine/mass/mesh';
import { createMoments, JXX, JYY, JZZ, M } from '../../src/engine/mass/moments';
import { solidMoments } from '../../src/engine/mass/weigh';
import { partType } from '../../src/parts/registry';
import { weldedMeshes } from '../../src/parts/tessellate';
import {
  CATALOGUE_KINDS,
  catalogueCases,
  gramsOf,
  solidsOf,
  standardNamed,
  standardPart,
  standardsOf,
} from './catalogueRows';
import { defaults, problemsOf, withinLimits } from './sample';

vi.setConfig({ testTimeout: 60_000 });

const EVERY_ROW = CATALOGUE_KINDS.flatMap((kind) => catalogueCases(kind));
const [SHORTEST, LONGEST] = partType('bolt').catalogue?.lengthLimitsMm ?? [0, 0];

describe('the catalogue', () => {
  it('has the standards that the trade buys, M1.6 to M8 and #2 to 1/4 inch', () => {
    const names = (kind: string) => standardsOf(kind).map(({ standard }) => standard);
    expect(names('bolt')).toEqual([
      'ISO 4762',
      'ISO 7380',
      'ISO 4014',
      'ISO 4017',
      'ISO 4026',
      'ASME B18.3',
    ]);
    expect(names('nut')).toEqual(['ISO 4032', 'ISO 4035', 'ISO 7040', 'ISO 10511']);
    expect(names('washer')).toEqual(['ISO 7089', 'ISO 7092']);
    // ISO 7380-1, ISO 7040 and ISO 10511 begin at M3.
    const sizes = (kind: string, name: string) =>
      standardNamed(kind, name).sizes.map((one) => one.size);
    const metric = ['M1.6', 'M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'];
    expect(sizes('bolt', 'ISO 4762')).toEqual(metric);
    expect(sizes('bolt', 'ISO 7380')).toEqual(metric.slice(3));
    expect(sizes('nut', 'ISO 7040')).toEqual(metric.slice(3));
    expect(sizes('bolt', 'ASME B18.3')).toEqual([
      '#2-56',
      '#4-40',
      '#6-32',
      '#8-32',
      '#10-32',
      '1/4-28',
    ]);
  });

  it('names the source of every row, lengths ascending and within the limits', () => {
    for (const kind of CATALOGUE_KINDS) {
      for (const { sizes } of standardsOf(kind)) {
        for (const { source, lengthsMm } of sizes) {
          expect(source).toMatch(/ISO|ASME/);
          expect(lengthsMm !== undefined).toBe(kind === 'bolt');
          if (!lengthsMm) continue;
          expect(lengthsMm.length).toBeGreaterThan(1);
          expect(lengthsMm).toEqual([...new Set(lengthsMm)].toSorted((a, b) => a - b));
          expect(lengthsMm[0]).toBeGreaterThanOrEqual(SHORTEST);
        }
      }
    }
  });

  it('lists the inch lengths of ASME B18.3 exactly: half an inch is 12.7 mm', () => {
    const size = standardNamed('bolt', 'ASME B18.3').sizes.find((one) => one.size === '#4-40');
    expect(size?.lengthsMm).toContain(12.7);
    expect(size?.lengthsMm).toContain(4.7625);
  });

  it.each(CATALOGUE_KINDS)('gives a %s every dimension and no material', (kind) => {
    const dimensions = Object.keys(partType(kind).parameters).filter(
      (key) => !/density|propertyClass/i.test(key),
    );
    for (const { standard, size, lengthMm } of catalogueCases(kind)) {
      expect(Object.keys(standard.values(size, lengthMm)).toSorted()).toEqual(
        dimensions.toSorted(),
      );
    }
  });

  it('has rows that break no rule, lie within the limits and weigh something, solid by solid', () => {
    for (const { name, kind, values } of EVERY_ROW) {
      expect(problemsOf(kind, values), name).toEqual([]);
      for (const [key, parameter] of Object.entries(partType(kind).parameters)) {
        expect(withinLimits(parameter, values[key]), `${name} ${key}`).toBe(true);
      }
      for (const solid of solidsOf(kind, values)) {
        const mass = solidMoments(solid, createMoments())[M];
        expect(mass, `${name} ${solid.name}`).toBeGreaterThan(0);
      }
    }
  });

  it('cuts a bolt to any length within the limits, and it breaks no rule', () => {
    const asked = [
      SHORTEST,
      2.1,
      2.7,
      3.3,
      4.9,
      7,
      9.5,
      11,
      15.9,
      17.3,
      19.26,
      22,
      26.9,
      33,
      99,
      LONGEST,
    ];
    for (const { name, kind, values, lengthMm } of catalogueCases('bolt', () => asked)) {
      expect(problemsOf(kind, values), name).toEqual([]);
      expect(values.lengthMm, name).toBe(lengthMm);
      expect(gramsOf(kind, values), name).toBeGreaterThan(0);
    }
  });

  it('makes a bolt heavier the longer it is', () => {
    for (const standard of standardsOf('bolt')) {
      for (const { size, lengthsMm = [] } of standard.sizes) {
        const grams = lengthsMm.map((length) =>
          gramsOf('bolt', standardPart('bolt', standard, size, length).values),
        );
        expect(grams.length).toBeGreaterThan(1);
        for (let i = 1; i < grams.length; i++) {
          expect(grams[i], `${standard.standard} ${size} x ${lengthsMm[i]}`).toBeGreaterThan(
            grams[i - 1],
          );
        }
      }
    }
  });

  it('refuses a size or a missing length as the fault of the program that asks', () => {
    expect(() => standardNamed('bolt', 'ISO 4762').values('M7', 20)).toThrow(/M7/);
    expect(() => standardNamed('bolt', 'ISO 4762').values('M3', undefined)).toThrow(/M3/);
    expect(() => standardNamed('nut', 'ISO 4032').values('M7', undefined)).toThrow(/M7/);
    expect(() => standardNamed('washer', 'ISO 7089').values('M7', undefined)).toThrow(/M7/);
  });
});

describe('the M3 cap screw of ISO 4762', () => {
  const m3 = (length: number) =>
    standardPart('bolt', standardNamed('bolt', 'ISO 4762'), 'M3', length);

  it('22 mm long has the head, key and 18 mm thread that the standard prints', () => {
    expect(m3(22).values).toMatchObject({
      headForm: 'cap',
      headDiameterMm: 5.5,
      headHeightMm: 3,
      socketAcrossMm: 2.5,
      socketDepthMm: 1.3,
      lengthMm: 22,
      threadLengthMm: 18,
      shankDiameterMm: 3,
      threadPitchMm: 0.5,
    });
  });

  it('is threaded to the head up to 20 mm', () => {
    expect(m3(20).values).toMatchObject({ threadLengthMm: 20, threadRunOutMm: 0 });
    expect(m3(20.5).values).toMatchObject({ threadLengthMm: 18, threadRunOutMm: 1.25 });
  });
});

describe('material', () => {
  it('mass goes with density, part by part', () => {
    for (const { name, kind, values } of CATALOGUE_KINDS.flatMap((k) =>
      catalogueCases(k, (l) => [l[0]]),
    )) {
      const light = {
        densityKgM3: 2700,
        ...(kind === 'nut' ? { insertDensityKgM3: (1140 * 2700) / 7850 } : {}),
      };
      const ratio = gramsOf(kind, values, light) / gramsOf(kind, values);
      expect(Math.abs(ratio / (2700 / 7850) - 1), name).toBeLessThan(1e-14);
    }
  });

  it('a locking ring has a density of its own: nylon in an ISO 7040 nut', () => {
    const { values } = standardPart('nut', standardNamed('nut', 'ISO 7040'), 'M3');
    const ring = solidsOf('nut', values).find((solid) => solid.name === 'locking ring');
    expect(ring && 'density' in ring && ring.density).toBe(1140);
    const {
      insertInnerDiameterMm: inner,
      insertOuterDiameterMm: outer,
      insertHeightMm: height,
    } = values;
    const volumeMm3 = (Math.PI / 4) * (Number(outer) ** 2 - Number(inner) ** 2) * Number(height);
    const heavier = gramsOf('nut', values, { insertDensityKgM3: 2140 }) - gramsOf('nut', values);
    expect(heavier).toBeCloseTo(volumeMm3 * 1e-3, 12);
  });
});

describe('designs without a catalogue row', () => {
  /* Masses (kg) of these parts before heads, chamfers and rings came in: equal but for the last digits of the sums. */
  it.each([
    ['bolt', {}, 0.001197630036361197],
    ['bolt', { extensionLengthMm: 12 }, 0.003435661372870395],
    ['bolt', { extensionLengthMm: 2, socketDepthMm: 3 }, 0.0014984033277783348],
    ['bolt', { threadLengthMm: 14, socketDepthMm: 0 }, 0.0011902570153482796],
    ['nut', {}, 0.00038542810680433534],
    [
      'nut',
      { form: 'round', acrossMm: 8, collarHeightMm: 1.5, closedEndMm: 4 },
      0.0016190321316322408,
    ],
  ])('a %s with %j weighs what it weighed before', (kind, changes, kg) => {
    expect(Math.abs(gramsOf(kind, defaults(kind), changes) / 1000 / kg - 1)).toBeLessThan(2e-15);
  });
});

/** Of every standard the smallest, the largest and M3 (#4-40 in inches), at the first listed length. */
const DRAWN = CATALOGUE_KINDS.flatMap((kind) =>
  catalogueCases(kind, (listed) => [listed[0]]),
).filter(
  ({ size, standard: { sizes } }) =>
    size === sizes[0].size || size === sizes[sizes.length - 1].size || /^(M3|#4-40)$/.test(size),
);

describe.each(DRAWN)('$name as drawn', ({ kind, values }) => {
  it('is closed and faces outward, solid by solid', () => {
    for (const mesh of weldedMeshes(solidsOf(kind, values), { segmentsPerTurn: 48 })) {
      const faults = inspectMesh(mesh);
      expect(isWatertight(faults) && faults.degenerateTriangles === 0, mesh.name).toBe(true);
      expect(meshVolumeMoments(mesh, createMoments())[M], mesh.name).toBeGreaterThan(0);
    }
  });

  /*
   * n chords lose (2 pi / n)^2 / 6 of a circle's area, so four times the chords leave a sixteenth. Each short arc of a dome
   * takes two chords at least, four with four times the segments: its share falls to a quarter only.
   */
  it('comes near what is weighed, and the error falls with the square of the segments', () => {
    const solids = solidsOf(kind, values);
    const [coarse, fine] = [96, 384].map((segmentsPerTurn) =>
      weldedMeshes(solids, { segmentsPerTurn }),
    );
    solids.forEach((solid, i) => {
      const density = 'density' in solid ? solid.density : 1;
      const exact = solidMoments(solid, createMoments()).map((value) => value / density);
      const before = meshVolumeMoments(coarse[i], createMoments());
      const after = meshVolumeMoments(fine[i], createMoments());
      for (const k of [M, JXX, JYY, JZZ]) {
        const error = Math.abs(before[k] - exact[k]);
        // Plane-sided solids are exact already.
        if (error <= 1e-9 * exact[k]) continue;
        const gain = error / Math.abs(after[k] - exact[k]);
        const dome = values.headForm === 'button' && solid.name === 'head';
        expect(gain, `${solid.name} ${k}`).toBeGreaterThan(dome ? 3.9 : 15);
        expect(gain, `${solid.name} ${k}`).toBeLessThan(17);
      }
    });
  });
});

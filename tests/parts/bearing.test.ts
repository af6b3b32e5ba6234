import { describe, expect, it } from 'vitest';
import {
  createMoments,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  M,
  SX,
  SY,
  SZ,
  transformMoments,
} from '../../src/engine/mass/moments';
import { sumSolids } from '../../src/engine/mass/weigh';
import { compose, translation } from '../../src/engine/math/pose';
import { partType } from '../../src/parts/registry';
import { gramsOf, solidsOf, standardsOf } from './catalogueRows';
import { defaults, problemsOf, type Values, withinLimits } from './sample';

const BEARING = partType('bearing');

const rows = standardsOf('bearing').flatMap((standard) =>
  standard.sizes.map((size) => {
    const row: Values = { ...standard.values(size.size, undefined) };
    const name = `${standard.standard} ${size.size}`;
    return { ...size, name, row, values: { ...defaults('bearing'), ...row } };
  }),
);

function factsOf(values: Values) {
  const facts = BEARING.bearing?.(values as never);
  if (!facts) throw new Error('no facts');
  return facts;
}

describe('a bearing on its seat in the grip', () => {
  it('pulls at its offset from where the barrel starts and adds nothing about the feathering axis', () => {
    const grip = defaults('grip');
    const seat = partType('grip')
      .sockets(grip as never)
      .find(({ mates }) => BEARING.mates.includes(mates));
    if (!seat) throw new Error('no seat');
    const own = sumSolids(solidsOf('bearing', defaults('bearing')), createMoments());
    const pose = compose(seat.pose, translation(0, 0, 0.004));
    const placed = transformMoments(own, pose, createMoments());
    // Barrel start at 10 mm. Rounding of a few units in the last place of m r^2.
    expect(placed[SX] / placed[M]).toBeCloseTo(0.014, 15);
    const smallest = 4 * Number.EPSILON * placed[JYY];
    for (const k of [JYZ, JXY, JXZ]) expect(Math.abs(placed[k])).toBeLessThan(smallest * 10);
    expect(Math.abs(placed[JYY] - placed[JZZ])).toBeLessThan(smallest);
    for (const k of [SY, SZ]) expect(Math.abs(placed[k])).toBeLessThan(1e-15 * placed[M]);
    expect(seat.offsetRangeMm).toEqual([0, 15]);
    expect(seat.size).toEqual({ kind: 'hole', diameterMm: 8 });
  });

  it('may sit anywhere up to the bolt on a body from a mesh, whose barrel is not known', () => {
    const body = { ...defaults('meshBody'), role: 'grip' };
    const seat = partType('meshBody')
      .sockets(body as never)
      .find(({ mates }) => mates === 'bearingSeat');
    expect(seat?.pose.translation).toEqual([0, 0, 0]);
    expect(seat?.offsetRangeMm).toEqual([0, 38]);
    expect(seat?.size).toBeUndefined();
  });
});

describe('the list of bearings', () => {
  it('has rows within the limits that break no rule, each with a source', () => {
    expect(rows.length).toBe(42);
    for (const { name, row, values, source, fromMemory } of rows) {
      expect(problemsOf('bearing', values), name).toEqual([]);
      for (const [key, value] of Object.entries(row)) {
        expect(withinLimits(BEARING.parameters[key], value), `${name} ${key}`).toBe(true);
      }
      expect(source, name).toMatch(fromMemory ? /^memory$/ : /table|pages/);
    }
    expect(new Set(rows.map(({ name }) => name)).size).toBe(rows.length);
  });

  it('weighs a bearing as printed, where a mass is printed', () => {
    const printed = rows.filter(({ row }) => row.massFrom === 'given');
    // 16 open, 8 shielded, 2 thrust bearings.
    expect(printed.length).toBe(26);
    for (const { name, values, row } of printed) {
      expect(gramsOf('bearing', values), name).toBeCloseTo(row.massGrams as number, 12);
    }
  });

  /*
   * The fill is the mean of these very masses (a calibration): the spread of the 16 around it, 0.634 to 0.730 about 0.68,
   * is what a mass from dimensions can be off by.
   */
  it('works out the 16 open deep groove bearings to 7.5 % from their dimensions', () => {
    const open = rows.filter(
      ({ name, row }) => row.massFrom === 'given' && /^Deep groove \S+$/.test(name),
    );
    expect(open.length).toBe(16);
    const ratios = open.map(
      ({ values, row }) =>
        gramsOf('bearing', values, { massFrom: 'dimensions' }) / Number(row.massGrams),
    );
    for (const [i, ratio] of ratios.entries()) {
      expect(Math.abs(ratio - 1), open[i].name).toBeLessThan(0.075);
    }
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
    // And on the whole they are neither heavy nor light.
    expect(Math.abs(mean - 1)).toBeLessThan(0.01);
  });
});

/*
 * Masses of drawn cup needle bearings as makers print them, in g, rounded to 0.1 g (from memory): 4 x 8 x 8 mm 1.6,
 * 6 x 10 x 8 2.1, 8 x 12 x 8 2.7, 10 x 14 x 10 4.1. The fill is one number for all of them: within 8 %.
 */
describe('a needle bearing', () => {
  it.each([
    [4, 8, 8, 1.6],
    [6, 10, 8, 2.1],
    [8, 12, 8, 2.7],
    [10, 14, 10, 4.1],
  ])('of %d x %d x %d mm weighs about %d g', (bore, outer, width, printed) => {
    const grams = gramsOf('bearing', {
      ...defaults('bearing'),
      bearingType: 'needle',
      boreMm: bore,
      outerDiameterMm: outer,
      widthMm: width,
      massFrom: 'dimensions',
    });
    expect(Math.abs(grams / printed - 1)).toBeLessThan(0.08);
  });
});

describe('what a bearing is loaded by', () => {
  it('a 608 has the printed ratings and carries loads across its axis', () => {
    const row = rows.find(({ size }) => size === '608');
    // Open hardware data table: 8 x 22 x 7 mm, C 3450 N, C0 1370 N.
    expect(factsOf(row?.values ?? {})).toEqual({
      carries: 'radial',
      kind: 'deepGroove',
      boreDiameter: 0.008,
      outerDiameter: expect.closeTo(0.022, 15),
      meanDiameter: expect.closeTo(0.015, 15),
      width: 0.007,
      frictionCoefficient: 0.00125,
      frictionDiameter: 0.008,
      dynamicLoad: 3450,
      staticLoad: 1370,
    });
  });

  it.each([
    // Published ranges (table of the friction of rolling bearings).
    ['deepGroove', 'radial', 0.001, 0.0015],
    ['thrustBall', 'thrust', 0.001, 0.0015],
    ['needle', 'radial', 0.002, 0.003],
  ])(
    'the usual friction of a %s bearing lies in the middle of the published range',
    (bearingType, carries, low, high) => {
      const facts = factsOf({ ...defaults('bearing'), bearingType });
      expect(facts.carries).toBe(carries);
      expect(facts.frictionCoefficient).toBeCloseTo((low + high) / 2, 12);
    },
  );

  it('a typed coefficient wins, and ratings that nobody gave are not known', () => {
    const facts = factsOf({ ...defaults('bearing'), frictionCoefficient: 0.004 });
    expect(facts.frictionCoefficient).toBe(0.004);
    expect([facts.dynamicLoad, facts.staticLoad]).toEqual([null, null]);
  });

  it('a plain bush slides on its bore', () => {
    const facts = factsOf({ ...defaults('bearing'), bearingType: 'plain' });
    expect(facts.meanDiameter).toBe(facts.boreDiameter);
    expect(facts.frictionDiameter).toBe(facts.boreDiameter);
  });
});

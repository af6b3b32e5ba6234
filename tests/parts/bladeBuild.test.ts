import { describe, expect, it } from 'vitest';
import {
  createMoments,
  JXX,
  JXY,
  JYY,
  JZZ,
  M,
  type Moments,
  SX,
  SY,
} from '../../src/engine/mass/moments';
import { insetSection } from '../../src/engine/mass/sectionInset';
import { sumSolids } from '../../src/engine/mass/weigh';
import { blade } from '../../src/parts/blade';
import { airfoilEnds, coreLoft, cornersAt, sectionOf } from '../../src/parts/blade/airfoilShape';
import type { BladeValues } from '../../src/parts/blade/parameters';
import { momentsDeviation } from '../support/closeness';
import { sectionArea } from '../support/sections';
import { defaults } from './sample';

const PLAIN = defaults('blade') as unknown as BladeValues;
const mm = 1e-3;

function weigh(change: Partial<BladeValues>): Moments {
  return sumSolids(blade.solids({ ...PLAIN, ...change }), createMoments());
}
function difference(more: Moments, less: Moments): Moments {
  return more.map((value, i) => value - less[i]);
}

describe('a blade that uses nothing of what came later', () => {
  // Printed by the program before sections, skins and rods were added; outlines have been summed in another order since,
  // which moves the last digit.
  it('weighs to two units of the last place what it weighed before', () => {
    const same = (now: Float64Array, before: readonly number[]) => {
      for (const [i, value] of before.entries()) {
        expect(Math.abs(now[i] - value)).toBeLessThanOrEqual(2 * 2.3e-16 * Math.abs(value));
      }
    };
    same(
      weigh({}),
      [
        0.0073975428347249, 0.000339381928, -0.000021734675199999992, 0, 0.000020903919573810717,
        3.5862176687738443e-7, 4.735018979530889e-9, -0.0000011302031103999997, 0, 0,
      ],
    );
    same(
      weigh({ lagDeg: 7, tipChordMm: 19, tipThicknessPercent: 8 }),
      [
        0.0052041800347249, 0.0001951981722748815, -0.0000364620522573975, 0,
        0.000010723591690406457, 4.728617505647868e-7, 3.1112773024909564e-9,
        -0.0000018312218458278958, 0, 0,
      ],
    );
  });

  it('does not feel the densities of what it has not', () => {
    const other = {
      skinDensityKgM3: 3000,
      coreDensityKgM3: 500,
      sparDensityKgM3: 5000,
      spar2DensityKgM3: 5000,
      weightDensityKgM3: 5000,
      weight2DensityKgM3: 5000,
      bushDensityKgM3: 5000,
      skinThicknessMm: 1,
    };
    expect([...weigh(other)]).toEqual([...weigh({})]);
  });
});

describe('a skin over a core', () => {
  const SKIN = { build: 'skin', skinDensityKgM3: 1500 } as const;

  it('of equal densities weighs what the solid blade weighs', () => {
    for (const camberPercent of [0, 3]) {
      const solid = weigh({ camberPercent });
      const layered = weigh({ ...SKIN, camberPercent, coreDensityKgM3: 1500 });
      // The core is taken out and put back: a few roundings of the whole.
      expect(momentsDeviation(layered, solid)).toBeLessThan(1e-14);
    }
  });

  /*
   * Near its thickest place a section is a parabola over the chord: of a skin that leaves the share e of the half
   * thickness, the hollow is e high and goes with sqrt(e) in length, so its area goes with e^1.5. A tenth leaves
   * 31.6 times less.
   */
  it('comes to the solid blade of its skin as it comes to half the thickness', () => {
    const full = weigh({})[M];
    // Half of 10 % of 28 mm; the polynomial's greatest half thickness is 1.00029 of it.
    const half = 1.4 * 1.000288;
    const missing = [0.1, 0.01, 0.001].map((share) => {
      const skinThicknessMm = half * (1 - share);
      return 1 - weigh({ ...SKIN, skinThicknessMm, coreDensityKgM3: 1 })[M] / full;
    });
    expect(missing[2]).toBeGreaterThan(0);
    expect(missing[2]).toBeLessThan(1e-4);
    for (const k of [0, 1]) {
      expect(missing[k] / missing[k + 1]).toBeGreaterThan(25);
      expect(missing[k] / missing[k + 1]).toBeLessThan(40);
    }
  });

  // Elementary geometry: the hollow of a rhombus is a rhombus, smaller by 1 - skin / inradius each way.
  it('of a rhombus weighs what the two rhombi between its walls weigh', () => {
    const sectionCoordinates = [1, 0, 0.75, 0.025, 0.5, 0.05, 0, 0, 0.5, -0.05];
    const change = { ...SKIN, sectionCoordinates, skinThicknessMm: 0.4 };
    const [all, core] = [
      weigh({ ...change, coreDensityKgM3: 1500 })[M] -
        weigh({ ...change, coreDensityKgM3: 500 })[M],
      28 * 1.4 * (1 - 0.4 / ((14 * 1.4) / Math.hypot(14, 1.4))) ** 2 * 80 * 1e-9 * 1000,
    ];
    // Corners at mid-chord are second order in the 48 panels: 1e-3.
    expect(Math.abs(all / core - 1)).toBeLessThan(1.5e-3);
  });

  it('keeps root block and skin in their own materials', () => {
    const block = difference(weigh({ ...SKIN, densityKgM3: 2500 }), weigh({ ...SKIN }))[M];
    // Strip of 9 x 12 mm with a half circle of 4.5 mm and the 3.1 mm hole, 4.8 mm thick (hand formula).
    const area = 12 * 9 + (Math.PI / 2) * 4.5 ** 2 - (Math.PI / 4) * 3.1 ** 2;
    expect(block).toBeCloseTo(1000 * area * 4.8 * 1e-9, 12);
  });

  it('in a tapered blade leaves at mid-span a core that is smaller than the evenly inset one by what is stated', () => {
    const thin = { tipChordMm: 14, rootThicknessPercent: 16, tipThicknessPercent: 9 };
    for (const [change, stated] of [
      [{ tipChordMm: 14 }, 0.007],
      [{ tipChordMm: 14, camberPercent: 4 }, 0.007],
      [thin, 0.05],
    ] as const) {
      const values: BladeValues = { ...PLAIN, ...SKIN, ...change };
      const loft = coreLoft(values);
      if (!loft) throw new Error('no core');
      const { root, tip } = airfoilEnds(values);
      const middle = {
        ...root,
        chord: (root.chord + tip.chord) / 2,
        thickness: (root.thickness + tip.thickness) / 2,
      };
      const even = insetSection(sectionOf(values, middle), values.skinThicknessMm * mm, 48);
      if (!even) throw new Error('no core at mid-span');
      const ruled = sectionArea(cornersAt(loft, (root.x + tip.x) / 2)).area;
      const gap = ruled / sectionArea(even).area - 1;
      expect(gap).toBeLessThan(0);
      expect(gap).toBeGreaterThan(-stated);
    }
  });
});

describe('what is set into a blade replaces what was there', () => {
  it('a tube of a spar: wall less the solid that it displaces, about its own line', () => {
    const spar = {
      sparDiameterMm: 2,
      sparBoreMm: 1.2,
      sparOffsetMm: 1.5,
      sparStartMm: 20,
      sparEndMm: 80,
      sparDensityKgM3: 1600,
    };
    const added = difference(weigh(spar), weigh({}));
    const area = (d: number) => (Math.PI / 4) * (d * mm) ** 2;
    const length = 60 * mm;
    // Rod: second moment of a disc pi d^4 / 64 across; (b^3 - a^3) / 3 along. Hand formulas.
    const disc = (d: number) => (Math.PI / 64) * (d * mm) ** 4;
    const perLength = 1600 * (area(2) - area(1.2)) - 1500 * area(2);
    const across = 1600 * (disc(2) - disc(1.2)) - 1500 * disc(2);
    // Differences of a blade of 7 g, 2e-5 kg m^2.
    expect(added[M]).toBeCloseTo(perLength * length, 16);
    expect(added[SX]).toBeCloseTo(perLength * length * 50 * mm, 17);
    expect(added[SY]).toBeCloseTo(perLength * length * 1.5 * mm, 18);
    expect(added[JXX]).toBeCloseTo((perLength * ((80 * mm) ** 3 - (20 * mm) ** 3)) / 3, 19);
    expect(added[JYY]).toBeCloseTo(length * (across + perLength * (1.5 * mm) ** 2), 20);
    expect(added[JZZ]).toBeCloseTo(length * across, 21);
  });

  it('a brass weight in the foam core', () => {
    const skin = { build: 'skin', coreDensityKgM3: 60 } as const;
    const weight = {
      weightDiameterMm: 1.6,
      weightLengthMm: 6,
      weightStationMm: 86,
      weightOffsetMm: 2,
      weightDensityKgM3: 8500,
    };
    const added = difference(weigh({ ...skin, ...weight }), weigh(skin));
    const mass = (8500 - 60) * (Math.PI / 4) * 1.6 ** 2 * 6 * 1e-9;
    expect(added[M]).toBeCloseTo(mass, 16);
    expect(added[SX]).toBeCloseTo(mass * 86 * mm, 17);
    expect(added[SY]).toBeCloseTo(mass * 2 * mm, 18);
    expect(added[JYY]).toBeCloseTo(mass * (2 ** 2 + 1.6 ** 2 / 16) * 1e-6, 20);
  });

  it('two spars and two weights add up', () => {
    const parts: Partial<BladeValues>[] = [
      { sparDiameterMm: 1 },
      { spar2DiameterMm: 1, spar2BoreMm: 0.5 },
      { weightDiameterMm: 1 },
      { weight2DiameterMm: 1, weight2DensityKgM3: 17500 },
    ];
    const plain = weigh({});
    const whole = weigh(Object.assign({}, ...parts));
    const sum = plain.slice();
    for (const part of parts)
      difference(weigh(part), plain).forEach((value, i) => {
        sum[i] += value;
      });
    expect(momentsDeviation(whole, sum)).toBeLessThan(1e-14);
    expect(blade.problems({ ...PLAIN, ...Object.assign({}, ...parts) })).toEqual([]);
  });

  it('a bushing between the bolt hole and the block', () => {
    const added = difference(weigh({ bushDiameterMm: 5, bushDensityKgM3: 8500 }), weigh({}));
    const mass = (8500 - 1500) * (Math.PI / 4) * (5 ** 2 - 3.1 ** 2) * 4.8 * 1e-9;
    expect(added[M]).toBeCloseTo(mass, 16);
    expect(added[JXX]).toBeCloseTo((mass * (5 ** 2 + 3.1 ** 2) * 1e-6) / 16, 19);
  });
});

describe('sweep shears the airfoil', () => {
  /*
   * y goes to y - k (x - b) with k = (tip - root sweep) / (tip - begin), and root sweep moves all of it. From the
   * integrals over the airfoil of the straight blade (moments of the whole less those of the block):
   * S_y - k (S_x - b m), J_xy - k (J_xx - b S_x), J_yy - 2 k (J_xy - b S_y) + k^2 (J_xx - 2 b S_x + b^2 m).
   */
  it('which moves S_y, J_xy and J_yy as the shear says and leaves the rest', () => {
    for (const own of [{}, { camberPercent: 3 }, { build: 'skin' }] as Partial<BladeValues>[]) {
      const straight = { ...own, tipChordMm: 18 };
      const airfoilOf = (change: Partial<BladeValues>) => {
        const solids = blade.solids({ ...PLAIN, ...straight, ...change });
        return sumSolids(solids.slice(1), createMoments());
      };
      const a = airfoilOf({});
      const b = airfoilOf({ sweepMm: 9 });
      const begin = 12 * mm;
      const k = 9 / (92 - 12);
      const expected = a.slice();
      expected[SY] -= k * (a[SX] - begin * a[M]);
      expected[JXY] -= k * (a[JXX] - begin * a[SX]);
      expected[JYY] -=
        2 * k * (a[JXY] - begin * a[SY]) -
        k * k * (a[JXX] - 2 * begin * a[SX] + begin * begin * a[M]);
      // J_yz follows from J_xz, which camber makes.
      expected[9] -= k * (a[8] - begin * a[3]);
      expect(momentsDeviation(b, expected)).toBeLessThan(1e-14);
    }
  });

  it('which at both ends alike moves the whole airfoil back', () => {
    const solids = (sweep: number) =>
      sumSolids(
        blade.solids({ ...PLAIN, sweepMm: sweep, rootSweepMm: sweep }).slice(1),
        createMoments(),
      );
    const [a, b] = [solids(0), solids(4)];
    expect(b[SY]).toBeCloseTo(a[SY] - 4 * mm * a[M], 16);
    expect(b[JYY]).toBeCloseTo(a[JYY] - 8 * mm * a[SY] + 16e-6 * a[M], 18);
  });
});

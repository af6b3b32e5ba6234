import { describe, expect, it } from 'vitest';
import type { Part, WeighedTotal } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { MODEL_SHARE, massCard } from '../../src/design/massCard';
import { createMoments } from '../../src/engine/mass/moments';
import { MATERIALS } from '../../src/parts/materials';
import type { OwnMaterial } from '../../src/parts/materials/material';
import { designOf, fullHead, partOf } from './designs';

function lump(id: string, massGrams: number, positionMm: readonly number[], more = {}): Part {
  return partOf('pointMass', id, {
    massGrams,
    pose: { positionMm, rotationDeg: [0, 0, 0] },
    ...more,
  });
}
function cardOf(
  parts: readonly Part[],
  weighedTotal?: WeighedTotal,
  materials: readonly OwnMaterial[] = [],
) {
  const model = new HeadModel();
  const loaded = model.load({ ...designOf(parts), materials });
  if (!loaded.ok) throw new Error(loaded.error.path);
  return massCard(model.parts, model.totals(createMoments()), weighedTotal);
}

/** One g mm^2 in kg m^2. */
const G_MM2 = 1e-9;
/** Sums of a few doubles: some units in the last place of the largest term. */
const REL = 1e-14;

describe('the mass card', () => {
  // Point masses by hand: I_xx = m (y^2 + z^2), J_yy - J_zz = m (y^2 - z^2), J_yz = m y z, in g and mm.
  const front = lump('front', 2, [30, 10, 0]);
  const stalk = lump('stalk', 0.5, [40, 3, -16]);

  it('gives mass, centre and moments of a lump as the textbook has them', () => {
    const [a, b] = cardOf([front, stalk]).rows;
    expect(a.mass).toBeCloseTo(0.002, 17);
    expect(a.centre?.map((one) => one * 1000)).toEqual(
      [30, 10, 0].map((one) => expect.closeTo(one, 11)),
    );
    expect(a.inertia / G_MM2).toBeCloseTo(200, 10);
    expect(a.difference / G_MM2).toBeCloseTo(200, 10);
    expect(a.product).toBe(0);
    expect(b.inertia / G_MM2).toBeCloseTo(0.5 * (9 + 256), 10);
    expect(b.difference / G_MM2).toBeCloseTo(0.5 * (9 - 256), 10);
    expect(b.product / G_MM2).toBeCloseTo(0.5 * 3 * -16, 10);
  });

  it('gives a pin across the axis the moments of the solid formula', () => {
    // Axis along z (this kind's own z), length L, radius r, ahead of the axis by y:
    // J_yy = m (r^2/4 + y^2), J_zz = m L^2/12, m = rho pi r^2 L (any mechanics text).
    const pin = partOf('cylinder', 'pin', {
      diameterMm: 3,
      boreMm: 0,
      lengthMm: 20,
      densityKgM3: 7850,
      pose: { positionMm: [20, 5, 0], rotationDeg: [0, 0, 0] },
    });
    const [row] = cardOf([pin]).rows;
    const mass = 7.85e-3 * Math.PI * 1.5 ** 2 * 20;
    const [jyy, jzz] = [mass * (1.5 ** 2 / 4 + 25), (mass * 400) / 12];
    expect(row.centre?.[2]).toBe(0);
    expect(row.mass * 1000).toBeCloseTo(mass, 12);
    expect(row.inertia / G_MM2).toBeCloseTo(jyy + jzz, 9);
    expect(row.difference / G_MM2).toBeCloseTo(jyy - jzz, 9);
  });

  it('shares J_yy - J_zz by the sum of absolute values, signed, so that parts which cancel keep a share', () => {
    // +200 and -200 g mm^2: the sum is nothing, the shares are half each.
    const card = cardOf([front, lump('back', 2, [30, 0, 10])]);
    expect(card.total.difference).toBe(0);
    expect(card.absolute / G_MM2).toBeCloseTo(400, 9);
    expect(card.rows.map((row) => row.share)).toEqual([
      expect.closeTo(50, 10),
      expect.closeTo(-50, 10),
    ]);
  });

  it('gives shares whose sizes add up to 100 per cent in any head', () => {
    const { rows } = cardOf(fullHead());
    const sum = rows.reduce((total, row) => total + Math.abs(row.share ?? 0), 0);
    expect(Math.abs(sum - 100)).toBeLessThan(100 * rows.length * REL);
  });

  it('adds up to the head; the push rod stands apart, it does not turn with the grip', () => {
    const { rows, rods, total } = cardOf(fullHead());
    for (const name of ['mass', 'inertia', 'difference', 'product'] as const) {
      const sum = rows.reduce((all, row) => all + row[name], 0);
      const size = rows.reduce((all, row) => all + Math.abs(row.inertia || row.mass), 0);
      expect(Math.abs(sum - total[name])).toBeLessThan(
        rows.length * REL * Math.max(size, total.mass),
      );
    }
    expect(rods.map((row) => row.id)).toEqual(['link']);
    expect(rows.some((row) => row.id === 'link')).toBe(false);
  });

  it('tells hidden parts apart: no share, no part in the sum', () => {
    const card = cardOf([front, { ...stalk, hidden: true } as Part]);
    expect(card.rows.map((row) => row.id)).toEqual(['front']);
    expect(card.hidden).toMatchObject([{ id: 'stalk', share: null }]);
    expect(card.total.mass).toBeCloseTo(0.002, 17);
  });

  it('has no centre and no share where nothing weighs or leans', () => {
    expect(cardOf([]).total).toMatchObject({ mass: 0, centre: null, inertia: 0 });
    expect(cardOf([lump('on the axis', 1, [30, 0, 0])]).rows[0].share).toBeNull();
  });
});

describe('where a mass comes from', () => {
  const origins = (part: Part, materials: OwnMaterial[] = []) =>
    cardOf([part], undefined, materials).rows[0].origins;
  const without = (part: Part, ...names: string[]) =>
    Object.fromEntries(
      Object.entries(part).filter(([name]) => !names.includes(name)),
    ) as never as Part;

  it('is the scale where it was weighed, whatever else is known', () => {
    expect(origins({ ...partOf('bolt', 'b'), measured: { massGrams: 1.2 } } as Part)).toEqual([
      'weighed',
    ]);
  });
  it('is a mass that was typed, a density that was typed, a material, or a catalogue row', () => {
    expect(origins(lump('l', 1, [0, 0, 0]))).toEqual(['massTyped']);
    expect(origins(partOf('cylinder', 'c'))).toEqual(['densityTyped']);
    const made = { ...without(partOf('cylinder', 'c'), 'densityKgM3'), material: MATERIALS[0].id };
    expect(origins(made as Part)).toEqual(['material']);
    const bolt = {
      id: 'b',
      kind: 'bolt',
      name: 'b',
      catalogue: { standard: 'ISO 4762', size: 'M3', lengthMm: 20 },
      pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
    } as unknown as Part;
    expect(origins(bolt)[0]).toBe('catalogue');
  });
  it('leaves out a density of something that the part does not have', () => {
    // A blade of one piece has no core: its density is written by default, and weighs nothing.
    const solid = partOf('blade', 'b');
    expect(origins(solid)).toEqual(['densityTyped']);
    const core = {
      ...without(solid, 'coreDensityKgM3'),
      coreMaterial: MATERIALS[0].id,
    } as unknown as Part;
    expect(origins(core)).toEqual(['densityTyped']);
  });
});

describe('the whole grip on the scale', () => {
  const parts = [
    lump('a', 30, [30, 1, 0]),
    lump('b', 10, [30, 0, 1], { measured: { massGrams: 10, massStepGrams: 0.1 } }),
  ];

  it('is held against the sum, in grams and per cent of it', () => {
    const { weighed } = cardOf(parts, { massGrams: 42, massStepGrams: 0.5 });
    expect(weighed?.difference).toBeCloseTo(0.002, 15);
    expect(weighed?.percent).toBeCloseTo(5, 11);
  });

  it('may be out by its own step, the step of what was weighed, and 2 % of what was not', () => {
    // 0.5 + 0.1 + 2 % of 30 = 1.2 g.
    expect(MODEL_SHARE).toBe(0.02);
    const at = (massGrams: number) => cardOf(parts, { massGrams, massStepGrams: 0.5 }).weighed;
    expect(at(40)?.allowance).toBeCloseTo(0.0012, 15);
    expect([38.81, 41.19].map((grams) => at(grams)?.within)).toEqual([true, true]);
    expect([38.79, 41.21].map((grams) => at(grams)?.within)).toEqual([false, false]);
  });

  it('leaves hidden parts out of the sum and of what may be out', () => {
    const [a, b] = parts;
    const card = cardOf([{ ...a, hidden: true } as Part, b], { massGrams: 10.3 });
    // The scale's usual step of 0.01 g and the 0.1 g of the weighed part.
    expect(card.weighed?.allowance).toBeCloseTo(0.00011, 15);
    expect(card.weighed?.within).toBe(false);
  });
});

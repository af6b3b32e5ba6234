import { describe, expect, it } from 'vitest';
import { asTryOut, lumpAt, lumpAtRadius, scaleMass } from '../../src/bench/correction';
import type { Estimated } from '../../src/bench/fitRung';
import { neutralBy, neutralLump, turnedLengths } from '../../src/bench/neutralBy';
import { fixesFor } from '../../src/bench/rooms/correct/fixes';
import type { Design } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { shownTryOut, tryOutsOf } from '../../src/design/tryOuts';
import { createMoments, JYY, JYZ, JZZ, M } from '../../src/engine/mass/moments';
import { designOf, partOf } from '../design/designs';
import { demo } from './heads';

const GMM2 = 1e-9;
const DESIGN = demo('4-turned-nut');

function totalsOf(design: Design) {
  const model = new HeadModel();
  if (!model.load(design).ok) throw new Error('refused');
  const totals = model.totals(createMoments());
  return { spread: totals[JYY] - totals[JZZ], product: totals[JYZ], mass: totals[M] };
}

/** 14 +- 3 g mm2 of J_yy - J_zz, and of J_yz what is asked. */
function deficit(spread = 14, product = 0, sigmas: readonly [number, number] = [3, 3]): Estimated {
  return {
    spread: spread * GMM2,
    product: product * GMM2,
    covariance: [(sigmas[0] * GMM2) ** 2, 0, 0, (sigmas[1] * GMM2) ** 2],
    freedom: Number.POSITIVE_INFINITY,
  };
}

/** What the deficit makes of a design that was corrected by it: the model should have that much more. */
function gained(design: Design) {
  const [before, after] = [totalsOf(DESIGN), totalsOf(design)];
  return { spread: after.spread - before.spread, product: after.product - before.product };
}

describe('a correction', () => {
  it('scales the mass of the part to what is missing, with its uncertainty', () => {
    const scaled = scaleMass(DESIGN, 'blade', deficit());
    if (!scaled.ok) throw new Error(scaled.error.kind);
    const { factor, factorSigma, massGrams, massSigmaGrams, explains } = scaled.value;
    // By hand: the blade's own share, 392.15 g mm2 (its mass card), once more by 14 / 392.15, give or take 3 / 392.15.
    expect(factor).toBeCloseTo(1 + 14 / 392.15, 5);
    expect(factorSigma).toBeCloseTo(3 / 392.15, 5);
    expect(massSigmaGrams / massGrams).toBeCloseTo(factorSigma / factor, 10);
    expect(explains).toBe(true);
    // Twelve digits of a mass in a sum of 400 g mm2.
    expect(gained(scaled.value.design).spread / GMM2).toBeCloseTo(14, 8);
  });

  it('says when one part cannot be the reason: its mass gives J_yy - J_zz and what is missing is J_yz', () => {
    const scaled = scaleMass(DESIGN, 'blade', deficit(14, 30));
    if (!scaled.ok) throw new Error(scaled.error.kind);
    expect(scaled.value.explains).toBe(false);
    expect(scaled.value.left.product).toBeCloseTo(30 * GMM2, 14);
    // A chi-square of (30/3)^2 on one degree of freedom.
    expect(scaled.value.pValue).toBeLessThan(1e-20);
  });

  it('refuses a mass below nothing, a part without a share, and a rod', () => {
    expect(scaleMass(DESIGN, 'blade', deficit(-500))).toMatchObject({
      ok: false,
      error: { kind: 'impossibleMass' },
    });
    expect(scaleMass(DESIGN, 'link', deficit())).toMatchObject({ error: { kind: 'noShare' } });
    expect(scaleMass(DESIGN, 'nobody', deficit())).toMatchObject({ error: { kind: 'noShare' } });
    const centred = designOf([partOf('pointMass', 'lump', { massGrams: 5 })]);
    expect(scaleMass(centred, 'lump', deficit())).toMatchObject({ error: { kind: 'noShare' } });
  });

  it('puts a lump at a stated place: 14 g mm2 at y = 10 mm is 0.14 g, give or take 0.03', () => {
    const lump = lumpAt(DESIGN, [38, 10, 0], deficit(), 'Correction');
    if (!lump.ok) throw new Error(lump.error.kind);
    expect(lump.value.massGrams).toBeCloseTo(0.14, 10);
    expect(lump.value.massSigmaGrams).toBeCloseTo(0.03, 10);
    expect(gained(lump.value.design).spread / GMM2).toBeCloseTo(14, 8);
    const wrong = lumpAt(DESIGN, [38, 0, 10], deficit(), 'Correction');
    expect(wrong).toMatchObject({ ok: false, error: { kind: 'wrongPlace' } });
    if (!wrong.ok && wrong.error.kind === 'wrongPlace')
      expect(wrong.error.massGrams).toBeCloseTo(-0.14, 10);
  });

  it('finds the side on which a lump at a radius explains both moments, whatever their signs', () => {
    for (const [spread, product] of [
      [14, 0],
      [-14, 0],
      [14, 9],
      [-14, 9],
      [-14, -9],
      [0, 5],
    ]) {
      const place = { stationMm: 38, radiusMm: 12 };
      const lump = lumpAtRadius(DESIGN, place, deficit(spread, product), 'Correction');
      if (!lump.ok) throw new Error(lump.error.kind);
      const got = gained(lump.value.design);
      expect(got.spread / GMM2).toBeCloseTo(spread, 8);
      expect(got.product / GMM2).toBeCloseTo(product, 8);
      const [, y, z] = lump.value.positionMm;
      expect(Math.hypot(y, z)).toBeCloseTo(12, 9);
    }
  });

  it('gives the mass of such a lump the uncertainty of both moments', () => {
    const place = { stationMm: 38, radiusMm: 12 };
    const grams = (spread: number, product: number) => {
      const lump = lumpAtRadius(DESIGN, place, deficit(spread, product, [3, 2]), 'Correction');
      if (!lump.ok) throw new Error(lump.error.kind);
      return lump.value;
    };
    // Slopes by differences a hundredth of a g mm2 wide: their error is below 1e-6 of them.
    const h = 0.005;
    const bySpread = (grams(14 + h, 9).massGrams - grams(14 - h, 9).massGrams) / (2 * h);
    const byProduct = (grams(14, 9 + h).massGrams - grams(14, 9 - h).massGrams) / (2 * h);
    const sigma = Math.hypot(3 * bySpread, 2 * byProduct);
    expect(grams(14, 9).massSigmaGrams / sigma).toBeCloseTo(1, 5);
    // Wholly correlated the two errors add, or take off, before they are squared.
    for (const sign of [1, -1]) {
      const both = sign * 3 * 2 * GMM2 ** 2;
      const [a, , , d] = deficit(14, 9, [3, 2]).covariance;
      const lump = lumpAtRadius(
        DESIGN,
        place,
        { ...deficit(14, 9), covariance: [a, both, both, d] },
        'Correction',
      );
      if (!lump.ok) throw new Error(lump.error.kind);
      const together = Math.abs(3 * bySpread + sign * 2 * byProduct);
      expect(lump.value.massSigmaGrams / together).toBeCloseTo(1, 5);
    }
  });

  it('says how long the nut must be, and the corrected head with the deficit is then neutral', () => {
    const nut = neutralBy(DESIGN, { part: 'nut', field: 'heightMm' }, deficit());
    if (!nut.ok) throw new Error(nut.error.kind);
    expect((totalsOf(nut.value.design).spread + 14 * GMM2) / GMM2).toBeCloseTo(0, 7);
    // The slope by hand from two designs a hundredth of a millimetre apart; its bend over that matters at 1e-3.
    const at = (heightMm: number) =>
      totalsOf({
        ...DESIGN,
        parts: DESIGN.parts.map((part) =>
          part.id === 'nut' ? { ...part, heightMm } : part,
        ) as Design['parts'],
      }).spread;
    const slope = (at(nut.value.value + 0.01) - at(nut.value.value)) / 0.01;
    expect(nut.value.sigma).toBeCloseTo((3 * GMM2) / Math.abs(slope), 3);
    expect(nut.value.productLeft).toBeCloseTo(totalsOf(nut.value.design).product, 18);
    expect(turnedLengths(DESIGN)).toContainEqual({ part: 'bolt', field: 'extensionLengthMm' });
  });

  it('says that no length does it, with what is left, never a clamped one', () => {
    const nut = neutralBy(DESIGN, { part: 'nut', field: 'heightMm' }, deficit(-800));
    expect(nut).toMatchObject({ ok: false, error: { kind: 'noValue' } });
    if (!nut.ok && nut.error.kind === 'noValue') expect(nut.error.spreadLeft).toBeLessThan(0);
    expect(neutralBy(DESIGN, { part: 'gone', field: 'x' }, deficit())).toMatchObject({
      error: { kind: 'noKnob' },
    });
  });

  it('says how many grams at a stated place make the measured head neutral', () => {
    // The demo head has -21.94 g mm2; measured 14 more: 7.94 too little, which is 7.94 / 100 g at y = 10 mm.
    const lump = neutralLump(DESIGN, [38, 10, 0], deficit(), 'Trim');
    if (!lump.ok) throw new Error(lump.error.kind);
    const wanted = -(totalsOf(DESIGN).spread / GMM2 + 14);
    expect(lump.value.massGrams).toBeCloseTo(wanted / 100, 6);
    expect(lump.value.massSigmaGrams).toBeCloseTo(0.03, 6);
    expect(totalsOf(lump.value.design).spread / GMM2 + 14).toBeCloseTo(0, 5);
    expect(neutralLump(DESIGN, [38, 0, 10], deficit(), 'Trim')).toMatchObject({
      error: { kind: 'wrongPlace' },
    });
  });

  it('of no sensible size is refused with its numbers, and so is one that the scale contradicts', () => {
    // The nut has about -397 g mm2: 300 more of that is 1.76 of its mass.
    const nut = scaleMass(DESIGN, 'nut', deficit(-300));
    expect(nut).toMatchObject({ error: { kind: 'notSensible', what: 'mass' } });
    if (!nut.ok && nut.error.kind === 'notSensible')
      expect(nut.error.massGrams).toBeGreaterThan(nut.error.limitGrams);
    const weighed: Design = {
      ...DESIGN,
      parts: DESIGN.parts.map((part) =>
        part.id === 'blade' ? { ...part, measured: { massGrams: 7, massStepGrams: 0.01 } } : part,
      ),
    };
    expect(scaleMass(weighed, 'blade', deficit(40))).toMatchObject({
      error: { kind: 'weighed', stepGrams: 0.01 },
    });
    // Off by less than the scale leaves: 1 g mm2 of some 390, and 3 % are allowed.
    expect(scaleMass(weighed, 'blade', deficit(1)).ok).toBe(true);
    // 14 g mm2 at half a millimetre are 56 g, more than the head weighs.
    expect(lumpAt(DESIGN, [38, 0.5, 0], deficit(), 'Lump')).toMatchObject({
      error: { kind: 'notSensible', what: 'lump' },
    });
    expect(lumpAtRadius(DESIGN, { stationMm: 38, radiusMm: 0.5 }, deficit(), 'Lump')).toMatchObject(
      { error: { kind: 'notSensible', what: 'lump' } },
    );
  });

  it('is not offered where readings and model agree, and what makes no sense is listed with its reason', () => {
    const place = { stationMm: 45, radiusMm: 10 };
    const names = { lump: 'Lump', added: 'Weight' };
    const spread = totalsOf(DESIGN).spread;
    // 4 g mm2 with an uncertainty of 3.
    const agreeing = fixesFor(DESIGN, deficit(4), place, names, spread);
    expect([agreeing.agrees, agreeing.masses.length]).toEqual([true, 0]);
    const heavy = fixesFor(DESIGN, deficit(39), place, names, spread);
    expect(heavy.agrees).toBe(false);
    expect(heavy.masses[0].part).toBe('blade');
    expect(heavy.refused.map((one) => (one.kind === 'mass' ? one.part : ''))).toContain('bolt');
    for (const { factor } of heavy.masses) {
      expect(factor).toBeLessThan(1.5);
      expect(factor).toBeGreaterThan(1 / 1.5);
    }
  });

  it('becomes a try-out that a file holds, on the stage only where that is asked', () => {
    const lump = lumpAt(DESIGN, [38, 10, 0], deficit(), 'Correction');
    if (!lump.ok) throw new Error(lump.error.kind);
    const kept = asTryOut(DESIGN, lump.value.design, 'Corrected', { note: '14 +- 3 g mm2' });
    expect(kept.parts).toBe(DESIGN.parts);
    expect(tryOutsOf(kept).map(({ name }) => name)).toContain('Corrected');
    const shown = asTryOut(DESIGN, lump.value.design, 'Corrected', { show: true });
    expect(shownTryOut(shown)?.name).toBe('Corrected');
    expect(shown.parts).toBe(lump.value.design.parts);
    expect(parseDesign(serializeDesign(shown))).toEqual({ ok: true, value: shown });
  });
});

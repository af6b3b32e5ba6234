import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { HeadModel } from '../../../src/design/headModel';
import { materialsOf } from '../../../src/design/resolve';
import { createMoments, JYY, JYZ, JZZ, M } from '../../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../../src/engine/units';
import {
  type Derivative,
  derivativeOf,
  derivativesOf,
  variedNumbers,
} from '../../../src/neutralise/closeness/derivatives';
import { HeadProbe, probeLayout } from '../../../src/neutralise/closeness/headProbe';
import { type KnobRef, knobKey, knobValue, withKnob } from '../../../src/neutralise/knobs';
import { designOf, fullHead, mounted, partOf } from '../../design/designs';

const PITCHES = [-20, 0, 10];
const LAYOUT = probeLayout(PITCHES.length);

function demo(file: string): Design {
  const path = new URL(`../../../assets/designs/${file}.json`, import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

function slopesOf(design: Design, ref: KnobRef, pitches: readonly number[] = PITCHES) {
  const [found] = derivativesOf(design, [ref], pitches, 'anew');
  if (found?.outcome.kind !== 'found') throw new Error(`no slope of ${knobKey(ref)}`);
  return found.outcome;
}

/** All numbers of a head built afresh from a changed design: totals, moments, forces. */
function headNumbers(design: Design, ref: KnobRef, value: number): Float64Array {
  const parts = design.parts.map((part) =>
    part.id === ref.part ? withKnob(part, ref, value, materialsOf(design)) : part,
  );
  const model = new HeadModel();
  const outcome = model.load({ ...design, parts });
  if (!outcome.ok) throw new Error(outcome.error.path);
  const forces = new HeadForces(model);
  const angles = PITCHES.map(radiansFromDegrees);
  const moments = angles.map((pitch) => forces.moment(pitch));
  return Float64Array.from([
    ...model.totals(createMoments()),
    ...moments,
    ...moments.map((moment, i) => forces.forceOf(moment, angles[i]) ?? Number.NaN),
  ]);
}

/**
 * Finite differences by another road: fresh heads, second order at two steps, extrapolated (Richardson): what is left is of
 * the fourth order in the step. One-sided slopes by three points, extrapolated alike.
 */
function finiteDifferences(design: Design, { ref, outcome, value }: Derivative): Float64Array {
  if (outcome.kind !== 'found') throw new Error('no slope');
  const step = Math.max(1e-3 * Math.abs(value), 2e-3);
  const at = (x: number) => headNumbers(design, ref, value + x);
  const by = (h: number) => {
    if (outcome.side === 'both') {
      const [up, down] = [at(h), at(-h)];
      return up.map((one, i) => (one - down[i]) / (2 * h));
    }
    const way = outcome.side === 'up' ? h : -h;
    const [near, far, here] = [at(way), at(2 * way), at(0)];
    return near.map((one, i) => (4 * one - far[i] - 3 * here[i]) / (2 * way));
  };
  const [coarse, fine] = [by(step), by(step / 2)];
  return fine.map((one, i) => one + (one - coarse[i]) / 3);
}

/** Kinds of numbers in a row, which differ in unit and size: mass, first and second moments, moments, forces. */
function kindOf(i: number): number {
  return [1, 4, 10, 10 + PITCHES.length].filter((end) => i >= end).length;
}

/**
 * Largest error beside the largest slope of its kind among all numbers of one unit: a number that hardly matters is not
 * asked for more than its rounding.
 */
function worstAgreement(design: Design, refs: readonly KnobRef[]) {
  const all = derivativesOf(design, refs, PITCHES, 'anew');
  const scale = new Map<string, number>();
  for (const { unit, outcome } of all) {
    if (outcome.kind !== 'found') continue;
    outcome.slopes.forEach((slope, i) => {
      const key = `${unit} ${kindOf(i)}`;
      scale.set(key, Math.max(scale.get(key) ?? 0, Math.abs(slope) || 0));
    });
  }
  const nominal = headNumbers(design, refs[0], knobValue(design, refs[0]) ?? Number.NaN);
  const largest = (kind: number) =>
    Math.max(...nominal.filter((one, i) => kindOf(i) === kind && !Number.isNaN(one)).map(Math.abs));
  let worst = 0;
  let compared = 0;
  for (const one of all) {
    if (one.outcome.kind !== 'found') continue;
    const expected = finiteDifferences(design, one);
    one.outcome.slopes.forEach((slope, i) => {
      const size = scale.get(`${one.unit} ${kindOf(i)}`) ?? 0;
      // What no number of this unit changes (a bearing's rating in N): both are rounding.
      if (!(size > 1e-9 * largest(kindOf(i)))) return;
      if (Number.isNaN(slope) && Number.isNaN(expected[i])) return;
      compared++;
      worst = Math.max(worst, Math.abs(slope - expected[i]) / size);
    });
  }
  return { worst, compared };
}

describe('derivatives of a head to its numbers', () => {
  it.each(['1-bare-grip', '2-long-bolt', '4-turned-nut', '5-both-sides', '6-full-size'])(
    'agree with finite differences of fresh heads to 1e-6: %s without air',
    (file) => {
      const { air: _, ...design } = demo(file);
      const inertial = { ...design, counted: { ...design.counted, air: false } };
      const { worst, compared } = worstAgreement(inertial, variedNumbers(inertial));
      expect(compared).toBeGreaterThan(200);
      expect(worst).toBeLessThan(1e-6);
    },
    60_000,
  );

  it('agree with finite differences to 1e-6 where the air of a changed blade is solved anew', () => {
    const design = demo('4-turned-nut');
    const refs = ['lengthMm', 'rootChordMm', 'tipChordMm', 'axisPercent', 'densityKgM3'].map(
      (field) => ({ part: 'blade', field }),
    );
    const { worst, compared } = worstAgreement(design, refs);
    expect(compared).toBeGreaterThan(50);
    expect(worst).toBeLessThan(1e-6);
    // The air does change with the chord, or this would have checked nothing new.
    const kept = derivativesOf(design, refs, PITCHES, 'nominal')[3].outcome;
    const anew = derivativesOf(design, refs, PITCHES, 'anew')[3].outcome;
    if (kept.kind !== 'found' || anew.kind !== 'found') throw new Error('no slope');
    const place = LAYOUT.momentAt(0);
    expect(Math.abs(kept.slopes[place] / anew.slopes[place] - 1)).toBeGreaterThan(0.01);
  });

  it('of a pin across the chord to its length: dA/dL = rho pi d^2/4 (d^2/16 - L^2/4), by hand', () => {
    const [d, L, rho] = [0.004, 0.03, 7850];
    const pin = partOf('cylinder', 'pin', { diameterMm: 4, lengthMm: 30, densityKgM3: rho });
    const { slopes, errors } = slopesOf(designOf([pin]), { part: 'pin', field: 'lengthMm' });
    const expected = ((rho * Math.PI * d * d) / 4) * ((d * d) / 16 - (L * L) / 4) * 1e-3;
    const found = slopes[JYY] - slopes[JZZ];
    // Of degree 3 in L: exact but for rounding of J (1e-16 of it) over a step of 1/400 of L.
    expect(Math.abs(found / expected - 1)).toBeLessThan(1e-11);
    expect(errors[JZZ]).toBeLessThan(1e-10 * Math.abs(slopes[JZZ]));
    // And to its diameter: A = rho pi L/4 (d^4/16 - d^2 L^2/12).
    const across = slopesOf(designOf([pin]), { part: 'pin', field: 'diameterMm' }).slopes;
    const byDiameter = ((rho * Math.PI * L) / 4) * (d ** 3 / 4 - (d * L * L) / 6) * 1e-3;
    expect(Math.abs((across[JYY] - across[JZZ]) / byDiameter - 1)).toBeLessThan(1e-11);
  });

  it('of a lump to its mass and place: dJ/dm = r r^T, dA/dy = 2 m y, dJ_yz/dz = m y, by hand', () => {
    const lump = partOf('pointMass', 'lump', {
      massGrams: 2,
      pose: { positionMm: [30, 17, 4], rotationDeg: [0, 0, 0] },
    });
    const design = designOf([lump]);
    const byMass = slopesOf(design, { part: 'lump', field: 'massGrams' }).slopes;
    expect(byMass[M]).toBeCloseTo(1e-3, 15);
    expect(byMass[JYY] / (1e-3 * 0.017 ** 2)).toBeCloseTo(1, 12);
    expect(byMass[JYZ] / (1e-3 * 0.017 * 0.004)).toBeCloseTo(1, 12);
    const place = (component: 0 | 1 | 2) =>
      slopesOf(design, { part: 'lump', field: 'positionMm', component }).slopes;
    expect((place(1)[JYY] - place(1)[JZZ]) / (2 * 2e-3 * 0.017 * 1e-3)).toBeCloseTo(1, 11);
    expect(place(2)[JYZ] / (2e-3 * 0.017 * 1e-3)).toBeCloseTo(1, 11);
  });

  it('of a weighed mass are its moments over it: everything scales', () => {
    const weighed = partOf('cylinder', 'pin', {
      measured: { massGrams: 3 },
      pose: { positionMm: [40, 5, 0], rotationDeg: [0, 30, 0] },
    });
    const design = designOf([weighed]);
    const model = new HeadModel();
    model.load(design);
    const totals = model.totals(createMoments());
    const { slopes } = slopesOf(design, { part: 'pin', field: 'measured.massGrams' });
    totals.forEach((total, i) => {
      // Rounding of the smallest beside the largest second moment.
      expect(Math.abs(slopes[i] - total / 3)).toBeLessThanOrEqual(1e-12 * Math.abs(totals[M]));
    });
    expect(slopes[M]).toBeCloseTo(1e-3, 14);
  });

  it('move along with what a number moves: a washer under the head lifts bolt, nut and all', () => {
    const design = designOf(fullHead());
    const { slopes } = slopesOf(design, { part: 'w1', field: 'thicknessMm' });
    const alone = designOf([partOf('washer', 'w1')]);
    const own = slopesOf(alone, { part: 'w1', field: 'thicknessMm' }).slopes;
    expect(Math.abs(slopes[JZZ])).toBeGreaterThan(10 * Math.abs(own[JZZ]));
  });

  it('are taken to one side at a limit, and say so', () => {
    const design = demo('3-ordinary-bolt');
    const { side, slopes } = slopesOf(design, { part: 'bolt', field: 'extensionLengthMm' });
    expect(side).toBe('up');
    expect(Math.abs(slopes[LAYOUT.forceAt(0)])).toBeGreaterThan(0.1);
  });

  it('are taken downward at the upper limit: of a lump of the largest mass allowed', () => {
    const lump = partOf('pointMass', 'lump', {
      massGrams: 10_000,
      pose: { positionMm: [30, 17, 0], rotationDeg: [0, 0, 0] },
    });
    const { side, slopes } = slopesOf(designOf([lump]), { part: 'lump', field: 'massGrams' });
    expect(side).toBe('down');
    expect(slopes[JYY] / (1e-3 * 0.017 ** 2)).toBeCloseTo(1, 10);
  });

  it('are none where the form of the part changes: a collar of no height', () => {
    const [found] = derivativesOf(
      demo('4-turned-nut'),
      [{ part: 'nut', field: 'collarHeightMm' }],
      PITCHES,
      'nominal',
    );
    expect(found.outcome.kind).toBe('corner');
  });

  it('are refused, with the rule, where neither side may be', () => {
    // No spar of 0.04 mm fits one that has no length: the rule of the part binds two numbers together.
    const found = derivativesOf(
      demo('4-turned-nut'),
      [{ part: 'blade', field: 'sparDiameterMm' }],
      PITCHES,
      'nominal',
    );
    const { outcome } = found[0];
    expect(outcome.kind).toBe('refused');
    // Not its own limit of zero, which forbids one side only.
    expect(outcome.kind === 'refused' && outcome.fault.reason.code).not.toBe('tooSmall');
  });

  it('leave the head that was asked as it was, to the last bit', () => {
    const design = designOf([
      ...fullHead(),
      mounted('weight', 'w9', 'bolt', 'headTop', { lengthMm: 3 }),
    ]);
    const made = HeadProbe.of(design, PITCHES, 'nominal');
    if (!made.ok) throw new Error(made.error.path);
    const probe = made.value;
    const before = probe.read(new Float64Array(LAYOUT.count));
    for (const ref of variedNumbers(design)) derivativeOf(design, probe, ref);
    expect(probe.read(new Float64Array(LAYOUT.count))).toEqual(before);
  });

  it('say how far off they are: the estimate is not below the error', () => {
    // J_zz of a lump turned about x goes with cos: no polynomial.
    const pin = partOf('cylinder', 'pin', {
      pose: { positionMm: [9, 5, 2], rotationDeg: [20, 0, 0] },
    });
    const design = designOf([pin]);
    const ref = { part: 'pin', field: 'rotationDeg', component: 0 } as const;
    const { slopes, errors } = slopesOf(design, ref);
    const exact = exactTurnSlope(design);
    expect(knobValue(design, ref)).toBe(20);
    expect(Math.abs(slopes[JZZ] - exact)).toBeLessThanOrEqual(errors[JZZ]);
    expect(errors[JZZ]).toBeLessThan(1e-8 * Math.abs(exact));
  });
});

/** d J_zz / d angle of a cylinder about its own centre, per degree: (J_axial - J_across) sin 2a pi/180, by hand. */
function exactTurnSlope(design: Design): number {
  const [part] = design.parts as unknown as readonly [
    { readonly diameterMm: number; readonly lengthMm: number; readonly densityKgM3: number },
  ];
  const [d, L] = [part.diameterMm / 1000, part.lengthMm / 1000];
  const mass = ((part.densityKgM3 * Math.PI * d * d) / 4) * L;
  const [along, across] = [(mass * L * L) / 12, (mass * d * d) / 16];
  // Along z before the turn: J_zz = along cos^2 a + across sin^2 a.
  const a = (20 * Math.PI) / 180;
  return ((across - along) * Math.sin(2 * a) * Math.PI) / 180;
}

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part, Tolerance } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { HeadModel } from '../../../src/design/headModel';
import { radiansFromDegrees } from '../../../src/engine/units';
import { angleDeviation, lengthDeviation } from '../../../src/neutralise/closeness/iso2768';
import { runTolerances } from '../../../src/neutralise/closeness/runTolerances';
import { ToleranceRun } from '../../../src/neutralise/closeness/toleranceRun';
import { tolerancesOf } from '../../../src/neutralise/closeness/tolerances';
import type { ToleranceResult } from '../../../src/neutralise/closeness/toleranceTypes';
import { knobKey } from '../../../src/neutralise/knobs';
import { designOf, fullHead, partOf, ROTOR } from '../../design/designs';

function demo(file: string): Design {
  const path = new URL(`../../../assets/designs/${file}.json`, import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

function resultOf(design: Design, batch = 1000): ToleranceResult {
  const made = ToleranceRun.of(design);
  if (!made.ok) throw new Error(made.error.kind);
  while (made.value.done < made.value.total) made.value.step(batch);
  return made.value.result();
}

/** Only the tolerances given count. */
const EXACT: Tolerance = { generalClass: 'none', densityPercent: 0 };

/** A lump on the leading edge side of a whole head: its mass is known to `plusMinus` grams. */
function lumpHead(
  masses: readonly (readonly [string, number, readonly number[], number])[],
  more: Tolerance = {},
  rotor: Design['rotor'] = ROTOR,
): Design {
  const base = fullHead().filter(({ kind }) => kind !== 'pointMass');
  const lumps = masses.map(([id, massGrams, positionMm]) =>
    partOf('pointMass', id, { massGrams, pose: { positionMm, rotationDeg: [0, 0, 0] } }),
  );
  const own = masses.map(([part, , , plusMinus]) => ({ part, field: 'massGrams', plusMinus }));
  return { ...designOf([...base, ...lumps], rotor), tolerance: { ...EXACT, own, ...more } };
}

/** Force per kilogram of a lump at (x, y, 0), by hand: M = -W^2 m y^2 sin t cos t, over minus the lever. */
function forcePerMass(design: Design, yMm: number, pitchDeg: number): number {
  const model = new HeadModel();
  model.load(design);
  const forces = new HeadForces(model);
  const pitch = radiansFromDegrees(pitchDeg);
  const link = forces.linkAt(pitch);
  const moment =
    -(model.rotor.angularSpeed ** 2) * (yMm / 1000) ** 2 * Math.sin(pitch) * Math.cos(pitch);
  return -moment / (link?.lever ?? Number.NaN);
}

describe('a tolerance run', () => {
  it('repeats bit for bit with its seed, in batches of any size, and not with another', () => {
    // Not a multiple of the batch: the last one is cut short.
    const design = { ...demo('4-turned-nut'), tolerance: { samples: 200, seed: 11 } };
    const once = resultOf(design, 200);
    expect(resultOf(design, 7)).toEqual(once);
    const other = resultOf({ ...design, tolerance: { samples: 200, seed: 12 } });
    expect(other.exact.mean[other.worst]).not.toBe(once.exact.mean[once.worst]);
  });

  it('spreads the force by known uniform errors as their root sum of squares says, by hand', () => {
    const design = lumpHead(
      [
        ['a', 2, [30, 17, 0], 0.3],
        ['b', 1, [30, -9, 0], 0.5],
      ],
      { samples: 8000 },
    );
    const result = resultOf(design);
    const at = result.pitchDeg[result.worst];
    const sigma = (y: number, grams: number) =>
      (Math.abs(forcePerMass(design, y, at)) * grams * 1e-3) / Math.sqrt(3);
    const expected = Math.hypot(sigma(17, 0.3), sigma(-9, 0.5));
    expect(result.rssSigma[result.worst] / expected).toBeCloseTo(1, 9);
    // The sum's kurtosis is at most 3, so the deviation of n draws is off by sqrt(2/n)/2 = 0.8 %: five times that.
    expect(Math.abs(result.exact.sigma[result.worst] / expected - 1)).toBeLessThan(0.04);
    // A lump's mass is linear in the force: the exact heads and first order are the same ones.
    expect(result.exact.sigma[result.worst] / result.linear.sigma[result.worst]).toBeCloseTo(1, 9);
    // Shares of the variance by hand.
    const share = (sigma(17, 0.3) / expected) ** 2;
    expect(result.shares[0]).toMatchObject({ ref: { part: 'a' } });
    expect(result.shares[0].share).toBeCloseTo(share, 9);
    expect(result.shares[1].share).toBeCloseTo(1 - share, 9);
  });

  it('draws normal errors with the limits at three standard deviations', () => {
    const lumps = [['a', 2, [30, 17, 0], 0.3]] as const;
    const design = lumpHead(lumps, { samples: 8000, distribution: 'normal' });
    const result = resultOf(design);
    const { worst, exact, nominal } = result;
    const expected = Math.abs(forcePerMass(design, 17, result.pitchDeg[worst])) * 1e-4;
    expect(Math.abs(exact.sigma[worst] / expected - 1)).toBeLessThan(0.04);
    // 2.5 and 97.5 % of a normal one lie at 1.96; the standard error of such a quantile is 2.7/sqrt(n) = 0.03 sigma.
    expect(Math.abs((exact.high[worst] - nominal[worst]) / expected - 1.96)).toBeLessThan(0.15);
    expect(Math.abs((exact.low[worst] - nominal[worst]) / expected + 1.96)).toBeLessThan(0.15);
  });

  it('gives the chance that a fine search of all errors gives', () => {
    const lumps = [['a', 2, [30, 17, 0], 1]] as const;
    const base = lumpHead(lumps, { samples: 4000 });
    const reach = largestForces(base, lumps, 401);
    const middle = reach.toSorted((a, b) => a - b)[280];
    const design = { ...base, tolerance: { ...base.tolerance, targetForceN: middle } };
    const share = reach.filter((force) => force <= middle).length / reach.length;
    const { chance, linearChance } = resultOf(design);
    // The search is off by one place in 401, the run by its standard error; five of both.
    expect(Math.abs(chance.share - share)).toBeLessThan(5 * (chance.standardError + 1 / 401));
    expect(chance.standardError).toBeCloseTo(Math.sqrt((share * (1 - share)) / 4000), 3);
    // Nothing bends: first order keeps the same heads.
    expect(linearChance.share).toBe(chance.share);
  });

  it('agrees with first order for small tolerances, the better the smaller', () => {
    const own = (plusMinus: number) =>
      (
        [
          ['nut', 'acrossMm'],
          ['nut', 'heightMm'],
          ['nut', 'offsetMm'],
          ['bolt', 'headHeightMm'],
          ['blade', 'rootChordMm'],
          ['arm', 'armReachMm'],
          ['arm', 'ballHeightMm'],
        ] as const
      ).map(([part, field]) => ({ part, field, plusMinus }));
    const run = (plusMinus: number) =>
      resultOf({
        ...demo('4-turned-nut'),
        tolerance: { ...EXACT, samples: 2000, own: own(plusMinus) },
      });
    const off = (result: ToleranceResult) =>
      Math.max(
        ...[result.used[0], result.used[1], result.worst].flatMap((i) => [
          Math.abs(result.exact.mean[i] - result.linear.mean[i]) / result.rssSigma[i],
          Math.abs(result.exact.sigma[i] / result.linear.sigma[i] - 1),
        ]),
      );
    const [wide, narrow] = [off(run(0.1)), off(run(0.01))];
    // What is left is of second order: a tenth of the tolerance, a tenth of it beside the spread.
    expect(narrow).toBeLessThan(1e-3);
    expect(narrow).toBeLessThan(wide / 5);
  });

  it('counts what a tolerance of the blade changes in the air: as heads with their air solved anew', () => {
    const design = demo('4-turned-nut');
    const own = [{ part: 'blade', field: 'axisPercent', plusMinus: 0.5 }];
    const result = resultOf({ ...design, tolerance: { ...EXACT, samples: 4000, own } });
    const place = result.used[0];
    const pitch = radiansFromDegrees(result.pitchDeg[place]);
    // Two-point Gauss rule for the deviation of an even spread: places at 1/sqrt 3 of the limit, exact for a cubic.
    const force = (off: number) => {
      const parts = design.parts.map((part) =>
        part.id === 'blade' ? ({ ...part, axisPercent: 25 + off } as unknown as Part) : part,
      );
      const model = new HeadModel();
      model.load({ ...design, parts });
      const forces = new HeadForces(model);
      return forces.forceOf(forces.moment(pitch), pitch) ?? Number.NaN;
    };
    const reach = 0.5 / Math.sqrt(3);
    const sigma = Math.abs(force(reach) - force(-reach)) / 2;
    // Off by 0.5 % of the draws (kurtosis 1.8, sqrt(0.8/n)/2 = 0.7 % at most), five times that.
    expect(Math.abs(result.exact.sigma[place] / sigma - 1)).toBeLessThan(0.035);
    expect(Math.abs(result.rssSigma[place] / sigma - 1)).toBeLessThan(1e-3);
  });

  it('says what halving a tolerance does: as a run with it halved', () => {
    const lumps = [
      ['a', 2, [30, 17, 0], 1],
      ['b', 1, [30, -9, 0], 0.5],
    ] as const;
    const base = lumpHead(lumps, { samples: 4000 });
    const forces = largestForces(base, [lumps[0]], 101).toSorted((a, b) => a - b);
    const target = { targetForceN: forces[70] };
    const result = resultOf({ ...base, tolerance: { ...base.tolerance, ...target } });
    const [first] = result.tighten;
    expect(first.ref).toMatchObject({ part: 'a' });
    const halved = lumpHead([['a', 2, [30, 17, 0], 0.5], lumps[1]], { samples: 4000, ...target });
    // The same draws, half as far: the same heads but for rounding at the target.
    expect(Math.abs(resultOf(halved).linearChance.share - first.to)).toBeLessThan(2 / 4000);
    expect(first.to).toBeGreaterThan(first.from);
  });

  it('matches two grips as the difference of two uniform errors does, by hand', () => {
    const [a, x] = [0.4e-3, 0.05];
    const lumps = [['a', 3, [50, 0, 0], 0.4]] as const;
    const rotor = { ...ROTOR, hubMassGrams: 40 };
    const limit = 2 * a * (1 - Math.sqrt(0.5)) * x;
    const base = lumpHead(lumps, { samples: 8000 }, rotor);
    // The grade that half of the rotors keep: G = U W / m, the rotor's own mass by the model.
    const grade = 1000 * ((limit * angularSpeed()) / rotorMass(base));
    const { matching } = resultOf({
      ...base,
      tolerance: { ...base.tolerance, balanceGrade: grade },
    });
    if (!matching) throw new Error('no matching');
    expect(matching.rotors).toBe(4000);
    // P(|D| <= q) = 1 - (1 - q/2a)^2. Standard error of the share 0.8 % and 0.35 %, five of them over the density there.
    expect(Math.abs(matching.unbalanceMedian / limit - 1)).toBeLessThan(0.095);
    const within = 2 * a * (1 - Math.sqrt(0.05)) * x;
    expect(Math.abs(matching.unbalanceWithin / within - 1)).toBeLessThan(0.065);
    expect(Math.abs((matching.grade?.share ?? 0) - 0.5)).toBeLessThan(0.04);
    // On the axis a lump turns nothing: the forces are alike.
    expect(matching.forceSigma).toBeLessThan(1e-9);
  });

  it('has two grips differ by sqrt 2 of the spread of one', () => {
    const { matching, exact, worst } = resultOf(
      lumpHead([['a', 2, [30, 17, 0], 0.5]], { samples: 8000 }),
    );
    // Off by sqrt(2/n)/2 each: 1.1 % and 0.8 %; five of both together.
    expect(Math.abs((matching?.forceSigma ?? 0) / exact.sigma[worst] - Math.SQRT2)).toBeLessThan(
      0.1,
    );
  });

  it('leaves out heads that no rule allows, and names the rule', () => {
    const design = demo('4-turned-nut');
    const own = [{ part: 'bolt', field: 'socketDepthMm', plusMinus: 3 }];
    const result = resultOf({ ...design, tolerance: { ...EXACT, samples: 400, own } });
    expect(result.refused).toBeGreaterThan(50);
    expect(result.samples).toBe(400 - result.refused);
    expect(result.firstRefusal?.path).toContain('socketDepthMm');
  });

  it('counts a head without a force within the pitch in use as one that misses the target', () => {
    const design = demo('4-turned-nut');
    const rotor = { ...design.rotor, usedPitchDeg: 80 };
    const own = [{ part: 'nut', field: 'heightMm', plusMinus: 0.1 }];
    const tolerance = { ...EXACT, samples: 100, own, targetForceN: 1e6 };
    // The rod reaches to 76.9 degrees.
    const result = resultOf({ ...design, rotor, tolerance });
    expect(result.withoutForce).toBe(100);
    expect(result.chance.share).toBe(0);
    expect(result.linearChance.share).toBe(0);
    expect(result.exact.mean[result.used[1]]).toBeNaN();
  });

  it('says why there is nothing to run', () => {
    const kind = (design: Design) => {
      const { outcome } = runTolerances(design, () => undefined);
      return outcome.ok ? 'ran' : outcome.error.kind;
    };
    expect(kind({ ...demo('4-turned-nut'), tolerance: EXACT })).toBe('noTolerance');
    expect(kind(designOf([partOf('cylinder', 'pin')]))).toBe('noForce');
    expect(kind(designOf([partOf('cylinder', 'pin', { boreMm: 9 })]))).toBe('design');
  });

  it('tells how far it is and ends at the number asked for', () => {
    const seen: number[] = [];
    const design = { ...demo('1-bare-grip'), tolerance: { samples: 250 } };
    runTolerances(design, ({ done, total }) => seen.push(done / total));
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(seen.at(-1)).toBe(1);
  });
});

function angularSpeed(): number {
  return (ROTOR.speedRpm * Math.PI) / 30;
}

function rotorMass(design: Design): number {
  const model = new HeadModel();
  model.load(design);
  return 2 * model.totals(new Float64Array(10))[0] + 0.04;
}

/** Largest force within the pitch in use of heads whose first lump is off by evenly spread errors: heads built afresh. */
function largestForces(
  design: Design,
  [[id, massGrams, , plusMinus]]: readonly (readonly [string, number, readonly number[], number])[],
  count: number,
): readonly number[] {
  const pitches = Array.from({ length: 41 }, (_, i) => radiansFromDegrees(i - 20));
  return Array.from({ length: count }, (_, k) => {
    const off = plusMinus * ((2 * (k + 0.5)) / count - 1);
    const parts = design.parts.map((part) =>
      part.id === id ? ({ ...part, massGrams: massGrams + off } as unknown as Part) : part,
    );
    const model = new HeadModel();
    model.load({ ...design, parts });
    const forces = new HeadForces(model);
    return Math.max(
      ...pitches.map((pitch) => Math.abs(forces.forceOf(forces.moment(pitch), pitch) ?? 0)),
    );
  });
}

describe('the numbers that are not exact', () => {
  /** ISO 2768-1:1989, tables 1 and 3, as transcribed in several public summaries; ends belong to the lower row. */
  it.each([
    ['fine', 3, 0.05],
    ['fine', 6.3, 0.1],
    ['fine', 2500, null],
    ['medium', 0.5, 0.1],
    ['medium', 6, 0.1],
    ['medium', 6.01, 0.2],
    ['medium', 30, 0.2],
    ['medium', 92, 0.3],
    ['medium', 400, 0.5],
    ['coarse', 3, 0.2],
    ['coarse', 4, 0.3],
    ['coarse', 100, 0.8],
    ['coarse', 1500, 3],
    ['medium', 0.49, null],
    ['none', 10, null],
  ] as const)('have by ISO 2768-1 %s at %d mm the deviation %j', (general, length, deviation) => {
    expect(lengthDeviation(length, general)).toBe(deviation);
    expect(lengthDeviation(-length, general)).toBe(deviation);
  });

  it('have for a short-legged angle one degree, one and a half in the coarse class', () => {
    expect([angleDeviation('fine'), angleDeviation('medium'), angleDeviation('coarse')]).toEqual([
      1, 1, 1.5,
    ]);
    expect(angleDeviation('none')).toBeNull();
  });

  it('are taken from the first that has one: written, class, density, scale; a catalogue row is exact', () => {
    const demoDesign = demo('4-turned-nut');
    const parts = demoDesign.parts.map((part) =>
      part.id === 'nut' ? { ...part, measured: { massGrams: 2.1, massStepGrams: 0.1 } } : part,
    );
    const own = [
      { part: 'nut', field: 'heightMm', plusMinus: 0.02 },
      { part: 'nut', field: 'acrossMm', plusMinus: 0 },
      { part: 'washer-top', field: 'thicknessMm', plusMinus: 0.05 },
      { part: 'sold', field: 'heightMm', plusMinus: 1 },
    ];
    const list = tolerancesOf({
      ...demoDesign,
      parts,
      tolerance: { densityPercent: 2, own },
    });
    const found = new Map(list.map((one) => [knobKey(one.ref), one]));
    expect(found.get('nut/heightMm')).toMatchObject({ plusMinus: 0.02, source: 'own' });
    expect(found.has('nut/acrossMm')).toBe(false);
    expect(found.get('nut/closedEndMm')).toMatchObject({ plusMinus: 0.1, source: 'general' });
    expect(found.get('nut/measured.massGrams')).toMatchObject({ plusMinus: 0.05, source: 'scale' });
    expect(found.get('blade/densityKgM3')).toMatchObject({ plusMinus: 31, source: 'density' });
    expect(found.get('washer-top/thicknessMm')).toMatchObject({ plusMinus: 0.05, source: 'own' });
    expect(found.has('washer-bottom/thicknessMm')).toBe(false);
    expect(found.has('nut/threadPitchMm')).toBe(false);
    expect([...found.keys()].some((key) => key.startsWith('sold'))).toBe(false);
  });
});

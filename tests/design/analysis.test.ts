import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseDesign, type DesignAnalysis, pitchGrid } from '../../src/design/analysis';
import { fillCurve, momentScale, partHarmonics } from '../../src/design/curve';
import type { Design, Part } from '../../src/design/design';
import { HeadForces } from '../../src/design/forces/headForces';
import { HeadModel } from '../../src/design/headModel';
import { createHarmonics, featheringBound } from '../../src/engine/feathering/harmonics';
import { PitchGrid } from '../../src/engine/feathering/pitchGrid';
import { createMoments } from '../../src/engine/mass/moments';
import { radians, radiansFromDegrees } from '../../src/engine/units';
import { relativeDeviation } from '../support/closeness';
import { designOf, fullHead, mounted, partOf } from './designs';

const RANGE = { fromDeg: -90, toDeg: 90, stepDeg: 1 };
const ROTOR = { speedRpm: 10_000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 };

function analysed(design: Design, range = RANGE): DesignAnalysis {
  const result = analyseDesign(design, range);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

function momentAt(analysis: DesignAnalysis, pitchDeg: number): number {
  return analysis.curve.find((point) => point.pitch_deg === pitchDeg)?.totalMoment_Nm ?? Number.NaN;
}

function lump(id: string, massGrams: number, positionMm: readonly number[]): Part {
  return partOf('pointMass', id, { massGrams, pose: { positionMm, rotationDeg: [0, 0, 0] } });
}

/** A box of 10 g, chord 30, thickness 3.6 mm at a station, as a blade. */
function boxBlade(station: number): Part {
  const sizeMm = [92, 30, 3.6];
  const volume = (92 * 30 * 3.6) / 1e9;
  const pose = { positionMm: [station, 0, 0], rotationDeg: [0, 0, 0] };
  return partOf('block', 'box', { sizeMm, densityKgM3: 0.01 / volume, pose });
}

describe('values worked out from first principles and confirmed by a multibody engine', () => {
  test.each([
    [10, -0.138624784],
    [20, -0.260529374],
    [45, -0.405311754],
    [-15, 0.202655877],
  ])('a box blade of 10 g at %i degrees makes %f N m, at any station', (pitch, moment) => {
    for (const station of [0, 80]) {
      const analysis = analysed(designOf([boxBlade(station)], ROTOR));
      // Nine digits were printed.
      expect(Math.abs(momentAt(analysis, pitch) - moment)).toBeLessThan(6e-10);
    }
  });

  test.each([
    [0, -0.042110312],
    [10, -0.058774183],
    [-10, -0.020367316],
    [30, -0.069679956],
  ])('a lump of 0.8 g at %i degrees makes %f N m', (pitch, moment) => {
    const analysis = analysed(designOf([lump('a', 0.8, [25, 12, 4])], ROTOR));
    expect(Math.abs(momentAt(analysis, pitch) - moment)).toBeLessThan(6e-10);
  });

  test('the box blade with 3.696 g at 10 mm above and below is neutral, and says so', () => {
    const weights = [lump('up', 3.696, [40, 0, 10]), lump('down', 3.696, [40, 0, -10])];
    const analysis = analysed(designOf([boxBlade(80), ...weights], ROTOR));
    expect(analysis.equilibria).toEqual([]);
    expect(analysis.warnings).toEqual([
      'The head is neutral: the moment vanishes at every pitch, so no pitch is listed as an equilibrium.',
    ]);
    for (const point of analysis.curve)
      expect(Math.abs(point.totalMoment_Nm ?? Number.NaN)).toBeLessThan(1e-14);
  });

  test('with half the weights it makes half the moment', () => {
    const weights = [lump('up', 1.848, [40, 0, 10]), lump('down', 1.848, [40, 0, -10])];
    const half = analysed(designOf([boxBlade(80), ...weights], ROTOR));
    const whole = analysed(designOf([boxBlade(80)], ROTOR));
    expect(momentAt(half, 20) / momentAt(whole, 20)).toBeCloseTo(0.5, 12);
  });
});

describe('the analysis of three lumps', () => {
  const design = JSON.parse(
    readFileSync(new URL('../fixtures/three-lumps.json', import.meta.url), 'utf8'),
  ) as Design;
  const analysis = analysed(design);

  test('has the masses and moments of its shapes, by hand', () => {
    const slab = 1600 * 0.09 * 0.03 * 0.0036;
    const pin = (7850 * Math.PI * (0.0055 ** 2 - 0.0022 ** 2) * 0.012) / 4;
    const [a, b, c] = analysis.parts;
    expect(analysis.parts.map(({ id, kind }) => [id, kind])).toEqual([
      ['a', 'pointMass'],
      ['b', 'block'],
      ['c', 'cylinder'],
    ]);
    expect(a.mass_kg).toBeCloseTo(0.0008, 15);
    expect(relativeDeviation(b.mass_kg, slab)).toBeLessThan(1e-14);
    expect(relativeDeviation(c.mass_kg, pin)).toBeLessThan(1e-14);
    expect(relativeDeviation(analysis.totals.mass_kg, 0.0008 + slab + pin)).toBeLessThan(1e-14);
    // The slab turned by 5 degrees about y: its length and thickness mix in x and z.
    const s = Math.sin(Math.PI / 36) ** 2;
    const zz = (slab / 12) * (0.09 ** 2 * s + 0.0036 ** 2 * (1 - s));
    expect(relativeDeviation(b.secondMoment_kg_m2.zz, zz)).toBeLessThan(1e-13);
    const across = pin * ((0.00275 ** 2 + 0.0011 ** 2) / 4);
    expect(relativeDeviation(c.secondMoment_kg_m2.yy, across)).toBeLessThan(1e-13);
    const [x, y, z] = analysis.totals.firstMoment_kg_m;
    expect(relativeDeviation(x, 0.0008 * 0.025 + slab * 0.08 + pin * 0.04)).toBeLessThan(1e-14);
    expect(relativeDeviation(y, 0.0008 * 0.012)).toBeLessThan(1e-14);
    expect(relativeDeviation(z, 0.0008 * 0.004 + pin * 0.009)).toBeLessThan(1e-14);
  });

  test('has parts that add up to the totals', () => {
    for (const key of ['xx', 'yy', 'zz', 'xy', 'xz', 'yz'] as const) {
      const sum = analysis.parts.reduce((total, part) => total + part.secondMoment_kg_m2[key], 0);
      expect(sum).toBeCloseTo(analysis.totals.secondMoment_kg_m2[key], 18);
    }
  });

  test('has the textbook curve of its totals, and no push-rod force: null, not zero', () => {
    const { yy, zz, yz } = analysis.totals.secondMoment_kg_m2;
    const speed = (10_000 * Math.PI) / 30;
    expect(analysis.curve.length).toBe(181);
    for (const point of analysis.curve) {
      const t = (point.pitch_deg * Math.PI) / 180;
      const moment = -(speed ** 2) * (((yy - zz) / 2) * Math.sin(2 * t) + yz * Math.cos(2 * t));
      expect(point.inertialMoment_Nm).toBeCloseTo(moment, 14);
      expect(point.totalMoment_Nm).toBe(point.inertialMoment_Nm);
      expect(point.pushRodForce_N).toBeNull();
    }
  });

  test('rests at tan 2t = -2 J_yz / (J_yy - J_zz) and flees a quarter turn on', () => {
    const { yy, zz, yz } = analysis.totals.secondMoment_kg_m2;
    const rest = ((Math.atan2(-2 * yz, yy - zz) / 2) * 180) / Math.PI;
    const speed = (10_000 * Math.PI) / 30;
    const stiffness = speed ** 2 * Math.hypot(yy - zz, 2 * yz);
    const [first, second, ...more] = analysis.equilibria;
    expect(more).toEqual([]);
    expect(first.pitch_deg).toBeCloseTo(rest, 10);
    expect(first.stable).toBe(true);
    expect(first.stiffness_Nm_per_rad).toBeCloseTo(stiffness, 10);
    expect(second.pitch_deg).toBeCloseTo(rest + 90, 10);
    expect(second.stable).toBe(false);
    expect(second.stiffness_Nm_per_rad).toBeCloseTo(-stiffness, 10);
    expect(analysis.warnings).toEqual([]);
  });
});

describe('an equilibrium that is touched', () => {
  test('is marked tangent and not stable', () => {
    // S_y = 0, J_yy = J_zz and a S_z = -J_yz leave M = W^2 J_yz (cos t - cos 2t): it touches zero at flat pitch and
    // crosses it at +-120 degrees.
    const rotor = { ...ROTOR, torqueOffsetMm: -5 };
    const lumps = [
      lump('a', 1, [30, 5, 5]),
      lump('b', 1, [30, -5, 0]),
      lump('c', 0.5, [30, 0, 5]),
      lump('d', 0.5, [30, 0, -5]),
    ];
    const analysis = analysed(designOf(lumps, rotor), { fromDeg: -170, toDeg: 170, stepDeg: 10 });
    const stiffness = analysis.equilibria.map((one) => one.stiffness_Nm_per_rad);
    expect(analysis.equilibria).toEqual([
      { pitch_deg: expect.closeTo(-120, 9), stable: false, stiffness_Nm_per_rad: stiffness[0] },
      {
        pitch_deg: expect.closeTo(0, 5),
        stable: false,
        stiffness_Nm_per_rad: stiffness[1],
        tangent: true,
      },
      { pitch_deg: expect.closeTo(120, 9), stable: true, stiffness_Nm_per_rad: stiffness[2] },
    ]);
    expect(Math.abs(stiffness[1])).toBeLessThan(1e-6 * stiffness[2]);
  });
});

describe('the push-rod force', () => {
  const flat = (id: string, more = {}) =>
    mounted('pitchArm', id, 'grip', 'armSeat', { ballHeightMm: 0, ...more });
  const parts = [
    partOf('grip', 'grip'),
    flat('arm'),
    mounted('pitchLink', 'link', 'arm', 'ball'),
    boxBlade(80),
  ];

  test('does the work of the moment at the slider: F_s dZs = -n M dt, the rod included', () => {
    const analysis = analysed(designOf(parts, ROTOR), { fromDeg: -30, toDeg: 30, stepDeg: 0.25 });
    const { curve } = analysis;
    const step = (0.25 * Math.PI) / 180;
    for (let i = 1; i < curve.length - 1; i++) {
      const [before, here, after] = [curve[i - 1], curve[i], curve[i + 1]].map((point) => point);
      const rate = ((after.sliderTravel_m ?? NaN) - (before.sliderTravel_m ?? NaN)) / (2 * step);
      const work = (here.sliderForce_N ?? NaN) * rate;
      const wanted = -ROTOR.bladeCount * (here.totalMoment_Nm ?? NaN);
      // The central difference errs by step^2 / 6 of a rate that changes by about itself per radian: 3e-6.
      expect(Math.abs(work - wanted)).toBeLessThan(2e-5 * Math.abs(wanted) + 1e-9);
    }
    expect(curve[0].rodMoment_Nm).not.toBe(0);
  });

  test('counts the rod once, and only where the design counts it', () => {
    const design = designOf(parts, ROTOR);
    const whole = analysed(design);
    const without = analysed({ ...design, counted: { rodMass: false } });
    for (const [i, point] of whole.curve.entries()) {
      const alone = without.curve[i];
      expect(alone.rodMoment_Nm).toBeUndefined();
      expect(alone.totalMoment_Nm).toBe(point.inertialMoment_Nm);
      if (point.totalMoment_Nm === null) continue;
      const sum = point.inertialMoment_Nm + (point.rodMoment_Nm ?? Number.NaN);
      expect(point.totalMoment_Nm).toBeCloseTo(sum, 14);
    }
  });

  // Without a rod part the rod stays parallel to the shaft: no lever where the ball stands over the axis.
  const parallel = parts.filter((part) => part.id !== 'link');

  test('is null where the arm is over centre, and the pitch is told', () => {
    const analysis = analysed(designOf(parallel, ROTOR));
    const gaps = analysis.curve.filter((point) => point.pushRodForce_N === null);
    expect(gaps.map((point) => point.pitch_deg)).toEqual([-90, 90]);
    expect(analysis.warnings).toEqual([
      'The arm goes over centre at -90, 90 deg: there is no push-rod force there, and it grows without limit nearby.',
    ]);
    expect(
      analysed(designOf(parallel, ROTOR), { ...RANGE, fromDeg: -40, toDeg: 40 }).warnings,
    ).toEqual([]);
    // The rod drawn is 24 mm, the slider straight under a ball 17 mm out: the three lie in line at cos t = 17 / 41.
    const real = analysed(designOf(parts, ROTOR)).warnings.join();
    expect(real).toContain(`-${Number(((Math.acos(17 / 41) * 180) / Math.PI).toFixed(2))} deg`);
  });

  test('goes to arrays that are given, with NaN for a gap', () => {
    const model = new HeadModel();
    model.load(designOf(parallel, ROTOR));
    const pitches = new PitchGrid(Float64Array.of(-Math.PI / 2, 0.1, 0.2));
    const column = () => new Float64Array(3);
    const out = {
      moment: column(),
      energy: column(),
      friction: column(),
      force: column(),
      forcePerMoment: column(),
      sliderPerMoment: column(),
      servoPerMoment: column(),
    };
    const { moment, force } = out;
    fillCurve(new HeadForces(model), pitches, out);
    expect([...force].map(Number.isNaN)).toEqual([true, false, false]);
    const wanted = analysed(designOf(parallel, ROTOR), {
      fromDeg: (0.1 * 180) / Math.PI,
      toDeg: 6,
      stepDeg: 1,
    });
    expect(moment[1]).toBeCloseTo(wanted.curve[0].totalMoment_Nm ?? Number.NaN, 14);
    expect(force[1]).toBeCloseTo(wanted.curve[0].pushRodForce_N ?? Number.NaN, 12);
    model.load(designOf([boxBlade(80)], ROTOR));
    fillCurve(new HeadForces(model), pitches, out);
    expect([...force].every(Number.isNaN)).toBe(true);
  });
});

describe('shares and scale', () => {
  const rotor = { ...ROTOR, torqueOffsetMm: 3, preconeDeg: 4 };

  test('shares of the visible parts add up to the total', () => {
    const model = new HeadModel();
    const parts = fullHead().map((part) => (part.id === 'nut' ? { ...part, hidden: true } : part));
    model.load(designOf(parts, rotor));
    const sum = createHarmonics();
    for (const part of model.parts) {
      const share = partHarmonics(part, model.rotor, createHarmonics());
      if (part.part.hidden) expect([...share]).toEqual([0, 0, 0, 0]);
      for (let i = 0; i < 4; i++) sum[i] += share[i];
    }
    const size = featheringBound(model.harmonics);
    for (let i = 0; i < 4; i++)
      expect(Math.abs(sum[i] - model.harmonics[i])).toBeLessThan(1e-13 * size);
  });

  test('the scale bounds the moment of any head, so a neutral one is told from a small one', () => {
    const model = new HeadModel();
    for (let count = 1; count <= 12; count++) {
      model.load(designOf(fullHead().slice(0, count), rotor));
      const scale = momentScale(model.totals(createMoments()), model.rotor);
      expect(featheringBound(model.harmonics)).toBeLessThanOrEqual(2 * scale);
    }
    // A millionth of a gram out of balance on a neutral pair is still an equilibrium.
    const pair = [lump('y', 1, [0, 10, 0]), lump('z', 1.000001, [0, 0, 10])];
    model.load(designOf(pair, ROTOR));
    const forces = new HeadForces(model);
    expect(forces.equilibria(radians(-1), radians(1)).kind).toBe('found');
    expect(forces.equilibria(radiansFromDegrees(-1), radiansFromDegrees(1))).toMatchObject({
      roots: [{ kind: 'unstable' }],
    });
  });
});

describe('warnings', () => {
  test('say that there is no mass, or that nothing turns', () => {
    expect(analysed(designOf([])).warnings).toEqual([
      'No visible part has any mass, so there is no moment.',
    ]);
    const still = analysed(designOf([boxBlade(80)], { ...ROTOR, speedRpm: 0 }));
    expect(still.warnings).toEqual([
      'The rotor does not turn, so there is no moment at any pitch.',
    ]);
    expect(still.equilibria).toEqual([]);
    expect(momentAt(still, 20)).toBeCloseTo(0, 20);
  });

  test('name hidden parts, which weigh nothing', () => {
    const parts = [boxBlade(80), { ...lump('b', 5, [10, 0, 9]), hidden: true, name: 'nut' }];
    const analysis = analysed(designOf(parts, ROTOR));
    expect(analysis.warnings).toEqual(['Hidden parts are left out of every number: "nut".']);
    expect(analysis.parts.map(({ id }) => id)).toEqual(['box']);
    expect(analysis.totals.mass_kg).toBeCloseTo(0.01, 15);
  });

  test('name the arm in use when there is more than one', () => {
    const arms = ['front', 'rear'].map((id) => mounted('pitchArm', id, 'grip', 'armSeat'));
    const range = { ...RANGE, fromDeg: -10, toDeg: 10 };
    expect(analysed(designOf([partOf('grip', 'grip'), ...arms]), range).warnings).toEqual([
      'More than one part has a ball for the push rod: "front" is used, "rear" not.',
    ]);
  });

  test('ask about a unit when the head weighs a ton', () => {
    const lumps = ['a', 'b'].map((id) => lump(id, 400_000, [0, 10, 0]));
    const mass = (lumps[0] as unknown as { massGrams: number }).massGrams;
    const result = analyseDesign(designOf(lumps), RANGE);
    // The largest lump that its own limit allows may be less than that.
    if (!result.ok) {
      expect(result.error.reason).toMatchObject({ code: 'tooLarge', value: mass });
      return;
    }
    expect(result.value.warnings.join()).toMatch(/weighs 800 kg, .*is a unit wrong\?/);
  });
});

describe('the grid of pitches', () => {
  test('steps without adding up rounding, and meets whole numbers', () => {
    const grid = pitchGrid({ fromDeg: -90, toDeg: 90, stepDeg: 0.1 });
    expect(grid.length).toBe(1801);
    for (const [i, pitch] of grid.entries()) expect(pitch).toBe((i - 900) / 10);
  });

  test('ends where the last whole step ends', () => {
    expect([...pitchGrid({ fromDeg: 0, toDeg: 1, stepDeg: 0.4 })]).toEqual([0, 0.4, 0.8]);
    expect([...pitchGrid({ fromDeg: 7, toDeg: 7, stepDeg: 1 })]).toEqual([7]);
    expect(() => pitchGrid({ fromDeg: 0, toDeg: 1, stepDeg: 0 })).toThrow(/not ascending/);
    expect(() => pitchGrid({ fromDeg: 1, toDeg: 0, stepDeg: 1 })).toThrow(/not ascending/);
  });
});

import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { forgetAirTables } from '../../../src/design/forces/airMemory';
import { balanceOf } from '../../../src/design/forces/balance';
import { HeadForces } from '../../../src/design/forces/headForces';
import { headLoads } from '../../../src/design/forces/headLoads';
import { speedSweep } from '../../../src/design/forces/speedSweep';
import { HeadModel } from '../../../src/design/headModel';
import { radians, radiansFromDegrees } from '../../../src/engine/units';

function demo(name = '4-turned-nut'): Design {
  const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(`demo(): ${name} is not sound: ${read.error.path}`);
  return read.value;
}

function forcesOf(design: Design): HeadForces {
  const model = new HeadModel();
  const outcome = model.load(design);
  if (!outcome.ok) throw new Error(outcome.error.path);
  return new HeadForces(model);
}

const changed = (design: Design, id: string, more: object): Part =>
  ({ ...design.parts.find((part) => part.id === id), ...more }) as Part;

describe('the blade on its bolt', () => {
  test('rubs on the bolt that is there now: a thinner one, and none', () => {
    const design = demo('3-ordinary-bolt');
    const band = (changes: object) => {
      const whole = design.parts.map((part) =>
        part.id === 'bolt' ? ({ ...part, ...changes } as Part) : part,
      );
      return forcesOf({ ...design, parts: whole }).lag?.at(radiansFromDegrees(5))?.band;
    };
    const forces = forcesOf(design);
    expect(forces.lag?.at(radiansFromDegrees(5))?.band).toEqual(band({}));
    for (const changes of [{ shankDiameterMm: 2.5 }, { hidden: true }]) {
      const outcome = forces.model.setPart(changed(design, 'bolt', changes));
      expect(outcome.ok).toBe(true);
      expect(band(changes)).not.toEqual(band({}));
      expect(forces.lag?.at(radiansFromDegrees(5))?.band).toEqual(band(changes));
    }
  });
});

describe('the air on the drag path', () => {
  beforeEach(forgetAirTables);

  test('is not solved again while a bolt, a nut or an arm is dragged, and is for blade, rotor and air', () => {
    const design = demo();
    const forces = forcesOf(design);
    const { model } = forces;
    forces.moment(radians(0.2));
    expect(forces.airSolved).toBe(1);
    for (let i = 1; i <= 50; i++) {
      model.setPart(changed(design, 'bolt', { extensionLengthMm: i / 10 }));
      model.setPart(changed(design, 'nut', { heightMm: 5 + i / 100 }));
      model.setPart(changed(design, 'arm', { armReachMm: 15 + i / 100 }));
      forces.moment(radians(0.2));
    }
    expect(forces.airSolved).toBe(1);
    model.setPart(changed(design, 'blade', { rootChordMm: 29 }));
    forces.moment(radians(0.2));
    expect(forces.airSolved).toBe(2);
    model.setSections({ ...model.sections, rotor: { ...design.rotor, speedRpm: 9000 } });
    forces.moment(radians(0.2));
    model.setSections({ ...model.sections, air: { tipLoss: false } });
    forces.moment(radians(0.2));
    expect(forces.airSolved).toBe(4);
    model.setPart({ ...changed(design, 'blade', {}), hidden: true } as Part);
    expect(forces.air.kind).toBe('noBlade');
    expect(forces.airSolved).toBe(4);
  });

  test('is not solved again by another head whose blade and air are the same to the bit, and is for one a micron longer', () => {
    const design = demo();
    const first = forcesOf(design);
    const second = forcesOf({
      ...design,
      parts: design.parts.map((part) => ({ ...part }) as Part),
    });
    const third = forcesOf(design);
    third.model.setPart(changed(design, 'blade', { rootChordMm: 30.001 }));
    const moments = [first, second, third].map((forces) => forces.moment(radians(0.2)));
    expect([first, second, third].map((forces) => forces.airSolved)).toEqual([1, 0, 1]);
    expect(moments[1]).toBe(moments[0]);
    expect(moments[2]).not.toBe(moments[0]);
  });
});

describe('the whole moment', () => {
  const WITHOUT_AIR = { rodMass: true, air: false, friction: false };

  test('is minus the slope of its energy and has the slope it says, with rod, air and a swinging blade', () => {
    const forces = forcesOf({ ...demo(), bladeBolt: { hold: 'free' } });
    expect(forces.terms.map(({ id }) => id)).toEqual(['rod', 'air', 'lag']);
    const h = 1e-5;
    for (const deg of [-33.3, -7.7, 4.4, 26.6]) {
      const t = radiansFromDegrees(deg);
      const at = (shift: number) => radians(t + shift);
      const slope = (forces.energy(at(h)) - forces.energy(at(-h))) / (2 * h);
      expect(Math.abs(slope + forces.moment(t))).toBeLessThan(1e-7);
      const bend = (forces.moment(at(h)) - forces.moment(at(-h))) / (2 * h);
      expect(Math.abs(bend - forces.slope(t))).toBeLessThan(1e-4);
    }
  });

  test('the slider does the work of it: F_s is minus n times the derivative of energy along the travel', () => {
    const forces = forcesOf(demo());
    const h = 1e-5;
    for (const deg of [-30, -12, 3, 25]) {
      const t = radiansFromDegrees(deg);
      const energy = forces.energy(radians(t + h)) - forces.energy(radians(t - h));
      const travel = forces.travelAt(radians(t + h)) - forces.travelAt(radians(t - h));
      const wanted = (2 * energy) / travel;
      expect(Math.abs((forces.sliderForce(t) ?? NaN) - wanted)).toBeLessThan(1e-6);
    }
  });

  test('inertial outputs go exactly with the square of the speed: doubled, four times to the bit', () => {
    const design = { ...demo(), counted: WITHOUT_AIR };
    const slow = forcesOf(design);
    const fast = forcesOf({
      ...design,
      rotor: { ...design.rotor, speedRpm: 2 * design.rotor.speedRpm },
    });
    for (const deg of [-40, -5, 13, 60]) {
      const t = radiansFromDegrees(deg);
      expect(fast.moment(t)).toBe(4 * slow.moment(t));
      expect(fast.energy(t)).toBe(4 * slow.energy(t));
      expect(fast.sliderForce(t)).toBe(4 * (slow.sliderForce(t) ?? NaN));
      const [a, b] = [headLoads(slow, t), headLoads(fast, t)];
      expect(b.axialPull).toBeCloseTo(4 * a.axialPull, 9);
      b.pulls.forEach(({ pull }, i) => expect(pull).toBe(4 * a.pulls[i].pull));
      b.bearings.forEach(({ radial }, i) =>
        expect(radial).toBeCloseTo(4 * a.bearings[i].radial, 8),
      );
    }
  });

  test('against speed at the speed of the design is what it is against pitch, and friction alone is left at rest', () => {
    const forces = forcesOf(demo());
    const pitch = radiansFromDegrees(12);
    const sweep = speedSweep(forces, pitch);
    const last = sweep.speedRpm.length - 1;
    expect(sweep.speedRpm[last]).toBeCloseTo(1.05 * 10_200, 9);
    const at = sweep.speedRpm.findIndex((rpm) => rpm >= 10_200);
    const share = (10_200 - sweep.speedRpm[at - 1]) / (sweep.speedRpm[at] - sweep.speedRpm[at - 1]);
    const between = (column: Float64Array) =>
      column[at - 1] + share * (column[at] - column[at - 1]);
    // Straight between steps of 187 rpm of a parabola: a quarter of (187 / 10,200)^2 of it, of each share.
    const size = Math.max(...sweep.shares.map(({ moment }) => Math.abs(moment[last])));
    expect(Math.abs(between(sweep.moment) - forces.moment(pitch))).toBeLessThan(2e-4 * size);
    expect(sweep.moment[0]).toBe(0);
    expect(sweep.friction[0]).toBeGreaterThan(0);
    expect(sweep.friction[last]).toBeGreaterThan(sweep.friction[0]);
    sweep.moment.forEach((moment, i) => {
      const sum = sweep.shares.reduce((all, share2) => all + share2.moment[i], 0);
      expect(Math.abs(sum - moment)).toBeLessThan(1e-15 + 1e-12 * size);
    });
  });
});

describe('loads', () => {
  test('say what is not known instead of passing it', () => {
    const design = demo();
    const parts = design.parts
      .filter(({ id }) => id !== 'bearing-in' && id !== 'bearing-thrust')
      .map((part) => (part.id === 'bolt' ? ({ ...part, propertyClass: 'unknown' } as Part) : part));
    const loads = headLoads(forcesOf({ ...design, parts }), radiansFromDegrees(10));
    expect(loads.missing).toEqual(['thrust']);
    expect(loads.bearings.map(({ rating }) => rating)).toMatchObject([
      { kind: 'unknown', why: 'oneBearing' },
    ]);
    for (const { margin } of loads.bolts[0]?.checks ?? []) expect(margin.kind).toBe('unknown');
    expect(loads.bolts[0]?.retention).toBe('plain');
    expect(loads.first).toBeNull();
  });

  test('the speed at which the first limit is reached is where its use is one', () => {
    const forces = forcesOf(demo());
    const pitch = radiansFromDegrees(10);
    const { first } = headLoads(forces, pitch);
    expect(first).not.toBeNull();
    const there = headLoads(forces, pitch, first?.limitRpm);
    expect(there.first?.use).toBeCloseTo(1, 9);
  });
});

describe('balance', () => {
  test('weighed grips leave what they differ by, and the correction cancels it', () => {
    const design = demo();
    const model = new HeadModel();
    model.load(design);
    expect(balanceOf(model, [])).toMatchObject({ unbalance: 0, corrections: [], left: 0 });
    const [drawn] = balanceOf(model, []).grips;
    const station = 1000 * drawn.station;
    const massGrams = 1000 * drawn.mass + 0.5;
    const other = balanceOf(model, [{ name: 'B', massGrams, stationMm: station }]);
    // Half a gram at the centre, and what lies across the axes of the two: the centre is a little behind them.
    const across = 0.0005 * Math.abs(drawn.ahead);
    expect(other.unbalance).toBeCloseTo(0.0005 * Math.hypot(drawn.station, drawn.ahead), 12);
    expect(other.left).toBeCloseTo(across, 12);
    expect(other.corrections).toMatchObject([{ grip: 0 }]);
    expect(other.corrections[0].mass * other.corrections[0].station).toBeCloseTo(
      0.0005 * drawn.station,
      12,
    );
    expect(other.grade?.value).toBeCloseTo(
      (1000 * other.unbalance * model.rotor.angularSpeed) / (other.rotorMass ?? 0),
      9,
    );
  });

  test('parts of another grip may be weighed one by one, or be another list', () => {
    const design = demo();
    const model = new HeadModel();
    model.load(design);
    const blade = 1000 * (model.placed('blade')?.moments_G[0] ?? 0);
    const weighed = balanceOf(model, [{ name: '', partMassesGrams: { blade: blade + 0.1 } }]);
    expect(1000 * (weighed.grips[1].mass - weighed.grips[0].mass)).toBeCloseTo(0.1, 12);
    expect(weighed.grips[1].from).toBe('partMasses');
    const { parts } = demo('3-ordinary-bolt');
    const list = balanceOf(model, [{ name: '', parts }]);
    const drawn3 = new HeadModel();
    drawn3.load(demo('3-ordinary-bolt'));
    expect(list.grips[1].mass).toBeCloseTo(balanceOf(drawn3, []).grips[0].mass, 15);
  });
});

describe('the sections in a file', () => {
  const whole: Design = {
    ...demo(),
    air: {
      section: 'table',
      tipLoss: false,
      polar: { name: 'own.csv', text: 'alpha,cl,cd,cm\n0,0,0.01,0\n5,0.5,0.02,0\n' },
    },
    otherGrips: [
      { name: 'B', partMassesGrams: { blade: 7.2 }, parts: demo('3-ordinary-bolt').parts },
    ],
    bladeBolt: { hold: 'free', clampForceN: 20 },
  };

  test('are written and read back equal', () => {
    const text = serializeDesign(whole);
    expect(parseDesign(text)).toEqual({ ok: true, value: whole });
  });

  test.each([
    [
      {
        friction: {
          drag: [
            { travelMm: 1, forceN: 1 },
            { travelMm: 1, forceN: 2 },
          ],
        },
      },
      'friction.drag[1].travelMm',
    ],
    [{ friction: { drag: [{ travelMm: 1, forceN: -1 }] } }, 'friction.drag[0].forceN'],
    [{ control: { lowestTravelMm: 1 } }, 'control.lowestTravelMm'],
    [{ counted: { air: 1 } }, 'counted.air'],
    [{ air: { section: 'guess' } }, 'air.section'],
    [{ rotor: { ...demo().rotor, lowestSpeedRpm: 20_000 } }, 'rotor.lowestSpeedRpm'],
    [{ otherGrips: [{ name: 'B', massGrams: -1 }] }, 'otherGrips[0].massGrams'],
    [
      { otherGrips: [{ name: 'B', parts: [{ ...demo().parts[0], boltHoleMm: -1 }] }] },
      'otherGrips[0].parts[0].boltHoleMm',
    ],
    [
      { otherGrips: [{ name: 'B', partMassesGrams: { blade: 'x' } }] },
      'otherGrips[0].partMassesGrams.blade',
    ],
    [{ bladeBolt: { more: 1 } }, 'bladeBolt'],
  ])('%j is refused at its place', (change, path) => {
    const read = parseDesign(JSON.stringify({ ...demo(), ...change }));
    expect(read.ok ? 'taken' : read.error.path).toBe(path);
  });
});

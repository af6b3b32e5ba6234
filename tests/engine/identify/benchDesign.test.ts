import { describe, expect, it } from 'vitest';
import {
  type BenchSetup,
  benchDesign,
  frictionForce,
  putShared,
  withPriors,
} from '../../../src/engine/identify/benchDesign';
import type { BenchReading } from '../../../src/engine/identify/benchReading';
import {
  forceSlope,
  frictionPerUnit,
  type SharedError,
  sharedEffect,
} from '../../../src/engine/identify/sharedErrors';
import { radians } from '../../../src/engine/units';

const PRECONE = 0.3;
const PITCH = 0.4;
const READING: BenchReading = {
  force: 12,
  sense: -1,
  pitch: radians(PITCH),
  angularSpeed: 500,
  forcePerMoment: -40,
  forcePerMomentSlope: 9,
  travel: 0.0025,
  zero: 3,
  knownForce: 2,
  extras: [0.7, -0.2],
  scaleShifts: [0.01, -0.02],
};
const SETUP: BenchSetup = {
  friction: 'moment',
  zeros: 'free',
  extras: ['air', 'rod'],
  drag: [
    { travel: 0, force: 0.5, sigma: 0.1 },
    { travel: 0.01, force: 0.3, sigma: 0.2 },
  ],
  precone: radians(PRECONE),
};
/** -g W^2 cos^2(precone), by hand. */
const PULL = 40 * 500 ** 2 * Math.cos(PRECONE) ** 2;

const rowOf = (setup: BenchSetup, readings: readonly BenchReading[] = [READING]) => {
  const { keys, rows } = benchDesign(readings, setup);
  return {
    names: keys.map((key) => ('index' in key ? `${key.kind} ${key.index}` : key.kind)),
    rows,
  };
};

describe('a reading as a row of the bench model', () => {
  it('has moments, friction against the movement, its own zero, extra terms and shares of drag', () => {
    const { names, rows } = rowOf(SETUP, [READING, { ...READING, zero: 1 }]);
    expect(names).toEqual([
      'spread',
      'product',
      'friction',
      'zero 1',
      'zero 3',
      'extra 0',
      'extra 1',
      'drag 0',
      'drag 1',
    ]);
    const wanted = [
      (PULL * Math.sin(2 * PITCH)) / 2,
      PULL * Math.cos(2 * PITCH),
      -40,
      0,
      1,
      0.7,
      -0.2,
      -0.75,
      -0.25,
    ];
    // Rounding of ten millions.
    wanted.forEach((value, j) => expect(rows[j]).toBeCloseTo(value, 7));
    expect([rows[9 + 3], rows[9 + 4]]).toEqual([1, 0]);
  });

  it('leaves out what is not asked for', () => {
    const bare = { ...SETUP, friction: 'none', zeros: 'none', extras: [], drag: [] } as const;
    expect(rowOf(bare).names).toEqual(['spread', 'product']);
  });

  it('has no part of a term that it does not know', () => {
    const { extras: _, ...plain } = READING;
    const { rows } = rowOf(SETUP, [plain]);
    expect([rows[4], rows[5]]).toEqual([0, 0]);
  });

  it('is read without the force that is known', () => {
    const { knownForce: _, ...plain } = READING;
    expect([...benchDesign([READING, plain], SETUP).observed]).toEqual([10, 12]);
  });
});

describe('what is known beforehand', () => {
  const shared: SharedError[] = [{ id: 'gain', kind: 'gain', sigma: 0.01 }];
  const known = () => benchDesign([READING], { ...SETUP, zeros: { sigma: 0.05 }, shared });

  it('is a zero about nothing, a drag about what was measured, a shared error about nothing by one', () => {
    expect(known().priors).toEqual([
      { parameter: 3, value: 0, sigma: 0.05 },
      { parameter: 6, value: 0.5, sigma: 0.1 },
      { parameter: 7, value: 0.3, sigma: 0.2 },
      { parameter: 8, value: 0, sigma: 1 },
    ]);
    expect(benchDesign([READING], { ...SETUP, drag: [] }).priors).toEqual([]);
  });

  it('stands below the readings, an observation each', () => {
    const design = known();
    const { table, observed } = withPriors(design);
    expect([...observed]).toEqual([10, 0, 0.5, 0.3, 0]);
    expect([...table.subarray(0, 9)]).toEqual([...design.rows]);
    const ones = [...table.subarray(9)].map((value, k) => (value === 0 ? -1 : k));
    expect(ones.filter((k) => k >= 0)).toEqual([3, 9 + 6, 18 + 7, 27 + 8]);
    expect([...table.subarray(9)].filter((value) => value !== 0)).toEqual([1, 1, 1, 1]);
  });
});

describe('friction of one unit of its law', () => {
  const per = (setup: Partial<BenchSetup>) => frictionPerUnit(READING, { ...SETUP, ...setup });

  it('is a newton, a lever, or a lever by the square of the speed', () => {
    expect(per({ friction: 'none' })).toBe(0);
    expect(per({ friction: 'force' })).toBe(1);
    expect(per({ friction: 'moment' })).toBe(40);
    expect(per({ friction: 'moment', referenceSpeed: 250 })).toBe(40);
    expect(per({ friction: 'pull', referenceSpeed: 250 })).toBe(160);
    expect(per({ friction: 'pull' })).toBe(40);
  });

  it('acts beside the drag, as a size', () => {
    expect(frictionForce(READING, SETUP, 0.02, 0.3)).toBeCloseTo(1.1, 14);
    expect(frictionForce(READING, SETUP, -0.02, 0.3)).toBeCloseTo(0.5, 14);
  });
});

describe('what an error shared by all readings does to one', () => {
  const AT = { spread: 3e-7, product: -2e-7, friction: 0.02 };
  /** Gauge force at a pitch, by the model as it is written down; the lever goes straight with pitch about the reading. */
  const moment = (pitch: number, speed = 500, lever = 1) =>
    lever *
    (-40 + 9 * (pitch - PITCH)) *
    -((speed * Math.cos(PRECONE)) ** 2) *
    ((3e-7 / 2) * Math.sin(2 * pitch) - 2e-7 * Math.cos(2 * pitch));
  const effect = (error: SharedError, setup: BenchSetup = SETUP, reading = READING) =>
    sharedEffect(error, reading, setup, AT);
  const own = (kind: 'gain' | 'lever' | 'speed' | 'pitch', setup = SETUP) =>
    effect({ id: kind, kind, sigma: 0.01 }, setup);
  const RUBBED = -40 * 0.02;

  it('turns the pitch: a hundredth of the slope of the force, by a central difference', () => {
    const h = 1e-5;
    const slope = (moment(PITCH + h) - moment(PITCH - h)) / (2 * h);
    expect(forceSlope(READING, AT, PRECONE) / slope).toBeCloseTo(1, 8);
    expect(own('pitch') / (0.01 * slope)).toBeCloseTo(1, 8);
    expect(effect({ id: 's', kind: 'scale', component: 0 }) / (0.01 * slope)).toBeCloseTo(1, 8);
    expect(effect({ id: 's', kind: 'scale', component: 1 }) / (-0.02 * slope)).toBeCloseTo(1, 8);
    const { scaleShifts: _, ...read } = READING;
    expect(effect({ id: 's', kind: 'scale', component: 1 }, SETUP, read)).toBe(0);
  });

  it('scales what the gauge reads, friction along', () => {
    expect(own('gain')).toBeCloseTo(0.01 * (moment(PITCH) + 2 + RUBBED), 12);
    const { knownForce: _, ...plain } = READING;
    expect(effect({ id: 'g', kind: 'gain', sigma: 0.01 }, SETUP, plain)).toBeCloseTo(
      0.01 * (moment(PITCH) + RUBBED),
      12,
    );
  });

  it('scales the lever: friction along where it is a moment, not where it is a force', () => {
    const friction = (law: BenchSetup['friction']) => own('lever', { ...SETUP, friction: law });
    expect(friction('moment')).toBeCloseTo(0.01 * (moment(PITCH) + 2 + RUBBED), 12);
    expect(friction('pull')).toBeCloseTo(0.01 * (moment(PITCH) + 2 + RUBBED), 12);
    expect(friction('force')).toBeCloseTo(0.01 * (moment(PITCH) + 2), 12);
  });

  it('counts twice in the speed: friction along where it goes with the pull only', () => {
    const friction = (law: BenchSetup['friction']) => own('speed', { ...SETUP, friction: law });
    expect(friction('pull')).toBeCloseTo(0.02 * (moment(PITCH) + 2 + RUBBED), 12);
    expect(friction('moment')).toBeCloseTo(0.02 * (moment(PITCH) + 2), 12);
  });

  it('is put into its own columns and no others', () => {
    const setup: BenchSetup = { ...SETUP, shared: [{ id: 'g', kind: 'gain', sigma: 0.01 }] };
    const readings = [READING, { ...READING, sense: 1 } as const];
    const before = benchDesign(readings, setup);
    // Without a fit only what is known is scaled: a hundredth of 2 N.
    expect(before.rows[before.keys.length - 1]).toBeCloseTo(0.02, 14);
    const design = benchDesign(readings, setup);
    putShared(design, readings, setup, AT);
    const n = design.keys.length;
    design.rows.forEach((value, k) => {
      if (k % n < n - 1) expect(value).toBe(before.rows[k]);
    });
    expect(design.rows[n - 1]).toBeCloseTo(0.01 * (moment(PITCH) + 2 + RUBBED), 12);
    expect(design.rows[2 * n - 1]).toBeCloseTo(0.01 * (moment(PITCH) + 2 - RUBBED), 12);
    expect([...benchDesign(readings, setup, AT).rows]).toEqual([...design.rows]);
    expect(() => putShared(design, readings, SETUP, AT)).toThrow(RangeError);
  });
});

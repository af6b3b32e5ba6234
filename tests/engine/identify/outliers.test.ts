import { describe, expect, it } from 'vitest';
import type { BenchSetup } from '../../../src/engine/identify/benchDesign';
import { type BenchEstimate, fittedOf } from '../../../src/engine/identify/benchFitTypes';
import type { BenchReading } from '../../../src/engine/identify/benchReading';
import { flagOutliers } from '../../../src/engine/identify/outliers';
import { radians } from '../../../src/engine/units';

const SETUP: BenchSetup = {
  friction: 'none',
  zeros: 'none',
  extras: [],
  drag: [],
  precone: radians(0),
};
const SIGMA = 0.1;

/** Readings of the model itself, -g W^2 (A/2 sin 2t + P cos 2t) with g = 50, W = 1000. */
function exact(pitches: readonly number[]): BenchReading[] {
  return pitches.map((pitch) => ({
    force: -50 * 1000 ** 2 * (2e-7 * Math.sin(2 * pitch) + 1e-7 * Math.cos(2 * pitch)),
    sense: 1,
    pitch: radians(pitch),
    angularSpeed: 1000,
    forcePerMoment: 50,
    travel: 0,
    zero: 0,
  }));
}
const PITCHES = [-0.5, -0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4, 0.5];

function flags(
  readings: readonly BenchReading[],
  { leverage = 0.19, noiseFound = false, limit = undefined as number | undefined, step = 0 } = {},
) {
  const fit = {
    sigma: new Float64Array(readings.length).fill(SIGMA),
    leverage: new Float64Array(readings.length).fill(leverage),
    noiseFound,
    estimates: [],
  };
  const gauge = { step, noise: SIGMA, ...(limit === undefined ? {} : { limit }) };
  return flagOutliers(readings, SETUP, gauge, fit);
}
const moved = (index: number, by: number) =>
  exact(PITCHES).map((one, i) => (i === index ? { ...one, force: one.force + by } : one));

describe('one reading that is off among exact ones', () => {
  it('is off by what it is over its own uncertainty, sigma sqrt(1 - leverage)', () => {
    const [only, ...others] = flags(moved(3, 2));
    expect(others).toEqual([]);
    expect(only.index).toBe(3);
    const [reason] = only.reasons;
    if (reason.kind !== 'farFromOthers') throw new Error(reason.kind);
    expect(reason.excess).toBeCloseTo(2 / (SIGMA * Math.sqrt(1 - 0.19)), 4);
    // Two-sided, 5 % over 11 readings: the normal deviate of 1 - 0.05/22 (2.8376; SciPy's norm.ppf, from memory to 4 digits).
    expect(reason.limit).toBeCloseTo(2.838, 2);
  });

  it('is flagged from the limit on, above and below', () => {
    for (const [by, count] of [
      [0.27, 0],
      [0.31, 1],
      [-0.27, 0],
      [-0.31, 1],
    ]) {
      // The limit is 0.284 N.
      expect(flags(moved(5, by), { leverage: 0 })).toHaveLength(count);
    }
  });

  it('does not count as surer than a twentieth of its variance', () => {
    const [{ reasons }] = flags(moved(3, 2), { leverage: 0.999 });
    const [reason] = reasons;
    if (reason.kind !== 'farFromOthers') throw new Error(reason.kind);
    expect(reason.excess).toBeCloseTo(2 / (SIGMA * Math.sqrt(0.05)), 3);
  });

  it('is found without any known noise, by the middle of the others', () => {
    // Others off by turns of 0.001: hundreds of those is the one that is off by 0.2.
    const readings = moved(3, 0.2).map((one, i) => ({
      ...one,
      force: one.force + (i % 2 === 0 ? 1e-3 : -1e-3),
    }));
    expect(flags(readings)).toEqual([]);
    const [flag, ...others] = flags(readings, { noiseFound: true });
    expect([flag.index, others]).toEqual([3, []]);
    const [reason] = flag.reasons;
    if (reason.kind !== 'farFromOthers') throw new Error(reason.kind);
    // 0.199 over 1.4826 times the median size of the others, some 0.001.
    expect(reason.excess * 1.4826e-3).toBeGreaterThan(0.199 / 1.5);
    expect(reason.excess * 1.4826e-3).toBeLessThan(0.199 * 1.5);
  });
});

describe('a reading that is somewhat off', () => {
  it('pulls as Tukey has it: u (1 - (u / 4.685)^2)^2', () => {
    // At flat pitch a reading is the product term and nothing else: a location. Its M-estimate by bisection of the sum of
    // psi (P. J. Huber, E. M. Ronchetti, Robust Statistics, 4.8), sigma 0.1 and no leverage.
    const offs = [-0.03, -0.025, -0.01, 0, 0.005, 0.015, 0.02, 0.3, 0.4, 2];
    const at = (pitch: number) =>
      exact(offs.map(() => pitch)).map((one, i) => ({ ...one, force: one.force + offs[i] }));
    const readings = at(0);
    const psi = (u: number) => (Math.abs(u) < 4.685 ? u * (1 - (u / 4.685) ** 2) ** 2 : 0);
    const pull = (m: number) => offs.reduce((sum, y) => sum + psi((y - m) / SIGMA), 0);
    let [low, high] = [0, 0.1];
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2;
      if (pull(middle) > 0) low = middle;
      else high = middle;
    }
    // At an eighth of a turn it is the spread's term and nothing else: readings of the one say nothing of the other.
    const eighth = [...at(Math.PI / 4), ...exact(offs.map(() => 0))];
    for (const all of [readings, eighth]) {
      const excess = flags(all, { leverage: 0 }).map(({ index, reasons }) => {
        const reason = reasons.find(({ kind }) => kind === 'farFromOthers');
        return [index, reason?.kind === 'farFromOthers' ? reason.excess : 0];
      });
      expect(excess.map(([index]) => index)).toEqual([8, 9]);
      expect(excess[0][1]).toBeCloseTo((0.4 - low) / SIGMA, 4);
      expect(excess[1][1]).toBeCloseTo((2 - low) / SIGMA, 4);
    }
  });

  it.each([1, 0.01])(
    'is measured by the deviations that are left of the least absolute ones, where no noise is known (times %d)',
    (size) => {
      // The same location problem, skew, so that middle and biweight part; deviations in units of sigma, without the two least (as
      // many as there are parameters). Their middle size gives the scale, which stays; the biweight is solved by bisection.
      const offs = [1, 3, 6, 8, 10, 11, 13, 15, 18, 20, 300].map((off) => off * 1e-3 * size);
      const readings = exact(offs.map(() => 0)).map((one, i) => ({
        ...one,
        force: one.force + offs[i],
      }));
      const sizes = offs.map((y) => Math.abs(y - 0.011 * size) / SIGMA).toSorted((a, b) => a - b);
      const scale = 1.482602218505602 * sizes.slice(2)[4];
      const psi = (u: number) => (Math.abs(u) < 4.685 ? u * (1 - (u / 4.685) ** 2) ** 2 : 0);
      const pull = (m: number) => offs.reduce((sum, y) => sum + psi((y - m) / (SIGMA * scale)), 0);
      let [low, high] = [0, 0.02 * size];
      for (let k = 0; k < 60; k++) {
        const middle = (low + high) / 2;
        if (pull(middle) > 0) low = middle;
        else high = middle;
      }
      const [flag, ...others] = flags(readings, { leverage: 0, noiseFound: true });
      expect([flag.index, others]).toEqual([10, []]);
      const [reason] = flag.reasons;
      if (reason.kind !== 'farFromOthers') throw new Error(reason.kind);
      // The least absolute deviations come to the middle reading to a thousandth of the scale.
      expect((reason.excess * SIGMA * scale) / (0.3 * size - low)).toBeCloseTo(1, 2);
    },
  );

  it('is held against what is known beforehand too', () => {
    const setup: BenchSetup = { ...SETUP, zeros: { sigma: 0.05 } };
    const readings = moved(3, 2);
    const fit = {
      sigma: new Float64Array(11).fill(SIGMA),
      leverage: new Float64Array(11),
      noiseFound: false,
      estimates: [],
    };
    const gauge = { step: 0, noise: SIGMA };
    expect(flagOutliers(readings, setup, gauge, fit).map(({ index }) => index)).toEqual([3]);
  });
});

describe('the range of the gauge', () => {
  it('ends at its limit, pulled or pushed', () => {
    const readings = exact(PITCHES);
    const sizes = readings.map(({ force }) => Math.abs(force));
    const most = Math.max(...sizes);
    expect(flags(readings, { limit: most * 1.001 })).toEqual([]);
    const last = sizes.indexOf(most);
    expect(flags(readings, { limit: most })).toEqual([
      { index: last, reasons: [{ kind: 'overRange', force: readings[last].force, limit: most }] },
    ]);
    const turned = readings.map((one) => ({ ...one, forcePerMoment: -50, force: -one.force }));
    expect(flags(turned, { limit: most }).map(({ index }) => index)).toEqual([last]);
  });
});

describe('repeats', () => {
  const repeated = (...offs: number[]) => [
    ...exact(PITCHES),
    ...exact(offs.map(() => 0.25)).map((one, i) => ({ ...one, force: one.force + offs[i] })),
  ];
  const unlike = (readings: readonly BenchReading[], step: number) =>
    flags(readings, { step }).flatMap(({ index, reasons }) =>
      reasons
        .filter((reason) => reason.kind === 'unlikeRepeats')
        .map((reason) => ({ place: index - PITCHES.length, ...reason })),
    );

  it('are unlike their middle by more than three uncertainties and a step', () => {
    // Others of the last: 0.04, 0, 0.02, middle 0.02; three of sigma and of a median of three, pi/2 sigma^2 / 3.
    const [only, ...others] = unlike(repeated(0.04, 0, 0.02, 1.02), 0.05);
    expect(others).toEqual([]);
    expect(only.place).toBe(3);
    expect(only.by).toBeCloseTo(1, 12);
    expect(only.allowed).toBeCloseTo(3 * SIGMA * Math.sqrt(1 + Math.PI / 2 / 3) + 0.05, 3);
    expect(unlike(repeated(0, 0.02, 0.04, -0.98), 0.05)[0].by).toBeCloseTo(-1, 12);
    expect(unlike(repeated(0, 0.02, 0.04, 0.45), 0.05)).toHaveLength(1);
    expect(unlike(repeated(0, 0.02, 0.04, 0.43), 0.05)).toEqual([]);
  });

  it('have the mean of the two in the middle where they are even', () => {
    const [only] = unlike(repeated(0.2, 0, 0.3, 0.1, 5), 0.05);
    expect(only.by).toBeCloseTo(5 - 0.15, 12);
  });

  it('must be two besides', () => {
    expect(unlike(repeated(0, 1), 0)).toEqual([]);
    expect(unlike(repeated(0, 0, 1), 0).map(({ place }) => place)).toContain(2);
  });

  it('are those of the same sense, zero and speed only', () => {
    const other = repeated(0, 0, 1).map((one, i, all) =>
      i === all.length - 1 ? { ...one, zero: 1 } : one,
    );
    expect(unlike(other, 0)).toEqual([]);
  });
});

describe('the numbers that shared errors are taken at', () => {
  const estimate = (kind: 'spread' | 'product' | 'friction', value: number, determined = true) =>
    ({ key: { kind }, value, determined }) as BenchEstimate;

  it('are the fitted ones, nothing where there are none or they are not determined', () => {
    const estimates = [estimate('product', 2), estimate('spread', 1), estimate('friction', 3)];
    expect(fittedOf({ estimates })).toEqual({ spread: 1, product: 2, friction: 3 });
    expect(fittedOf({ estimates: [estimate('spread', 1, false)] })).toEqual({
      spread: 0,
      product: 0,
      friction: 0,
    });
  });
});

import { describe, expect, it } from 'vitest';
import {
  drawsOf,
  type HiddenTruth,
  type VirtualPlan,
  virtualReadings,
} from '../../../src/engine/identify/virtualBench';
import { openUnit, philox } from '../../../src/engine/math/philox';
import { radians } from '../../../src/engine/units';

const PLAN: VirtualPlan = {
  pitches: [radians(-0.2), radians(0.3)],
  senses: [1, -1],
  speeds: [600, 900],
  repeats: 2,
  dragTravels: [0, 0.01],
  dragRepeats: 8,
  precone: radians(0.4),
  forcePerMoment: (pitch) => -50 / Math.cos(pitch),
  travel: (pitch) => 0.02 * pitch,
};
const STILL: HiddenTruth = {
  spread: 4e-7,
  product: -1e-7,
  frictionMoment: 0.01,
  zeros: [0.5, -0.25],
  restDrag: (travel) => 0.3 + 10 * Math.abs(travel),
  noise: 0,
  pitchSigma: 0,
  wrongShare: 0,
  wrongBy: 0,
};
const EXACT = { step: 0, noise: 0 };

describe('a virtual bench without noise', () => {
  const known = (pitch: number, speed: number) => 1e-3 * speed * pitch;
  const read = () => virtualReadings({ ...PLAN, knownForce: known }, STILL, EXACT, 1);

  it('reads every pitch in both senses at every speed, repeats in a row', () => {
    const { readings, wrong } = read();
    expect(readings).toHaveLength(16);
    expect(wrong).toEqual([]);
    const order = readings.map(({ angularSpeed, sense, pitch }) => [angularSpeed, sense, pitch]);
    expect(order.slice(0, 3)).toEqual([
      [600, 1, -0.2],
      [600, 1, -0.2],
      [600, 1, 0.3],
    ]);
    expect(order[4]).toEqual([600, -1, -0.2]);
    expect(order[8]).toEqual([900, 1, -0.2]);
  });

  it('reads the force of the moment, friction with the sense, zero and what is known', () => {
    for (const { force, pitch, sense, angularSpeed, zero, knownForce } of read().readings) {
      const g = -50 / Math.cos(pitch);
      const pull = (angularSpeed * Math.cos(0.4)) ** 2;
      const moment = -pull * (2e-7 * Math.sin(2 * pitch) - 1e-7 * Math.cos(2 * pitch));
      const friction = 0.01 * Math.abs(g) + 0.3 + 0.2 * Math.abs(pitch);
      const wanted =
        g * moment + sense * friction + [0.5, -0.25][zero] + known(pitch, angularSpeed);
      expect(force).toBeCloseTo(wanted, 12);
      expect(zero).toBe(angularSpeed === 600 ? 0 : 1);
      expect(knownForce).toBeCloseTo(known(pitch, angularSpeed), 14);
    }
  });

  it('tells lever, its slope and travel of each pitch', () => {
    for (const one of read().readings) {
      expect(one.forcePerMoment).toBeCloseTo(-50 / Math.cos(one.pitch), 12);
      const slope = (-50 * Math.sin(one.pitch)) / Math.cos(one.pitch) ** 2;
      expect(one.forcePerMomentSlope).toBeCloseTo(slope, 5);
      expect(one.travel).toBeCloseTo(0.02 * one.pitch, 15);
    }
  });

  it('knows nothing where no known force is planned, and has one zero or none for all speeds', () => {
    const plain = virtualReadings(PLAN, { ...STILL, zeros: [] }, EXACT, 1).readings;
    expect(plain.every(({ knownForce, zero }) => knownForce === 0 && zero === 0)).toBe(true);
    const one = virtualReadings(PLAN, { ...STILL, zeros: [2] }, EXACT, 1).readings;
    one.forEach(({ force }, i) => expect(force - plain[i].force).toBeCloseTo(2, 12));
  });

  it('measures the drag at rest as it is, as surely as noise, step and repeats allow', () => {
    const { drag } = virtualReadings(PLAN, STILL, EXACT, 1);
    expect(drag.map(({ travel }) => travel)).toEqual([0, 0.01]);
    expect(drag[1].force).toBeCloseTo(0.4, 12);
    const told = virtualReadings(PLAN, { ...STILL, noise: 0.3 }, { step: 0.2, noise: 0.3 }, 1)
      .drag[0];
    // Eight pairs of readings: sqrt(0.09 + 0.04/12) / 4.
    expect(told.sigma).toBeCloseTo(Math.sqrt(0.09 + 0.04 / 12) / 4, 13);
    expect(Math.abs(told.force - 0.3)).toBeLessThan(4 * told.sigma);
    expect(told.force).not.toBe(0.3);
  });
});

describe('what a virtual bench draws', () => {
  const many = { ...PLAN, repeats: 400 };
  const allStill = () => virtualReadings(many, STILL, EXACT, 3).readings;
  const off = (truth: Partial<HiddenTruth>, plan = many) =>
    virtualReadings(plan, { ...STILL, ...truth }, EXACT, 3);
  const moments = (x: readonly number[]) => {
    const mean = x.reduce((sum, v) => sum + v, 0) / x.length;
    return { mean, sigma: Math.sqrt(x.reduce((sum, v) => sum + (v - mean) ** 2, 0) / x.length) };
  };

  it('is noise of the deviation asked for', () => {
    const still = allStill();
    const errors = off({ noise: 0.2 }).readings.map(({ force }, i) => force - still[i].force);
    const { mean, sigma } = moments(errors);
    // Of 3,200: the mean scatters by 0.2/57 = 0.0035, the deviation by 0.0025; four of each.
    expect(Math.abs(mean)).toBeLessThan(0.014);
    expect(Math.abs(sigma - 0.2)).toBeLessThan(0.01);
  });

  it('is a pitch set beside the one that is told', () => {
    const still = allStill();
    const { readings } = off({ pitchSigma: 0.01 });
    expect(readings.every(({ pitch }, i) => pitch === still[i].pitch)).toBe(true);
    const first = readings.slice(0, 400).map(({ force }, i) => force - still[i].force);
    // The force's slope by pitch there, by differences of the model: at -0.2 rad, 600 rad/s, pulling.
    const force = (pitch: number) => {
      const g = -50 / Math.cos(pitch);
      const pull = (600 * Math.cos(0.4)) ** 2;
      const moment = -pull * (2e-7 * Math.sin(2 * pitch) - 1e-7 * Math.cos(2 * pitch));
      return g * moment + 0.01 * Math.abs(g) + 0.2 * Math.abs(pitch);
    };
    const slope = Math.abs(force(-0.199) - force(-0.201)) / 0.002;
    // Deviation of 400: 3.5 % of itself; four of those.
    expect(Math.abs(moments(first).sigma / (0.01 * slope) - 1)).toBeLessThan(0.15);
  });

  it('is a share that is wrong, by half to all of what was asked, either way', () => {
    const still = allStill();
    const { readings, wrong } = off({ wrongShare: 0.1, wrongBy: 4 });
    // Of 3,200 one in ten: 320, give or take 17; four of those.
    expect(Math.abs(wrong.length - 320)).toBeLessThan(68);
    const isWrong = new Set(wrong);
    const errors = readings.map(({ force }, i) => force - still[i].force);
    errors.forEach((error, i) => {
      if (!isWrong.has(i)) expect(Math.abs(error)).toBeLessThan(1e-9);
      else expect(Math.abs(Math.abs(error) - 3)).toBeLessThanOrEqual(1);
    });
    const sizes = wrong.map((i) => Math.abs(errors[i]));
    expect(Math.min(...sizes)).toBeLessThan(2.1);
    expect(Math.max(...sizes)).toBeGreaterThan(3.9);
    const up = wrong.filter((i) => errors[i] > 0).length;
    expect(Math.abs(up / wrong.length - 0.5)).toBeLessThan(0.12);
  });

  it('is friction anywhere between its ends where the control is held', () => {
    const still = allStill();
    const held = { ...many, senses: [0] as const, pitches: [radians(0.3)], speeds: [600] };
    const forces = virtualReadings(held, STILL, EXACT, 3).readings.map(({ force }) => force);
    const moving = still.filter(({ pitch, angularSpeed }) => pitch === 0.3 && angularSpeed === 600);
    const [push, pull] = [moving.find((one) => one.sense < 0), moving.find((one) => one.sense > 0)];
    const [low, high] = [push?.force ?? Number.NaN, pull?.force ?? Number.NaN];
    expect(Math.min(...forces)).toBeGreaterThan(low);
    expect(Math.max(...forces)).toBeLessThan(high);
    const { mean, sigma } = moments(forces);
    // Uniform: width / sqrt 12, of 400.
    expect(Math.abs(mean - (low + high) / 2) / (high - low)).toBeLessThan(0.06);
    expect(Math.abs((sigma * Math.sqrt(12)) / (high - low) - 1)).toBeLessThan(0.1);
  });

  it('is rounded to the nearest step of the gauge', () => {
    const exact = virtualReadings(PLAN, STILL, EXACT, 3).readings;
    const { readings } = virtualReadings(PLAN, STILL, { step: 0.5, noise: 0 }, 3);
    readings.forEach(({ force }, i) => {
      expect(force * 2).toBe(Math.round(force * 2));
      expect(Math.abs(force - exact[i].force)).toBeLessThanOrEqual(0.25);
    });
  });

  it('is drag at rest as uncertain as it says: of noise alone, of the step alone, of both', () => {
    const travels = Array.from({ length: 600 }, (_, i) => i * 1e-5);
    const wide = { ...PLAN, dragTravels: travels, dragRepeats: 2 };
    for (const [noise, step] of [
      [0.2, 0],
      [0, 0.5],
      [0.1, 0.3],
    ]) {
      const { drag } = virtualReadings(wide, { ...STILL, noise }, { step, noise }, 4);
      const squares = drag.map(
        ({ travel, force, sigma }) => ((force - STILL.restDrag(travel)) / sigma) ** 2,
      );
      const mean = squares.reduce((sum, one) => sum + one, 0) / 600;
      // A mean of 600 squares scatters by 0.058: four of those.
      expect(Math.abs(mean - 1)).toBeLessThan(0.23);
    }
  });

  it('is the drag at rest itself in the mean of many, wherever it lies in the step', () => {
    for (const force of [0.05, 0.25, 0.4]) {
      const still = { ...STILL, restDrag: () => force };
      const plan = { ...PLAN, dragTravels: [0], dragRepeats: 20_000 };
      const [{ force: found, sigma }] = virtualReadings(plan, still, { step: 1, noise: 0 }, 5).drag;
      expect(sigma).toBeCloseTo(1 / Math.sqrt(12 * 40_000), 12);
      expect(Math.abs(found - force)).toBeLessThan(4 * sigma);
    }
  });

  it('is the words of Philox one after the other, by seed and stream', () => {
    const draw = drawsOf(9, 77);
    const words = [0, 1].flatMap((k) => [...philox([k, 0, 0, 0], [9, 77], new Uint32Array(4))]);
    for (const word of words) expect(draw.unit()).toBe(openUnit(word));
    expect(drawsOf(9, 78).unit()).not.toBe(drawsOf(9, 77).unit());
  });
});

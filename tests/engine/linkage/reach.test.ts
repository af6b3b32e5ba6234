import { describe, expect, test } from 'vitest';
import { type Linkage, travelAtPitch } from '../../../src/engine/linkage/linkage';
import { overCentreAngles, reachableIntervals } from '../../../src/engine/linkage/reach';
import { pitchAtTravel, travelStops, workingRange } from '../../../src/engine/linkage/travel';
import { radians } from '../../../src/engine/units';
import { randomLinkage, randomRotor } from '../../support/linkages';
import { scanOverCentre } from '../../support/overCentreScan';
import { seeded } from '../../support/seeded';

const FLAT = { angularSpeed: 1000, torqueOffset: 0, precone: radians(0) };
const TURN = radians(Math.PI);
const simple: Linkage = {
  ball_G: [0.02, 0.015, 0.0004],
  side: -1,
  length: 0.016,
  sliderX: 0.02,
  sliderY: 0.019,
  rod: null,
};

describe('over-centre and reach', () => {
  test('are where a scan finds a change of sign, none missed and none twice, and the lever is nothing there', () => {
    const { crossings, wrong, nearest, worst } = scanOverCentre(seeded(23), 60);
    expect(wrong).toBe(0);
    expect(crossings).toBeGreaterThan(40);
    expect(nearest).toBeGreaterThan(1e-9);
    // Brent's tolerance of 5e-15 rad on a lever whose slope is some arms, where the rod does not lie nearly square.
    expect(worst).toBeLessThan(1e-12);
  });

  test('a ball on the feathering axis is over centre nowhere, for it has no lever anywhere', () => {
    expect(
      overCentreAngles({ ...simple, ball_G: [0.02, 0, 0] }, FLAT, radians(-1), radians(1)),
    ).toEqual([]);
  });

  test('a parallel rod is over centre where the ball stands over the axis: tan t = y / z', () => {
    const parallel = { ...simple, length: null };

    const all = overCentreAngles(parallel, FLAT, radians(-Math.PI), TURN);
    expect(all.length).toBe(2);
    for (const pitch of all) expect(Math.abs(Math.tan(pitch) - 0.015 / 0.0004)).toBeLessThan(1e-9);
  });

  // Ball, axis and slider in line, the axis not between: r + L = hypot of the slider from the axis.
  test('a short rod jams where ball, axis and slider lie in line, and ends where it lies square to the shaft', () => {
    const r = Math.hypot(0.015, 0.0004);
    const range = workingRange(simple, FLAT, radians(-Math.PI / 2), radians(Math.PI / 2));
    expect(range?.low.why).toBe('overCentre');
    const lean = Math.atan2(0.0004, 0.015);
    expect(range?.low.pitch).toBeCloseTo(-Math.acos(0.019 / (r + 0.016)) - lean, 9);
    expect(range?.high.why).toBe('unreachable');
    expect(range?.high.pitch).toBeCloseTo(Math.acos(0.003 / r) - lean, 9);
  });

  test('a rod too short for flat pitch has no working range, and no stops', () => {
    const short = { ...simple, length: 0.003 };
    expect(workingRange(short, FLAT, radians(-1), radians(1))).toBeNull();
    expect(travelStops(short, FLAT, -0.001, 0.001, radians(-1), radians(1))).toEqual({
      low: null,
      high: null,
    });
    expect(pitchAtTravel(short, FLAT, 0, radians(-1), radians(1))).toBeNull();
  });

  test('stops are met where the slider has travelled so far, on their own sides, and not before over-centre', () => {
    const random = seeded(22);
    for (let i = 0; i < 300; i++) {
      const rotor = randomRotor(random);
      const linkage = randomLinkage(random, rotor);
      const stops = travelStops(linkage, rotor, -0.002, 0.003, radians(-1.5), radians(1.5));
      for (const pitch of [stops.low, stops.high]) {
        if (pitch === null) continue;
        const travel = travelAtPitch(linkage, rotor, pitch);
        expect(Math.min(Math.abs(travel + 0.002), Math.abs(travel - 0.003))).toBeLessThan(1e-12);
      }
      if (stops.low !== null) expect(stops.low).toBeLessThanOrEqual(0);
      if (stops.high !== null) expect(stops.high).toBeGreaterThanOrEqual(0);
      if (stops.high !== null) {
        const back = pitchAtTravel(
          linkage,
          rotor,
          travelAtPitch(linkage, rotor, stops.high),
          radians(-1.5),
          radians(1.5),
        );
        expect(back).not.toBeNull();
      }
    }
    expect(travelStops(simple, FLAT, -Infinity, Infinity, radians(-1.5), radians(1.5))).toEqual({
      low: null,
      high: null,
    });
  });
});

describe('the ends of the working range, by hand', () => {
  // A parallel rod, ball at (y, z) = 10 (cos p, sin p) mm: height 10 sin(t + p), over centre at t = 90 deg - p and below.
  const lean = 0.3;
  const parallel: Linkage = {
    ball_G: [0.02, 0.01 * Math.cos(lean), 0.01 * Math.sin(lean)],
    side: -1,
    length: null,
    sliderX: 0,
    sliderY: 0,
    rod: null,
  };
  const QUARTER = Math.PI / 2;
  const height = (pitch: number) => 0.01 * (Math.sin(pitch + lean) - Math.sin(lean));

  test('a parallel rod works between its two over-centre angles, or to the ends of the question', () => {
    const all = workingRange(parallel, FLAT, radians(-3), radians(3));
    expect(all?.low.why).toBe('overCentre');
    expect(all?.low.pitch).toBeCloseTo(-QUARTER - lean, 12);
    expect(all?.high.why).toBe('overCentre');
    expect(all?.high.pitch).toBeCloseTo(QUARTER - lean, 12);
    expect(workingRange(parallel, FLAT, radians(-1), radians(0.5))).toEqual({
      low: { pitch: -1, why: 'range' },
      high: { pitch: 0.5, why: 'range' },
    });
  });

  test('an arm over centre at pitch zero works above it', () => {
    const upright: Linkage = { ...parallel, ball_G: [0.02, 0, 0.01] };
    const range = workingRange(upright, FLAT, radians(-3), radians(3));
    expect(range?.low.why).toBe('overCentre');
    expect(range?.low.pitch).toBeCloseTo(0, 12);
    expect(range?.high.pitch).toBeCloseTo(3, 12);
    expect(range?.high.why).toBe('range');
  });

  test('stops stand where the height says, each on the side that its travel lies on', () => {
    const stops = travelStops(parallel, FLAT, -0.004, 0.003, radians(-1), radians(1));
    expect(stops.high).toBeCloseTo(Math.asin(0.3 + Math.sin(lean)) - lean, 12);
    expect(stops.low).toBeCloseTo(Math.asin(-0.4 + Math.sin(lean)) - lean, 12);
    // A ball behind the axis goes down with positive pitch.
    const behind: Linkage = { ...parallel, ball_G: [0.02, -0.01, 0] };
    const turned = travelStops(behind, FLAT, -0.004, 0.003, radians(-1), radians(1));
    expect(turned.high).toBeCloseTo(Math.asin(0.4), 12);
    expect(turned.low).toBeCloseTo(-Math.asin(0.3), 12);
  });

  test('a stop beyond what either side reaches is not met', () => {
    const low = height(-1);
    const high = height(1);
    const met = (by: number) =>
      travelStops(parallel, FLAT, low * by, high * by, radians(-1), radians(1));
    expect(met(1.001)).toEqual({ low: null, high: null });
    expect(met(0.999).low).toBeGreaterThan(-1);
    expect(met(0.999).high).toBeLessThan(1);
  });

  test('the pitch of a travel is found on either side of zero, and nowhere past the ends', () => {
    for (const pitch of [-0.9, -0.2, 0.3, 0.8]) {
      const found = pitchAtTravel(parallel, FLAT, height(pitch), radians(-1), radians(1));
      expect(found).toBeCloseTo(pitch, 12);
    }
    expect(pitchAtTravel(parallel, FLAT, height(1) * 1.01, radians(-1), radians(1))).toBeNull();
    expect(pitchAtTravel(parallel, FLAT, height(-1) * 1.01, radians(-1), radians(1))).toBeNull();
  });

  test('to the very end of reach there is a pitch: rounding at the end does not lose it', () => {
    // The rod ends where it lies square to the shaft, at cos t = 0.003 / r; its height there is the ball's.
    const range = workingRange(simple, FLAT, radians(-QUARTER), radians(QUARTER));
    const end = range?.high.pitch ?? NaN;
    for (const share of [0.5, 0.9, 1 - 1e-9]) {
      const travel = travelAtPitch(simple, FLAT, radians(end * share));
      const found = pitchAtTravel(simple, FLAT, travel, radians(-QUARTER), radians(QUARTER));
      expect(found).toBeCloseTo(end * share, 7);
    }
  });

  test('intervals that are reached are parted by what is not, and by no touch', () => {
    // Slider in the plane of the arm's circle, ball round the axis: reach |y - Sy| < L, as cos t > (Sy - L) / r.
    const r = 0.01;
    const round = (sliderY: number, length: number): Linkage => ({
      ...simple,
      ball_G: [0.02, r, 0],
      length,
      sliderX: 0.02,
      sliderY,
    });
    const intervals = (linkage: Linkage) =>
      reachableIntervals(linkage, FLAT, radians(-3), radians(3)).map((ends) =>
        ends.map((end) => Number(end.toFixed(6))),
      );
    const edge = Number(Math.acos((0.012 - 0.008) / r).toFixed(6));
    expect(intervals(round(0.012, 0.008))).toEqual([[-edge, edge]]);
    // From the other side: out of reach about flat pitch.
    const back = Number(Math.acos((0.008 - 0.012) / r).toFixed(6));
    expect(intervals(round(-0.012, 0.008))).toEqual([
      [-3, -back],
      [back, 3],
    ]);
    // Long enough for all but one angle: the slack touches zero at flat pitch, and is positive on both sides.
    expect(intervals(round(-0.012, 0.022))).toEqual([[-3, 3]]);
    expect(intervals({ ...simple, length: null })).toEqual([[-3, 3]]);
    expect(intervals(round(0.05, 0.008))).toEqual([]);
    // 6 mm beside it along the axis as well, with a rod of 10 mm: 8 mm are left (6, 8, 10), on either side.
    for (const aside of [0.006, -0.006]) {
      const slanted = { ...round(0.012, 0.01), sliderX: 0.02 + aside };
      expect(intervals(slanted)).toEqual([[-edge, edge]]);
    }
  });

  test('pitch zero must be reached itself, and may be an end of the question', () => {
    const away: Linkage = {
      ...simple,
      ball_G: [0.02, 0.01, 0],
      length: 0.008,
      sliderX: 0.02,
      sliderY: -0.012,
    };
    expect(workingRange(away, FLAT, radians(-3), radians(3))).toBeNull();
    expect(workingRange(parallel, FLAT, radians(0), radians(1))).toMatchObject({
      low: { pitch: 0, why: 'range' },
      high: { pitch: 1, why: 'range' },
    });
    expect(workingRange(parallel, FLAT, radians(-1), radians(0))).toMatchObject({
      low: { pitch: -1, why: 'range' },
      high: { pitch: 0, why: 'range' },
    });
  });

  test('of several over-centre angles on one side the first counts', () => {
    // Those of a parallel rod stand half a turn apart: two above zero, then two below.
    const above = workingRange(parallel, FLAT, radians(-0.5), radians(5));
    expect(above?.low).toEqual({ pitch: -0.5, why: 'range' });
    expect(above?.high.pitch).toBeCloseTo(QUARTER - lean, 12);
    const below = workingRange(parallel, FLAT, radians(-5.5), radians(0.5));
    expect(below?.low.pitch).toBeCloseTo(-QUARTER - lean, 12);
    expect(below?.high).toEqual({ pitch: 0.5, why: 'range' });
  });

  test('a question turned over, or not a number, is a fault that throws', () => {
    expect(() => overCentreAngles(simple, FLAT, radians(1), radians(-1))).toThrow('reversed');
    expect(() => overCentreAngles(simple, FLAT, radians(Number.NaN), radians(1))).toThrow(
      RangeError,
    );
  });
});

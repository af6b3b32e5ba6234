import { describe, expect, it } from 'vitest';
import { demandedRange, HeldRange, roundUp } from '../../../src/panels/chart/yRange';

const pitchDeg = Float64Array.from({ length: 721 }, (_, i) => i / 4 - 90);
const whole = { fromDeg: -90, toDeg: 90, overCentreDeg: [], floor: 1, symmetric: true };

function curve(at: (pitch: number) => number): Float64Array {
  return pitchDeg.map(at);
}

describe('the range of the y axis', () => {
  it('is symmetric about zero and ends at a round number', () => {
    expect(demandedRange({ ...whole, pitchDeg, curves: [curve((p) => p / 5)] })).toEqual([-15, 15]);
  });

  it('keeps its floor, so that a neutral head looks flat', () => {
    expect(demandedRange({ ...whole, pitchDeg, curves: [curve(() => 0.01)] })).toEqual([-1, 1]);
  });

  it('is not set by the growth toward over-centre', () => {
    const blownUp = curve((p) => 5 + 1 / (50 - p));
    const range = demandedRange({ ...whole, pitchDeg, curves: [blownUp], overCentreDeg: [50] });
    expect(range).toEqual([-6, 6]);
  });

  it('follows what is in view', () => {
    const near = { ...whole, fromDeg: -10, toDeg: 10 };
    expect(demandedRange({ ...near, pitchDeg, curves: [curve((p) => p / 5)] })).toEqual([-2, 2]);
  });

  it('looks beyond sixty degrees only where nothing nearer is in view', () => {
    const far = { ...whole, fromDeg: 70, toDeg: 90 };
    expect(demandedRange({ ...far, pitchDeg, curves: [curve((p) => p / 10)] })).toEqual([-10, 10]);
  });

  it('passes over gaps', () => {
    const gap = curve((p) => (Math.abs(p) < 1 ? Number.NaN : 3));
    expect(demandedRange({ ...whole, pitchDeg, curves: [gap] })).toEqual([-3, 3]);
    const nothing = curve(() => Number.NaN);
    expect(demandedRange({ ...whole, pitchDeg, curves: [nothing] })).toEqual([-1, 1]);
  });

  it('of an energy has its zero near the end where the curve does not go', () => {
    const well = curve((p) => (p / 60) ** 2 * 7);
    const [low, high] = demandedRange({ ...whole, pitchDeg, curves: [well], symmetric: false });
    expect(high).toBe(8);
    expect(low).toBeCloseTo(-0.8, 12);
  });
});

describe('rounding up', () => {
  it.each([
    [0.013, 0.015],
    [1, 1],
    [1.01, 1.5],
    [6.2, 8],
    [8.1, 10],
    [0, 0],
  ])('%d to %d', (value, expected) => {
    expect(roundUp(value)).toBeCloseTo(expected, 12);
  });
});

describe('a held range', () => {
  it('grows at once and shrinks only when it may', () => {
    const held = new HeldRange();
    expect(held.take([-2, 2], true)).toEqual([-2, 2]);
    expect(held.take([-5, 5], false)).toEqual([-5, 5]);
    expect(held.take([-1, 1], false)).toEqual([-5, 5]);
    expect(held.take([-1, 1], true)).toEqual([-1, 1]);
  });
});

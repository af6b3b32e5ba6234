import { describe, expect, it } from 'vitest';
import {
  ANGLE_GAUGE_SIGMA,
  type Calibration,
  type CalibrationPair,
  lineCalibration,
  linkageCalibration,
} from '../../../src/engine/identify/calibration';
import { radians } from '../../../src/engine/units';

const pairsOf = (...all: readonly (readonly [scale: number, pitch: number])[]): CalibrationPair[] =>
  all.map(([scale, pitch]) => ({ scale, pitch: radians(pitch) }));

function made(found: ReturnType<typeof lineCalibration>): Calibration {
  if (!found.ok) throw new Error(found.error.kind);
  return found.value;
}

/** Marks of mean 3 with sum (x - mean)^2 = 26; pitches off a line of 0.1 + 0.02 x by amounts that the line cannot follow. */
const MARKS = [0, 1, 3, 5, 6];
const OFF = [1, -2, 1, 0, 0].map((share) => share * 1e-3);
const PAIRS = pairsOf(...MARKS.map((x, i) => [x, 0.1 + 0.02 * x + OFF[i]] as const));
const SXX = 26;

describe('a straight pitch scale', () => {
  const fitted = () => made(lineCalibration(PAIRS));

  it('has the uncertainties of offset and gain of the textbook', () => {
    const line = fitted();
    const s = line.deviation;
    // Draper and Smith, Applied Regression Analysis, 1.4: s^2 (1/n + mean^2 / Sxx) and s^2 / Sxx.
    const [mean, n] = [3, 5];
    expect(line.gainSigma).toBeCloseTo(s / Math.sqrt(SXX), 13);
    expect(line.offsetSigma).toBeCloseTo(s * Math.sqrt(1 / n + mean ** 2 / SXX), 13);
    expect(line.freedom).toBe(3);
    const squares = line.residual.reduce((sum, one) => sum + one * one, 0);
    expect(s).toBeCloseTo(Math.sqrt(squares / 3), 13);
    line.residual.forEach((one, i) =>
      expect(one).toBeCloseTo(PAIRS[i].pitch - line.offset - line.gain * MARKS[i], 14),
    );
    expect(line.kind).toBe('line');
    expect(line.pitchAt(4)).toBeCloseTo(line.offset + 4 * line.gain, 15);
  });

  it('moves all readings together: shifts of two marks have the covariance of the line at both', () => {
    const line = fitted();
    const s = line.deviation;
    const covariance = (x: number, z: number) => s ** 2 * (1 / 5 + ((x - 3) * (z - 3)) / SXX);
    for (const [x, z] of [
      [0, 0],
      [0, 6],
      [2, 5],
      [-4, 9],
    ]) {
      const [a, b] = [line.shiftsAt(x), line.shiftsAt(z)];
      expect((a[0] * b[0] + a[1] * b[1]) / s ** 2).toBeCloseTo(covariance(x, z) / s ** 2, 12);
    }
  });

  it('reaches from its lowest to its highest mark, both included', () => {
    const line = fitted();
    expect(line.range).toEqual([0, 6]);
    expect([-0.01, 0, 3, 6, 6.01].map(line.beyond)).toEqual([true, false, false, false, true]);
  });

  it('has no uncertainty of two pairs, and then shifts of an angle gauge at each', () => {
    const two = made(lineCalibration(pairsOf([2, 0.1], [4, 0.2])));
    expect([two.deviation, two.offsetSigma, two.half95At(3)].every(Number.isNaN)).toBe(true);
    expect(two.freedom).toBe(0);
    for (const mark of [2, 4]) {
      expect(Math.hypot(...two.shiftsAt(mark))).toBeCloseTo(ANGLE_GAUGE_SIGMA, 13);
    }
    const [a, b] = [two.shiftsAt(2), two.shiftsAt(4)];
    expect(a[0] * b[0] + a[1] * b[1]).toBeCloseTo(0, 15);
  });

  it('met exactly by three pairs moves nothing', () => {
    const exact = made(lineCalibration(pairsOf([0, 0], [1, 0.5], [2, 1])));
    expect(Math.hypot(...exact.shiftsAt(1))).toBeLessThan(1e-12);
    expect(exact.shiftFreedom).toBe(1);
  });
});

describe('a scale through a linkage', () => {
  it('whose pitch goes straight with travel is the line again', () => {
    const line = made(lineCalibration(PAIRS));
    const linkage = made(linkageCalibration(PAIRS, (travel) => 0.3 + 40 * travel, 1e-3));
    expect(linkage.kind).toBe('linkage');
    expect(linkage.offset).toBeCloseTo((line.offset - 0.3) / 40, 12);
    expect(linkage.gain).toBeCloseTo(line.gain / 40, 12);
    expect(linkage.gainSigma / (line.gainSigma / 40)).toBeCloseTo(1, 9);
    for (const mark of [-1, 0, 2.5, 8]) {
      expect(linkage.pitchAt(mark)).toBeCloseTo(line.pitchAt(mark), 12);
      expect(linkage.sigmaAt(mark) / line.sigmaAt(mark)).toBeCloseTo(1, 8);
      expect(linkage.half95At(mark) / line.half95At(mark)).toBeCloseTo(1, 8);
    }
  });

  it('is as sure at a mark as the slope of the curve there says', () => {
    // Tangent of the curve by offset and gain, asin' = 1 / sqrt(arm^2 - travel^2); covariance by the 2 x 2 inverse.
    const curve = (travel: number) => Math.asin(travel / 0.018);
    const off = [1, -2, 1.5, 0.5, -1].map((one) => one * 1e-3);
    const pairs = [-2, 0, 4, 8, 11].map((x, i) => [x, curve(0.003 + 0.0011 * x) + off[i]] as const);
    const linkage = made(linkageCalibration(pairsOf(...pairs), curve, 0.001));
    const row = (x: number) => {
      const slope = 1 / Math.sqrt(0.018 ** 2 - (linkage.offset + linkage.gain * x) ** 2);
      return [slope, slope * x];
    };
    let [aa, ab, bb] = [0, 0, 0];
    for (const [x] of pairs) {
      const [a, b] = row(x);
      [aa, ab, bb] = [aa + a * a, ab + a * b, bb + b * b];
    }
    for (const x of [-3, 1, 10]) {
      const [a, b] = row(x);
      const square = (a * a * bb - 2 * a * b * ab + b * b * aa) / (aa * bb - ab * ab);
      // Slopes by differences of 1e-6 m on both sides.
      expect(linkage.sigmaAt(x) / (linkage.deviation * Math.sqrt(square))).toBeCloseTo(1, 5);
    }
  });

  it('has no pitch where the linkage does not reach', () => {
    const curve = (travel: number) => Math.asin(travel / 0.018);
    const pairs = [-8, -4, 0, 3, 8].map((x) => [x, curve(0.0004 + 0.0011 * x)] as const);
    const linkage = made(linkageCalibration(pairsOf(...pairs), curve, 0.001));
    expect(linkage.pitchAt(30)).toBeNaN();
    expect(linkage.pitchAt(2)).toBeCloseTo(curve(0.0026), 10);
  });

  it('that begins at nothing is as sure as one that begins elsewhere', () => {
    // The same pairs on a scale whose zero was moved by 5 marks: offset + gain x (mark + 5) with an offset of nothing.
    const curve = (travel: number) => Math.asin(travel / 0.018);
    const off = [1, -2, 1.5, 0.5, -1].map((one) => one * 1e-4);
    const pairs = [-3, 0, 4, 8, 11].map((x, i) => [x, curve(0.001 * x) + off[i]] as const);
    const near = made(linkageCalibration(pairsOf(...pairs), curve, 0.001));
    const moved = pairs.map(([x, pitch]) => [x - 5, pitch] as const);
    const far = made(linkageCalibration(pairsOf(...moved), curve, 0.001));
    expect(Math.abs(near.offset)).toBeLessThan(1e-5);
    for (const x of [-2, 0, 9]) {
      expect(near.sigmaAt(x) / far.sigmaAt(x - 5)).toBeCloseTo(1, 7);
    }
    // Met exactly, the offset is nothing but rounding, and the slope by it is had all the same: 1 / 0.018 at travel 0.
    const exact = [-3, 0, 4, 8].map((x) => [x, curve(0.001 * x)] as const);
    const met = made(linkageCalibration(pairsOf(...exact), curve, 0.001));
    expect(met.gain).toBeCloseTo(1e-3, 14);
    expect(Math.abs(met.offset)).toBeLessThan(1e-15);
    for (const x of [-2, 0, 9]) expect(met.sigmaAt(x)).toBeLessThan(1e-12);
  });

  it('that does not come to rest does not fit', () => {
    // A curve that goes straight and then is a square: the last pair's own pull takes all that the others hold it by, and what
    // is left falls with the fourth power of the way to go.
    const curve = (travel: number) => (travel < 15 ? travel : (travel - 20) ** 2);
    const pairs = pairsOf([0, 0], [1, 10], [2, 0.1]);
    expect(linkageCalibration(pairs, curve, 10.4)).toEqual({ ok: false, error: { kind: 'noFit' } });
  });

  it('that never reaches does not fit, nor one of too few marks', () => {
    expect(linkageCalibration(PAIRS, () => Number.NaN, 1e-3)).toEqual({
      ok: false,
      error: { kind: 'noFit' },
    });
    expect(linkageCalibration(PAIRS.slice(0, 1), (t) => t, 1)).toMatchObject({
      ok: false,
      error: { kind: 'tooFewPairs' },
    });
    expect(linkageCalibration([PAIRS[1], PAIRS[1]], (t) => t, 1)).toMatchObject({
      ok: false,
      error: { kind: 'oneScaleReading', scale: 1 },
    });
  });
});

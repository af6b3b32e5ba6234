import { describe, expect, test } from 'vitest';
import { findEquilibria, type MomentCurve } from '../../../src/engine/feathering/equilibria';
import { MARGIN, RESOLUTION, settleFlat } from '../../../src/engine/feathering/flatRoots';
import { radians } from '../../../src/engine/units';

/** The curve, with the places at which its value was asked for. */
function watched(curve: MomentCurve) {
  const looks: number[] = [];
  const value = (pitch: number) => {
    looks.push(pitch);
    return curve.value(pitch);
  };
  return { looks, curve: { ...curve, value } };
}
function search(curve: MomentCurve, from: number, to: number) {
  const { looks, curve: seen } = watched(curve);
  return { found: findEquilibria(seen, radians(from), radians(to)), looks };
}

const LINE: MomentCurve = {
  value: (t) => t - 0.3,
  slope: () => 1,
  slopeBound: 1,
  curvatureBound: 1e-9,
  scale: 1,
};
const TOUCH: MomentCurve = {
  value: (t) => t * t,
  slope: (t) => 2 * t,
  slopeBound: 2,
  curvatureBound: 2,
  scale: 1,
};

describe('what the search for equilibria costs', () => {
  test('a curve that its bounds keep from zero is looked at in the middle of eight pieces', () => {
    const level: MomentCurve = { ...LINE, value: () => 1, slope: () => 0, slopeBound: 1e-3 };
    const { found, looks } = search(level, -2, 6);
    expect(found).toEqual([]);
    expect(looks.toSorted((a, b) => a - b).map((t) => Number(t.toFixed(9)))).toEqual([
      -1.5, -0.5, 0.5, 1.5, 2.5, 3.5, 4.5, 5.5,
    ]);
    const below = search({ ...level, value: () => -1 }, -2, 6);
    expect([below.found, below.looks.length]).toEqual([[], 8]);
  });

  // A straight line is known by its slope: no piece is halved. Eight looks and one root, which a secant hits at once.
  test('a straight line takes a look for each piece and a few for its root', () => {
    const { found, looks } = search(LINE, -1, 1);
    expect(found.map(({ pitch }) => pitch)).toEqual([expect.closeTo(0.3, 14)]);
    expect(looks.length).toBeLessThan(8 + 8);
  });

  // At each level the two cells beside the touch are left, and each is halved: four looks, and two at the ends of each outer
  // half, which is monotone. From an eighth of the range's half, 1/8, down to a quarter of the resolution are 23 levels.
  test('a touch takes eight looks for each halving down to the resolution', () => {
    const { found, looks } = search(TOUCH, -1, 1);
    expect(found.map(({ kind }) => kind)).toEqual(['tangent']);
    const levels = Math.ceil(Math.log2(1 / 8 / (RESOLUTION / 4)));
    expect(levels).toBe(23);
    expect(looks.length).toBeGreaterThan(7 * levels);
    // The flat run and its extremum: some twenty more.
    expect(looks.length).toBeLessThan(8 + 8 * levels + 20);
  });

  test('looks nowhere outside the range but for the last digits of its ends', () => {
    for (const curve of [LINE, { ...LINE, value: (t: number) => 0.3 - t, slope: () => -1 }]) {
      const { looks } = search(curve, -1, 1);
      for (const t of looks) expect(Math.abs(t)).toBeLessThanOrEqual(1 + 2 * MARGIN);
    }
  });
});

describe('roots among cells that no bound could settle', () => {
  const W = RESOLUTION / 2;
  /** Neighbouring cells of the finest width from `from`. */
  const cells = (from: number, count: number) =>
    Array.from({ length: count }, (_, k) => [from + k * W, from + (k + 1) * W]).flat();
  const line = (at: number, slope: number): MomentCurve => ({
    ...LINE,
    value: (t) => slope * (t - at),
    slope: () => slope,
    scale: 1e-6,
    curvatureBound: 1e-9,
  });

  test.each([
    [1, 'unstable'],
    [-1, 'stable'],
  ])('a crossing of slope %d is %s, found to the last digit', (slope, kind) => {
    const at = 0.1 + 1.3 * W;
    const [root, ...more] = settleFlat(line(at, slope), cells(0.1, 3));
    expect(more).toEqual([]);
    expect(root).toMatchObject({ kind, reach: MARGIN });
    expect(Math.abs(root.pitch - at)).toBeLessThan(1e-14);
    // The edges of its cell.
    expect(root.low).toBeCloseTo(0.1 + W, 12);
    expect(root.high).toBeCloseTo(0.1 + 2 * W, 12);
  });

  test('cells without a change of sign hold none, nor do no cells', () => {
    expect(settleFlat(line(0.2, 1), cells(0.1, 3))).toEqual([]);
    expect(settleFlat(line(0, 1), cells(0.1, 3))).toEqual([]);
    expect(settleFlat(LINE, [])).toEqual([]);
  });

  test('runs of cells that lie apart are searched each by itself', () => {
    const wave: MomentCurve = {
      ...LINE,
      value: (t) => (t < 0.15 ? t - 0.1 - 0.5 * W : 0.2 + 0.5 * W - t),
      slope: (t) => (t < 0.15 ? 1 : -1),
      scale: 1e-6,
    };
    const roots = settleFlat(wave, [...cells(0.1, 1), ...cells(0.2, 1)]);
    expect(roots.map(({ kind }) => kind)).toEqual(['unstable', 'stable']);
    expect(roots[0].pitch).toBeCloseTo(0.1 + 0.5 * W, 14);
    expect(roots[1].pitch).toBeCloseTo(0.2 + 0.5 * W, 14);
  });

  test('a touch between two edges is one tangent root at its extremum, from above or from below', () => {
    for (const side of [1, -1]) {
      const at = 0.1 + 4.4 * W;
      const touch: MomentCurve = {
        ...TOUCH,
        value: (t) => side * (t - at) ** 2,
        slope: (t) => 2 * side * (t - at),
      };
      const roots = settleFlat(touch, cells(0.1, 9));
      expect(roots.map(({ kind, reach }) => [kind, reach])).toEqual([['tangent', RESOLUTION]]);
      expect(Math.abs(roots[0].pitch - at)).toBeLessThan(1e-14);
      // The floor is 3e-15 of the scale and 1/8 of the curvature bound times the square of a cell: 3.6e-15, 6e-8 away.
      expect(roots[0].low).toBeLessThan(at - 5.9e-8);
      expect(roots[0].high).toBeGreaterThan(at + 5.9e-8);
      expect(roots[0].high - roots[0].low).toBeLessThan(2 * 6.1e-8 + 2 * W);
    }
  });

  test('what comes near zero and away again is none, and what only wavers about the floor neither', () => {
    const at = 0.1 + 4.4 * W;
    // Nearer to zero than what cells can hide at that curvature bound, farther than rounding.
    const near: MomentCurve = {
      ...TOUCH,
      value: (t) => (t - at) ** 2 + 1e-13,
      slope: (t) => 2 * (t - at),
      curvatureBound: 1e4,
    };
    expect(settleFlat(near, cells(0.1, 9))).toEqual([]);
    const floor = 3e-15;
    const step: MomentCurve = {
      ...LINE,
      value: (t) => (Math.abs(t - at) < W ? 0.5 * floor : 2 * floor),
      slope: () => 1e-9,
      curvatureBound: 1e-9,
    };
    expect(settleFlat(step, cells(0.1, 9))).toEqual([]);
  });

  test('a crossing that is flat over many cells lies in the middle of what is below rounding', () => {
    for (const sense of [1, -1]) {
      const at = 0.1 + 200.3 * W;
      const cubic: MomentCurve = {
        value: (t) => sense * (t - at) ** 3,
        slope: (t) => 3 * sense * (t - at) ** 2,
        slopeBound: 3,
        curvatureBound: 1e-3,
        scale: 1,
      };
      const [root, ...more] = settleFlat(cubic, cells(at - W / 3, 1));
      expect(more).toEqual([]);
      expect(root.kind).toBe(sense > 0 ? 'unstable' : 'stable');
      // |t - at|^3 is below 3e-15 within 1.44e-5.
      const half = 3e-15 ** (1 / 3);
      expect(Math.abs(root.low - at + half)).toBeLessThan(2 * W);
      expect(Math.abs(root.high - at - half)).toBeLessThan(2 * W);
      expect(Math.abs(root.pitch - at)).toBeLessThan(2 * W);
      expect(root.reach).toBeCloseTo((root.high - root.low) / 2, 15);
    }
  });

  test('cells inside what was walked over already are not searched again', () => {
    const at = 0.1;
    const cubic: MomentCurve = {
      value: (t) => (t - at) ** 3,
      slope: (t) => 3 * (t - at) ** 2,
      slopeBound: 3,
      curvatureBound: 1e-3,
      scale: 1,
    };
    // Three runs, all inside the 1.44e-5 on either side that are below rounding.
    const runs = [...cells(at - 1e-5, 1), ...cells(at, 1), ...cells(at + 1e-5, 1)];
    expect(settleFlat(cubic, runs)).toHaveLength(1);
  });
});

describe('the ends of a range', () => {
  test('keep a root that lies on them, and none that lies beyond the last digits', () => {
    for (const [from, to] of [
      [0.3, 1],
      [-1, 0.3],
    ]) {
      expect(search(LINE, from, to).found.map(({ pitch }) => pitch)).toEqual([0.3]);
    }
    expect(search(LINE, 0.3 + 0.5 * MARGIN, 1).found.map(({ pitch }) => pitch)).toEqual([
      0.3 + 0.5 * MARGIN,
    ]);
    expect(search(LINE, 0.3 + 2 * MARGIN, 1).found).toEqual([]);
    expect(search(LINE, -1, 0.3 - 2 * MARGIN).found).toEqual([]);
  });

  test('keep a touch beyond them where they are below rounding themselves, and put it on the end', () => {
    // A loose bound of the curvature leaves the cells at the end flat; its floor is 3e-15 and 20 / 8 (5e-8)^2 = 6e-15.
    const loose = { ...TOUCH, curvatureBound: 20 };
    const found = (from: number, to: number) =>
      search(loose, from, to).found.map(({ pitch, kind }) => [pitch, kind]);
    const near = 0.5 * RESOLUTION;
    expect(found(near, 1)).toEqual([[near, 'tangent']]);
    expect(found(-1, -near)).toEqual([[-near, 'tangent']]);
    expect(found(3 * RESOLUTION, 1)).toEqual([]);
    expect(found(-1, -3 * RESOLUTION)).toEqual([]);
  });

  test('a turn less than the last digits is whole: the first orientation is not counted twice', () => {
    const turn = 2 * Math.PI;
    const sine: MomentCurve = {
      value: (t) => Math.sin(t),
      slope: (t) => Math.cos(t),
      slopeBound: 1,
      curvatureBound: 1,
      scale: 1,
    };
    const count = (to: number) => search(sine, 0, to).found.length;
    expect([count(turn - 1e-6), count(turn), count(turn - 0.5 * MARGIN), count(3 * turn)]).toEqual([
      2, 2, 2, 2,
    ]);
    expect([count(Math.PI), count(Math.PI - 1e-6), count(1.5 * Math.PI)]).toEqual([2, 1, 2]);
    // A turn that begins between two has both, and a range beside them none.
    expect(search(sine, 1, 1 + turn).found).toHaveLength(2);
    expect(search({ ...sine, value: () => 1, slope: () => 0 }, 0, turn).found).toEqual([]);
  });

  test('leave out a touch that was walked to beyond them: a large scale makes all of it rounding', () => {
    // Floor 3e-15 x 1e4 = 3e-11: below it within 5.5e-6 of the touch, ten resolutions beyond the end.
    const far = { ...TOUCH, scale: 1e4, curvatureBound: 400 };
    const beside = 10 * RESOLUTION;
    expect(search(far, beside, 1).found).toEqual([]);
    expect(search(far, -1, -beside).found).toEqual([]);
    expect(search(far, -1, 1).found.map(({ kind }) => kind)).toEqual(['tangent']);
    // Lifted by 1e-12, which is less than 3e-11, it is a touch; by 1e-10 it is none.
    const lifted = (by: number) => ({ ...far, value: (t: number) => t * t + by });
    expect(search(lifted(1e-12), -1, 1).found.map(({ kind }) => kind)).toEqual(['tangent']);
    expect(search(lifted(1e-10), -1, 1).found).toEqual([]);
  });
});

describe('flat roots and simple ones together', () => {
  test('come in order', () => {
    // (t + 1/2)(t - 1/2)^2: a flee angle, then a touch.
    const curve: MomentCurve = {
      value: (t) => (t + 0.5) * (t - 0.5) ** 2,
      slope: (t) => (t - 0.5) ** 2 + 2 * (t + 0.5) * (t - 0.5),
      slopeBound: 4,
      curvatureBound: 8,
      scale: 1,
    };
    const found = search(curve, -1, 1).found.map(({ pitch, kind }) => [pitch, kind]);
    expect(found).toEqual([
      [expect.closeTo(-0.5, 13), 'unstable'],
      [expect.closeTo(0.5, 7), 'tangent'],
    ]);
  });

  test('a crossing in a steep cell beside flat ones, all of them below rounding, is one root', () => {
    // Scale 1e5: below 3e-10 is rounding. A gentle slope of 1e-4, flat at a curvature bound of 1e4, then a steep one of
    // 1e-3 with the root, 0.1 millionths of a radian on; farther out a simple root on either side.
    const bend = 0.3;
    const root = bend + 1.2e-7;
    const low = (t: number) =>
      t < bend ? 1e-3 * (bend - root) + 1e-4 * (t - bend) : 1e-3 * (t - root);
    const curve: MomentCurve = {
      value: (t) =>
        t < 0 ? Math.max(low(t), 1e-3 * (-0.5 - t)) : Math.min(low(t), 1e-3 * (0.8 - t)),
      slope: (t) => (t < -0.4 || t > 0.55 ? -1e-3 : t < bend ? 1e-4 : 1e-3),
      slopeBound: 1e-3,
      curvatureBound: 1e4,
      scale: 1e5,
    };
    const { found } = search(curve, -1, 1);
    expect(found.map(({ kind }) => kind)).toEqual(['stable', 'unstable', 'stable']);
    expect(found[0].pitch).toBeCloseTo(-0.5, 5);
    expect(Math.abs(found[1].pitch - root)).toBeLessThan(5e-6);
    expect(found[2].pitch).toBeCloseTo(0.8, 5);
  });
});

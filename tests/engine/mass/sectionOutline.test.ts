import { describe, expect, test } from 'vitest';
import { insetLimit, insetSection, splitSides } from '../../../src/engine/mass/sectionInset';
import {
  equalise,
  fourDigitOutline,
  outlineClearance,
  uprightCut,
} from '../../../src/engine/mass/sectionOutline';
import { seeded } from '../../support/seeded';

/** 4 long and 2 high, its lower left corner at (1, 1). */
const RECTANGLE = Float64Array.of(5, 3, 1, 3, 1, 1, 5, 1);
/** An arrowhead with its hollow at (2, 0), open to the right. */
const ARROW = Float64Array.of(4, 3, 0, 0, 4, -3, 2, 0);

describe('an upright line through a polygon', () => {
  test('enters and leaves where the edges say', () => {
    expect(uprightCut(RECTANGLE, 2)).toEqual({ low: 1, high: 3 });
    // Sides of the arrowhead: 3/4 a above and below; its hollow from (4, +-3) to (2, 0).
    for (const along of [0.5, 1, 2.5, 3.9]) {
      expect(uprightCut(ARROW, along)).toEqual({
        low: expect.closeTo(-0.75 * along, 14),
        high: expect.closeTo(0.75 * along, 14),
      });
    }
  });

  test('on an upright edge has all of it, in a corner a point, beside it nothing', () => {
    expect(uprightCut(RECTANGLE, 1)).toEqual({ low: 1, high: 3 });
    expect(uprightCut(RECTANGLE, 5)).toEqual({ low: 1, high: 3 });
    expect(uprightCut(ARROW, 0)).toEqual({ low: 0, high: 0 });
    expect(uprightCut(ARROW, 4)).toEqual({ low: -3, high: 3 });
    for (const along of [0.999, 5.001, -3]) expect(uprightCut(RECTANGLE, along)).toBeNull();
    expect(uprightCut(ARROW, -1e-9)).toBeNull();
  });
});

describe('the distance from a point to a polygon', () => {
  // By hand: to the nearest side of a rectangle, or to its corner by Pythagoras (3, 4, 5).
  test('is that to the nearest side or corner, negative outside', () => {
    const at = (x: number, y: number) => outlineClearance(RECTANGLE, x, y);
    expect(at(3, 2)).toBe(1);
    expect(at(1.25, 2)).toBe(0.25);
    expect(at(4.5, 2.1)).toBeCloseTo(0.5, 15);
    expect(at(3, 2.75)).toBe(0.25);
    expect(at(3, 1.125)).toBe(0.125);
    expect(at(0, 2)).toBe(-1);
    expect(at(7, 2)).toBe(-2);
    expect(at(3, 5)).toBe(-2);
    expect(at(3, -1)).toBe(-2);
    expect(at(8, 7)).toBe(-5);
    expect(at(-2, -3)).toBe(-5);
    expect(at(3, 3)).toBeCloseTo(0, 15);
  });

  test('knows the hollow of an arrowhead for outside', () => {
    // Hollow sides y = +-1.5 (x - 2): from (3, 0) the distance is 1.5 / sqrt(1 + 2.25).
    expect(outlineClearance(ARROW, 3, 0)).toBeCloseTo(-1.5 / Math.hypot(1, 1.5), 14);
    // Inside, from (1, 0): to the outer sides 3/4 / sqrt(1 + 9/16) = 0.6.
    expect(outlineClearance(ARROW, 1, 0)).toBeCloseTo(0.6, 14);
    expect(outlineClearance(ARROW, 1.9, 0)).toBeCloseTo(0.1, 14);
  });

  test('to a polygon with points that coincide is the same', () => {
    const doubled = Float64Array.of(5, 3, 5, 3, 1, 3, 1, 1, 1, 1, 5, 1);
    const random = seeded(81);
    for (let i = 0; i < 200; i++) {
      const [x, y] = [random.between(-1, 7), random.between(-1, 5)];
      const across = Math.max(1 - x, x - 5);
      const up = Math.max(1 - y, y - 3);
      // Outside: the hypotenuse of what is beyond; inside: the lesser of both.
      const hand =
        across > 0 || up > 0
          ? -Math.hypot(Math.max(0, across), Math.max(0, up))
          : -Math.max(across, up);
      expect(outlineClearance(doubled, x, y)).toBeCloseTo(hand, 13);
    }
  });
});

describe('a polygon equalised with its curve', () => {
  // A parabola y = k x^2 in steps of L: second difference 2 k L^2, so each inner point goes down by a sixth of k L^2.
  test('has its inner points moved by a twelfth of the second difference, its ends not', () => {
    const points = Float64Array.from([0, 1, 2, 3, 4].flatMap((x) => [x, 3 * x * x]));
    equalise(points, 0, 4);
    const moved = [0, 1, 2, 3, 4].flatMap((x) => [x, 3 * x * x - (x > 0 && x < 4 ? 0.5 : 0)]);
    points.forEach((one, k) => expect(one).toBeCloseTo(moved[k], 14));
    const part = Float64Array.from([0, 1, 2, 3, 4].flatMap((x) => [x, 3 * x * x]));
    equalise(part, 1, 3);
    expect([...part]).toEqual([0, 0, 1, 3, 2, expect.closeTo(11.5, 14), 3, 27, 4, 48]);
  });

  // Report 460: the trailing edge's half-thickness is 0.002 x 5 x thickness / ... = f(1) = 5 (0.2969 - 0.126 - 0.3516 +
  // 0.2843 - 0.1015) = 0.0105 thicknesses; it stands square to the camber line's end slope -2 m / (1 - p).
  test('ends in the open trailing edge of the four-digit series, square to its camber line', () => {
    for (const [camber, position, thickness] of [
      [0, 0.4, 0.12],
      [0.04, 0.4, 0.1],
    ]) {
      const outline = fourDigitOutline({ thickness, camber, position }, 16);
      const last = outline.length - 2;
      const half = 0.0105 * thickness;
      const lean = Math.atan((-2 * camber) / (1 - position));
      expect(outline.length).toBe(66);
      expect(outline[0]).toBeCloseTo(1 - half * Math.sin(lean), 14);
      expect(outline[1]).toBeCloseTo(half * Math.cos(lean), 14);
      expect(outline[last]).toBeCloseTo(1 + half * Math.sin(lean), 14);
      expect(outline[last + 1]).toBeCloseTo(-half * Math.cos(lean), 14);
    }
  });
});

describe('the two sides of a section', () => {
  test('begin at its foremost point, and the flat of the trailing edge lengthens the shorter one', () => {
    const flat = Float64Array.of(3, 0.5, 0, 0.5, 0, -0.5, 2, -0.5);
    const sides = splitSides(flat);
    expect([...(sides?.upper.along ?? [])]).toEqual([0, 3]);
    expect([...(sides?.upper.height ?? [])]).toEqual([0.5, 0.5]);
    expect([...(sides?.lower.along ?? [])]).toEqual([0, 0, 2, 3]);
    expect([...(sides?.lower.height ?? [])]).toEqual([0.5, -0.5, -0.5, 0.5]);
    const other = splitSides(Float64Array.of(2, 0.5, 0, 0, 3, -0.5));
    expect([...(other?.upper.along ?? [])]).toEqual([0, 2, 3]);
    expect([...(other?.lower.along ?? [])]).toEqual([0, 3]);
  });

  test('may not turn back along the chord, on either side', () => {
    const back = [1, 0.01, 0.5, 0.1, 0.6, 0.2, 0.3, 0.2, 0, 0, 0.5, -0.1];
    expect(splitSides(Float64Array.from(back))).toBeNull();
    const under = Float64Array.of(1, 0, 0, 0, 0.6, -0.1, 0.5, -0.2, 0.9, -0.2);
    expect(splitSides(under)).toBeNull();
    expect(insetSection(under, 0.01, 8)).toBeNull();
  });
});

describe('the thickest skin that leaves a hollow', () => {
  // The greatest circle on the middle line: half the height of a long rectangle, the inradius of a rhombus
  // (half product of its diagonals over its side: 4 x 1 / 2 / hypot(2, 0.5) / 2).
  test('of a rectangle is half its height, of a rhombus its inradius', () => {
    expect(insetLimit(RECTANGLE)).toBeCloseTo(1, 14);
    const rhombus = Float64Array.of(4, 0, 2, 0.5, 0, 0, 2, -0.5);
    expect(insetLimit(rhombus)).toBeCloseTo(1 / Math.hypot(2, 0.5), 14);
  });

  test('is met by the inset from both sides', () => {
    const rhombus = Float64Array.of(4, 0, 2, 0.5, 0, 0, 2, -0.5);
    const limit = insetLimit(rhombus);
    expect(insetSection(rhombus, 0.999 * limit, 16)).not.toBeNull();
    expect(insetSection(rhombus, 1.001 * limit, 16)).toBeNull();
  });

  // Similar to the rhombus by 1 - skin / inradius about its middle: its ends on the chord line.
  test('a hollow reaches from end to end of the smaller rhombus, corners coinciding there', () => {
    const rhombus = Float64Array.of(4, 0, 2, 0.5, 0, 0, 2, -0.5);
    const inner = insetSection(rhombus, 0.2, 16);
    const share = 1 - 0.2 * Math.hypot(2, 0.5);
    if (!inner) throw new Error('nothing left');
    expect(inner.length).toBe(4 * 16 + 4);
    expect(inner[0]).toBeCloseTo(2 + 2 * share, 12);
    expect(inner[1]).toBeCloseTo(0, 12);
    expect(inner[inner.length - 2]).toBeCloseTo(2 + 2 * share, 12);
    expect(inner[inner.length - 1]).toBeCloseTo(0, 12);
    expect(inner[32]).toBeCloseTo(2 - 2 * share, 12);
    expect(inner[34]).toBeCloseTo(2 - 2 * share, 12);
  });
});

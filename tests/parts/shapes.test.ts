import { describe, expect, it } from 'vitest';
import { createMoments, JXX, JZZ, M, SX, SZ } from '../../src/engine/mass/moments';
import { type AreaMoments, addAreaMoments } from '../../src/engine/mass/outline';
import type { HomogeneousSolid, Outline } from '../../src/engine/mass/solid';
import { sumSolids } from '../../src/engine/mass/weigh';
import { transformPoint } from '../../src/engine/math/pose';
import {
  ballRingProfile,
  ballStudProfile,
  circle,
  coneProfile,
  facingDown,
  facingOutboard,
  hexagon,
  prism,
  rectangle,
  revolution,
  roundEndedStrip,
  roundedRectangle,
  sphereProfile,
  tubeProfile,
} from '../../src/parts/shapes';

function areaOf(outline: Outline): AreaMoments {
  const area = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  addAreaMoments(outline, 1, area);
  return area;
}

function weigh(solid: HomogeneousSolid): Float64Array {
  return sumSolids([solid], createMoments());
}

const turned = (profile: Outline) => weigh(revolution('test', 1, profile));

describe('outlines run counter-clockwise and hold the area of their hand formula', () => {
  it('circle: pi r^2, second moment pi r^4 / 4 about its own centre', () => {
    const { area, x, y, xx, yy } = areaOf(circle(3, 5, -2));
    expect(area).toBeCloseTo(9 * Math.PI, 12);
    expect(x / area).toBeCloseTo(5, 12);
    expect(y / area).toBeCloseTo(-2, 12);
    expect(xx - 25 * area).toBeCloseTo((81 * Math.PI) / 4, 10);
    expect(yy - 4 * area).toBeCloseTo((81 * Math.PI) / 4, 10);
  });

  it('hexagon: sqrt(3) / 2 across-flats^2, second moment 5 sqrt(3) / 16 side^4 about any diameter', () => {
    const flats = 5.5;
    const side = flats / Math.sqrt(3);
    const { area, x, y, xx, yy, xy } = areaOf(hexagon(flats));
    expect(area).toBeCloseTo((Math.sqrt(3) / 2) * flats ** 2, 12);
    expect(xx).toBeCloseTo(((5 * Math.sqrt(3)) / 16) * side ** 4, 11);
    expect(yy).toBeCloseTo(xx, 11);
    expect(Math.abs(x) + Math.abs(y) + Math.abs(xy)).toBeLessThan(1e-13);
  });

  it('hexagon: flats face y, corners lie on x', () => {
    const corners = hexagon(2);
    expect(Math.max(...corners.map(([, y]) => y))).toBeCloseTo(1, 15);
    expect(Math.max(...corners.map(([x]) => x))).toBeCloseTo(2 / Math.sqrt(3), 15);
  });

  it('rectangle, plain and with round corners: the corners take away (4 - pi) r^2', () => {
    expect(areaOf(rectangle(-1, 3, 2, 5)).area).toBeCloseTo(12, 13);
    expect(areaOf(roundedRectangle(-1, 3, 2, 5, 0.5)).area).toBeCloseTo(
      12 - (4 - Math.PI) * 0.25,
      12,
    );
  });

  it.each([
    [2, 9],
    [9, 2],
  ])(
    'strip from x = %f with a round end about x = %f: rectangle and half circle',
    (from, centre) => {
      const { area, x } = areaOf(roundEndedStrip(from, centre, 4));
      const half = 2 * Math.PI;
      expect(area).toBeCloseTo(28 + half, 12);
      // Centroid of the half circle 4 r / (3 pi) beyond its centre.
      const beyond = (Math.sign(centre - from) * 8) / (3 * Math.PI);
      expect(x).toBeCloseTo(28 * 5.5 + half * (centre + beyond), 11);
    },
  );
});

describe('profiles turn into the volume of their hand formula', () => {
  it('tube: pi (R^2 - r^2) h', () => {
    const tube = turned(tubeProfile(2, 3, -1, 4));
    expect(tube[M]).toBeCloseTo(25 * Math.PI, 11);
    expect(tube[SZ] / tube[M]).toBeCloseTo(1.5, 13);
  });

  it('cone: a third of the cylinder', () => {
    expect(turned(coneProfile(3, 0, 0, 4))[M]).toBeCloseTo(12 * Math.PI, 11);
    expect(turned(coneProfile(0, 3, 0, 4))[M]).toBeCloseTo(12 * Math.PI, 11);
  });

  it('sphere: 4/3 pi r^3 about its centre, J = m r^2 / 5', () => {
    const sphere = turned(sphereProfile(2, 7));
    const volume = (32 * Math.PI) / 3;
    expect(sphere[M]).toBeCloseTo(volume, 11);
    expect(sphere[SZ] / sphere[M]).toBeCloseTo(7, 12);
    expect(sphere[JXX]).toBeCloseTo((volume * 4) / 5, 11);
    expect(sphere[JZZ] - 49 * volume).toBeCloseTo((volume * 4) / 5, 9);
  });

  it('ball on a shank: the shank up to the ball, and the ball without the cap inside the shank', () => {
    const [shank, ball, from, centre] = [1.25, 2.4, 1.5, 6];
    const below = Math.sqrt(ball ** 2 - shank ** 2);
    const capHeight = ball - below;
    const cap = (Math.PI * capHeight ** 2 * (3 * ball - capHeight)) / 3;
    const expected =
      Math.PI * shank ** 2 * (centre - below - from) + (4 / 3) * Math.PI * ball ** 3 - cap;
    expect(turned(ballStudProfile(shank, ball, from, centre))[M]).toBeCloseTo(expected, 11);
  });

  it('ring round a ball: cylinder less the zone pi w (R^2 - w^2 / 12)', () => {
    const [ball, outer, width] = [2.4, 3.5, 3.2];
    const expected = Math.PI * width * (outer ** 2 - ball ** 2 + width ** 2 / 12);
    const ring = turned(ballRingProfile(ball, outer, width));
    expect(ring[M]).toBeCloseTo(expected, 11);
    expect(Math.abs(ring[SZ])).toBeLessThan(1e-12);
  });
});

describe('placings', () => {
  it('facing outboard lays z along x, facing down along -z, both with y or x kept', () => {
    expect(transformPoint(facingOutboard(7, 0, 0), [0, 0, 1])).toEqual([8, 0, 0]);
    expect(transformPoint(facingOutboard(0, 0, 0), [0, 1, 0])).toEqual([0, 1, 0]);
    expect(transformPoint(facingDown(0, 0, 3), [1, 0, 1])).toEqual([1, 0, 2]);
  });

  it('a prism is weighed between its ends with its holes taken out', () => {
    const outer = rectangle(0, 4, 0, 2);
    const plate = weigh(prism('plate', 2, { outer, holes: [circle(0.5, 1, 1)], from: 1, to: 4 }));
    expect(plate[M]).toBeCloseTo(2 * 3 * (8 - Math.PI / 4), 12);
    expect(plate[SX]).toBeCloseTo(2 * 3 * (16 - Math.PI / 4), 12);
  });
});

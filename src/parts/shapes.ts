import type { HomogeneousSolid, Outline, OutlineVertex, Shape } from '../engine/mass/solid';
import type { Pose } from '../engine/math/pose';
import { rotationAboutX, rotationAboutY } from '../engine/math/pose';
import { radiansFromDegrees } from '../engine/units';

/**
 * Outlines, profiles and placings that part types are built from. Metres throughout; outlines are counter-clockwise in
 * their own (x, y), profiles counter-clockwise in (radius, z).
 */

/** A full circle about (x, y). */
export function circle(radius: number, x = 0, y = 0): Outline {
  return [
    [x + radius, y, 1],
    [x - radius, y, 1],
  ];
}

/** Distance across the corners of a regular hexagon over the distance across its flats, 2 / sqrt(3). */
export const HEXAGON_CORNERS = 2 / Math.sqrt(3);

/** A regular hexagon about the origin, flats facing +y and -y, corners on the x axis; area (sqrt(3) / 2) flats^2. */
export function hexagon(acrossFlats: number): Outline {
  const corner = (acrossFlats * HEXAGON_CORNERS) / 2;
  const flat = acrossFlats / 2;
  const half = corner / 2;
  return [
    [corner, 0],
    [half, flat],
    [-half, flat],
    [-corner, 0],
    [-half, -flat],
    [half, -flat],
  ];
}

export function rectangle(x0: number, x1: number, y0: number, y1: number): Outline {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/** A quarter turn: tan of a quarter of 90 degrees. */
const QUARTER_BULGE = Math.SQRT2 - 1;

/** A rectangle with its four corners rounded to `radius` (at most half the shorter side). */
export function roundedRectangle(
  x0: number,
  x1: number,
  y0: number,
  y1: number,
  radius: number,
): Outline {
  const r = radius;
  const corners: OutlineVertex[] = [
    [x0 + r, y0],
    [x1 - r, y0, QUARTER_BULGE],
    [x1, y0 + r],
    [x1, y1 - r, QUARTER_BULGE],
    [x1 - r, y1],
    [x0 + r, y1, QUARTER_BULGE],
    [x0, y1 - r],
    [x0, y0 + r, QUARTER_BULGE],
  ];
  return corners;
}

/**
 * A strip of `width` along x, cut square at x = `from` and closed beyond x = `centre` by a half circle about
 * (centre, 0); `from` may lie on either side of `centre`.
 */
export function roundEndedStrip(from: number, centre: number, width: number): Outline {
  const half = (Math.sign(centre - from) * width) / 2;
  return [
    [from, -half],
    [centre, -half, 1],
    [centre, half],
    [from, half],
  ];
}

/** Profile of a tube, or of a cylinder when `inner` is 0. */
export function tubeProfile(inner: number, outer: number, from: number, to: number): Outline {
  return [
    [inner, from],
    [outer, from],
    [outer, to],
    [inner, to],
  ];
}

/** Profile of a frustum: radius `bottom` at z = from, `top` at z = to; either may be 0. */
export function coneProfile(bottom: number, top: number, from: number, to: number): Outline {
  return [
    [0, from],
    [bottom, from],
    [top, to],
    [0, to],
  ];
}

/** Arcs that a dome is written in: a flat dome is then drawn finely too, where a turn's steps are wider than all of it. */
const DOME_ARCS = 8;

/**
 * Side of a domed head, points (radius, z) from the seat up: a straight rim up to z = rim, then the zone of a sphere
 * about the axis up to the flat of radius `flat` at z = top. The dome starts no wider than its rim as long as
 * (top - rim)^2 <= radius^2 - flat^2.
 */
export function domeProfile(
  radius: number,
  rim: number,
  flat: number,
  top: number,
): readonly [OutlineVertex, ...OutlineVertex[]] {
  const centre = (top + rim) / 2 - (radius * radius - flat * flat) / (2 * (top - rim));
  const sphere = Math.hypot(radius, rim - centre);
  const start = Math.atan2(rim - centre, radius);
  const step = (Math.atan2(top - centre, flat) - start) / DOME_ARCS;
  const bulge = Math.tan(step / 4);
  const dome = Array.from({ length: DOME_ARCS - 1 }, (_, k): OutlineVertex => {
    const angle = start + (k + 1) * step;
    return [sphere * Math.cos(angle), centre + sphere * Math.sin(angle), bulge];
  });
  const rest: OutlineVertex[] = [[radius, rim, bulge], ...dome, [flat, top]];
  return [[radius, 0, rim > 0 ? 0 : bulge], ...(rim > 0 ? rest : rest.slice(1))];
}

/** Profile of a full sphere about (0, 0, centre). */
export function sphereProfile(radius: number, centre = 0): Outline {
  return [
    [0, centre - radius, 1],
    [0, centre + radius],
  ];
}

/**
 * Profile of a ball on a shank: the shank from z = from up to where it meets the sphere about (0, 0, centre), as one
 * body, so nothing is counted twice. `shank` < `ball` (radii), and the sphere lies above `from`.
 */
export function ballStudProfile(
  shank: number,
  ball: number,
  from: number,
  centre: number,
): Outline {
  const below = Math.sqrt(ball * ball - shank * shank);
  const sweep = Math.PI / 2 + Math.atan2(below, shank);
  return [
    [0, from],
    [shank, from],
    [shank, centre - below, Math.tan(sweep / 4)],
    [0, centre + ball],
  ];
}

/** Profile of a ring of outer radius `outer` and height `width` about z = 0 whose bore is a zone of a sphere. */
export function ballRingProfile(ball: number, outer: number, width: number): Outline {
  const half = width / 2;
  const mouth = Math.sqrt(ball * ball - half * half);
  const latitude = Math.atan2(half, mouth);
  return [
    [mouth, -half],
    [outer, -half],
    [outer, half],
    [mouth, half, -Math.tan(latitude / 2)],
  ];
}

export function revolution(
  name: string,
  density: number,
  profile: Outline,
  pose?: Pose,
): HomogeneousSolid {
  return placed(name, density, { shape: 'revolution', profile }, pose);
}

interface Extrusion {
  readonly outer: Outline;
  readonly holes?: readonly Outline[];
  readonly from: number;
  readonly to: number;
}
export function prism(
  name: string,
  density: number,
  { outer, holes = [], from, to }: Extrusion,
  pose?: Pose,
): HomogeneousSolid {
  return placed(name, density, { shape: 'prism', outer, holes, from, to }, pose);
}

function placed(name: string, density: number, shape: Shape, pose?: Pose): HomogeneousSolid {
  return pose ? { name, density, shape, pose } : { name, density, shape };
}

const HALF_TURN_ABOUT_X = rotationAboutX(radiansFromDegrees(180));
const Z_TO_X = rotationAboutY(radiansFromDegrees(90));

/** A frame whose z points along the parent's -z (turned half round about x), at (x, y, z). */
export function facingDown(x: number, y: number, z: number): Pose {
  return { rotation: HALF_TURN_ABOUT_X, translation: [x, y, z] };
}

/** A frame whose z lies along the parent's x, its x along -z and its y along y, at (x, y, z). */
export function facingOutboard(x: number, y: number, z: number): Pose {
  return { rotation: Z_TO_X, translation: [x, y, z] };
}

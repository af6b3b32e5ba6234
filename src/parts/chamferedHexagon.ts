import type { Outline } from '../engine/mass/solid';
import { HEXAGON_CORNERS, hexagon } from './shapes';

/**
 * A hexagon bar whose corners are turned off at 30 degrees, as on nuts and bolt heads: hexagonal prism cut by a cone
 * about its axis. Corners on the x axis, like `hexagon`; metres.
 *
 * Approximation. The cut is a hyperbola on each flat and has no shape among the solids that the engine weighs exactly,
 * so the chamfered stretch is drawn and weighed as `SLICES` prisms, each a hexagon with its corners cut off straight by
 * as much as the cone takes away over that height. Volume and mass are therefore exact; the corners show as small
 * steps. Against quadrature of the true body (tests/parts/catalogueHexagon.test.ts) an M3 nut's second moments are off by
 * 4e-4 of themselves.
 */
export interface HexagonPiece {
  readonly outer: Outline;
  readonly from: number;
  readonly to: number;
  /** Whether the piece is a slice of a chamfer. */
  readonly chamfer: boolean;
}

/** Height of the deepest chamfer over the distance across flats: its circle on the face is then 0.88 across flats. */
export const DEEPEST_CHAMFER = 0.08;

/** Width of a round hole that leaves every chamfered section whole, over the distance across flats. */
export const CHAMFERED_CORE = 0.85;

const SLICES = 2;
const SLOPE = Math.sqrt(3);

/** Diameter of the chamfer's circle over the distance across flats, on bought nuts and heads (common practice). */
const USUAL_CIRCLE = 0.95;

/** Height of the chamfer at the corners of bought nuts and heads, in the unit of `acrossFlats`, rounded to three places. */
export function usualChamfer(acrossFlats: number): number {
  const height = (acrossFlats * (HEXAGON_CORNERS - USUAL_CIRCLE)) / (2 * SLOPE);
  return Number(height.toFixed(3));
}

/** The bar from z = from to z = to, cut over `lower` above `from` and over `upper` below `to` (heights at the corners). */
export function chamferedHexagon(
  acrossFlats: number,
  [from, to]: readonly [number, number],
  lower: number,
  upper: number,
): HexagonPiece[] {
  const pieces: HexagonPiece[] = slices(acrossFlats, lower)
    .toReversed()
    .map(({ outer, near, far }) => ({ outer, from: from + near, to: from + far, chamfer: true }));
  if (to - from > lower + upper) {
    const outer = hexagon(acrossFlats);
    pieces.push({ outer, from: from + lower, to: to - upper, chamfer: false });
  }
  for (const { outer, near, far } of slices(acrossFlats, upper)) {
    pieces.push({ outer, from: to - far, to: to - near, chamfer: true });
  }
  return pieces;
}

/** From the depth of the chamfer toward its face; `near` and `far` are distances from the face. */
function slices(acrossFlats: number, chamfer: number) {
  if (chamfer === 0) return [];
  const corner = (acrossFlats * HEXAGON_CORNERS) / 2;
  const radius = (depth: number) => corner - SLOPE * (chamfer - depth);
  const step = chamfer / SLICES;
  return Array.from({ length: SLICES }, (_, k) => {
    const far = chamfer - k * step;
    const near = k === SLICES - 1 ? 0 : chamfer - (k + 1) * step;
    const section = meanSection(acrossFlats / 2, radius(near), radius(far));
    return { outer: cutHexagon(acrossFlats, section), near, far };
  });
}

/** Mean area of hexagon and disc in common, the disc's radius going from `inner` to `outer` (at most the corner's). */
function meanSection(apothem: number, inner: number, outer: number): number {
  return (sectionIntegral(apothem, outer) - sectionIntegral(apothem, inner)) / (outer - inner);
}

/**
 * Integral over the radius of the area common to a disc and a hexagon of the given apothem a: pi r^2, less six segments
 * r^2 acos(a / r) - a sqrt(r^2 - a^2) where r > a.
 */
function sectionIntegral(a: number, r: number): number {
  const disc = (Math.PI * r ** 3) / 3;
  if (r <= a) return disc;
  const q = Math.sqrt(r * r - a * a);
  const segments =
    (r ** 3 / 3) * Math.acos(a / r) - (2 / 3) * a * r * q + (a ** 3 / 3) * Math.log((r + q) / a);
  return disc - 6 * segments;
}

/** A hexagon with its corners cut off straight, square to the line from the centre, down to the area given. */
function cutHexagon(acrossFlats: number, area: number): Outline {
  const missing = (Math.sqrt(3) / 2) * acrossFlats ** 2 - area;
  // A corner of 120 degrees cut at depth t loses sqrt(3) t^2, and its sides 2 t each.
  const share =
    (2 * Math.sqrt(missing / (6 * Math.sqrt(3)))) / ((acrossFlats * HEXAGON_CORNERS) / 2);
  const corners = hexagon(acrossFlats);
  return corners.flatMap(([x, y], i) => {
    const [px, py] = corners[(i + 5) % 6];
    const [nx, ny] = corners[(i + 1) % 6];
    return [
      [x + share * (px - x), y + share * (py - y)],
      [x + share * (nx - x), y + share * (ny - y)],
    ] as const;
  });
}

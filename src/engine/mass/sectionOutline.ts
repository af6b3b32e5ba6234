import { airfoilHalfThickness, camberLine } from './airfoil';

/**
 * The outline of a blade section as a polygon: pairs (aft of the leading edge, height above the chord line), one after
 * the other in a Float64Array, from the trailing edge over the top to the leading edge and back along the bottom. Any
 * one unit. The last point is joined to the first: a flat there is the open trailing edge.
 */
export type SectionOutline = Float64Array;

/** A section of the four-digit series, all in chords: greatest thickness, greatest camber and its place. */
export interface FourDigitSection {
  readonly thickness: number;
  readonly camber: number;
  readonly position: number;
}

/**
 * A four-digit section for unit chord: the thickness of `airfoilHalfThickness` laid off square to the camber line
 * (NACA Report 460: x = s -+ y_t sin, z = z_c +- y_t cos of the line's slope angle), at the chord fractions
 * s = (1 - cos phi) / 2 in `panels` even steps of phi to a side; 2 `panels` + 1 points. The chord line runs from (0, 0)
 * to (1, 0); with camber the nose reaches ahead of 0 and the upper corner of the trailing edge behind 1, as they do by
 * the report's definition. Equalised (see `equalise`): with 48 panels a side area and second moments are within 2e-5
 * of the curve's.
 */
export function fourDigitOutline(section: FourDigitSection, panels: number): SectionOutline {
  const points = new Float64Array(4 * panels + 2);
  for (let k = 0; k <= 2 * panels; k++) {
    const s = (1 - Math.cos(Math.PI * (1 - k / panels))) / 2;
    const half = Math.sign(panels - k) * section.thickness * airfoilHalfThickness(s);
    const { height, slope } = camberLine(section.camber, section.position, s);
    const along = Math.hypot(1, slope);
    points[2 * k] = s - (half * slope) / along;
    points[2 * k + 1] = height + half / along;
  }
  return equalise(points, 0, 2 * panels);
}

/**
 * Moves the points between `first` and `last` of a smooth curve outward by a twelfth of their second difference, so that
 * the chords cut off as much as they leave standing: a chord of length L at curvature k lies k L^2 / 12 inside its arc on
 * the mean. Area and moments of the polygon are then those of the curve to fourth order in the step instead of second (at a corner
 * of the curve that is no end, to second).
 * In place; returns `points`.
 */
export function equalise(points: Float64Array, first: number, last: number): Float64Array {
  for (const axis of [0, 1]) {
    let before = points[2 * first + axis];
    for (let i = first + 1; i < last; i++) {
      const here = points[2 * i + axis];
      points[2 * i + axis] = here - (before - 2 * here + points[2 * i + 2 + axis]) / 12;
      before = here;
    }
  }
  return points;
}

/** Where the upright line at `along` (first coordinate) first enters and last leaves the polygon; null beside it. */
export function uprightCut(
  points: Float64Array,
  along: number,
): { readonly low: number; readonly high: number } | null {
  let low = Infinity;
  let high = -Infinity;
  const n = points.length;
  for (let i = 0; i < n; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    const u = points[i] - along;
    const v = points[j] - along;
    if ((u < 0 && v < 0) || (u > 0 && v > 0)) continue;
    const share = u === v ? 0 : u / (u - v);
    const height = points[i + 1] + share * (points[j + 1] - points[i + 1]);
    low = Math.min(low, height, u === v ? points[j + 1] : height);
    high = Math.max(high, height, u === v ? points[j + 1] : height);
  }
  return low <= high ? { low, high } : null;
}

/** Distance from a point to the polygon's nearest edge, negative outside it (even-odd rule). */
export function outlineClearance(points: Float64Array, x: number, y: number): number {
  let nearest = Infinity;
  let inside = false;
  const n = points.length;
  for (let i = 0; i < n; i += 2) {
    const j = i + 2 === n ? 0 : i + 2;
    const ax = points[i] - x;
    const ay = points[i + 1] - y;
    const dx = points[j] - points[i];
    const dy = points[j + 1] - points[i + 1];
    if (ay > 0 !== ay + dy > 0 && ax - (ay / dy) * dx > 0) inside = !inside;
    const square = dx * dx + dy * dy;
    const share = square > 0 ? Math.min(1, Math.max(0, -(ax * dx + ay * dy) / square)) : 0;
    nearest = Math.min(nearest, (ax + share * dx) ** 2 + (ay + share * dy) ** 2);
  }
  return inside ? Math.sqrt(nearest) : -Math.sqrt(nearest);
}

import { add, cross, dot, length, scale, subtract, type Vec3 } from './vector';

/** A circle in space; `normal` is a unit vector of either sense. */
export interface Circle {
  readonly centre: Vec3;
  readonly normal: Vec3;
  readonly radius: number;
}

/** Points are on one line when the triangle's height is below this share of its longest side. */
const FLAT = 1e-3;

/**
 * The circle through three points, any one unit throughout; null where they lie on a line (to a thousandth of their
 * spread: the circle would be made of rounding). With a = p1 - p0, b = p2 - p0, n = a x b the centre is
 * p0 + (|a|^2 b - |b|^2 a) x n / (2 |n|^2) (circumcentre, elementary geometry).
 */
export function circleThrough(p0: Vec3, p1: Vec3, p2: Vec3): Circle | null {
  const a = subtract(p1, p0);
  const b = subtract(p2, p0);
  const n = cross(a, b);
  const size = length(n);
  const longest = Math.max(length(a), length(b), length(subtract(b, a)));
  if (!(size > FLAT * longest * longest)) return null;
  const arm = cross(subtract(scale(b, dot(a, a)), scale(a, dot(b, b))), n);
  const toCentre = scale(arm, 1 / (2 * size * size));
  return { centre: add(p0, toCentre), normal: scale(n, 1 / size), radius: length(toCentre) };
}

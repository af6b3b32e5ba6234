import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../engine/math/vector';

/** What a pointer points along: through the eye and the pixel. `direction` is a unit vector. */
export interface Ray {
  readonly origin: Vec3;
  readonly direction: Vec3;
}
/** A line through `origin` along the unit vector `direction`. */
export type Line = Ray;

/** Below this sine of the angle between ray and line the closest point runs away along the line: about 17 degrees. */
const NEARLY_PARALLEL = 0.3;

/**
 * Distance along `line`, from its origin, of its point nearest to `ray`. Null where the two are nearly parallel
 * (looking along the handle): the caller falls back to the screen.
 */
export function alongLine(ray: Ray, line: Line): number | null {
  const normal = cross(ray.direction, line.direction);
  const square = dot(normal, normal);
  if (square < NEARLY_PARALLEL * NEARLY_PARALLEL) return null;
  const between = subtract(ray.origin, line.origin);
  // Solves (between + s ray - t line) perpendicular to both for t.
  return dot(cross(ray.direction, between), normal) / square;
}

/**
 * Distance along a handle from pointer travel on the screen: `pixels` moved, `perUnit` the screen's pixels for one
 * unit along the handle. Where the handle points at the eye, moving up the screen pulls it out, at `fallback` pixels
 * a unit.
 */
export function alongScreen(
  pixels: readonly [number, number],
  perUnit: readonly [number, number],
  fallback: number,
): number {
  const square = perUnit[0] * perUnit[0] + perUnit[1] * perUnit[1];
  if (square < (NEARLY_PARALLEL * fallback) ** 2) return -pixels[1] / fallback;
  return (pixels[0] * perUnit[0] + pixels[1] * perUnit[1]) / square;
}

/**
 * Angle (radians, right-hand about the line's direction) of the point where `ray` meets the plane through the line's
 * origin across it, from `zero` (a vector across the line). Null where the plane is seen edge-on or lies behind.
 */
export function turnAbout(ray: Ray, line: Line, zero: Vec3): number | null {
  const slope = dot(ray.direction, line.direction);
  if (Math.abs(slope) < NEARLY_PARALLEL) return null;
  const travel = dot(subtract(line.origin, ray.origin), line.direction) / slope;
  if (!(travel > 0)) return null;
  const arm = subtract(add(ray.origin, scale(ray.direction, travel)), line.origin);
  if (length(arm) === 0) return null;
  return Math.atan2(dot(cross(zero, arm), line.direction), dot(zero, arm));
}

/** The same angle brought to within half a turn of `near`, so that a drag may go round and round. */
export function unwrapAngle(angle: number, near: number): number {
  return angle + 2 * Math.PI * Math.round((near - angle) / (2 * Math.PI));
}

/** Snap of a drag in the parameter's own unit: 0.1; Shift 1, Alt 0.01. */
export function snapStep(modifiers: {
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}): number {
  if (modifiers.altKey) return 0.01;
  return modifiers.shiftKey ? 1 : 0.1;
}

/** `value` on the grid of `step`, without the dust that adding tenths leaves. */
export function snapTo(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toFixed(6));
}

import { cross, dot, length, scale, subtract, type Vec3 } from '../../engine/math/vector';

/** Where the camera may look from: unit-free directions from the head toward the eye, rotor frame. */
export const VIEWS = {
  threeQuarter: [0.55, 0.8, 0.42],
  tip: [1, 0, 0],
  above: [0, 0, 1],
  leading: [0, 1, 0],
} as const satisfies Readonly<Record<string, Vec3>>;
export type View = keyof typeof VIEWS;
export const VIEW_NAMES = Object.keys(VIEWS) as View[];

/** The camera's own directions when it looks along -`from` with Z up (Y up where it looks straight down). */
export function cameraAxes(from: Vec3): {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly back: Vec3;
} {
  const back = scale(from, 1 / length(from));
  const steep = Math.abs(back[2]) > 0.9999;
  const side = cross(steep ? [0, 1, 0] : [0, 0, 1], back);
  const right = scale(side, 1 / length(side));
  return { right, up: cross(back, right), back };
}

/**
 * Distance from `target` at which all `points` lie inside a perspective picture, `margin` (share of the half picture)
 * from its edges. `tangent` is that of half the vertical field of view.
 */
export function fitDistance(
  points: readonly Vec3[],
  target: Vec3,
  from: Vec3,
  tangent: number,
  aspect: number,
  margin: number,
): number {
  const { right, up, back } = cameraAxes(from);
  const high = tangent * (1 - margin);
  const wide = high * aspect;
  let distance = 0;
  for (const point of points) {
    const arm = subtract(point, target);
    const nearer = dot(arm, back);
    const across = Math.abs(dot(arm, right)) / wide;
    const along = Math.abs(dot(arm, up)) / high;
    distance = Math.max(distance, nearer + across, nearer + along);
  }
  return distance;
}

/**
 * The target that brings the picture of `points` to its middle at a distance, found by a few corrections across the
 * line of sight.
 */
export function centreTarget(
  points: readonly Vec3[],
  start: Vec3,
  from: Vec3,
  tangent: number,
  aspect: number,
  margin: number,
): { readonly target: Vec3; readonly distance: number } {
  const { right, up, back } = cameraAxes(from);
  let target = start;
  let distance = fitDistance(points, target, from, tangent, aspect, margin);
  for (let round = 0; round < 6; round++) {
    let [left, over, below, above] = [1e9, -1e9, 1e9, -1e9];
    for (const point of points) {
      const arm = subtract(point, target);
      const depth = distance - dot(arm, back);
      const x = dot(arm, right) / depth;
      const y = dot(arm, up) / depth;
      left = Math.min(left, x);
      over = Math.max(over, x);
      below = Math.min(below, y);
      above = Math.max(above, y);
    }
    const dx = ((left + over) / 2) * distance;
    const dy = ((below + above) / 2) * distance;
    target = [
      target[0] + right[0] * dx + up[0] * dy,
      target[1] + right[1] * dx + up[1] * dy,
      target[2] + right[2] * dx + up[2] * dy,
    ];
    distance = fitDistance(points, target, from, tangent, aspect, margin);
  }
  return { target, distance };
}

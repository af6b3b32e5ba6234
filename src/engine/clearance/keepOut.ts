import type { TriangleMesh } from '../mass/solid';
import type { Vec3 } from '../math/vector';

/**
 * A space that must stay free, in its own frame, metres: everything under the plane z = 0; a box about the origin; a
 * cylinder about z, from -half to half; what a closed mesh encloses.
 */
export type ConvexShape =
  | { readonly shape: 'plane' }
  | { readonly shape: 'box'; readonly half: Vec3 }
  | { readonly shape: 'cylinder'; readonly radius: number; readonly half: number };
export type KeepOutShape = ConvexShape | { readonly shape: 'mesh'; readonly mesh: TriangleMesh };

/** Distance and its gradient: out[0], and out[1..3] a unit vector (away from the shape). */
export type DistanceOut = Float64Array;

/**
 * Signed distance of a point from a convex shape, negative inside, exact; with a gradient, where there are several one of
 * them. The distance is convex, so for every other point p' it is at least d + g . (p' - p): the search rests on that.
 * Allocates nothing.
 */
export function convexDistance(
  shape: ConvexShape,
  x: number,
  y: number,
  z: number,
  out: DistanceOut,
): void {
  switch (shape.shape) {
    case 'plane':
      write(out, z, 0, 0, 1);
      return;
    case 'box':
      boxDistance(x, y, z, shape.half[0], shape.half[1], shape.half[2], out);
      return;
    default:
      cylinderDistance(shape.radius, shape.half, x, y, z, out);
  }
}

/** How deep the middle of a convex shape lies in it, m; nothing lies deeper. */
export function middleDepth(shape: ConvexShape): number {
  switch (shape.shape) {
    case 'plane':
      return Infinity;
    case 'box':
      return Math.min(shape.half[0], shape.half[1], shape.half[2]);
    default:
      return Math.min(shape.radius, shape.half);
  }
}

/** Signed distance from the box [-hx, hx] x [-hy, hy] x [-hz, hz]. */
export function boxDistance(
  x: number,
  y: number,
  z: number,
  hx: number,
  hy: number,
  hz: number,
  out: DistanceOut,
): void {
  const qx = Math.abs(x) - hx;
  const qy = Math.abs(y) - hy;
  const qz = Math.abs(z) - hz;
  if (qx <= 0 && qy <= 0 && qz <= 0) {
    if (qx >= qy && qx >= qz) write(out, qx, x < 0 ? -1 : 1, 0, 0);
    else if (qy >= qz) write(out, qy, 0, y < 0 ? -1 : 1, 0);
    else write(out, qz, 0, 0, z < 0 ? -1 : 1);
    return;
  }
  const ox = Math.max(qx, 0);
  const oy = Math.max(qy, 0);
  const oz = Math.max(qz, 0);
  const d = Math.sqrt(ox * ox + oy * oy + oz * oz);
  write(out, d, (x < 0 ? -ox : ox) / d, (y < 0 ? -oy : oy) / d, (z < 0 ? -oz : oz) / d);
}

function cylinderDistance(
  radius: number,
  half: number,
  x: number,
  y: number,
  z: number,
  out: DistanceOut,
): void {
  const across = Math.sqrt(x * x + y * y);
  const ux = across > 0 ? x / across : 1;
  const uy = across > 0 ? y / across : 0;
  const uz = z < 0 ? -1 : 1;
  const q = across - radius;
  const h = Math.abs(z) - half;
  if (q <= 0 && h <= 0) {
    if (q >= h) write(out, q, ux, uy, 0);
    else write(out, h, 0, 0, uz);
    return;
  }
  const side = Math.max(q, 0);
  const end = Math.max(h, 0);
  const d = Math.sqrt(side * side + end * end);
  write(out, d, (ux * side) / d, (uy * side) / d, (uz * end) / d);
}

function write(out: DistanceOut, d: number, x: number, y: number, z: number): void {
  out[0] = d;
  out[1] = x;
  out[2] = y;
  out[3] = z;
}

/**
 * Distance of a point from the triangle whose nine coordinates begin at `v[at]`, never negative, with its gradient
 * (zero on the triangle). After Ericson, Real-Time Collision Detection (2005), section 5.1.5 (memory).
 */
export function triangleDistance(
  v: Float64Array,
  at: number,
  x: number,
  y: number,
  z: number,
  out: DistanceOut,
): void {
  const ax = v[at];
  const ay = v[at + 1];
  const az = v[at + 2];
  const abx = v[at + 3] - ax;
  const aby = v[at + 4] - ay;
  const abz = v[at + 5] - az;
  const acx = v[at + 6] - ax;
  const acy = v[at + 7] - ay;
  const acz = v[at + 8] - az;
  const apx = x - ax;
  const apy = y - ay;
  const apz = z - az;
  const d1 = abx * apx + aby * apy + abz * apz;
  const d2 = acx * apx + acy * apy + acz * apz;
  const bb = abx * abx + aby * aby + abz * abz;
  const bc = abx * acx + aby * acy + abz * acz;
  const cc = acx * acx + acy * acy + acz * acz;
  // The nearest point is a + s ab + t ac.
  let s = 0;
  let t = 0;
  const d3 = d1 - bb;
  const d4 = d2 - bc;
  const d5 = d1 - bc;
  const d6 = d2 - cc;
  const vc = d1 * d4 - d3 * d2;
  const vb = d5 * d2 - d1 * d6;
  const va = d3 * d6 - d5 * d4;
  if (d1 <= 0 && d2 <= 0) {
    // The corner a.
  } else if (d3 >= 0 && d4 <= d3) {
    s = 1;
  } else if (d6 >= 0 && d5 <= d6) {
    t = 1;
  } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
    s = d1 / (d1 - d3);
  } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
    t = d2 / (d2 - d6);
  } else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
    t = (d4 - d3) / (d4 - d3 + (d5 - d6));
    s = 1 - t;
  } else {
    const whole = va + vb + vc;
    s = vb / whole;
    t = vc / whole;
  }
  const rx = apx - s * abx - t * acx;
  const ry = apy - s * aby - t * acy;
  const rz = apz - s * abz - t * acz;
  const d = Math.sqrt(rx * rx + ry * ry + rz * rz);
  if (d > 0) write(out, d, rx / d, ry / d, rz / d);
  else write(out, 0, 0, 0, 0);
}

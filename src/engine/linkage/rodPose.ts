import { apply, cross, dot, type Mat3, multiply, type Vec3 } from '../math/vector';

/**
 * Orientation of a rod in the rotor frame, as it is drawn: the least turn that brings its own z, turned by `base` (as at
 * flat pitch), onto the line of the unit vector `axis`, whichever way round is nearer. A rod is free to turn about itself;
 * the least turn shows none.
 */
export function rodRotation(base: Mat3, axis: Vec3): Mat3 {
  const z = apply(base, [0, 0, 1]);
  const c = Math.abs(dot(z, axis));
  const toward: Vec3 = dot(z, axis) < 0 ? [-axis[0], -axis[1], -axis[2]] : axis;
  const [x, y, w] = cross(z, toward);
  // Rodrigues: 1 + [v] + [v]^2 / (1 + c), v = z cross toward; c >= 0, so it is never singular.
  const k = 1 / (1 + c);
  const turn: Mat3 = [
    1 - k * (y * y + w * w),
    k * x * y - w,
    k * x * w + y,
    k * x * y + w,
    1 - k * (x * x + w * w),
    k * y * w - x,
    k * x * w - y,
    k * y * w + x,
    1 - k * (x * x + y * y),
  ];
  return multiply(turn, base);
}

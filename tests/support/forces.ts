import type { RotorConditions } from '../../src/engine/feathering/rotor';
import type { Vec3 } from '../../src/engine/math/vector';
import type { CloudPoint } from './shapes';

/**
 * Where a grip point sits in the rotor frame, by turning it in two plain steps: by the pitch about its own x, then the
 * whole axis up by the precone (about -Y), then out along Y by the torque offset.
 */
export function rotorPosition(point: Vec3, rotor: RotorConditions, pitch: number): Vec3 {
  const [x, y, z] = point;
  const h = y * Math.cos(pitch) - z * Math.sin(pitch);
  const k = y * Math.sin(pitch) + z * Math.cos(pitch);
  const c = Math.cos(rotor.precone);
  const s = Math.sin(rotor.precone);
  return [x * c - k * s, h + rotor.torqueOffset, x * s + k * c];
}

/** Sum over points of u . ((q - p0) x F), F = W^2 (X, Y, 0) m: the definition, without any rearrangement. */
export function forceMoment(
  points: readonly CloudPoint[],
  rotor: RotorConditions,
  pitch: number,
): number {
  const u = [Math.cos(rotor.precone), 0, Math.sin(rotor.precone)];
  let moment = 0;
  for (const [m, x, y, z] of points) {
    const [X, Y, Z] = rotorPosition([x, y, z], rotor, pitch);
    const fx = rotor.angularSpeed ** 2 * m * X;
    const fy = rotor.angularSpeed ** 2 * m * Y;
    const ay = Y - rotor.torqueOffset;
    // (X, ay, Z) x (fx, fy, 0)
    moment += u[0] * (-Z * fy) + u[1] * (Z * fx) + u[2] * (X * fy - ay * fx);
  }
  return moment;
}

/** -(W^2 / 2) sum m (X^2 + Y^2): the potential of the spin's field. */
export function spinPotential(
  points: readonly CloudPoint[],
  rotor: RotorConditions,
  pitch: number,
): number {
  let sum = 0;
  for (const [m, x, y, z] of points) {
    const [X, Y] = rotorPosition([x, y, z], rotor, pitch);
    sum += m * (X * X + Y * Y);
  }
  return (-(rotor.angularSpeed ** 2) / 2) * sum;
}

/** W^2 times sum of m |q|^2 with the offset: no moment of these points can exceed it, so errors are measured by it. */
export function forceScale(points: readonly CloudPoint[], rotor: RotorConditions): number {
  let sum = 0;
  for (const [m, x, y, z] of points) {
    const reach = Math.hypot(x, y, z) + Math.abs(rotor.torqueOffset);
    sum += m * reach * reach;
  }
  return rotor.angularSpeed ** 2 * sum;
}

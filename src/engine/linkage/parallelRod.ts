import type { Vec3 } from '../math/vector';
import { type Radians, radians } from '../units';

/**
 * A push rod that stays parallel to the shaft: the model until the full linkage is built. Its ball sits on the
 * pitch arm at `ball_G` (grip frame); `direction` is +1 where the slider lies on the +Z side of the ball, else -1.
 *
 * Every point of such a rod has the ball's X and Y, so on the grip its mass acts as a lump at the ball, exactly, and
 * that lump belongs to the moment: the spin's pull on the rod is square to it and reaches the grip through the ball,
 * while the axial force is the same all along it. A rod whose slider end stays in place sideways loads the ball with
 * less than its whole mass; that is the full linkage's business.
 */
export interface ParallelRod {
  readonly ball_G: Vec3;
  readonly direction: 1 | -1;
}

/**
 * Lever of the rod about the feathering axis, metres: u . ((B - p0) x e) with e = direction Z. With h = y cos t -
 * z sin t the ball's reach along rotor Y, it is direction x h x cos(precone). Zero where the arm is over centre.
 */
export function rodLever(rod: ParallelRod, pitch: Radians, precone: Radians): number {
  const reach = rod.ball_G[1] * Math.cos(pitch) - rod.ball_G[2] * Math.sin(pitch);
  return rod.direction * reach * Math.cos(precone);
}

/**
 * Axial force in the rod, newtons, tension positive, that holds the grip against the moment (N m, the rod's lump
 * included): T = -M / lever. Null where the arm is over centre (lever below 1e-9 of its reach).
 */
export function pushRodForce(
  moment: number,
  rod: ParallelRod,
  pitch: Radians,
  precone: Radians,
): number | null {
  const lever = rodLever(rod, pitch, precone);
  const reach = Math.hypot(rod.ball_G[1], rod.ball_G[2]);
  if (!(Math.abs(lever) > 1e-9 * reach)) return null;
  return -moment / lever;
}

/**
 * Pitch angles in the closed range [from, to] where the arm goes over centre: tan t = y / z of the ball. Ascending; an
 * angle that rounding has pushed up to 1e-12 past an end is put on it. A range of a full turn is half open, as for
 * equilibria. Empty for a ball on the feathering axis, which has no lever anywhere. A reversed range throws.
 */
export function overCentreAngles(rod: ParallelRod, from: Radians, to: Radians): readonly Radians[] {
  if (!(from <= to))
    throw new RangeError(`overCentreAngles(): range is reversed or not a number: ${from}, ${to}`);
  const [, y, z] = rod.ball_G;
  if (y === 0 && z === 0) return [];
  const base = Math.atan2(y, z);
  const margin = 1e-12;
  const angles: Radians[] = [];
  for (
    let k = Math.ceil((from - margin - base) / Math.PI);
    base + k * Math.PI <= to + margin;
    k++
  ) {
    angles.push(radians(Math.min(to, Math.max(from, base + k * Math.PI))));
  }
  const turn = 2 * Math.PI;
  // The same orientation is not counted twice at the two ends of a turn.
  return to - from < turn - margin
    ? angles
    : angles.filter((angle) => angle - angles[0] < turn - 1e-9);
}

import type { RotorConditions } from '../feathering/rotor';
import type { Radians } from '../units';
import { createLinkState, type Linkage, type LinkState, linkState, type RodMass } from './linkage';

/**
 * What the rod's own mass does to the grip. Its points are r = B + s e, so the potential of the spin's pull is
 *
 *   V = -(W^2/2) int (X^2 + Y^2) dm
 *     = -(W^2/2) [ m |B|^2 + 2 S1 (B . e) + S2 (1 - e_z^2) + Q (1 + e_z^2) ]        (X and Y components only)
 *
 * with S1 = int s dm, S2 = int s^2 dm, Q the transverse second moment (both transverse directions of an axially
 * symmetric rod leave 1 + e_z^2 of theirs in the plane). The generalised moment M = -dV/dt is
 *
 *   M = W^2 [ m B . B' + S1 (B' . e + B . e') - (S2 - Q) e_z e_z' ],   e' = (S' - B') / L.
 *
 * For a thin even rod it is W^2 m [ B . B' / 3 + S . B' / 6 ]. A rod that stays parallel to the shaft has e' = 0 and
 * acts as a lump at its ball. Exact for an axially symmetric rod of any distribution along itself.
 */
interface RodMotion {
  /** B . B', B' . B' + B . B'', and so on, X and Y components only. */
  bb: number;
  bbSlope: number;
  be: number;
  beRate: number;
  beSlope: number;
  /** e_z e_z' and its slope. */
  tilt: number;
  tiltSlope: number;
  ez: number;
}

const state: LinkState = createLinkState();
const motion: RodMotion = {
  bb: 0,
  bbSlope: 0,
  be: 0,
  beRate: 0,
  beSlope: 0,
  tilt: 0,
  tiltSlope: 0,
  ez: 0,
};

function move(linkage: Linkage, rotor: RotorConditions, pitch: Radians): RodMotion {
  const { ball, axis, ratio } = linkState(linkage, rotor, pitch, state);
  const [s, c] = [Math.sin(rotor.precone), Math.cos(rotor.precone)];
  const h = ball[1] - rotor.torqueOffset;
  const [, y, z] = linkage.ball_G;
  const k = y * Math.sin(pitch) + z * Math.cos(pitch);
  const [bx, by] = [ball[0], ball[1]];
  const [vx, vy] = [-h * s, -k];
  const [ax, ay] = [k * s, -h];
  const [ex, ey, ez] = axis;
  const perLength = linkage.length === null ? 0 : 1 / linkage.length;
  const [rx, ry] = [-vx * perLength, -vy * perLength];
  const rz = (ratio - h * c) * perLength;
  const [qx, qy] = [-ax * perLength, -ay * perLength];
  // From |e| = 1.
  const qz = -(rx * rx + ry * ry + rz * rz + ex * qx + ey * qy) / ez;
  motion.ez = ez;
  motion.bb = bx * vx + by * vy;
  motion.bbSlope = vx * vx + vy * vy + bx * ax + by * ay;
  motion.be = bx * ex + by * ey;
  motion.beRate = vx * ex + vy * ey + bx * rx + by * ry;
  motion.beSlope = ax * ex + ay * ey + 2 * (vx * rx + vy * ry) + bx * qx + by * qy;
  motion.tilt = ez * rz;
  motion.tiltSlope = rz * rz + ez * qz;
  return motion;
}

/** Generalised moment of the rod's mass about the feathering axis, N m; zero for a weightless rod, NaN out of reach. */
export function rodMoment(linkage: Linkage, rotor: RotorConditions, pitch: Radians): number {
  const { rod } = linkage;
  if (!rod) return 0;
  const { bb, beRate, tilt } = move(linkage, rotor, pitch);
  const spread = rod.second - rod.transverse;
  return rotor.angularSpeed ** 2 * (rod.mass * bb + rod.first * beRate - spread * tilt);
}

/** dM/dt of `rodMoment`, N m/rad. */
export function rodMomentSlope(linkage: Linkage, rotor: RotorConditions, pitch: Radians): number {
  const { rod } = linkage;
  if (!rod) return 0;
  const { bbSlope, beSlope, tiltSlope } = move(linkage, rotor, pitch);
  const spread = rod.second - rod.transverse;
  return rotor.angularSpeed ** 2 * (rod.mass * bbSlope + rod.first * beSlope - spread * tiltSlope);
}

/** Potential of the rod's mass, J, zero at pitch zero; NaN where it or pitch zero is out of reach. */
export function rodEnergy(linkage: Linkage, rotor: RotorConditions, pitch: Radians): number {
  const { rod } = linkage;
  if (!rod) return 0;
  const flat = planeSpread(linkage, rod, rotor, 0 as Radians);
  return -(rotor.angularSpeed ** 2 / 2) * (planeSpread(linkage, rod, rotor, pitch) - flat);
}

/** int (X^2 + Y^2) dm of the rod, kg m^2. */
function planeSpread(
  linkage: Linkage,
  rod: RodMass,
  rotor: RotorConditions,
  pitch: Radians,
): number {
  const { be, ez } = move(linkage, rotor, pitch);
  const [bx, by] = state.ball;
  const [out, along] = [1 - ez * ez, 1 + ez * ez];
  return (
    rod.mass * (bx * bx + by * by) + 2 * rod.first * be + rod.second * out + rod.transverse * along
  );
}

/**
 * The part of the spin's pull on the rod that the arm's ball takes, rotor frame, N: F = W^2 int (1 - s/L) (X, Y, 0) dm, as
 * two hinges share it. With the push-rod force T' = -M / lever along the rod it is all that the rod does to the grip:
 * T' e + F. Zero for a weightless rod; all of it for one parallel to the shaft.
 */
export function rodPullAtBall(
  { rod, length }: Linkage,
  rotor: RotorConditions,
  { axis, ball }: LinkState,
): readonly [number, number, number] {
  if (!rod) return [0, 0, 0];
  const square = rotor.angularSpeed ** 2;
  const near = rod.mass - (length === null ? 0 : rod.first / length);
  const far = rod.first - (length === null ? 0 : rod.second / length);
  return [square * (near * ball[0] + far * axis[0]), square * (near * ball[1] + far * axis[1]), 0];
}

/**
 * The axial force in the rod at the arm's ball, N, tension positive: T = -M / lever + F . e, F from `rodPullAtBall`, M the
 * total moment. Null as for `pushRodForce`.
 */
export function rodEndTension(
  linkage: Linkage,
  rotor: RotorConditions,
  moment: number,
  placed: LinkState,
): number | null {
  const { lever, reach, axis } = placed;
  if (!(Math.abs(lever) > 1e-9 * reach)) return null;
  const [fx, fy] = rodPullAtBall(linkage, rotor, placed);
  return -moment / lever + fx * axis[0] + fy * axis[1];
}

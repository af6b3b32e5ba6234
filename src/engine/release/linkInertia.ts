import type { RotorConditions } from '../feathering/rotor';
import { createLinkState, type Linkage, linkState } from '../linkage/linkage';
import type { Radians } from '../units';
import type { PitchCurve } from './releaseSystem';

/**
 * What the push rod and the slider add to the inertia about the feathering axis: twice their kinetic energy at a rate of
 * one, int |dr/dt|^2 dm by pitch t. With r = B + s e along the rod,
 *
 *   I = m |B'|^2 + 2 S1 B' . e' + (S2 + Q) |e'|^2 + m_s Zs'^2,    e' = (S' - B') / L,   S' = (0, 0, Zs'),
 *
 * m, S1, S2, Q the rod's mass, first, second and transverse moments (`RodMass`), Zs' = lever / e_z, m_s the slider's mass
 * per grip. Of the transverse spread only the direction in which the axis tilts moves; the rod's turning about itself, which
 * balls leave open, is left out. A rod parallel to the shaft moves as a lump at its ball. The slope follows by
 * differentiating again: B'' from the circle of the ball, e'' = (S'' - B'') / L, e_z'' from |e| = 1.
 * Exact for an axially symmetric rod whose slider does not turn against the rotor. NaN out of reach; grows without bound
 * where the rod lies square to the shaft.
 */
export function linkInertia(linkage: Linkage, rotor: RotorConditions, sliderMass = 0): PitchCurve {
  const held = { value: Number.NaN, slope: Number.NaN };
  let at = Number.NaN;
  /** Both are worked out together, once a pitch. */
  function heldAt(pitch: Radians) {
    if (pitch !== at) moving(linkage, rotor, sliderMass, pitch, held);
    at = pitch;
    return held;
  }
  return {
    value: (pitch) => heldAt(pitch).value,
    slope: (pitch) => heldAt(pitch).slope,
  };
}

/** A constant inertia and others together. */
export function addInertia(constant: number, curves: readonly PitchCurve[]): PitchCurve {
  return {
    value(pitch) {
      let sum = constant;
      for (const curve of curves) sum += curve.value(pitch);
      return sum;
    },
    slope(pitch) {
      let sum = 0;
      for (const curve of curves) sum += curve.slope(pitch);
      return sum;
    },
  };
}

const state = createLinkState();

function moving(
  linkage: Linkage,
  rotor: RotorConditions,
  sliderMass: number,
  pitch: Radians,
  out: { value: number; slope: number },
): void {
  const { axis, ball, ratio, reachable } = linkState(linkage, rotor, pitch, state);
  const [, y, z] = linkage.ball_G;
  const [s, c] = [Math.sin(rotor.precone), Math.cos(rotor.precone)];
  const h = ball[1] - rotor.torqueOffset;
  const k = y * Math.sin(pitch) + z * Math.cos(pitch);
  // B' and B''.
  const [vx, vy, vz] = [-h * s, -k, h * c];
  const [ax, ay, az] = [k * s, -h, -k * c];
  const perLength = linkage.length === null ? 0 : 1 / linkage.length;
  const [ex, ey, ez] = axis;
  const [rx, ry, rz] = [-vx * perLength, -vy * perLength, (ratio - vz) * perLength];
  const [qx, qy] = [-ax * perLength, -ay * perLength];
  const qz = -(rx * rx + ry * ry + rz * rz + ex * qx + ey * qy) / ez;
  // The slider's ball follows the rod: Zs'' = B_z'' + L e_z''.
  const sliderBend = az + (linkage.length === null ? 0 : linkage.length * qz);
  const { mass, first, second, transverse } = linkage.rod ?? WEIGHTLESS;
  const spread = second + transverse;
  out.value =
    mass * (vx * vx + vy * vy + vz * vz) +
    2 * first * (vx * rx + vy * ry + vz * rz) +
    spread * (rx * rx + ry * ry + rz * rz) +
    sliderMass * ratio * ratio;
  const byBall = vx * ax + vy * ay + vz * az;
  const byBoth = ax * rx + ay * ry + az * rz + vx * qx + vy * qy + vz * qz;
  const byAxis = rx * qx + ry * qy + rz * qz;
  out.slope =
    2 * (mass * byBall + first * byBoth + spread * byAxis + sliderMass * ratio * sliderBend);
  if (!reachable) {
    out.value = Number.NaN;
    out.slope = Number.NaN;
  }
}

const WEIGHTLESS = { mass: 0, first: 0, second: 0, transverse: 0 };

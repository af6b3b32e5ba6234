import type { RotorConditions } from '../feathering/rotor';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from '../mass/moments';
import type { Radians } from '../units';

/**
 * A load on the grip in the directions of its feathering axis: u outward along it, Y forward (the way the blade travels), w
 * up, square to both (cos b up the shaft). Forces N; moments about the axis's point at the shaft, N m: `bendUp` lifts the
 * tip (x F_w - k F_u), `swingForward` turns it forward (x F_Y - h F_u), for a force at (x, h, k).
 */
export interface AxisLoad {
  along: number;
  forward: number;
  up: number;
  bendUp: number;
  swingForward: number;
}

export function createAxisLoad(): AxisLoad {
  return { along: 0, forward: 0, up: 0, bendUp: 0, swingForward: 0 };
}

/**
 * The spin's load of bodies with `moments_G` about the grip origin. A point at (x, h, k) along u, Y and w stands at
 * X = x c - k s and Y = a + h (c, s of the precone b) and is pulled by W^2 (X, Y, 0), so that
 *
 *   along = W^2 c (c Sx - s Sk), forward = W^2 (a m + Sh), up = -W^2 s (c Sx - s Sk),
 *   bendUp = -W^2 [ s c (Jxx - Jkk) + (c^2 - s^2) Jxk ],     swingForward = W^2 [ a Sx + s^2 Jxh + s c Jhk ].
 *
 * What lies above the plane of rotation is pulled back into it and bends the tip down, against thrust.
 */
export function spinAxisLoad(
  moments_G: Moments,
  rotor: RotorConditions,
  pitch: Radians,
  out: AxisLoad,
): AxisLoad {
  return spinLoadTurned(moments_G, rotor, turnedGrip(pitch), out);
}

/** How far the grip is turned at a pitch for `spinLoadTurned`, to be kept by whoever asks for the same pitches again and again. */
export interface Turned {
  readonly cosine: number;
  readonly sine: number;
}

export function turnedGrip(pitch: Radians): Turned {
  return { cosine: Math.cos(pitch), sine: Math.sin(pitch) };
}

/**
 * `spinAxisLoad` with the turn at hand. Of the turned body only these are needed, with h = y c - z s and k = y s + z c (c, s
 * of the pitch):
 *
 *   Sh = c Sy - s Sz,     Sk = s Sy + c Sz,       Jxh = c Jxy - s Jxz,     Jxk = s Jxy + c Jxz,
 *   Jkk = s^2 Jyy + 2 s c Jyz + c^2 Jzz,          Jhk = s c (Jyy - Jzz) + (c^2 - s^2) Jyz.
 */
export function spinLoadTurned(
  J: Moments,
  rotor: RotorConditions,
  { cosine, sine }: Turned,
  out: AxisLoad,
): AxisLoad {
  const Sh = cosine * J[SY] - sine * J[SZ];
  const Sk = sine * J[SY] + cosine * J[SZ];
  const Jxh = cosine * J[JXY] - sine * J[JXZ];
  const Jxk = sine * J[JXY] + cosine * J[JXZ];
  const both = sine * cosine;
  const Jkk = sine * sine * J[JYY] + 2 * both * J[JYZ] + cosine * cosine * J[JZZ];
  const Jhk = both * (J[JYY] - J[JZZ]) + (cosine * cosine - sine * sine) * J[JYZ];
  const s = Math.sin(rotor.precone);
  const c = Math.cos(rotor.precone);
  const square = rotor.angularSpeed * rotor.angularSpeed;
  const outward = square * (c * J[SX] - s * Sk);
  const a = rotor.torqueOffset;
  out.along = c * outward;
  out.forward = square * (a * J[M] + Sh);
  out.up = -s * outward;
  out.bendUp = -square * (s * c * (J[JXX] - Jkk) + (c * c - s * s) * Jxk);
  out.swingForward = square * (a * J[SX] + s * s * Jxh + s * c * Jhk);
  return out;
}

/** Adds a force with rotor-frame components at the point (x, h, k) of the axis's directions. */
export function addForce(
  load: AxisLoad,
  [fx, fy, fz]: readonly [number, number, number],
  [x, h, k]: readonly [number, number, number],
  { precone }: RotorConditions,
): void {
  const [s, c] = [Math.sin(precone), Math.cos(precone)];
  const along = fx * c + fz * s;
  const up = fz * c - fx * s;
  load.along += along;
  load.forward += fy;
  load.up += up;
  load.bendUp += x * up - k * along;
  load.swingForward += x * fy - h * along;
}

/** The bending moment about the axis's point at a station, N m: up is positive. */
export function bendUpAt(load: AxisLoad, station: number): number {
  return load.bendUp - station * load.up;
}

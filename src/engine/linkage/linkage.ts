import type { RotorConditions } from '../feathering/rotor';
import type { Vec3 } from '../math/vector';
import type { Radians } from '../units';

/**
 * Mass of a rod along itself, s from the arm's ball toward the slider's: kg, int s dm (kg m), int s^2 dm, and int q^2 dm
 * across it (kg m^2, the mean of its two transverse directions: the rod may turn about its own axis, so their
 * difference is left out).
 */
export interface RodMass {
  readonly mass: number;
  readonly first: number;
  readonly second: number;
  readonly transverse: number;
}

/**
 * A push rod of given length from the ball on the pitch arm (grip frame) to the slider's ball, which moves along the
 * shaft at the rotor-frame place (sliderX, sliderY). `side` says on which side of the arm's ball the slider lies along
 * Z: the assembly is chosen once. `length` null: the rod stays parallel to the shaft, as a very long one would.
 */
export interface Linkage {
  readonly ball_G: Vec3;
  readonly side: -1 | 1;
  readonly length: number | null;
  readonly sliderX: number;
  readonly sliderY: number;
  /** Null: weightless. */
  readonly rod: RodMass | null;
}

/** The linkage at one pitch, rotor frame, m. All but `ball` and `reach` are NaN where the rod does not reach. */
export interface LinkState {
  reachable: boolean;
  /** Height of the slider's ball; of a parallel rod: of the arm's ball. */
  sliderZ: number;
  /** e . dB/dt = u . ((B - p0) x e): the rod's lever about the feathering axis. */
  lever: number;
  /** dZs/dt = lever / e_z. */
  ratio: number;
  /** Distance of the arm's ball from the feathering axis. */
  reach: number;
  /** Unit vector from the arm's ball to the slider's. */
  readonly axis: Float64Array;
  readonly ball: Float64Array;
}

export function createLinkState(): LinkState {
  return {
    reachable: false,
    sliderZ: Number.NaN,
    lever: Number.NaN,
    ratio: Number.NaN,
    reach: 0,
    axis: new Float64Array(3),
    ball: new Float64Array(3),
  };
}

/**
 * Places the linkage at a pitch. With h = y cos t - z sin t and k = y sin t + z cos t the ball stands at
 * B = (x cos b - k sin b, a + h, x sin b + k cos b) and moves by B' = (-h sin b, -k, h cos b); the slider's ball at
 * Zs = B_z + side sqrt(L^2 - (B_x - Sx)^2 - (B_y - Sy)^2). Allocates nothing.
 */
export function linkState(
  linkage: Linkage,
  rotor: RotorConditions,
  pitch: Radians,
  out: LinkState,
): LinkState {
  const [x, y, z] = linkage.ball_G;
  const [sin, cos] = [Math.sin(pitch), Math.cos(pitch)];
  const [s, c] = [Math.sin(rotor.precone), Math.cos(rotor.precone)];
  const h = y * cos - z * sin;
  const k = y * sin + z * cos;
  const { ball, axis } = out;
  ball[0] = x * c - k * s;
  ball[1] = rotor.torqueOffset + h;
  ball[2] = x * s + k * c;
  out.reach = Math.hypot(y, z);
  const { side, length } = linkage;
  if (length === null) {
    axis[0] = 0;
    axis[1] = 0;
    axis[2] = side;
    out.reachable = true;
    out.sliderZ = ball[2];
  } else {
    const dx = linkage.sliderX - ball[0];
    const dy = linkage.sliderY - ball[1];
    const square = length * length - dx * dx - dy * dy;
    out.reachable = square > 0;
    // NaN where it does not reach.
    const dz = side * Math.sqrt(out.reachable ? square : Number.NaN);
    axis[0] = out.reachable ? dx / length : Number.NaN;
    axis[1] = out.reachable ? dy / length : Number.NaN;
    axis[2] = dz / length;
    out.sliderZ = ball[2] + dz;
  }
  out.lever = -h * s * axis[0] - k * axis[1] + h * c * axis[2];
  out.ratio = out.lever / axis[2];
  return out;
}

/** A lever below this share of the ball's reach is none: the arm is over centre. */
const NO_LEVER = 1e-9;

/**
 * Axial force in the rod, N, tension positive, that holds the grip against `moment` (N m, total, the rod's own share
 * included): -M / lever. It is zero exactly at rest and flee angles and goes with the slider's force
 * (F = n e_z T). Null over centre and out of reach. The rod's own pull adds to it at the arm's ball: `rodEndTension`.
 */
export function pushRodForce(moment: number, state: LinkState): number | null {
  if (!(Math.abs(state.lever) > NO_LEVER * state.reach)) return null;
  return -moment / state.lever;
}

/**
 * Force that the control must put on the slider along +Z, N, for `bladeCount` grips that each make `moment` (total, rod
 * included), by virtual work: -n M / (dZs/dt). Null over centre and out of reach.
 */
export function sliderForce(moment: number, state: LinkState, bladeCount: number): number | null {
  const force = pushRodForce(moment, state);
  return force === null ? null : bladeCount * state.axis[2] * force;
}

/** Slider travel from its place at pitch zero, m along +Z; NaN where either is out of reach. */
export function travelAtPitch(linkage: Linkage, rotor: RotorConditions, pitch: Radians): number {
  const flat = linkState(linkage, rotor, 0 as Radians, scratch).sliderZ;
  return linkState(linkage, rotor, pitch, scratch).sliderZ - flat;
}

const scratch = createLinkState();

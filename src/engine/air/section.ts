/** What a section answers with. Mutable: the caller owns one and hands it in. */
export interface SectionCoefficients {
  /** Across the wind; positive for a positive angle of attack of an attached symmetric section. */
  lift: number;
  /** Along the wind. */
  drag: number;
  /** About the quarter chord, nose up positive. */
  moment: number;
  /** 0, or the sum of OUTSIDE_ANGLE, BELOW_REYNOLDS, ABOVE_REYNOLDS: the answer is not from the section's own data. */
  outside: number;
}

export const OUTSIDE_ANGLE = 1;
export const BELOW_REYNOLDS = 2;
export const ABOVE_REYNOLDS = 4;

/** A blade section in steady two-dimensional flow. */
export interface AirSection {
  readonly name: string;
  /** `angle`: angle of attack, any real number of radians; `reynolds`: on the chord. Fills and returns `out`. */
  coefficients(angle: number, reynolds: number, out: SectionCoefficients): SectionCoefficients;
}

export function createCoefficients(): SectionCoefficients {
  return { lift: 0, drag: 0, moment: 0, outside: 0 };
}

/** The same angle within -pi..pi. */
export function wrapAngle(angle: number): number {
  const turn = 2 * Math.PI;
  return angle >= -Math.PI && angle <= Math.PI ? angle : angle - turn * Math.round(angle / turn);
}

/** 0 below 0, 1 above 1, 3 t^2 - 2 t^3 between: continuous with its slope. */
export function smoothStep(t: number): number {
  return t <= 0 ? 0 : t >= 1 ? 1 : t * t * (3 - 2 * t);
}

const DEGREE = Math.PI / 180;
/** dC_l/da, 1/rad. Thin-section theory 6.28; SAND80-2114 gives 6.30 at 5 degrees and 5.6 to 5.9 at 8. */
const LIFT_SLOPE = 6;
/** Between friction of a laminar and of a turbulent plate for Reynolds numbers of 50,000 to 500,000 (tested). */
const DRAG_FLOOR = 0.012;
/** The blunt edge behind (memory: about twice). */
const DRAG_FLOOR_BEHIND = 0.024;
/** Rise of the attached drag with sin^2 of the angle (memory of sections of 12 % at low Reynolds numbers). */
const DRAG_RISE = 0.4;
/** Separation begins and is complete at these angles: maximum lift near 11 degrees as in SAND80-2114 at 360,000. */
const STALL = { start: 8 * DEGREE, end: 16 * DEGREE } as const;
/** With the sharp edge in front it comes earlier (memory). */
const STALL_BEHIND = { start: 5 * DEGREE, end: 12 * DEGREE } as const;

/**
 * A symmetric section at every angle, without Reynolds number: three laws blended by the separated share s.
 *
 *   attached   C_l = 6 sin b, C_d = floor + 0.4 sin^2 b, force at a quarter of the chord behind the edge in front;
 *   separated  a flat plate: C_n = sin b / (0.222 + 0.283 sin b) (memory: Hoerner), floor cos^2 b of friction,
 *              centre of pressure at 1/4 + |a| / (2 pi) of the chord: quarter chord at 0, mid-chord at 90 degrees,
 *              three quarters at 180;
 *   s          smooth step from 8 to 16 degrees, from behind 5 to 12.
 *
 * b is the angle to the chord line, |a| or pi - |a|. Lift and moment are odd in a, drag is even; all are continuous
 * with their slopes (all joints are smooth steps or lie where s = 1).
 *
 * An estimate. Against SAND80-2114 (NACA 0015): lift within 7 % up to 12 degrees at Re 360,000; at 30 degrees 39 %
 * too much lift and 22 % too much drag, at 45 degrees 13 and 11 %, at 90 degrees 1.98 where 1.8 to 2.1 were measured. The
 * deep dip of lift just past stall at Re 160,000 is not in it. The moment falls nose-down at stall, by about half
 * of the published fall of NACA 0012. No Mach number.
 */
export function symmetricSection(): AirSection {
  return { name: 'symmetric', coefficients: symmetricCoefficients };
}

function symmetricCoefficients(
  angle: number,
  _reynolds: number,
  out: SectionCoefficients,
): SectionCoefficients {
  const a = wrapAngle(angle);
  const size = Math.abs(a);
  const sign = a < 0 ? -1 : 1;
  const behind = size > Math.PI / 2;
  const b = behind ? Math.PI - size : size;
  const stall = behind ? STALL_BEHIND : STALL;
  const s = smoothStep((b - stall.start) / (stall.end - stall.start));
  const sine = Math.sin(b);
  const cosine = Math.cos(b);
  const floor = behind ? DRAG_FLOOR_BEHIND : DRAG_FLOOR;
  const attachedLift = LIFT_SLOPE * sine;
  const attachedDrag = floor + DRAG_RISE * sine * sine;
  const plate = sine / (0.222 + 0.283 * sine);
  // The friction's floor fades with s, which reaches 1 far from 90 degrees: no step between front and behind there.
  const friction = (DRAG_FLOOR + (floor - DRAG_FLOOR) * (1 - s)) * cosine * cosine;
  const lift = (1 - s) * attachedLift + s * plate * cosine;
  const drag = (1 - s) * attachedDrag + s * (plate * sine + friction);
  const attachedArm = behind ? 0.5 : 0;
  const attachedNormal = attachedLift * cosine + attachedDrag * sine;
  const arm = size / (2 * Math.PI);
  out.lift = (behind ? -sign : sign) * lift;
  out.drag = drag;
  out.moment = -sign * ((1 - s) * attachedNormal * attachedArm + s * plate * arm);
  out.outside = 0;
  return out;
}

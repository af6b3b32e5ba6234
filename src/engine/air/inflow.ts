import { type AirSection, createCoefficients } from './section';

/** Why a station has or has no answer. */
export const SOLVED = 0;
/** The section answered with something that is not finite. */
export const SECTION_NOT_FINITE = 1;
/** No change of sign up to an inflow of 90 degrees: only a negative drag can do that (see StationInflow). */
export const NO_BRACKET = 2;
/** The bracket closed on a jump of the section's coefficients, not on a root. */
export const SECTION_JUMPS = 3;

export type InflowStatus =
  | typeof SOLVED
  | typeof SECTION_NOT_FINITE
  | typeof NO_BRACKET
  | typeof SECTION_JUMPS;

/** The search walks outward from zero inflow in steps of one degree. */
const STEPS = 90;
const STEP = Math.PI / 2 / STEPS;
/** Interpolated steps are allowed this often, then only halving: 1 degree is halved to 1e-17 in 51 steps. */
const INTERPOLATIONS = 60;
const ITERATIONS = 120;
/** Largest residual that rounding can leave (coefficients of order 1); beyond it the bracket closed on a jump. */
const ROUNDING = 1e-11;

/**
 * The inflow angle p at one radius r of a hovering rotor: blade element = momentum of its annulus,
 *
 *   g(p) = (s/4) (C_l cos p - C_d sin p) - F(p) sin p |sin p| = 0,     s = n c / (2 pi r), C at the angle t - p,
 *
 * which is dT_blade - dT_momentum over 4 pi rho r (W r)^2 / cos^2 p; the induced velocity is v = W r tan p, down for
 * p > 0. F = Prandtl's tip factor (2/pi) acos exp(-(n/2) (R - r) / (r |sin p|)), and the same for the root
 * with (r - r0) / r0 where asked. Axial momentum only: the swirl, about tan^2 p of the speed W r (1 % at 6 degrees),
 * is left out.
 *
 * A root always exists. g is continuous where the section is. g(0) = (s/4) C_l(t). If C_l(t) = 0, p = 0 is
 * a root. If C_l(t) > 0, then g(0) > 0 and g(90 deg) = -(s/4) C_d - F < 0 since C_d >= 0 and F > 0 for r < R. If
 * C_l(t) < 0, the same with the signs turned at -90 degrees. No zero-lift angle and no monotone section is needed.
 *
 * Which root. From zero outward in steps of one degree to the first change of sign, then Chandrupatla's method
 * (Advances in Engineering Software 28, 1997), which keeps the bracket, and halving from the 60th step on: it
 * ends always. So it is the root of smallest |p|; past stall there can be others (attached flow with more inflow),
 * and two roots less than a degree apart can be stepped over.
 */
export class StationInflow {
  section: AirSection;
  readonly coefficients = createCoefficients();
  /** Pitch of the section to the rotor plane, rad. */
  pitch = 0;
  /** n c / (2 pi r) / 4 */
  quarterSolidity = 0;
  /** (n/2) (R - r) / r, or Infinity without tip loss. */
  tipFactor = Number.POSITIVE_INFINITY;
  /** (n/2) (r - r0) / r0, or Infinity without root loss. */
  rootFactor = Number.POSITIVE_INFINITY;
  /** Reynolds number of W r; that of the whole speed is this over cos p. */
  reynolds = 0;
  /** The answer. */
  inflow = 0;
  residual = 0;
  /** Evaluations of g since it was made. */
  evaluations = 0;

  constructor(section: AirSection) {
    this.section = section;
  }

  /** F, 1 at zero inflow. */
  lossFactor(inflow: number): number {
    const sine = Math.abs(Math.sin(inflow));
    if (sine === 0) return 1;
    return prandtl(this.tipFactor / sine) * prandtl(this.rootFactor / sine);
  }

  /** g; leaves the section's coefficients at this inflow in `coefficients`. */
  residualAt(inflow: number): number {
    this.evaluations++;
    const sine = Math.sin(inflow);
    const cosine = Math.cos(inflow);
    const reynolds = this.reynolds / Math.max(cosine, 1e-3);
    const c = this.section.coefficients(this.pitch - inflow, reynolds, this.coefficients);
    const blade = this.quarterSolidity * (c.lift * cosine - c.drag * sine);
    return blade - this.lossFactor(inflow) * sine * Math.abs(sine);
  }

  /** Sets `inflow`, `residual` and `coefficients`. */
  solve(): InflowStatus {
    const first = this.residualAt(0);
    this.inflow = 0;
    this.residual = first;
    if (!Number.isFinite(first)) return SECTION_NOT_FINITE;
    if (first === 0) return SOLVED;
    const side = first > 0 ? 1 : -1;
    let near = 0;
    let gNear = side * first;
    for (let k = 1; k <= STEPS; k++) {
      const far = side * k * STEP;
      const gFar = side * this.residualAt(far);
      if (!Number.isFinite(gFar)) return SECTION_NOT_FINITE;
      if (gFar <= 0) return this.close(side, far, gFar, near, gNear);
      near = far;
      gNear = gFar;
    }
    return NO_BRACKET;
  }

  /** The root between a and b, where side * g is not positive and positive: the mirrored rotor takes the same steps. */
  private close(side: number, a: number, fa: number, b: number, fb: number): InflowStatus {
    let c = b;
    let fc = fb;
    let t = fa / (fa - fb);
    for (let k = 0; k < ITERATIONS; k++) {
      const x = a + t * (b - a);
      const fx = side * this.residualAt(x);
      if (!Number.isFinite(fx)) return SECTION_NOT_FINITE;
      if (fx > 0 === fa > 0) {
        c = a;
        fc = fa;
      } else {
        c = b;
        fc = fb;
        b = a;
        fb = fa;
      }
      a = x;
      fa = fx;
      const atA = Math.abs(fa) <= Math.abs(fb);
      const best = atA ? a : b;
      const width = Math.abs(b - a);
      const tolerance = 2 * Number.EPSILON * Math.abs(best) + 1e-18;
      const share = width === 0 ? 1 : tolerance / width;
      if (share > 0.5 || fa === 0) return this.finish(best);
      t = k < INTERPOLATIONS ? interpolated(a, b, c, fa, fb, fc) : 0.5;
      t = Math.min(1 - share, Math.max(share, t));
    }
    return this.finish(Math.abs(fa) <= Math.abs(fb) ? a : b);
  }

  private finish(inflow: number): InflowStatus {
    this.inflow = inflow;
    this.residual = this.residualAt(inflow);
    return Math.abs(this.residual) <= ROUNDING * (1 + this.quarterSolidity)
      ? SOLVED
      : SECTION_JUMPS;
  }
}

/** (2/pi) acos exp(-f): 1 far from the edge, 0 on it. */
function prandtl(f: number): number {
  return f > 40 ? 1 : (2 / Math.PI) * Math.acos(Math.exp(-f));
}

/** Chandrupatla's step as a share of the bracket from a to b: inverse quadratic where it is safe, else a half. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  return (
    (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb))
  );
}

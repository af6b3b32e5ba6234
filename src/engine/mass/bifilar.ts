import { requireFinite } from '../result';

/**
 * The two-string (bifilar) pendulum: moment of inertia about an upright axis from the time of a twist. SI.
 *
 * The body hangs on two equal strings of length L, upright and parallel at rest, each at distance b (HALF their spacing)
 * from the upright line through the centre of mass, which lies midway between them in their plane. Twisted by f, the
 * lower end of each string moves 2 b sin(f/2) sideways, and the body rises by
 *
 *     h(f) = L - sqrt(L^2 - 4 b^2 sin^2(f/2))  =  b^2 f^2 / (2 L) + ...
 *
 * With T = I f'^2 / 2 + m h'^2 / 2 and V = m g h, small swings obey I f'' = -(m g b^2 / L) f: period
 * P = 2 pi sqrt(I L / (m g b^2)), and so
 *
 *     I = m g b^2 P^2 / (4 pi^2 L).
 *
 * With the full spacing 2 b in place of b the divisor is 16 pi^2; mixing the two up is a factor 4 either way. Here the
 * full spacing goes in, as it is measured.
 *
 * Valid for small swings. To second order in the amplitude a (rad) the period is longer by the fraction
 *
 *     e = a^2 / 16 - (3/16) (b/L)^2 a^2 + (1/4) (b/L)^2 (m b^2 / I) a^2
 *
 * (the quartic term of h; the last is the kinetic energy of the rise), and the moment read off is 2 e too great. With
 * long strings that is a^2 / 8: 0.1 % at 5 degrees, 0.4 % at 10, 3.4 % at 30. Short strings make it worse: for a bar hung
 * by its ends (I = m b^2 / 3) by the factor 1 + 9 (b/L)^2, ten where L = b. What is left when e is allowed for is of
 * the order a^4 / 100 with long strings.
 *
 * Not in it: mass of the strings, drag of the air (lengthens the period of a flat blade swung broadside), strings that
 * stretch or have stiff ends, a centre of mass off the middle between the strings (the body then also swings sideways).
 * Gravity differs by up to 0.3 % from the standard value over the Earth, and so does I.
 *
 * Source: derived here; the tests swing the exact pendulum numerically and compare a published measurement.
 */
export interface BifilarTiming {
  /** The body alone, kg. */
  readonly mass: number;
  /** Full distance between the strings, 2 b, m. */
  readonly spacing: number;
  /** Free length of each string, m. */
  readonly stringLength: number;
  /** Time of `swings` full swings (there and back), s. */
  readonly seconds: number;
  readonly swings: number;
  /** Standard uncertainties, each of the value that it is named for. */
  readonly massUncertainty: number;
  readonly spacingUncertainty: number;
  readonly stringLengthUncertainty: number;
  readonly secondsUncertainty: number;
  /** A cradle that hangs with the body: its mass, and its own moment about the same axis. None where absent. */
  readonly cradleMass?: number;
  readonly cradleMoment?: number;
  /** Standard uncertainties of the cradle's; 0 where absent. */
  readonly cradleMassUncertainty?: number;
  readonly cradleMomentUncertainty?: number;
  /**
   * Twist to either side, rad, root mean square over the count (the mean of first and last will do); allowed for by e
   * above. 0 (small swings) where absent.
   */
  readonly amplitude?: number;
  /** m/s^2; standard gravity where absent. */
  readonly gravity?: number;
}

export interface BifilarResult {
  /**
   * About the upright axis through the centre of mass, less the cradle's, kg m^2. Zero or negative where the cradle is
   * said to have more than swings: no body has that, and `applyMeasured` refuses it.
   */
  readonly moment: number;
  /** Standard uncertainty of `moment`, kg m^2. */
  readonly uncertainty: number;
}

/** Standard gravity, m/s^2 (3rd CGPM, 1901). */
const STANDARD_GRAVITY = 9.80665;

/**
 * The moment of inertia with its standard uncertainty by first-order propagation of independent errors (JCGM 100, GUM):
 * (u_I / I)^2 = (u_m / m)^2 + (2 u_b / b)^2 + (u_L / L)^2 + (2 u_T / T)^2 of all that hangs, then the cradle's own moment
 * in squares. Good while each relative uncertainty is below some per cent. A modelled mass that is zero or negative
 * gives a moment that is so too. Throws where a length, time or count is not positive and finite, the mass is not
 * finite, or an uncertainty, the cradle or the amplitude is negative.
 */
export function bifilarMoment(timing: BifilarTiming): BifilarResult {
  requireSound(timing);
  const { cradleMoment = 0, cradleMassUncertainty = 0, cradleMomentUncertainty = 0 } = timing;
  const gyration = squaredGyration(timing);
  const total = (timing.mass + (timing.cradleMass ?? 0)) * gyration;
  const relative = Math.hypot(
    (2 * timing.spacingUncertainty) / timing.spacing,
    timing.stringLengthUncertainty / timing.stringLength,
    (2 * timing.secondsUncertainty) / timing.seconds,
  );
  return {
    moment: total - cradleMoment,
    uncertainty: Math.hypot(
      total * relative,
      timing.massUncertainty * gyration,
      cradleMassUncertainty * gyration,
      cradleMomentUncertainty,
    ),
  };
}

/** I / m of all that hangs, m^2, the amplitude allowed for. */
function squaredGyration(timing: BifilarTiming): number {
  const { stringLength, amplitude = 0, gravity = STANDARD_GRAVITY } = timing;
  const b = timing.spacing / 2;
  const period = timing.seconds / timing.swings;
  const apparent = (gravity * b ** 2 * period ** 2) / (4 * Math.PI ** 2 * stringLength);
  if (amplitude === 0) return apparent;
  const slope = (b / stringLength) ** 2;
  // e asks for the moment sought; the apparent one, 2 e too great, changes e by its own square.
  const rise = (4 * slope * b ** 2) / apparent;
  const lengthening = (amplitude ** 2 * (1 - 3 * slope + rise)) / 16;
  return apparent / (1 + lengthening) ** 2;
}

const POSITIVE = ['spacing', 'stringLength', 'seconds', 'swings', 'gravity'] as const;
const NOT_NEGATIVE = [
  'massUncertainty',
  'spacingUncertainty',
  'stringLengthUncertainty',
  'secondsUncertainty',
  'cradleMass',
  'cradleMoment',
  'cradleMassUncertainty',
  'cradleMomentUncertainty',
  'amplitude',
] as const;

function requireSound(timing: BifilarTiming): void {
  requireFinite(timing.mass, 'bifilarMoment(): mass');
  for (const name of POSITIVE) {
    const value = timing[name] ?? 1;
    if (!(value > 0 && Number.isFinite(value))) {
      throw new RangeError(`bifilarMoment(): ${name} is not positive and finite: ${value}`);
    }
  }
  for (const name of NOT_NEGATIVE) {
    const value = timing[name] ?? 0;
    if (!(value >= 0 && Number.isFinite(value))) {
      throw new RangeError(`bifilarMoment(): ${name} is negative or not finite: ${value}`);
    }
  }
}

import { describe, expect, test } from 'vitest';
import { type BifilarTiming, bifilarMoment } from '../../../src/engine/mass/bifilar';
import { type Seeded, seeded } from '../../support/seeded';
import { exactPeriod, type Pendulum } from './swing';

const EXACT = {
  massUncertainty: 0,
  spacingUncertainty: 0,
  stringLengthUncertainty: 0,
  secondsUncertainty: 0,
};
const GRAVITY = 9.80665;

function timingOf(pendulum: Pendulum, seconds: number, swings = 1): BifilarTiming {
  return {
    ...EXACT,
    mass: pendulum.mass,
    spacing: 2 * pendulum.half,
    stringLength: pendulum.length,
    seconds,
    swings,
    gravity: pendulum.gravity,
  };
}

/** A slender bar hung by its ends: I = m b^2 / 3. */
function bar(half: number, length: number): Pendulum {
  return { mass: 0.05, moment: (0.05 * half ** 2) / 3, half, length, gravity: GRAVITY };
}

/** A published measurement of a quadcopter: 0.958 kg, b 0.235 m, L 0.70 m, 1.0297 s. */
const quadcopter: BifilarTiming = {
  ...EXACT,
  mass: 0.958,
  spacing: 0.47,
  stringLength: 0.7,
  seconds: 10.297,
  swings: 10,
};

describe('the moment of inertia from a two-string pendulum', () => {
  test('of a published quadcopter is the printed 0.0199 kg m^2, to its last digit', () => {
    expect(Math.abs(bifilarMoment(quadcopter).moment - 0.0199)).toBeLessThan(0.00005);
  });

  // Written out anew: b is half the spacing with 4 pi^2, and the full spacing goes with 16 pi^2.
  test('is m g (spacing)^2 P^2 / (16 pi^2 L): taking the spacing for its half is a factor of 4, both slips apart 16', () => {
    const { moment } = bifilarMoment(quadcopter);
    const numerator = (0.958 * GRAVITY * 1.0297 ** 2) / (Math.PI ** 2 * 0.7);
    expect(moment / ((numerator * 0.47 ** 2) / 16)).toBeCloseTo(1, 13);
    const fullWithFour = (numerator * 0.47 ** 2) / 4;
    const halfWithSixteen = (numerator * 0.235 ** 2) / 16;
    expect(fullWithFour / moment).toBeCloseTo(4, 13);
    expect(fullWithFour / halfWithSixteen).toBeCloseTo(16, 13);
  });

  // The exact equation of motion, by quadrature; e = a^2 (1 + 9 (b/L)^2) / 16 is below 1e-6 at a = 1e-3, (b/L) <= 1.
  test('of an exact pendulum at one milliradian is the one that it was built with', () => {
    for (const half of [0.01, 0.1, 0.3]) {
      for (const length of [0.3, 1, 2.5]) {
        const pendulum = bar(half, length);
        const { moment } = bifilarMoment(timingOf(pendulum, exactPeriod(pendulum, 1e-3)));
        const excess = (1e-6 * (1 + 9 * (half / length) ** 2)) / 8;
        expect(moment / pendulum.moment - 1).toBeGreaterThan(0.999 * excess - 1e-13);
        expect(moment / pendulum.moment - 1).toBeLessThan(1.001 * excess + 1e-13);
      }
    }
  });

  test('less the cradle is that of the body, the cradle hanging with it', () => {
    const body = { mass: 0.012, moment: 9e-6 };
    const cradle = { mass: 0.03, moment: 2.5e-5 };
    const together: Pendulum = {
      mass: 0.042,
      moment: 3.4e-5,
      half: 0.03,
      length: 0.8,
      gravity: GRAVITY,
    };
    const timing: BifilarTiming = {
      ...timingOf(together, 20 * exactPeriod(together, 1e-5), 20),
      mass: body.mass,
      cradleMass: cradle.mass,
      cradleMoment: cradle.moment,
    };
    expect(bifilarMoment(timing).moment / body.moment).toBeCloseTo(1, 9);
  });

  test('uses standard gravity unless another is given, and goes with it', () => {
    const standard = bifilarMoment(quadcopter).moment;
    expect(bifilarMoment({ ...quadcopter, gravity: GRAVITY }).moment).toBe(standard);
    const { moment } = bifilarMoment({ ...quadcopter, gravity: 9.78 });
    expect(moment / standard).toBeCloseTo(9.78 / GRAVITY, 14);
  });

  test('of a body without mass is nothing, and of a lighter-than-nothing model is negative: for others to refuse', () => {
    expect(bifilarMoment({ ...quadcopter, mass: 0 })).toEqual({ moment: 0, uncertainty: 0 });
    expect(bifilarMoment({ ...quadcopter, mass: -0.1 }).moment).toBeLessThan(0);
    const { moment } = bifilarMoment({ ...quadcopter, cradleMoment: 1 });
    expect(moment).toBeCloseTo(0.0199 - 1, 4);
  });

  test('is refused of a length, time or count that cannot be, by its name', () => {
    for (const name of ['spacing', 'stringLength', 'seconds', 'swings', 'gravity'] as const) {
      for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(() => bifilarMoment({ ...quadcopter, [name]: value })).toThrow(name);
      }
    }
    for (const name of [
      'massUncertainty',
      'spacingUncertainty',
      'stringLengthUncertainty',
      'secondsUncertainty',
      'cradleMass',
      'cradleMoment',
      'cradleMassUncertainty',
      'cradleMomentUncertainty',
      'amplitude',
    ] as const) {
      for (const value of [-1e-9, Number.NaN, Number.POSITIVE_INFINITY]) {
        expect(() => bifilarMoment({ ...quadcopter, [name]: value })).toThrow(name);
      }
    }
    expect(() => bifilarMoment({ ...quadcopter, mass: Number.NaN })).toThrow('mass');
  });
});

describe('the amplitude of a two-string pendulum', () => {
  const shapes = [bar(0.05, 2), bar(0.1, 0.3), bar(0.1, 0.1)];

  test('lengthens the period by a^2/16 (1 - 3 (b/L)^2 + 4 (b/L)^2 m b^2 / I): what is left falls as a^4', () => {
    for (const pendulum of shapes) {
      const still = exactPeriod(pendulum, 1e-5);
      const slope = (pendulum.half / pendulum.length) ** 2;
      const left = [0.04, 0.02].map((a) => {
        const e = (a ** 2 * (1 - 3 * slope + 12 * slope)) / 16;
        return exactPeriod(pendulum, a) / still - 1 - e;
      });
      // Fourth order: 16 times less at half the amplitude, up to the sixth order, a^2 = 0.0016 with factors to 40.
      expect(Math.abs(left[0] / left[1] / 16 - 1)).toBeLessThan(0.06);
    }
  });

  // 2 e = a^2 (1 + 9 (b/L)^2) / 8, and a fourth order that was seen below 0.03 of it here.
  test('at 10 degrees makes the moment of a bar on long strings 0.38 % too great, on strings of half its length 3.8 %', () => {
    const amplitude = Math.PI / 18;
    const tooGreat = (pendulum: Pendulum) =>
      bifilarMoment(timingOf(pendulum, exactPeriod(pendulum, amplitude))).moment / pendulum.moment -
      1;
    expect(Math.abs(tooGreat(bar(0.05, 2)) / 0.0038 - 1)).toBeLessThan(0.03);
    expect(Math.abs(tooGreat(bar(0.1, 0.1)) / 0.038 - 1)).toBeLessThan(0.03);
  });

  // The sixth order is a^2 (1 + 9 (b/L)^2) of the fourth, 0.05 at 4 degrees on the shortest strings.
  test('once allowed for leaves an error that falls sixteen times when the amplitude is halved', () => {
    for (const pendulum of shapes) {
      const [coarse, fine] = [4, 2].map((degrees) => allowedFor(pendulum, degrees));
      expect(Math.abs(coarse / fine / 16 - 1)).toBeLessThan(0.05);
    }
  });

  // a^4 / 100 = 1.5e-4 (seen 1.04e-4).
  test('of 20 degrees on long strings, once allowed for, leaves less than a^4 / 100 of error', () => {
    const left = Math.abs(allowedFor(shapes[0], 20));
    expect(left).toBeLessThan((Math.PI / 9) ** 4 / 100);
  });

  /** Relative error of the moment of a pendulum that swings `degrees` to either side and is told so. */
  function allowedFor(pendulum: Pendulum, degrees: number): number {
    const amplitude = (degrees * Math.PI) / 180;
    const timing = timingOf(pendulum, exactPeriod(pendulum, amplitude));
    return bifilarMoment({ ...timing, amplitude }).moment / pendulum.moment - 1;
  }
});

/** A normal deviate, Box and Muller. */
function normal(random: Seeded): number {
  return Math.sqrt(-2 * Math.log(1 - random.unit())) * Math.cos(2 * Math.PI * random.unit());
}

describe('the standard uncertainty of the moment', () => {
  const body: BifilarTiming = {
    mass: 0.0102,
    spacing: 0.06,
    stringLength: 0.9,
    seconds: 25,
    swings: 20,
    cradleMass: 0.004,
    cradleMoment: 1e-6,
    massUncertainty: 0.00008,
    spacingUncertainty: 0.0003,
    stringLengthUncertainty: 0.006,
    secondsUncertainty: 0.15,
    cradleMassUncertainty: 0.00006,
    cradleMomentUncertainty: 6e-8,
  };
  const only = (changes: Partial<BifilarTiming>) =>
    bifilarMoment({
      ...body,
      ...EXACT,
      cradleMassUncertainty: 0,
      cradleMomentUncertainty: 0,
      ...changes,
    }).uncertainty;

  test('is once the relative error of mass and string, twice that of spacing and time, of all that hangs', () => {
    const total = bifilarMoment({ ...body, cradleMoment: 0 }).moment;
    expect(only({})).toBe(0);
    expect(only({ massUncertainty: 0.000142 }) / total).toBeCloseTo(0.01, 12);
    expect(only({ cradleMassUncertainty: 0.000142 }) / total).toBeCloseTo(0.01, 12);
    expect(only({ stringLengthUncertainty: 0.009 }) / total).toBeCloseTo(0.01, 12);
    expect(only({ spacingUncertainty: 0.0006 }) / total).toBeCloseTo(0.02, 12);
    expect(only({ secondsUncertainty: 0.25 }) / total).toBeCloseTo(0.02, 12);
    expect(only({ cradleMomentUncertainty: 3e-8 })).toBeCloseTo(3e-8, 20);
  });

  // 40,000 draws know a standard deviation to 1 / sqrt(80,000) = 0.35 %; four times that, and 0.05 % for the second order
  // of relative errors of 1 %.
  test('is the scatter of 40,000 measurements with normal errors', () => {
    const random = seeded(360);
    const count = 40_000;
    let sum = 0;
    let squares = 0;
    const stated = bifilarMoment(body);
    for (let i = 0; i < count; i++) {
      const { moment } = bifilarMoment({
        ...body,
        mass: body.mass + body.massUncertainty * normal(random),
        spacing: body.spacing + body.spacingUncertainty * normal(random),
        stringLength: body.stringLength + body.stringLengthUncertainty * normal(random),
        seconds: body.seconds + body.secondsUncertainty * normal(random),
        cradleMass: 0.004 + 0.00006 * normal(random),
        cradleMoment: 1e-6 + 6e-8 * normal(random),
      });
      const off = moment - stated.moment;
      sum += off;
      squares += off * off;
    }
    const mean = sum / count;
    const deviation = Math.sqrt(squares / count - mean ** 2);
    expect(Math.abs(deviation / stated.uncertainty - 1)).toBeLessThan(0.0145);
  });
});

import { factor95 } from '../../../engine/identify/distributions';
import { degreesFromRadians, radiansFromDegrees } from '../../../engine/units';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';

/** Force at the gauge against pitch of one rung at one speed, N. */
export interface RungCurves {
  readonly pitchDeg: readonly number[];
  readonly model: readonly number[];
  /** The model's friction to both sides. */
  readonly frictionLow: readonly number[];
  readonly frictionHigh: readonly number[];
  readonly fit: readonly number[];
  /** 95 % band of the fitted curve, from the covariance of J_yy - J_zz and J_yz. */
  readonly fitLow: readonly number[];
  readonly fitHigh: readonly number[];
}

const SAMPLES = 61;
/** The curves go on past the readings by this share of their span. */
const BEYOND = 0.08;

/** Curves of a rung over the pitches that were read, at the speed given (rad/s). */
export function rungCurves(rung: RungAnalysis, fitted: FittedHead, speed: number): RungCurves {
  const degs = rung.readings.map(({ pitch }) => degreesFromRadians(pitch));
  const low = degs.reduce((least, deg) => Math.min(least, deg), Infinity);
  const high = degs.reduce((most, deg) => Math.max(most, deg), -Infinity);
  const room = BEYOND * (high - low) || 5;
  const pitchDeg = Array.from(
    { length: SAMPLES },
    (_, i) => low - room + ((high - low + 2 * room) * i) / (SAMPLES - 1),
  );
  const { head, setup } = rung;
  const deficit = fitted.deficit;
  const factor = deficit ? factor95(deficit.freedom) : Number.NaN;
  const rows = pitchDeg.map((deg) => {
    const pitch = radiansFromDegrees(deg);
    const model = head.force(pitch, speed);
    const friction = head.frictionForce(pitch, speed);
    if (!deficit) return { model, friction, fit: Number.NaN, half: Number.NaN };
    const per = -head.forcePerMoment(pitch) * (speed * Math.cos(setup.precone)) ** 2;
    const [a, p] = [(per * Math.sin(2 * pitch)) / 2, per * Math.cos(2 * pitch)];
    const [aa, ap, , pp] = deficit.covariance;
    const variance = a * a * aa + 2 * a * p * ap + p * p * pp;
    return {
      model,
      friction,
      fit: model + a * deficit.spread + p * deficit.product,
      half: factor * Math.sqrt(Math.max(0, variance)),
    };
  });
  return {
    pitchDeg,
    model: rows.map((row) => row.model),
    frictionLow: rows.map((row) => row.model - row.friction),
    frictionHigh: rows.map((row) => row.model + row.friction),
    fit: rows.map((row) => row.fit),
    fitLow: rows.map((row) => row.fit - row.half),
    fitHigh: rows.map((row) => row.fit + row.half),
  };
}

/** Speeds at which a rung was read, rad/s, ascending; two within a thousandth are one. */
export function speedsOf({ readings }: RungAnalysis): readonly number[] {
  const all = [...new Set(readings.map(({ angularSpeed }) => angularSpeed))].toSorted(
    (a, b) => a - b,
  );
  return all.filter((speed, k) => k === 0 || speed > 1.001 * all[k - 1]);
}

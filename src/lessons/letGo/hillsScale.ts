import { radiansFromDegrees } from '../../engine/units';
import type { HeadReading } from '../../state/reading';

/** What of the energy is drawn, SI and degrees. */
export interface HillsScale {
  readonly fromDeg: number;
  readonly toDeg: number;
  /** J. */
  readonly low: number;
  readonly high: number;
}

/** Beyond the ends of the travel, degrees. */
const MARGIN_DEG = 4;
/** A head that needs next to nothing must look flat: half a millijoule a millimetre of arm (1 N at the ball over a radian, halved). */
const FLOOR_PER_REACH = 0.5;
const USUAL_REACH = 0.01;

/** Pitches that can be driven, a little beyond each end; all that is computed where nothing ends them. */
export function drivenSpan(reading: HeadReading): readonly [number, number] {
  const ends = reading.linkage?.reach === 0 ? null : reading.linkage?.ends;
  return ends ? [ends.low.deg, ends.high.deg] : [-90, 90];
}

/** `level`: energy that must be in view too, J. */
export function hillsScale(reading: HeadReading, level: number | null): HillsScale {
  const [lowDeg, highDeg] = drivenSpan(reading);
  const fromDeg = Math.max(-90, lowDeg - MARGIN_DEG);
  const toDeg = Math.min(90, highDeg + MARGIN_DEG);
  let low = Infinity;
  let high = -Infinity;
  const take = (value: number) => {
    // A gap is NaN, which no comparison takes.
    if (value < low) low = value;
    if (value > high) high = value;
  };
  const { pitchDeg, energy } = reading.curve;
  for (let i = 0; i < pitchDeg.length; i++) {
    if (pitchDeg[i] >= lowDeg && pitchDeg[i] <= highDeg) take(energy[i]);
  }
  if (level !== null) take(level);
  if (low > high) [low, high] = [0, 0];
  const floor = FLOOR_PER_REACH * (reading.linkage?.reach || USUAL_REACH);
  const span = Math.max(high - low, floor);
  const middle = (low + high) / 2;
  if (high - low < floor) return { fromDeg, toDeg, low: middle - floor, high: middle + floor };
  return { fromDeg, toDeg, low: low - 0.2 * span, high: high + 0.16 * span };
}

/** The ball's place over the curve: its middle lies along the normal of the drawn curve, in pixels. */
export function ballPlace(
  reading: HeadReading,
  pitchDeg: number,
  px: (pitchDeg: number) => number,
  py: (energy: number) => number,
  radius: number,
): readonly [number, number] {
  const x = px(pitchDeg);
  const y = py(reading.energyAt(pitchDeg));
  // dy/dx in pixels: dV/dt = -M, and both axes are straight.
  const perPixel = (px(pitchDeg + 1) - x) / radiansFromDegrees(1);
  const perJoule = py(1) - py(0);
  const slope = (-reading.momentAt(pitchDeg) * perJoule) / perPixel;
  const length = Math.hypot(1, slope);
  return [x + (radius * slope) / length, y - radius / length];
}

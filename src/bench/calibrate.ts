import {
  type Calibration,
  type CalibrationFault,
  lineCalibration,
  linkageCalibration,
} from '../engine/identify/calibration';
import type { Result } from '../engine/result';
import { metresFromMm, radiansFromDegrees } from '../engine/units';
import type { HeadReading } from '../state/reading';
import type { BenchState } from './deskTypes';

/** A millimetre of scale moves the slider by one, or a division by one. */
const FIRST_GAIN_MM = 1;

/** The scale by its pairs: straight, or through the linkage's true curve. */
export function calibrate(
  { pairs, scaleUnit, calibration }: Pick<BenchState, 'pairs' | 'scaleUnit' | 'calibration'>,
  reading: HeadReading,
): Result<Calibration, CalibrationFault> {
  const si = pairs.map(({ scale, pitchDeg }) => ({
    scale: scaleUnit === 'mm' ? metresFromMm(scale) : scale,
    pitch: radiansFromDegrees(pitchDeg),
  }));
  if (calibration === 'line' || !reading.linkage) return lineCalibration(si);
  const gain = scaleUnit === 'mm' ? 1 : metresFromMm(FIRST_GAIN_MM);
  const rising = Math.sign(slopeOf(si)) * Math.sign(reading.linkage.ratioAt(0)) || 1;
  return linkageCalibration(si, pitchAtTravel(reading), rising * gain);
}

function slopeOf(pairs: readonly { readonly scale: number; readonly pitch: number }[]): number {
  const [first] = pairs;
  const last = pairs.at(-1);
  return first && last ? (last.pitch - first.pitch) * (last.scale - first.scale) : 1;
}

/** Half a degree: between two samples the curve is straight to (h^2/8) times its bend, 1e-5 rad for arms of usual length. */
const STEP_DEG = 0.5;

/** Pitch against slider travel within the travel about flat pitch, rad over m; NaN outside. */
function pitchAtTravel({ linkage }: HeadReading): (travel: number) => number {
  if (!linkage) return () => Number.NaN;
  const low = linkage.ends?.low.deg ?? -90;
  const high = linkage.ends?.high.deg ?? 90;
  const samples: { readonly travel: number; readonly pitch: number }[] = [];
  for (let pitchDeg = low; pitchDeg <= high; pitchDeg += STEP_DEG)
    samples.push({ travel: linkage.travelAt(pitchDeg), pitch: radiansFromDegrees(pitchDeg) });
  const rising = samples
    .filter(({ travel }) => Number.isFinite(travel))
    .toSorted((a, b) => a.travel - b.travel);
  return (travel) => {
    const k = rising.findIndex((one) => one.travel >= travel);
    if (k <= 0) return k === 0 && rising[0].travel === travel ? rising[0].pitch : Number.NaN;
    const [a, b] = [rising[k - 1], rising[k]];
    return a.pitch + ((travel - a.travel) / (b.travel - a.travel)) * (b.pitch - a.pitch);
  };
}

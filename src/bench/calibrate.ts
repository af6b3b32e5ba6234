import {
  type Calibration,
  type CalibrationFault,
  type CalibrationPair,
  lineCalibration,
  linkageCalibration,
} from '../engine/identify/calibration';
import { fail, type Result } from '../engine/result';
import { degreesFromRadians, metresFromMm, radiansFromDegrees } from '../engine/units';
import type { HeadReading } from '../state/reading';
import type { BenchState } from './deskTypes';

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
  const first = straightTravel(si, reading);
  if (!first) return lineCalibrationFault(si);
  // The fit starts at no offset: the travel is counted from where the scale's zero seems to be.
  const curve = pitchAtTravel(reading);
  return linkageCalibration(si, (travel) => curve(travel + first.offset), first.gain);
}

/** Too few pairs, or all at one scale reading: the line says so; otherwise a pair lies beyond the linkage's reach. */
function lineCalibrationFault(
  pairs: readonly CalibrationPair[],
): Result<Calibration, CalibrationFault> {
  const line = lineCalibration(pairs);
  return line.ok ? fail({ kind: 'noFit' }) : line;
}

/** Slider travel against scale, straight by least squares through the travels that the measured pitches have. */
function straightTravel(
  pairs: readonly CalibrationPair[],
  { linkage }: HeadReading,
): { readonly offset: number; readonly gain: number } | null {
  const travels = pairs.map(
    ({ pitch }) => linkage?.travelAt(degreesFromRadians(pitch)) ?? Number.NaN,
  );
  const meanTravel = mean(travels);
  const meanScale = mean(pairs.map(({ scale }) => scale));
  let [both, squares] = [0, 0];
  pairs.forEach(({ scale }, k) => {
    both += (scale - meanScale) * (travels[k] - meanTravel);
    squares += (scale - meanScale) ** 2;
  });
  const gain = both / squares;
  return Number.isFinite(gain) && gain !== 0
    ? { offset: meanTravel - gain * meanScale, gain }
    : null;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
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

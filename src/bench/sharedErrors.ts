import type { Calibration } from '../engine/identify/calibration';
import type { SharedError } from '../engine/identify/sharedErrors';
import { radiansFromDegrees } from '../engine/units';

/** Standard uncertainties of what all runs of a bench have alike, in the units of the page. */
export interface SharedChoice {
  /** Gauge: force shown against true, percent of it. */
  readonly gainPercent: number;
  /** Arm or linkage between moment and force, percent. */
  readonly leverPercent: number;
  /** Tachometer, percent. */
  readonly speedPercent: number;
  /** Zero of the pitch scale or angle gauge against the chord, degrees. */
  readonly pitchZeroDeg: number;
}

/**
 * What a hand gauge in its class, a measured arm, an optical tachometer and an angle gauge set by eye leave (common practice);
 * a person who knows theirs better writes it.
 */
export const USUAL_SHARED: SharedChoice = {
  gainPercent: 0.5,
  leverPercent: 0.5,
  speedPercent: 0.1,
  pitchZeroDeg: 0.1,
};

/** The shared errors of a fit; those of the calibration only where readings went through it. */
export function sharedErrors(
  { gainPercent, leverPercent, speedPercent, pitchZeroDeg }: SharedChoice,
  calibration: Calibration | null,
): readonly SharedError[] {
  const known: readonly SharedError[] = [
    { id: 'gain', kind: 'gain', sigma: gainPercent / 100 },
    { id: 'lever', kind: 'lever', sigma: leverPercent / 100 },
    { id: 'speed', kind: 'speed', sigma: speedPercent / 100 },
    { id: 'pitch', kind: 'pitch', sigma: radiansFromDegrees(pitchZeroDeg) },
  ];
  const scale = calibration
    ? ([0, 1] as const).map((component): SharedError => {
        const freedom = calibration.shiftFreedom;
        return { id: `scale ${component}`, kind: 'scale', component, freedom };
      })
    : [];
  return [...known.filter((one) => one.kind === 'scale' || one.sigma > 0), ...scale];
}

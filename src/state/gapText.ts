import type { ClearancePair, ClearanceRange } from '../design/clearance/clearanceTypes';
import { INCH_MM, mmFromMetres } from '../engine/units';
import { t } from '../messages';
import { fixed, showDegrees, significant } from './quantities';
import type { DisplayUnits } from './settings';

/** A gap or depth: hundredths of a millimetre below a hundred, as a feeler gauge has them. */
export function lengthText(metres: number, units: DisplayUnits): string {
  const mm = mmFromMetres(metres);
  const space = '\u00a0';
  if (units.length === 'in') return `${fixed(mm / INCH_MM, 4)}${space}in`;
  return `${Math.abs(mm) < 100 ? fixed(mm, 2) : significant(mm)}${space}mm`;
}

/** An error, to one digit, never rounded to nothing. */
export function errorText(metres: number, units: DisplayUnits): string {
  const mm = mmFromMetres(metres);
  const isInch = units.length === 'in';
  const shown = isInch ? mm / INCH_MM : mm;
  const [least, decimals] = isInch ? [0.0001, 4] : [0.01, 2];
  return `${fixed(Math.max(least, Math.ceil(shown / least - 1e-9) * least), decimals)}\u00a0${units.length}`;
}

/** "2.31 mm at +38.2 deg", or how far the part is in. */
export function gapOnStage(pair: ClearancePair, units: DisplayUnits): string {
  const pitch = signedPitch(pair.pitchDeg);
  const length = lengthText(Math.abs(pair.gap), units);
  const key = pair.meeting === 'clear' ? 'clearance.stage' : 'clearance.stageIn';
  const text = t(key, { length, pitch });
  return pair.anyAzimuth || pair.meeting !== 'clear'
    ? text
    : t('clearance.stageTurned', { text, azimuth: showDegrees(pair.azimuthDeg, 0) });
}

/** How the worst overlap is told in one sentence; null without one. */
export function overlapText(
  pairs: readonly ClearancePair[],
  nameOf: (id: string) => string,
  units: DisplayUnits,
): string | null {
  const overlaps = pairs.filter(({ meeting }) => meeting !== 'clear');
  const [first] = overlaps;
  if (!first) return null;
  const text = t(
    first.meeting === 'keepOutInside' ? 'clearance.overlapInside' : 'clearance.overlap',
    {
      part: nameOf(first.part),
      keepOut: nameOf(first.keepOut),
      depth: lengthText(-first.gap, units),
      pitch: signedPitch(first.pitchDeg),
    },
  );
  const more = overlaps.length - 1;
  return more === 0 ? text : `${text} ${t('clearance.more', { count: more })}`;
}

/** Which pitches were looked through, and why those. */
export function rangeText({ lowDeg, highDeg, from }: ClearanceRange): string {
  return t(`clearance.range.${from}`, {
    low: signedPitch(lowDeg),
    high: signedPitch(highDeg),
  });
}

export function signedPitch(pitchDeg: number): string {
  const text = showDegrees(pitchDeg);
  return pitchDeg > 0 && !text.startsWith('0.0') ? `+${text}` : text;
}

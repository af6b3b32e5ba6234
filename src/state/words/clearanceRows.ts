import type { ClearancePair, HeadClearance } from '../../design/clearance/clearanceTypes';
import { t } from '../../messages';
import { errorText, lengthText, signedPitch } from '../gapText';
import { showDegrees } from '../quantities';
import type { DisplayUnits } from '../settings';

export type GapState = 'clear' | 'close' | 'overlap' | 'inside';

/** A line of the table of gaps. */
export interface ClearanceRow {
  readonly key: string;
  readonly part: string;
  readonly partName: string;
  readonly keepOut: string;
  readonly keepOutName: string;
  readonly gap: string;
  readonly error: string;
  readonly pitch: string;
  readonly pitchDeg: number;
  readonly azimuth: string;
  readonly state: GapState;
  readonly words: string;
}

export function clearanceRows(
  { pairs, wanted }: HeadClearance,
  nameOf: (id: string) => string,
  fixedTo: (id: string) => string | undefined,
  units: DisplayUnits,
): readonly ClearanceRow[] {
  return pairs.map((pair): ClearanceRow => {
    const state = gapState(pair, wanted);
    const size = lengthText(Math.abs(pair.gap), units);
    return {
      key: `${pair.part} ${pair.keepOut}`,
      part: pair.part,
      partName: nameOf(pair.part),
      keepOut: pair.keepOut,
      keepOutName: nameOf(pair.keepOut),
      gap: pair.meeting === 'clear' ? size : t('clearance.in', { depth: size }),
      error: `\u00b1${errorText(pair.error, units)}${pair.reduced ? '*' : ''}`,
      pitch: signedPitch(pair.pitchDeg),
      pitchDeg: pair.pitchDeg,
      azimuth: azimuthText(pair, fixedTo(pair.keepOut)),
      state,
      words: t(`clearance.is.${state}`),
    };
  });
}

export function gapState({ meeting, gap }: ClearancePair, wanted: number): GapState {
  if (meeting === 'keepOutInside') return 'inside';
  if (meeting === 'cut') return 'overlap';
  return gap < wanted ? 'close' : 'clear';
}

function azimuthText({ anyAzimuth, azimuthDeg }: ClearancePair, fixedTo: string | undefined) {
  if (fixedTo === 'hub') return t('clearance.hub');
  return anyAzimuth ? t('clearance.any') : showDegrees(azimuthDeg, 0);
}

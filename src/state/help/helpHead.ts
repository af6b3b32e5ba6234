import type { Design } from '../../design/design';
import type { HeadModel } from '../../design/headModel';
import { type Radians, radiansFromDegrees } from '../../engine/units';
import type { HeadReading, PartReading } from '../reading';
import type { Session } from '../session';
import { turningParts, turnsWithGrip } from '../turningParts';

/** The head as the help puts its numbers into formulas. */
export interface HelpHead {
  readonly reading: HeadReading;
  readonly model: HeadModel;
  readonly design: Design;
  /**
   * The pitch that formulas are worked at: the dial's. While that stands at flat, the end of the pitch in use that takes more
   * to hold, which is the verdict's.
   */
  readonly pitchDeg: number;
  readonly pitch: Radians;
  /** The selected part, where it turns with the grip. */
  readonly selected: PartReading | null;
}

/** Nearer to flat than this the dial says nothing: most moments vanish there. Degrees. */
const FLAT = 0.05;

export function helpHead({ live, store }: Pick<Session, 'live' | 'store'>): HelpHead {
  const { reading, model } = live;
  const { pitchDeg: shown, selection, design } = store.getState();
  const pitchDeg = Math.abs(shown) < FLAT ? harderEnd(reading) : shown;
  const part = selection === null ? undefined : reading.part(selection);
  return {
    reading,
    model,
    design,
    pitchDeg,
    pitch: radiansFromDegrees(pitchDeg),
    selected: part && turnsWithGrip(part) ? part : null,
  };
}

function harderEnd(reading: HeadReading): number {
  const { usedPitchDeg: used } = reading;
  const hold = (deg: number) => Math.abs(reading.forceAt(deg) ?? reading.momentAt(deg));
  return hold(-used) > hold(used) ? -used : used;
}

/** The selected part, or the one that is largest by a measure; null without parts. */
export function partToShow(
  head: HelpHead,
  sizeOf: (part: PartReading) => number,
): PartReading | null {
  if (head.selected) return head.selected;
  const parts = turningParts(head.reading);
  return parts.reduce<PartReading | null>(
    (best, part) => (best === null || sizeOf(part) > sizeOf(best) ? part : best),
    null,
  );
}

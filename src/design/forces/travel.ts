import { travelStops, workingRange } from '../../engine/linkage/travel';
import { degreesFromRadians, metresFromMm, type Radians } from '../../engine/units';
import type { HeadModel } from '../headModel';
import { CONTROL_SECTION } from '../sections/control';
import { sectionValues } from '../sections/section';
import type { HeadLinkage } from './headLinkage';

/** What ends the pitch one way. 'open': nothing within the range looked at. */
export interface TravelEnd {
  readonly deg: number;
  readonly why: 'stop' | 'overCentre' | 'unreachable' | 'open';
}

export interface TravelEnds {
  readonly low: TravelEnd;
  readonly high: TravelEnd;
}

/**
 * How far pitch can go each way from flat before a stop of the slider, over-centre or the end of the rod's reach,
 * whichever comes first. Null: flat pitch itself is out of reach.
 */
export function travelEnds(
  { linkage }: HeadLinkage,
  model: HeadModel,
  from: Radians,
  to: Radians,
): TravelEnds | null {
  const range = workingRange(linkage, model.rotor, from, to);
  if (!range) return null;
  const { lowestTravelMm, highestTravelMm } = sectionValues(
    CONTROL_SECTION,
    model.sections.control,
  );
  const stops = travelStops(
    linkage,
    model.rotor,
    lowestTravelMm === null ? -Infinity : metresFromMm(lowestTravelMm),
    highestTravelMm === null ? Infinity : metresFromMm(highestTravelMm),
    from,
    to,
  );
  return { low: endOf(range.low, stops.low), high: endOf(range.high, stops.high) };
}

function endOf(
  own: { readonly pitch: Radians; readonly why: 'overCentre' | 'unreachable' | 'range' },
  stop: Radians | null,
): TravelEnd {
  if (stop !== null) return { deg: degreesFromRadians(stop), why: 'stop' };
  return {
    deg: degreesFromRadians(own.pitch),
    why: own.why === 'range' ? 'open' : own.why,
  };
}

import type { FreePose } from '../../design/design';
import { M, SX } from '../../engine/mass/moments';
import { mmFromMetres } from '../../engine/units';
import type { Session } from '../../state/session';

/** Height above the chord plane at which a free part first appears, mm: off the axis, so that it counts. */
const FIRST_HEIGHT_MM = 10;

/** Where a part that sits on nothing first appears: at the head's centre of mass, above the chord plane. */
export function firstPose({ store, live }: Session): FreePose {
  const { totals } = live.reading;
  // The first part of an empty head is its grip as a rule: its frame is the head's own.
  const first = store.getState().design.parts.length === 0;
  if (first) return { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
  const station = totals[M] > 0 ? Math.round(mmFromMetres(totals[SX] / totals[M])) : 0;
  return { positionMm: [station, 0, FIRST_HEIGHT_MM], rotationDeg: [0, 0, 0] };
}

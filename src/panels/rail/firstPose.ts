import type { FreePose } from '../../design/design';
import { M, SX } from '../../engine/mass/moments';
import { mmFromMetres } from '../../engine/units';
import { isKeepOut } from '../../parts/contract';
import { type PartKind, partType } from '../../parts/registry';
import type { Session } from '../../state/session';

/** Height above the chord plane at which a free part first appears, mm: off the axis, so that it counts. */
const FIRST_HEIGHT_MM = 10;

/**
 * Where a part that sits on nothing first appears: at the head's centre of mass, above the chord plane. A keep-out, which
 * is placed in the rotor frame, stands under everything that turns.
 */
export function firstPose(session: Session, kind: PartKind): FreePose {
  if (isKeepOut(partType(kind))) return underTheHead(session, 0);
  const { store, live } = session;
  const { totals } = live.reading;
  // The first part of an empty head is its grip as a rule: its frame is the head's own.
  const first = store.getState().design.parts.length === 0;
  if (first) return { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
  const station = totals[M] > 0 ? Math.round(mmFromMetres(totals[SX] / totals[M])) : 0;
  return { positionMm: [station, 0, FIRST_HEIGHT_MM], rotationDeg: [0, 0, 0] };
}

/** On the shaft, its upper face (`aboveMm` over its origin) lower than any turning part by the wanted gap and a little. */
export function underTheHead({ live }: Session, aboveMm: number): FreePose {
  const { reading } = live;
  const lowest = reading.lowestTurning() ?? 0;
  const height = mmFromMetres(lowest - reading.clearance().wanted) - SPARE_MM;
  return { positionMm: [0, 0, Math.floor(height) - aboveMm], rotationDeg: [0, 0, 0] };
}

/** What a new keep-out leaves beyond the gap that is wanted, mm. */
const SPARE_MM = 1;

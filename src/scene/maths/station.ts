import { M, SX } from '../../engine/mass/moments';
import { partType } from '../../parts/registry';
import type { HeadReading } from '../../state/reading';

/**
 * The station (x, metres) at which spread ellipse and fan are drawn: where a thread stands across the feathering axis,
 * that is the blade bolt; the head's centre of mass where there is none.
 */
export function boltStation(reading: HeadReading): number {
  for (const id of reading.order) {
    const placed = reading.part(id);
    if (!placed || placed.part.hidden) continue;
    const sockets = partType(placed.part.kind).sockets(placed.values);
    if (sockets.some((socket) => socket.mates === 'thread')) return placed.pose_G.translation[0];
  }
  const { totals } = reading;
  return totals[M] > 0 ? totals[SX] / totals[M] : 0;
}

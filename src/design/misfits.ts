import type { SeatSize } from '../parts/contract';
import { partType } from '../parts/registry';
import { socketNamed } from './check';
import type { PlacedPart } from './headNode';

/** A part that cannot go where it sits: a bolt wider than its hole, a nut of another thread, a washer too narrow. */
export interface Misfit {
  readonly part: string;
  readonly on: string;
  readonly own: SeatSize;
  readonly seat: SeatSize;
}

interface Head {
  readonly parts: readonly PlacedPart[];
  placed(id: string): PlacedPart | undefined;
}

/** Visible parts whose sizes do not go together with what they sit on. Nothing is refused for it: a maker may bore. */
export function misfits(head: Head): Misfit[] {
  const found: Misfit[] = [];
  for (const placed of head.parts) {
    const { part, values } = placed;
    const mount = part.socket;
    const own = mount && !part.hidden ? partType(part.kind).seatSize?.(values) : undefined;
    if (!mount || !own) continue;
    const parent = head.placed(mount.part);
    const seat = parent && socketNamed(parent.sockets, mount.name)?.size;
    if (parent && seat && !goesTogether(own, seat)) {
      found.push({ part: nameOf(part), on: nameOf(parent.part), own, seat });
    }
  }
  return found;
}

function nameOf(part: { readonly id: string; readonly name: string }): string {
  return part.name === '' ? part.id : part.name;
}

/** Sizes are typed decimals: equal to a thousandth of a millimetre. */
const SAME_MM = 1e-3;

function goesTogether(own: SeatSize, seat: SeatSize): boolean {
  if (own.kind === 'thread' && seat.kind === 'thread') {
    return (
      Math.abs(own.diameterMm - seat.diameterMm) <= SAME_MM &&
      Math.abs(own.pitchMm - seat.pitchMm) <= SAME_MM
    );
  }
  if (own.kind === 'shank' && seat.kind === 'hole') return own.diameterMm <= seat.diameterMm;
  if (own.kind === 'hole' && seat.kind === 'shank') return own.diameterMm >= seat.diameterMm;
  return true;
}

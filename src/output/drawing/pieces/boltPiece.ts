import type { ValuesByKind } from '../../../parts/registry';
import type { Piece, Segment } from '../piece';
import type { SizeWriter } from '../sizeWriter';
import { type Places, placesOf } from './boltPlaces';
import { endOf, hexesOf, outerOf, socketOf, threadLines } from './boltShape';
import { diameters, lengths, notes, remarksOf } from './boltSizes';

type Bolt = ValuesByKind['bolt'];

/** The bolt with its head at the left: u = 0 on top, the datum under the head. */
export function boltPiece(values: Bolt, writer: SizeWriter): Piece {
  const at = placesOf(values, writer);
  const outer = outerOf(values, at);
  const { inside, hole } = socketOf(values);
  return {
    outer,
    inside: [...inside, ...threadLimit(at)],
    regions: [{ points: [...outer.slice(hole.length > 0 ? 1 : 0), ...hole.toReversed()], tilt: 1 }],
    hexes: hexesOf(values, at),
    threads: threadLines(values, at),
    end: endOf(values, at),
    sizes: [
      ...lengths(values, at, writer),
      ...diameters(values, at, writer),
      ...notes(values, at, writer),
    ],
    remarks: remarksOf(values, writer),
  };
}

/** Where the thread ends: drawn whole above, and from root to crest in the cut half (ISO 6410-1). */
function threadLimit(at: Places): Segment[] {
  if (at.threadFrom <= at.seat + 1e-9) return [];
  return [{ from: [at.threadFrom, at.root], to: [at.threadFrom, at.radius] }];
}

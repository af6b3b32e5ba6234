import type { ValuesByKind } from '../../../parts/registry';
import { insideOf, type Piece, segmentsOf } from '../piece';
import type { SizeWriter } from '../sizeWriter';
import { placesOf } from './nutPlaces';
import { endOf, hexesOf, holeOf, outerOf, ringOf, threadLine } from './nutShape';
import { lengths, notes, remarksOf, widths } from './nutSizes';

type Nut = ValuesByKind['nut'];

/** The nut with its clamped face, the datum, at the left. */
export function nutPiece(values: Nut, writer: SizeWriter): Piece {
  const at = placesOf(values);
  const outer = outerOf(values, at);
  const hole = holeOf(values, at);
  const ring = ringOf(values, at);
  const metal = at.closed
    ? [...outer.slice(1), ...hole.toReversed()]
    : [...outer.slice(1, -1), ...hole.toReversed()];
  return {
    outer,
    inside: ring
      ? [...insideOf(hole.slice(0, ring.boreFrom)), ...ring.lines, ...segmentsOf(hole)]
      : insideOf(hole),
    regions: [
      { points: metal, tilt: 1 },
      ...(ring ? [{ points: ring.outline, tilt: -1 } as const] : []),
    ],
    hexes: hexesOf(values, at),
    threads: [threadLine(values, at)],
    end: endOf(values, at),
    sizes: [
      ...lengths(values, at, writer),
      ...widths(values, at, writer),
      ...notes(values, at, writer),
    ],
    remarks: remarksOf(values, writer),
  };
}

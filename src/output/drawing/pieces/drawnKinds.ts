import type { Design, Part } from '../../../design/design';
import { materialsOf, resolveValues } from '../../../design/resolve';
import type { PartValues } from '../../../design/values';
import type { PartKind, ValuesByKind } from '../../../parts/registry';
import type { Piece } from '../piece';
import type { SizeWriter } from '../sizeWriter';
import { boltPiece } from './boltPiece';
import { nutPiece } from './nutPiece';
import { washerPiece, weightPiece } from './turnedPieces';

/** The part types that have a drawing; a new one is one line. */
const DRAWN: { readonly [K in PartKind]?: (values: ValuesByKind[K], writer: SizeWriter) => Piece } =
  {
    bolt: boltPiece,
    nut: nutPiece,
    weight: weightPiece,
    washer: washerPiece,
  };

export function canDraw(part: Pick<Part, 'kind'>): boolean {
  return DRAWN[part.kind] !== undefined;
}

/** The parts of a design that have a drawing, in order. */
export function drawnParts(design: Design): readonly Part[] {
  return design.parts.filter(
    (part) => canDraw(part) && resolveValues(part, materialsOf(design)).ok,
  );
}

/** Throws on a part that has no drawing: ask `canDraw`. */
export function pieceOf(kind: PartKind, values: PartValues, writer: SizeWriter): Piece {
  const draw = DRAWN[kind] as ((values: PartValues, writer: SizeWriter) => Piece) | undefined;
  if (!draw) throw new Error(`pieceOf(): no drawing of this kind: ${kind}`);
  return draw(values, writer);
}

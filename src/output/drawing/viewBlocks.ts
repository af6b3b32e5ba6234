import { boundsOf } from './block';
import { diameterColumns, flatsRow, lengthRows } from './dimensions';
import { type Leader, leaderNotes } from './leaders';
import { type DiameterSize, type Piece, widestBetween } from './piece';
import type { Box, Entity } from './sheetTypes';
import { textBox } from './textSize';
import { endRadius, endView, mainView } from './views';

/** A view with its dimensions about its own origin: the left end of the axis, or the middle of the end view. */
export interface ViewBlock {
  readonly entities: readonly Entity[];
  readonly box: Box;
}

/** From the outline, or what stands highest beside it, to the first leader's shelf. */
const SHELVES = 6;

export function mainBlock(piece: Piece, scale: number): ViewBlock {
  const { outer, sizes } = piece;
  const length = outer[outer.length - 1][0];
  const widest = widestBetween(outer, 0, length) * scale;
  const columns: { size: DiameterSize; side: 'left' | 'right' }[] = [];
  const leaders: Leader[] = [];
  for (const size of sizes) {
    if (size.kind === 'diameter') {
      const side = sideOf(size, piece, length);
      if (side) columns.push({ size, side });
      else leaders.push(leaderTo(size, scale));
    } else if (size.kind === 'note') {
      const { feature, text, at } = size;
      leaders.push({ feature, text, x: at[0] * scale, y: at[1] * scale });
    }
  }
  const beside = diameterColumns(columns, scale, length * scale, widest);
  const highest = Math.max(widest, boundsOf(beside).y1);
  const entities = [
    ...mainView(piece, scale),
    ...lengthRows(piece, scale, widest),
    ...beside,
    ...leaderNotes(leaders, highest + SHELVES, textsOf(beside)),
  ];
  return { entities, box: boundsOf(entities) };
}

function textsOf(entities: readonly Entity[]): Box[] {
  return entities.flatMap((one) => (one.shape === 'text' ? [textBox(one)] : []));
}

/** The end of the view that a diameter's extension lines reach without crossing wider metal, the nearer one first. */
function sideOf(
  { r, from, to, hole }: DiameterSize,
  { outer }: Piece,
  length: number,
): 'left' | 'right' | null {
  if (hole) return hole;
  const left = widestBetween(outer, 0, from) <= r + 1e-9;
  const right = widestBetween(outer, to, length) <= r + 1e-9;
  if (left && right) return from <= length - to ? 'left' : 'right';
  return left ? 'left' : right ? 'right' : null;
}

function leaderTo({ feature, text, r, from, to }: DiameterSize, scale: number): Leader {
  return { feature, text, x: ((from + to) / 2) * scale, y: r * scale };
}

export function endBlock(piece: Piece, scale: number): ViewBlock {
  const reach = endRadius(piece) * scale;
  const leaders: Leader[] = [];
  const flats: Entity[] = [];
  for (const size of piece.sizes) {
    if (size.kind === 'flats') {
      flats.push(...flatsRow(size.feature, size.text, size.across, scale, reach));
    } else if (size.kind === 'endNote') {
      const { feature, text, at } = size;
      leaders.push({ feature, text, x: at[0] * scale, y: at[1] * scale });
    }
  }
  const entities = [...endView(piece, scale), ...flats, ...leaderNotes(leaders, reach + SHELVES)];
  return { entities, box: boundsOf(entities) };
}

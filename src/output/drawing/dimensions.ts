import { line } from './arcs';
import type { DiameterSize, LengthSize, Piece } from './piece';
import { ARROW_LENGTH, type ArrowEntity, type Entity, type TextEntity } from './sheetTypes';
import { textWidth } from './textSize';

/** Height of the dimensions' figures, mm (ISO 3098-1). */
export const FIGURES = 2.5;
/** From the outline to the first dimension line, and from one to the next; mm on paper. */
const FIRST = 9;
const NEXT = 7;
/** Gap between outline and extension line, and what it runs on beyond the dimension line (ISO 129-1). */
const GAP = 1;
const PAST = 2;
/** From a dimension line up to its figures. */
export const LIFT = 0.9;
/** Length of a dimension line beyond arrows set from outside. */
const TAIL = 5;

export function arrow(x: number, y: number, angle: number): ArrowEntity {
  return { shape: 'arrow', layer: 'dimension', x, y, angle };
}

export function figures(
  dimension: string,
  text: string,
  x: number,
  y: number,
  rest: Partial<TextEntity> = {},
): TextEntity {
  const base = { shape: 'text', layer: 'dimension', height: FIGURES, anchor: 'middle' } as const;
  return { ...base, x, y, text, dimension, ...rest };
}

/** Where the figures of a length stand: between its arrows, or beyond an end of the piece. */
interface Row {
  readonly size: LengthSize;
  readonly x1: number;
  readonly x2: number;
  readonly from: number;
  readonly to: number;
  readonly textAt: number;
  readonly inside: boolean;
}

/**
 * Lengths below the view, the shorter nearer to it; two share a line where they keep clear of one another. Figures that do
 * not fit between their arrows stand beyond both ends of the piece, where no extension line runs.
 */
export function lengthRows(piece: Piece, scale: number, below: number): Entity[] {
  const lengths = piece.sizes.filter((size) => size.kind === 'length');
  const ends = lengths.flatMap(({ from, to }) => [from * scale, to * scale]);
  const [least, most] = [Math.min(0, ...ends), Math.max(0, ...ends)];
  const rows = lengths
    .map((size) => rowOf(size, scale, least, most, ends))
    .toSorted((a, b) => a.x2 - a.x1 - (b.x2 - b.x1));
  const levels: number[] = [];
  return rows.flatMap((row, i) => {
    const under = rows.slice(0, i).flatMap((other, k) => (clear(row, other) ? [] : [levels[k]]));
    levels.push(1 + Math.max(-1, ...under));
    return drawRow(row, scale, -(below + FIRST + NEXT * levels[i]));
  });
}

function rowOf(
  size: LengthSize,
  scale: number,
  least: number,
  most: number,
  ends: readonly number[],
): Row {
  const [x1, x2] = [size.from * scale, size.to * scale];
  const width = textWidth(size.text, FIGURES);
  const within = placeWithin(x1, x2, width, ends);
  if (within !== null) return { size, x1, x2, from: x1, to: x2, textAt: within, inside: true };
  const atRight = most - x2 <= x1 - least;
  const textAt = atRight ? most + TAIL + 1 + width / 2 : least - TAIL - 1 - width / 2;
  const reach = width / 2 + 0.5;
  return {
    size,
    x1,
    x2,
    from: Math.min(x1 - TAIL, textAt - reach),
    to: Math.max(x2 + TAIL, textAt + reach),
    textAt,
    inside: false,
  };
}

/** Between two arrows, as near to the middle as no extension line of another length strikes it; null where it does not fit. */
function placeWithin(
  x1: number,
  x2: number,
  width: number,
  ends: readonly number[],
): number | null {
  const half = width / 2 + 0.5;
  const [low, high] = [x1 + ARROW_LENGTH + half, x2 - ARROW_LENGTH - half];
  if (low > high) return null;
  const middle = (x1 + x2) / 2;
  const free = (at: number) =>
    at >= low - 1e-9 && at <= high + 1e-9 && ends.every((end) => Math.abs(end - at) >= half - 1e-9);
  const places = [middle, ...ends.flatMap((end) => [end - half, end + half])];
  const nearest = places
    .filter(free)
    .toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  return nearest[0] ?? null;
}

function clear(a: Row, b: Row): boolean {
  return a.from > b.to + 2 || b.from > a.to + 2;
}

function drawRow({ size, x1, x2, from, to, textAt, inside }: Row, scale: number, y: number) {
  const [r1, r2] = size.radii;
  const out = inside ? 180 : 0;
  const entities: Entity[] = [
    line('dimension', x1, -(r1 * scale + GAP), x1, y - PAST),
    line('dimension', x2, -(r2 * scale + GAP), x2, y - PAST),
    line('dimension', from, y, to, y),
    arrow(x1, y, out),
    arrow(x2, y, 180 - out),
    figures(size.feature, size.text, textAt, y + LIFT),
  ];
  return entities;
}

interface Column {
  readonly size: DiameterSize;
  readonly side: 'left' | 'right';
}

/** Diameters beside the view, the smaller nearer to it; figures to be read from the right. */
export function diameterColumns(
  columns: readonly Column[],
  scale: number,
  length: number,
  widest: number,
): Entity[] {
  return (['left', 'right'] as const).flatMap((side) =>
    columns
      .filter((one) => one.side === side)
      .toSorted((a, b) => a.size.r - b.size.r)
      .flatMap(({ size }, k) => {
        const away = FIRST + NEXT * k;
        const x = side === 'left' ? -away : length + away;
        return drawColumn(size, side, scale, x, widest);
      }),
  );
}

function drawColumn(
  size: DiameterSize,
  side: 'left' | 'right',
  scale: number,
  x: number,
  widest: number,
): Entity[] {
  const r = size.r * scale;
  const width = textWidth(size.text, FIGURES);
  const fits = 2 * r >= width + 2 * ARROW_LENGTH + 1;
  const outward = side === 'left' ? -1 : 1;
  const start = (side === 'left' ? size.from : size.to) * scale;
  const extension = (y: number) =>
    line('dimension', start + outward * GAP, y, x + outward * PAST, y);
  const textAt = fits ? 0 : widest + 3 + width / 2;
  const top = fits ? r : textAt + width / 2 + 0.5;
  const text = figures(size.feature, size.text, x - LIFT, textAt, { turned: true });
  const below = fits ? -r : -r - TAIL;
  if (size.hole) {
    // Half a dimension line (ISO 129-1): only the lower side of the hole is seen.
    const end = fits ? Math.max(width / 2 + 1, 3) : top;
    return [
      extension(-r),
      line('dimension', x, below, x, end),
      arrow(x, -r, fits ? 270 : 90),
      text,
    ];
  }
  return [
    extension(-r),
    extension(r),
    line('dimension', x, below, x, top),
    arrow(x, -r, fits ? 270 : 90),
    arrow(x, r, fits ? 90 : 270),
    text,
  ];
}

/** Across flats, under the end view; `reach` is the radius of all of it. */
export function flatsRow(
  feature: string,
  text: string,
  across: number,
  scale: number,
  reach: number,
): Entity[] {
  const half = (across / 2) * scale;
  const y = -(reach + FIRST);
  const width = textWidth(text, FIGURES);
  const inside = 2 * half >= width + 2 * ARROW_LENGTH + 1;
  const textAt = inside ? 0 : half + TAIL + 1 + width / 2;
  const corner = half / Math.sqrt(3);
  const out = inside ? 180 : 0;
  return [
    line('dimension', -half, -corner - GAP, -half, y - PAST),
    line('dimension', half, -corner - GAP, half, y - PAST),
    line('dimension', inside ? -half : -half - TAIL, y, inside ? half : textAt + width / 2, y),
    arrow(-half, y, out),
    arrow(half, y, 180 - out),
    figures(feature, text, textAt, y + LIFT),
  ];
}

import type { PlotEdges } from './axes';

/** Where a firm line across a plot stands, and its text with it. */
export interface PlacedMark {
  readonly at: number;
  readonly text: string;
  /** Of the text: its baseline, and the end of it that is given. */
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'end';
}

interface Room {
  readonly edges: PlotEdges;
  /** Of the line at zero, where there is one. */
  readonly zeroY: number | null;
  /** Baselines of names right of the plot. */
  readonly names: readonly number[];
  /** Width of a letter. */
  readonly letter: number;
}

/** Between a line and its text, and between the lines of texts. */
const BESIDE = 4;
const LINE = 14;
const FOOT = 6;
/** A text reaches so far above and below its baseline. */
const [ABOVE, BELOW] = [11, 4];
/** Names begin so far right of the plot. */
const NAMES = 8;

/**
 * Texts of marks at the foot of the plot, each beside its line: to the left where it fits, else to the right, where a line at
 * the plot's edge has its text among the names. A text that would lie on another line or text goes a line higher. `marks` by
 * where they stand, pixels.
 */
export function placeMarks(
  marks: readonly { readonly at: number; readonly text: string }[],
  room: Room,
): PlacedMark[] {
  const placed: (PlacedMark & { readonly from: number; readonly to: number })[] = [];
  const { left, right, bottom } = room.edges;
  for (const { at, text } of marks.toSorted((a, b) => a.at - b.at)) {
    const wide = text.length * room.letter;
    const isEdge = at > right - 1;
    const start = at + (isEdge ? NAMES : BESIDE);
    const spots = [...marks, null].flatMap((_, row) => {
      const y = bottom - FOOT - LINE * row;
      return [
        { x: at - BESIDE, y, anchor: 'end', from: at - BESIDE - wide, to: at - BESIDE },
        { x: start, y, anchor: 'start', from: start, to: start + wide },
      ] as const;
    });
    const isFree = ({ from, to, y, anchor }: (typeof spots)[number]) =>
      from >= left &&
      (to <= right || (isEdge && anchor === 'start')) &&
      (to <= right || room.names.every((name) => Math.abs(name - y) >= LINE)) &&
      (room.zeroY === null || room.zeroY < y - ABOVE || room.zeroY > y + BELOW) &&
      marks.every((other) => other.at < from - 1 || other.at > to + 1) &&
      placed.every(
        (other) => other.y !== y || other.to < from - BESIDE || other.from > to + BESIDE,
      );
    const spot = spots.find(isFree) ?? spots[2 * Math.min(placed.length, marks.length - 1)];
    placed.push({ at, text, ...spot });
  }
  return placed.map(({ at, text, x, y, anchor }) => ({ at, text, x, y, anchor }));
}

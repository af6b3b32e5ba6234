import { line } from './arcs';
import { arrow, FIGURES, figures, LIFT } from './dimensions';
import type { Box, Entity } from './sheetTypes';
import { textLength, textWidth } from './textSize';

/** A note with a line to the place that it speaks of, mm on paper. */
export interface Leader {
  readonly feature: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** Leans that are tried, across over up; leaders of one view share one: parallel lines never cross. */
const LEANS = [0.5, -0.5, 0.25, -0.25, 0.9, -0.9, 0.1, -0.1, 1.6, -1.6] as const;
const LEVEL = 5.5;
/** Between a leader and a text that it passes. */
const CLEAR = 0.8;

/** From the bend to the text: a leader right beside this one has then passed above the text. */
function shelfOf(lean: number): number {
  return Math.abs(lean) * (LIFT + FIGURES) + 0.4;
}

interface Placed {
  readonly leader: Leader;
  readonly bend: number;
  readonly end: number;
  readonly y: number;
}

/**
 * Leaders that rise from their points to shelves from height `from` up, all leaning to that side on which they meet none
 * of the texts in `avoid` (or the fewest of them).
 */
export function leaderNotes(
  leaders: readonly Leader[],
  from: number,
  avoid: readonly Box[] = [],
): Entity[] {
  if (leaders.length === 0) return [];
  let best: Entity[] = [];
  let fewest = Infinity;
  for (const lean of LEANS) {
    const placed = lean > 0 ? rising(leaders, from, lean) : mirrored(leaders, from, -lean);
    const met = placed.reduce((sum, one) => sum + avoid.filter((box) => meets(one, box)).length, 0);
    if (met >= fewest) continue;
    fewest = met;
    best = placed.flatMap((one) => drawn(one, lean));
    if (met === 0) break;
  }
  return best;
}

/**
 * Taken from the right, each goes on the lowest shelf on which its text ends before every leader that passes there, so
 * that no leader meets a text.
 */
function rising(leaders: readonly Leader[], from: number, lean: number): Placed[] {
  const foot = ({ x, y }: Leader) => x - lean * y;
  const placed: (Placed & { readonly level: number })[] = [];
  for (const leader of leaders.toSorted((a, b) => foot(b) - foot(a))) {
    const width = textWidth(leader.text, FIGURES);
    for (let level = 0; ; level++) {
      const y = from + LEVEL * level;
      const bend = foot(leader) + lean * y;
      const end = bend + shelfOf(lean) + width;
      const free = placed.every(
        (other) => other.level < level || end + 2 < foot(other.leader) + lean * y,
      );
      if (!free) continue;
      placed.push({ leader, bend, end, y, level });
      break;
    }
  }
  return placed;
}

function mirrored(leaders: readonly Leader[], from: number, lean: number): Placed[] {
  const flipped = leaders.map((leader) => ({ ...leader, x: -leader.x }));
  return rising(flipped, from, lean).map(({ leader, bend, end, y }) => ({
    leader: { ...leader, x: -leader.x },
    bend: -bend,
    end: -end,
    y,
  }));
}

/** Whether the slanted line, or the shelf with its text, touches a box. */
function meets({ leader, bend, end, y }: Placed, box: Box): boolean {
  const wide = { x0: box.x0 - CLEAR, x1: box.x1 + CLEAR, y0: box.y0 - CLEAR, y1: box.y1 + CLEAR };
  const [left, right] = [Math.min(bend, end), Math.max(bend, end)];
  const shelf =
    left < wide.x1 && right > wide.x0 && y - CLEAR < wide.y1 && y + FIGURES + LIFT > wide.y0;
  return shelf || lineMeets(leader.x, leader.y, bend, y, wide);
}

/** Whether a straight line passes through a box (clipped against its four sides). */
function lineMeets(x1: number, y1: number, x2: number, y2: number, box: Box): boolean {
  let [enter, leave] = [0, 1];
  for (const [start, step, low, high] of [
    [x1, x2 - x1, box.x0, box.x1],
    [y1, y2 - y1, box.y0, box.y1],
  ] as const) {
    if (step === 0) {
      if (start <= low || start >= high) return false;
      continue;
    }
    const [a, b] = [(low - start) / step, (high - start) / step];
    enter = Math.max(enter, Math.min(a, b));
    leave = Math.min(leave, Math.max(a, b));
  }
  return enter < leave;
}

function drawn({ leader, bend, y }: Placed, lean: number): Entity[] {
  const angle = (Math.atan2(-1, -lean) * 180) / Math.PI;
  const anchor = lean > 0 ? 'start' : 'end';
  const at = bend + Math.sign(lean) * shelfOf(lean);
  const shelfEnd = at + Math.sign(lean) * textLength(leader.text, FIGURES);
  return [
    line('dimension', leader.x, leader.y, bend, y),
    line('dimension', bend, y, shelfEnd, y),
    arrow(leader.x, leader.y, angle),
    figures(leader.feature, leader.text, at, y + LIFT, { anchor }),
  ];
}

import { type SectionOutline, uprightCut } from '../../engine/mass/sectionOutline';
import { fail, type Result, succeed } from '../../engine/result';

/** A section from own coordinates, in chords. */
export interface OwnSection {
  readonly outline: SectionOutline;
  /** Greatest height between top and bottom at one place of the chord. */
  readonly thickness: number;
}

/** How far the ends of the chord may lie off 0 and 1, and how far before the trailing edge an outline may begin. */
const CHORD_TOLERANCE = 0.02;
const FROM_TRAILING_EDGE = 0.1;
const FEWEST_POINTS = 5;
/** Thinner outlines are not stretched: their errors would be stretched too. */
const THINNEST = 0.005;

const remembered = new WeakMap<readonly number[], Result<OwnSection, string>>();

/**
 * The section that a list of coordinates describes: place and height in turn, in chords, from the trailing edge over the
 * top to the leading edge and back along the bottom, straight from point to point. A last point equal to the first is
 * left out. The error says what is wrong, in words that follow "because it". Remembered by the list's identity.
 */
export function readOwnSection(coordinates: readonly number[]): Result<OwnSection, string> {
  const known = remembered.get(coordinates);
  if (known) return known;
  const result = examine(coordinates);
  remembered.set(coordinates, result);
  return result;
}

function examine(coordinates: readonly number[]): Result<OwnSection, string> {
  if (coordinates.length % 2 === 1) {
    return fail(`has ${coordinates.length} numbers, which do not go in pairs`);
  }
  const wrong = coordinates.findIndex((value) => !Number.isFinite(value));
  if (wrong >= 0)
    return fail(`has ${coordinates[wrong]} in place of a number (number ${wrong + 1})`);
  let count = coordinates.length / 2;
  const closed =
    coordinates[0] === coordinates[2 * count - 2] && coordinates[1] === coordinates[2 * count - 1];
  if (closed) count--;
  if (count < FEWEST_POINTS) {
    return fail(`has ${Math.max(0, count)} points, where ${FEWEST_POINTS} are the fewest`);
  }
  const outline = Float64Array.from(coordinates.slice(0, 2 * count));
  const fault = chordFault(outline) ?? turnFault(outline) ?? crossingFault(outline);
  if (fault) return fail(fault);
  if (areaOf(outline) <= 0) return fail('runs the wrong way round, along the bottom first');
  const thickness = thicknessOf(outline);
  if (!(thickness >= THINNEST)) {
    return fail(
      `is only ${percent(thickness)} % of its chord thick, less than ${percent(THINNEST)} %`,
    );
  }
  return succeed({ outline, thickness });
}

function percent(share: number): number {
  return Number((100 * share).toPrecision(3));
}

function chordFault(outline: SectionOutline): string | null {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < outline.length; i += 2) {
    low = Math.min(low, outline[i]);
    high = Math.max(high, outline[i]);
  }
  if (Math.abs(low) > CHORD_TOLERANCE || Math.abs(high - 1) > CHORD_TOLERANCE) {
    return `reaches from ${percent(low)} to ${percent(high)} % of the chord instead of from 0 to 100 %`;
  }
  return outline[0] < high - FROM_TRAILING_EDGE ? 'does not begin at the trailing edge' : null;
}

/** Repeated points, and edges that fold back on the one before. */
function turnFault(outline: SectionOutline): string | null {
  const count = outline.length / 2;
  for (let i = 0; i < count; i++) {
    const [a, b, c] = [i, (i + 1) % count, (i + 2) % count].map((k) => 2 * k);
    const ux = outline[b] - outline[a];
    const uy = outline[b + 1] - outline[a + 1];
    const vx = outline[c] - outline[b];
    const vy = outline[c + 1] - outline[b + 1];
    if (ux === 0 && uy === 0) return `has point ${i + 1} twice in a row`;
    if (ux * vy - uy * vx === 0 && ux * vx + uy * vy < 0) {
      return `turns back on itself at point ${((i + 1) % count) + 1}`;
    }
  }
  return null;
}

/** Edges that are not neighbours and have a point in common. */
function crossingFault(outline: SectionOutline): string | null {
  const count = outline.length / 2;
  for (let i = 0; i < count; i++) {
    for (let j = i + 2; j < count; j++) {
      if (i === 0 && j === count - 1) continue;
      if (edgesMeet(outline, i, (i + 1) % count, j, (j + 1) % count)) {
        return `crosses itself: the lines from point ${i + 1} and from point ${j + 1} meet`;
      }
    }
  }
  return null;
}

function edgesMeet(outline: SectionOutline, a: number, b: number, c: number, d: number): boolean {
  for (const axis of [0, 1]) {
    const [p, q, r, s] = [a, b, c, d].map((k) => outline[2 * k + axis]);
    if (Math.max(p, q) < Math.min(r, s) || Math.max(r, s) < Math.min(p, q)) return false;
  }
  const one = side(outline, a, b, c) * side(outline, a, b, d);
  const other = side(outline, c, d, a) * side(outline, c, d, b);
  return one <= 0 && other <= 0;
}

function side(outline: SectionOutline, a: number, b: number, c: number): number {
  return Math.sign(
    (outline[2 * b] - outline[2 * a]) * (outline[2 * c + 1] - outline[2 * a + 1]) -
      (outline[2 * b + 1] - outline[2 * a + 1]) * (outline[2 * c] - outline[2 * a]),
  );
}

/** Counter-clockwise positive, with the place to the right and the height up: over the top toward the nose. */
function areaOf(outline: SectionOutline): number {
  let twice = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const j = (i + 2) % outline.length;
    twice += outline[i] * outline[j + 1] - outline[j] * outline[i + 1];
  }
  return twice / 2;
}

/** Between straight pieces the greatest thickness stands over a corner. */
function thicknessOf(outline: SectionOutline): number {
  let thickness = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const cut = uprightCut(outline, outline[i]);
    if (cut) thickness = Math.max(thickness, cut.high - cut.low);
  }
  return thickness;
}

import { fail, type Result, succeed } from '../engine/result';
import { readOwnSection } from './blade/ownSection';
import { MAX_COORDINATES } from './blade/parameters';

/** A section as a file of coordinates has it, ready for a blade's `sectionCoordinates` and `sectionName`. */
export interface AirfoilFile {
  readonly name: string;
  /** Place and height in turn, in chords: from the trailing edge over the top to the leading edge and back below. */
  readonly coordinates: readonly number[];
  /** Greatest thickness, in per cent of the chord. */
  readonly thicknessPercent: number;
}

/** Why a file is not taken; `reason` follows "because it". `line` counts from 1, where one line is to blame. */
export interface AirfoilFileFault {
  readonly line?: number;
  readonly reason: string;
}

interface Point {
  readonly x: number;
  readonly y: number;
  readonly line: number;
}

const MAX_TEXT = 1_000_000;
const MAX_NAME = 120;
const MAX_POINTS = MAX_COORDINATES / 2;
/** Larger coordinates are a slip, and would overflow when squared. */
const LARGEST = 1e6;

/**
 * Reads a plain file of section coordinates: an optional first line with the name, then a pair of numbers to a line, in
 * one of the two usual orders:
 *   round the section from the trailing edge, top or bottom first; or
 *   upper and lower side, each from the leading edge, with or without a line before them that counts their points.
 * Blank lines and comments (# ! ; % //) are skipped. Numbers are split by blanks, tabs, semicolons or commas; a comma is
 * the decimal sign where the line has no point and another splitter. Chords of any size are brought to 0 to 1, heights by the
 * same factor, so proportions stay. A doubled point is taken once. Never throws.
 */
export function readAirfoilFile(text: string): Result<AirfoilFile, AirfoilFileFault> {
  if (text.length > MAX_TEXT) return fail({ reason: `has more than ${MAX_TEXT} characters` });
  const lines = readLines(text);
  if (!lines.ok) return lines;
  const { name, points, counts } = lines.value;
  if (points.length === 0) return fail({ reason: 'has no coordinates' });
  const ordered = roundTrip(points, counts);
  if (!ordered.ok) return ordered;
  const coordinates = normalise(ordered.value);
  if (!coordinates.ok) return coordinates;
  const section = readOwnSection(coordinates.value);
  if (!section.ok) return fail({ reason: section.error });
  const thicknessPercent = 100 * section.value.thickness;
  return succeed({ name, coordinates: coordinates.value, thicknessPercent });
}

interface Lines {
  readonly name: string;
  readonly points: readonly Point[];
  /** Points of upper and lower side, where the file announces them. */
  readonly counts: { readonly upper: number; readonly lower: number; readonly line: number } | null;
}

function readLines(text: string): Result<Lines, AirfoilFileFault> {
  let name: string | null = null;
  const pairs: Point[] = [];
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  for (let i = 0; i < lines.length; i++) {
    const line = i + 1;
    if (hasNoise(lines[i])) return fail({ line, reason: 'is not plain text' });
    const content = lines[i].trim();
    if (content === '' || /^(#|!|;|%|\/\/)/.test(content)) continue;
    const pair = readPair(content);
    if (pair === null) {
      // Words before the first pair are the name; figures that are none (NaN, two points) are not.
      const isName = name === null && pairs.length === 0 && /[^\W\d_]/.test(content);
      if (!isName || /^[+-]?(nan|inf)/i.test(content)) {
        return fail({
          line,
          reason: `has "${content.slice(0, 40)}" where a pair of numbers should be`,
        });
      }
      name = content.slice(0, MAX_NAME);
      continue;
    }
    if (!pair.every((value) => Math.abs(value) <= LARGEST)) {
      return fail({ line, reason: `has a number beyond ${LARGEST}` });
    }
    pairs.push({ x: pair[0], y: pair[1], line });
    if (pairs.length > MAX_POINTS + 1) {
      return fail({ line, reason: `has more than ${MAX_POINTS} points` });
    }
  }
  const [first] = pairs;
  const isCount = first && [first.x, first.y].every((one) => Number.isInteger(one) && one >= 2);
  if (!isCount) return withinLimit({ name: name ?? '', points: pairs, counts: null });
  const counts = { upper: first.x, lower: first.y, line: first.line };
  return withinLimit({ name: name ?? '', points: pairs.slice(1), counts });
}

function withinLimit(lines: Lines): Result<Lines, AirfoilFileFault> {
  return lines.points.length > MAX_POINTS
    ? fail({ line: lines.points[MAX_POINTS].line, reason: `has more than ${MAX_POINTS} points` })
    : succeed(lines);
}

/** Control characters other than tab, and what undecodable bytes become. */
function hasNoise(line: string): boolean {
  for (let i = 0; i < line.length; i++) {
    const code = line.charCodeAt(i);
    if ((code < 32 && code !== 9 && code !== 12) || code === 127 || code === 0xfffd) return true;
  }
  return false;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?$/;

/** Two numbers, or null. */
function readPair(content: string): readonly [number, number] | null {
  const pieces = content.split(/[\s;]+/).filter((piece) => piece !== '' && piece !== ',');
  const byComma = content.includes('.') || pieces.length < 2;
  const tokens = byComma
    ? content.split(/[\s;,]+/).filter((piece) => piece !== '')
    : pieces.map((piece) => piece.replace(/,$/, '').replace(',', '.'));
  if (tokens.length !== 2 || !tokens.every((token) => NUMBER.test(token))) return null;
  const [x, y] = tokens.map(Number);
  return [x, y];
}

/** The points round the section from the trailing edge, over the top first; doubled points once. */
function roundTrip(
  points: readonly Point[],
  counts: Lines['counts'],
): Result<readonly Point[], AirfoilFileFault> {
  const total = counts ? counts.upper + counts.lower : 0;
  if (counts && total !== points.length) {
    const reason = `announces ${counts.upper} and ${counts.lower} points but has ${points.length}`;
    return fail({ line: counts.line, reason });
  }
  const split = counts ? counts.upper : secondSide(points);
  const upper = points.slice(0, split).toReversed();
  const round = split === 0 ? points : [...upper, ...points.slice(split)];
  const once = round.filter(
    ({ x, y }, i) => i === 0 || x !== round[i - 1].x || y !== round[i - 1].y,
  );
  let twiceArea = 0;
  once.forEach(({ x, y }, i) => {
    const next = once[(i + 1) % once.length];
    twiceArea += x * next.y - next.x * y;
  });
  return succeed(twiceArea < 0 ? once.toReversed() : once);
}

/** Index where the second side begins, in files that give each side from the leading edge; 0 in those that go round. */
function secondSide(points: readonly Point[]): number {
  const xs = points.map(({ x }) => x);
  const low = Math.min(...xs);
  const chord = Math.max(...xs) - low;
  if (xs[0] > low + chord / 2) return 0;
  for (let i = 1; i < xs.length; i++) if (xs[i] < xs[i - 1] - chord / 2) return i;
  return 0;
}

function normalise(points: readonly Point[]): Result<readonly number[], AirfoilFileFault> {
  const xs = points.map(({ x }) => x);
  const low = Math.min(...xs);
  const chord = Math.max(...xs) - low;
  if (!(chord > 0)) return fail({ reason: 'has all its points at one place of the chord' });
  const far = points.find(({ y }) => Math.abs(y) > 2 * chord);
  if (far) return fail({ line: far.line, reason: 'lies more than two chords off its chord line' });
  return succeed(points.flatMap(({ x, y }) => [(x - low) / chord, y / chord]));
}

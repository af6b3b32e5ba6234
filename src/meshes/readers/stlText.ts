import { MAX_TRIANGLES } from '../types';
import { shownWord } from './decimal';
import { GrowingIndices } from './growing';
import { PointPool } from './pointPool';
import { checkCoordinate, checkTriangleCount, malformed, reader } from './signal';
import { Words } from './words';

const LINE_FEED = 10;

/**
 * Text STL (common practice): `solid NAME`, facets of a normal and a loop of three vertices, `endsolid NAME`; several
 * solids may follow one another and are taken together. Keywords in any case. The normal is passed over: the order of
 * the corners says which way a triangle faces. Line ends mean nothing but that a name is over (LF; a CR alone is a blank),
 * so that a whole file may stand in one line.
 */
export const readStlText = reader((bytes, progress) => {
  const words = new Words(bytes);
  const pool = new PointPool();
  const triangles = new GrowingIndices();
  const corner = new Uint32Array(3);
  const line: Line = { end: -1 };
  let count = 0;
  while (words.next()) {
    if (!words.is('solid')) unexpected(words, 'solid');
    skipName(words, line, 'facet');
    for (;;) {
      need(words, 'endsolid');
      if (words.is('endsolid')) break;
      if (!words.is('facet')) unexpected(words, 'facet');
      if ((count++ & 0xffff) === 0) progress(words.start / bytes.length);
      readFacet(words, (k, x, y, z) => {
        // Beyond the limit triangles are only counted, for the number in the message.
        if (count <= MAX_TRIANGLES) corner[k] = pool.add(x, y, z);
      });
      if (count <= MAX_TRIANGLES) triangles.push3(corner[0], corner[1], corner[2]);
    }
    skipName(words, line, 'solid');
  }
  checkTriangleCount(count, 'stlText');
  return {
    positions: pool.toArray(),
    triangles: triangles.toArray(),
    pooled: true,
    notes: [],
  };
});

/**
 * Passes over the name behind "solid" or "endsolid": the rest of its line, or, where the text goes on in the same line, up
 * to "facet normal", and behind "endsolid" up to the last "solid" before that. Each word is looked at once.
 */
function skipName(words: Words, line: Line, goesOnWith: 'facet' | 'solid'): void {
  const lineEnd = endOfLine(words, line);
  let before = words.end;
  let place = -1;
  let isFacet = false;
  while (words.next() && words.start < lineEnd) {
    if (isFacet && words.is('normal') && place >= 0) {
      words.end = place;
      return;
    }
    isFacet = words.is('facet');
    if (words.is(goesOnWith)) place = before;
    before = words.end;
  }
  words.toLineEnd(lineEnd);
}

/** Where the line ends that was looked for last: one long line with many solids is searched once. */
interface Line {
  end: number;
}

function endOfLine({ bytes, end }: Words, line: Line): number {
  if (line.end < end) {
    const found = bytes.indexOf(LINE_FEED, end);
    line.end = found < 0 ? bytes.length : found;
  }
  return line.end;
}

/** From after "facet" to "endfacet". */
function readFacet(
  words: Words,
  corner: (k: number, x: number, y: number, z: number) => void,
): void {
  expectWord(words, 'normal');
  for (let k = 0; k < 3; k++) need(words, 'the normal');
  expectWord(words, 'outer');
  expectWord(words, 'loop');
  for (let k = 0; k < 3; k++) {
    expectWord(words, 'vertex');
    corner(k, coordinate(words), coordinate(words), coordinate(words));
  }
  expectWord(words, 'endloop');
  expectWord(words, 'endfacet');
}

function coordinate(words: Words): number {
  need(words, 'a coordinate');
  const value = words.number();
  if (Number.isNaN(value)) {
    malformed('stlText', `has "${shownWord(words.text())}" for a coordinate in line ${words.line}`);
  }
  return checkCoordinate(value, 'stlText', () => `line ${words.line}`);
}

function expectWord(words: Words, keyword: string): void {
  need(words, keyword);
  if (!words.is(keyword)) unexpected(words, keyword);
}

function need(words: Words, what: string): void {
  if (!words.next()) malformed('stlText', `ends in line ${words.line} before ${what}`);
}

function unexpected(words: Words, wanted: string): never {
  return malformed(
    'stlText',
    `has "${shownWord(words.text())}" where "${wanted}" should stand, in line ${words.line}`,
  );
}

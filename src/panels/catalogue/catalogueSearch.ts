import { INCH_MM } from '../../engine/units';
import { phrase } from '../../messages/phrases';
import type { CatalogueSize, CatalogueStandard, PartCatalogue } from '../../parts/catalogue';
import { isInchSize } from '../../state/words/catalogueText';
import { placeOfLength } from './lengths';

/** A row that fits what was typed, and the length that was typed with it. */
export interface CatalogueHit {
  readonly standard: CatalogueStandard;
  readonly size: CatalogueSize;
  /** mm; undefined where none was typed or the row has none. */
  readonly lengthMm: number | undefined;
}

/** How well a word fits, the less the better; words of a row add up. */
const EXACT = 0;
const NEAR = 1;
const LISTED_LENGTH = 1;
const BARE_SIZE = 2;
const OTHER_LENGTH = 3;
const BEGINS_SIZE = 4;

/**
 * The rows that fit every word of `query`, in any order and any case: words of standard and title by their beginnings
 * ("button", "4762"), sizes ("M3", "#4-40", "4-40", "3"), and one length where the size has lengths ("22", "22 mm",
 * "1/2", "0.5 in"; on inch sizes a bare number counts in inches). Best first, then as the tables have them. All rows for
 * an empty query.
 */
export function searchCatalogue(catalogue: PartCatalogue, query: string): CatalogueHit[] {
  const readings = readingsOf(query);
  const [min, max] = catalogue.lengthLimitsMm ?? [0, 0];
  const found: { readonly hit: CatalogueHit; readonly score: number }[] = [];
  for (const standard of catalogue.standards) {
    for (const size of standard.sizes) {
      const row: Row = { standard, size, min, max };
      const best = readings
        .flatMap((words) => fits(row, words))
        .reduce<Fit | null>((a, b) => (a && a.score <= b.score ? a : b), null);
      if (best) found.push({ hit: { standard, size, lengthMm: best.lengthMm }, score: best.score });
    }
  }
  return found.toSorted((a, b) => a.score - b.score).map(({ hit }) => hit);
}

interface Row {
  readonly standard: CatalogueStandard;
  readonly size: CatalogueSize;
  readonly min: number;
  readonly max: number;
}
interface Fit {
  readonly score: number;
  readonly lengthMm: number | undefined;
}

/** The query in words; twice where a whole number before a fraction may be a size or belong to it ("1 1/2"). */
function readingsOf(query: string): string[][] {
  const plain = query
    .toLowerCase()
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/[\u00d7*;,]/g, ' ')
    .replace(/(\d"?) ?x ?(?=[\d.])/g, '$1 ')
    .replace(/(\d) +(mm|in|inch|inches)\b/g, '$1$2')
    .trim();
  const joined = plain.replace(/(^| )(\d+)[- ](\d+\/\d+)/g, '$1$2+$3');
  const texts = joined === plain ? [plain] : [plain, joined];
  return texts.map((text) => text.split(/\s+/).filter((word) => word !== '' && word !== 'x'));
}

/** Every way in which the row fits all words: no word, or one of them, is the length. */
function fits(row: Row, words: readonly string[]): Fit[] {
  const scores = words.map((word) => textScore(row, word));
  const total = (leaveOut: number) =>
    scores.reduce<number>((sum, one, at) => (at === leaveOut ? sum : sum + (one ?? Infinity)), 0);
  const ways: Fit[] = [{ score: total(-1), lengthMm: undefined }];
  words.forEach((word, at) => {
    const length = lengthOf(row, word);
    if (length) ways.push({ score: total(at) + length.score, lengthMm: length.lengthMm });
  });
  return ways.filter(({ score }) => Number.isFinite(score));
}

function textScore({ standard, size }: Row, word: string): number | null {
  const name = phrase(standard.standard).toLowerCase();
  const names = [...name.split(/\s+/), name.replace(/\s+/g, '')];
  const scores = [
    wordScore(names, word),
    wordScore(`${standard.title} ${phrase(standard.title)}`.toLowerCase().split(/[\s,]+/), word),
    sizeScore(size.size.toLowerCase(), word),
  ].filter((score) => score !== null);
  return scores.length > 0 ? Math.min(...scores) : null;
}

/** Numbers need three digits to stand for a longer one: 10 is a size or a length, and no beginning of 10642. */
function wordScore(words: readonly string[], word: string): number | null {
  if (words.includes(word)) return EXACT;
  if (/^\d{1,2}$/.test(word)) return null;
  return words.some((one) => one.startsWith(word)) ? NEAR : null;
}

function sizeScore(size: string, word: string): number | null {
  const bare = size.replace(/^[m#]/, '');
  if (word === size) return EXACT;
  if (isInchSize(size)) {
    if (word === bare) return EXACT;
    const [thread] = size.split('-');
    if (word === thread || word === bare.split('-')[0]) return NEAR;
  } else if (word === bare) return BARE_SIZE;
  return size.startsWith(word) || bare.startsWith(word) ? BEGINS_SIZE : null;
}

function lengthOf({ size, min, max }: Row, word: string) {
  if (!size.lengthsMm) return null;
  const match = /^(\d*\.?\d+|(?:\d+\+)?\d+\/\d+)(mm|in|inch|inches|")?$/.exec(word);
  if (!match) return null;
  const [, number, unit] = match;
  const value = number
    .split('+')
    .map((term) => term.split('/').map(Number))
    .reduce((sum, [over, under = 1]) => sum + over / under, 0);
  const inInches = unit ? unit !== 'mm' : number.includes('/') || isInchSize(size.size);
  const lengthMm = Number((inInches ? value * INCH_MM : value).toPrecision(12));
  const { listed } = placeOfLength(size.lengthsMm, lengthMm);
  if (listed !== undefined) return { score: LISTED_LENGTH, lengthMm: listed };
  return lengthMm >= min && lengthMm <= max ? { score: OTHER_LENGTH, lengthMm } : null;
}

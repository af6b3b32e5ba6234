import { type ReadingsFault, readingsFault } from './fault';
import {
  BY_UNIT_ALONE,
  dimensionsOf,
  guessHeading,
  isSign,
  plainWords,
  senseWord,
  travelWord,
} from './headings';
import { readMetadata, type TableMetadata } from './metadata';
import type { ReadingsTable } from './readTable';
import { isNumeric } from './sniff';
import type { ColumnMapping, ColumnRole, ReadingsMapping } from './types';
import { dimensionOf, type UnitName } from './unitNames';

/** A mapping as the program would have it, each column with how sure it is from 0 to 1. */
export interface MappingGuess {
  readonly mapping: ReadingsMapping;
  readonly confidence: readonly number[];
  /** Columns, from 0, whose unit no heading gives: assumed degrees, rpm, seconds, or the line above the table. */
  readonly assumedUnits: readonly number[];
  /** Units in headings that are none of those known, by column. */
  readonly unknownUnits: Readonly<Record<number, string>>;
  readonly metadata: TableMetadata;
}

const IGNORE: ColumnMapping = { role: 'ignore', unit: null, flipped: false, travel: null };
/** Units that are assumed, aloud, where none is given: a force never has one. */
const ASSUMED: Partial<Readonly<Record<ColumnRole, UnitName>>> = {
  pitch: 'deg',
  speed: 'rpm',
  time: 's',
  scale: 'div',
};
const ASSUMED_CONFIDENCE = 0.8;
const SAMPLED_ROWS = 200;

/** What the columns probably hold, from their headings, what stands in them and the lines above the table. */
export function guessMapping(table: ReadingsTable): MappingGuess {
  const metadata = readMetadata(table, table.delimiter, table.styles[0].decimal);
  const assumedUnits: number[] = [];
  const unknownUnits: Record<number, string> = {};
  const guesses = withoutRivals(
    table.headings.map((heading, column) => guessColumn(table, heading, column, metadata)),
  );
  for (const [column, guess] of guesses.entries()) {
    if (guess.assumed) assumedUnits.push(column);
    if (guess.unknownUnit !== '') unknownUnits[column] = guess.unknownUnit;
  }
  const bare = table.headingRows.length === 0 ? guessBare(table, metadata) : null;
  return {
    mapping: bare ?? guesses.map(({ mapping }) => mapping),
    confidence: bare
      ? bare.map(({ role }) => (role === 'ignore' ? 0 : 0.3))
      : guesses.map(({ confidence }) => confidence),
    assumedUnits: bare ? bare.flatMap(({ unit }, k) => (unit ? [k] : [])) : assumedUnits,
    unknownUnits,
    metadata,
  };
}

interface ColumnGuess {
  readonly mapping: ColumnMapping;
  readonly confidence: number;
  readonly assumed: boolean;
  readonly unknownUnit: string;
}

function guessColumn(
  table: ReadingsTable,
  heading: string,
  column: number,
  metadata: TableMetadata,
): ColumnGuess {
  const guess = guessHeading(heading);
  const seen = roleInCells(table, column);
  const wordy = guess.role === 'note' || guess.role === 'run' || guess.role === 'unit';
  const role = (wordy ? guess.role : (seen ?? guess.role)) ?? 'ignore';
  if (role !== guess.role)
    return {
      mapping: { ...IGNORE, role },
      confidence: role === 'ignore' ? 0 : 0.6,
      assumed: false,
      unknownUnit: '',
    };
  const named =
    guess.unit ?? (guess.unknownUnit === '' ? assumedUnit(role, heading, metadata) : null);
  const assumed = guess.unit === null && named !== null;
  return {
    mapping: {
      role,
      unit: dimensionsOf(role) ? named : null,
      flipped: guess.flipped || (role === 'force' && metadata.positive === 'compression'),
      travel: guess.travel,
    },
    confidence: assumed ? guess.confidence * ASSUMED_CONFIDENCE : guess.confidence,
    assumed,
    unknownUnit: dimensionsOf(role) ? guess.unknownUnit : '',
  };
}

/** A column known by its unit alone is left out where another has its role by name ("Peak [N]" beside "Force [N]"). */
function withoutRivals(guesses: readonly ColumnGuess[]): ColumnGuess[] {
  return guesses.map((guess) => {
    const { role } = guess.mapping;
    const rival = guesses.some(
      (other) => other.mapping.role === role && other.confidence > guess.confidence,
    );
    if (guess.confidence > BY_UNIT_ALONE || !rival) return guess;
    return { mapping: IGNORE, confidence: 0, assumed: false, unknownUnit: '' };
  });
}

function assumedUnit(role: ColumnRole, heading: string, metadata: TableMetadata): UnitName | null {
  if (role === 'force') return metadata.forceUnit;
  if (plainWords(heading) === 'omega') return 'rad/s';
  return ASSUMED[role] ?? null;
}

/** A column of letters for a sense, or of words for the way of travel, whatever its heading says. */
function roleInCells(table: ReadingsTable, column: number): ColumnRole | null {
  const filled = table.rows
    .slice(0, SAMPLED_ROWS)
    .map((row) => row.cells[column] ?? '')
    .filter((cell) => cell !== '');
  const cells = filled.filter((cell) => !isNumeric(cell));
  if (cells.length === 0) return null;
  // Signs alone are no words, and a column of numbers with a word in it is one of numbers.
  if (2 * cells.length < filled.length) return null;
  const signs = cells.includes('+') ? cells.filter(isSign).length : 0;
  const senses = signs + cells.filter((cell) => senseWord(cell) !== null).length;
  const travels = signs + cells.filter((cell) => travelWord(cell) !== null).length;
  if (Math.max(senses, travels) < 0.8 * cells.length) return null;
  if (senses > travels) return 'sense';
  if (travels > senses) return 'travel';
  // "push" and "pull" are both: the heading decides, and the way of travel is the usual meaning.
  return guessHeading(table.headings[column]).role === 'sense' ? 'sense' : 'travel';
}

/** Without headings: the first column of numbers is the pitch, the second the force; letters tell themselves. */
function guessBare(table: ReadingsTable, metadata: TableMetadata): ColumnMapping[] {
  const left: ColumnRole[] = ['pitch', 'force'];
  return table.headings.map((_, column) => {
    const seen = roleInCells(table, column);
    const role = seen ?? (left.shift() || 'ignore');
    const unit = role === 'pitch' ? 'deg' : role === 'force' ? metadata.forceUnit : null;
    return {
      ...IGNORE,
      role,
      unit,
      flipped: role === 'force' && metadata.positive === 'compression',
    };
  });
}

/** Everything that keeps a mapping from being used, each with its column. */
export function mappingFaults(
  mapping: ReadingsMapping,
  headings: readonly string[],
  unknownUnits: Readonly<Record<number, string>> = {},
): ReadingsFault[] {
  if (mapping.length !== headings.length)
    return [readingsFault({ code: 'columnGone', columns: headings.length })];
  const roles = new Set(mapping.map(({ role }) => role));
  const faults: ReadingsFault[] = [];
  if (!roles.has('force') && !roles.has('moment'))
    faults.push(readingsFault({ code: 'noReadingColumn' }));
  if (!roles.has('pitch') && !roles.has('scale') && !roles.has('time'))
    faults.push(readingsFault({ code: 'noPlaceColumn' }));
  for (const [k, column] of mapping.entries()) {
    const reason =
      unitReason(column, roles.has('unit'), unknownUnits[k]) ?? twiceReason(mapping, k);
    if (reason) faults.push(readingsFault(reason, null, k + 1, headings[k]));
  }
  return faults;
}

function unitReason(
  { role, unit }: ColumnMapping,
  hasUnitColumn: boolean,
  unknown: string | undefined,
) {
  const dimensions = dimensionsOf(role);
  if (!dimensions) return null;
  if (unit === null) {
    if (unknown) return { code: 'unitUnknown', found: unknown } as const;
    return role === 'force' && hasUnitColumn ? null : ({ code: 'unitMissing' } as const);
  }
  return dimensions.includes(dimensionOf(unit))
    ? null
    : ({ code: 'unitWrong', found: unit, role } as const);
}

/** A role that only one column may have for the same readings. */
function twiceReason(mapping: ReadingsMapping, column: number) {
  const { role } = mapping[column];
  if (role === 'ignore' || role === 'note') return null;
  const first = mapping.findIndex(
    (other, k) => k < column && isSame(mapping, k, column, other.role === role),
  );
  return first < 0 ? null : ({ code: 'roleTwice', role, first: first + 1 } as const);
}

function isSame(mapping: ReadingsMapping, a: number, b: number, sameRole: boolean): boolean {
  if (!sameRole) return false;
  const [one, two] = [mapping[a], mapping[b]];
  if (!isLoad(one)) return !isUsed(mapping, b) || !isUsed(mapping, a);
  // Tension and compression side by side are one reading in two columns.
  const bySense = one.role === 'force' && one.flipped !== two.flipped;
  return (
    one.travel === two.travel &&
    !bySense &&
    companion(mapping, a, 'pitch') === companion(mapping, b, 'pitch')
  );
}

/** Whether any reading takes its value from this column. */
function isUsed(mapping: ReadingsMapping, column: number): boolean {
  const { role } = mapping[column];
  return mapping.some((other, k) => isLoad(other) && companion(mapping, k, role) === column);
}

/** Columns that stand behind the force they belong to, where there are several. */
const BEHIND: readonly ColumnRole[] = ['sense', 'unit', 'travel'];

/**
 * The column of a role that belongs to a force or moment column: the nearest to its left, otherwise the nearest to its
 * right ("pitch, force, pitch, force" are two tables side by side); for a letter, a unit or a way of travel first those
 * between it and the next force. -1 where there is none.
 */
export function companion(mapping: ReadingsMapping, column: number, role: ColumnRole): number {
  if (BEHIND.includes(role)) {
    for (let k = column + 1; k < mapping.length && !isLoad(mapping[k]); k++)
      if (mapping[k].role === role) return k;
  }
  for (let k = column - 1; k >= 0; k--) if (mapping[k].role === role) return k;
  return mapping.findIndex((other) => other.role === role);
}

function isLoad({ role }: ColumnMapping): boolean {
  return role === 'force' || role === 'moment';
}

import { fail, type Result, succeed } from '../../engine/result';
import { type DecodedText, decodeText } from './decodeText';
import { type DerivedReadings, deriveReadings } from './derive';
import type { ReadingsFault } from './fault';
import { guessMapping, type MappingGuess } from './mapping';
import { type ReadingsTable, readTable } from './readTable';
import type { Progress } from './records';
import { type RememberedMappings, rememberedMapping } from './remembered';
import { isTimeSeries } from './series';
import type { Reading, ReadingsMapping, ReadOptions, StoredReadings } from './types';

/** Everything that is shown before a table is taken. */
export interface ReadingsPreview {
  readonly source: DecodedText | { readonly text: string; readonly encoding: 'pasted' };
  readonly options: ReadOptions;
  readonly table: ReadingsTable;
  readonly guess: MappingGuess;
  /** The mapping in force, and whose it is. */
  readonly mapping: ReadingsMapping;
  readonly mappingFrom: 'person' | 'remembered' | 'guessed';
  /** What it gives, or what is wrong with the mapping. */
  readonly derived: Result<DerivedReadings, readonly ReadingsFault[]>;
  readonly isSeries: boolean;
}

export interface PreviewChoices {
  readonly options?: ReadOptions;
  /** The person's mapping; without it the remembered one, otherwise the program's guess. */
  readonly mapping?: ReadingsMapping | null;
  readonly remembered?: RememberedMappings;
}

/**
 * What a file's bytes or a pasted text would give. Pure and without the DOM, so that a worker can run it; the input and
 * the result can be cloned to and from one. `onProgress` hears from 0 to 1 and stops the reading with false.
 */
export function previewReadings(
  source: Uint8Array | string,
  choices: PreviewChoices = {},
  onProgress?: Progress,
): Result<ReadingsPreview, ReadingsFault> {
  const steps = previewSteps(source, choices, onProgress);
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** The same in steps: decoding, records, meaning of the columns, readings. After each it gives the share that is done. */
export function* previewSteps(
  source: Uint8Array | string,
  { options = {}, mapping = null, remembered = {} }: PreviewChoices = {},
  onProgress?: Progress,
): Generator<number, Result<ReadingsPreview, ReadingsFault>, void> {
  const decoded =
    typeof source === 'string'
      ? succeed({ text: source, encoding: 'pasted' as const })
      : decodeText(source);
  if (!decoded.ok) return fail(decoded.error);
  yield 0;
  const read = readTable(decoded.value.text, options, onProgress);
  if (!read.ok) return fail(read.error);
  yield 0.5;
  const table = read.value;
  const guess = guessMapping(table);
  const known = rememberedMapping(remembered, table.headings);
  const used = mapping ?? known ?? guess.mapping;
  yield 0.5;
  const derived = deriveReadings(
    table,
    used,
    guess.unknownUnits,
    onProgress && ((done) => onProgress(0.5 + done / 2)),
  );
  const [first] = derived.ok ? [] : derived.error;
  if (first?.reason.code === 'cancelled') return fail(first);
  yield 1;
  onProgress?.(1);
  return succeed({
    source: decoded.value,
    options,
    table,
    guess,
    mapping: used,
    mappingFrom: mapping ? 'person' : known ? 'remembered' : 'guessed',
    derived,
    isSeries: derived.ok && isTimeSeries(derived.value.readings),
  });
}

/** One row of the text beside what was understood of it. */
export interface PreviewRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly readings: readonly Reading[];
  readonly faults: readonly ReadingsFault[];
}

/** Rows `from` up to before `to` of the table, counted from 0, each with its readings and faults. */
export function previewRows(
  { table, derived }: ReadingsPreview,
  from: number,
  to: number,
): PreviewRow[] {
  const rows = table.rows.slice(from, to);
  if (!derived.ok || rows.length === 0)
    return rows.map(({ row, cells }) => ({ row, cells, readings: [], faults: [] }));
  const { readings, refused } = derived.value;
  let at = firstFrom(readings, rows[0].row);
  return rows.map(({ row, cells }) => {
    const start = at;
    while (readings[at]?.row === row) at++;
    return {
      row,
      cells,
      readings: readings.slice(start, at),
      faults: refused.filter((fault) => fault.row === row),
    };
  });
}

/** Index of the first reading that comes from this row or a later one; readings are in the order of rows. */
function firstFrom(readings: readonly Reading[], row: number): number {
  let [low, high] = [0, readings.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (readings[middle].row < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** What is kept of a preview that is taken: the text as it came, and how it is to be read. */
export function storedFrom(name: string, preview: ReadingsPreview): StoredReadings {
  const { source, options, mapping, guess, table } = preview;
  // What was found out is kept as if told: a later program may find out otherwise.
  const told: ReadOptions = { ...options, delimiter: table.delimiter };
  return {
    name,
    encoding: source.encoding,
    text: source.text,
    options: told,
    mapping,
    metadata: guess.metadata.run,
  };
}

/** The readings of a stored table again: the same as when it was taken. */
export function readingsOf(
  stored: StoredReadings,
): Result<DerivedReadings, readonly ReadingsFault[]> {
  const read = readTable(stored.text, stored.options);
  return read.ok ? deriveReadings(read.value, stored.mapping) : fail([read.error]);
}

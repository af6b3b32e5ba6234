import { describe, expect, it } from 'vitest';
import { deriveReadings, MAX_LISTED_FAULTS } from '../../../src/bench/readings/derive';
import { guessMapping } from '../../../src/bench/readings/mapping';
import { previewReadings } from '../../../src/bench/readings/preview';
import { MAX_READINGS_TEXT, readTable } from '../../../src/bench/readings/readTable';
import { readRecords } from '../../../src/bench/readings/records';
import { tableOf } from './support';

// Steps are told after every 8192 rows (2^13): two of the text's, two of the table's and its beginning.
const ROWS = 17_000;
const EVERY = 8192;
const HEADING = 'Pitch [deg],Force [N]\n';
const TEXT = HEADING + '1,2.5\n'.repeat(ROWS);
/** Where the row after `rows` rows of the text begins. */
const startAfter = (rows: number) => HEADING.length + 6 * (rows - 1);

function heardBy<T>(read: (hear: (done: number) => void) => T): [T, number[]] {
  const heard: number[] = [];
  const result = read((done) => {
    heard.push(done);
  });
  return [result, heard];
}
const steps = (count: number) => Array.from({ length: Math.floor(count / EVERY) }, (_, k) => k + 1);

describe('a long text', () => {
  const ofText = steps(ROWS + 1).map((k) => startAfter(k * EVERY) / TEXT.length);
  const ofTable = [0, ...steps(ROWS - 1).map((k) => (k * EVERY) / ROWS)];

  it('is read whether somebody hears how far it is or not', () => {
    const [heardOf, heard] = heardBy((hear) => previewReadings(TEXT, {}, hear));
    for (const read of [heardOf, previewReadings(TEXT)])
      expect(read.ok && read.value.derived.ok && read.value.derived.value.takenRows).toBe(ROWS);
    // The text is the first half of it, as a share of its letters; the rows the second.
    expect(heard).toEqual([
      ...ofText.map((done) => done / 2),
      ...ofTable.map((done) => 0.5 + done / 2),
      1,
    ]);
  });

  it('tells how far its records are, and its readings', () => {
    expect(heardBy((onProgress) => readRecords(TEXT, ',', { onProgress }))[1]).toEqual(ofText);
    const table = tableOf(TEXT);
    const { mapping } = guessMapping(table);
    expect(heardBy((hear) => deriveReadings(table, mapping, {}, hear))[1]).toEqual(ofTable);
  });

  it.each([1, 2, 3, 4])('stops when it is told to, at word %d', (last) => {
    let count = 0;
    const read = previewReadings(TEXT, {}, () => ++count < last);
    expect(read.ok || read.error.reason).toEqual({ code: 'cancelled' });
    expect(count).toBe(last);
  });

  it('is refused where it is longer than any log, before it is looked at', () => {
    const length = MAX_READINGS_TEXT + 1;
    const read = readTable('x'.repeat(length));
    expect(read.ok || read.error.reason).toEqual({
      code: 'tooLong',
      length,
      limit: MAX_READINGS_TEXT,
    });
  });
});

describe('faults', () => {
  it('are listed up to a limit, and the rows that have them are all counted', () => {
    for (const count of [MAX_LISTED_FAULTS, MAX_LISTED_FAULTS + 1]) {
      const table = tableOf(`${HEADING}1,2.5\n${'1,x\n'.repeat(count)}`);
      const read = deriveReadings(table, guessMapping(table).mapping);
      if (!read.ok) throw new Error('no readings');
      expect(read.value.refused).toHaveLength(MAX_LISTED_FAULTS);
      expect([read.value.refusedRows, read.value.takenRows]).toEqual([count, 1]);
    }
  });
});

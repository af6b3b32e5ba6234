import { describe, expect, it } from 'vitest';
import { MAX_ROWS, readRecords } from '../../../src/bench/readings/records';
import { columnsOf } from '../../../src/bench/readings/series';
import { derive, place, preview } from './support';

const COUNT = 200_000;

/** A gauge's log of 200,000 rows at 200 Hz, whole thousandths so that every number is exact in the text. */
function longLog(delimiter: string, decimal: string, count = COUNT): string {
  const lines = [['Time [s]', 'Pitch [deg]', 'Force [N]', 'Note'].join(delimiter)];
  for (let k = 0; k < count; k++) {
    const cells = [
      thousandths(5 * k),
      thousandths((k % 400) * 100 - 20_000),
      thousandths((k * 7) % 9001),
    ];
    lines.push([...cells.map((cell) => cell.replace('.', decimal)), ''].join(delimiter));
  }
  return lines.join('\r\n');
}

function thousandths(value: number): string {
  return `${value < 0 ? '-' : ''}${Math.floor(Math.abs(value) / 1000)}.${String(Math.abs(value) % 1000).padStart(3, '0')}`;
}

describe('a log of 200,000 rows', { timeout: 120_000 }, () => {
  it('is read in seconds at most, every number of it', () => {
    const text = longLog(';', ',');
    const start = process.cpuUsage();
    const { readings } = derive(text);
    const seconds = process.cpuUsage(start).user / 1e6;
    expect(readings).toHaveLength(COUNT);
    // About 1.2 s of one core where this was written; a quadratic step would take minutes.
    expect(seconds).toBeLessThan(6);
    const { time, pitch, force, moment, row } = columnsOf(readings);
    let worst = 0;
    for (let k = 0; k < COUNT; k++) {
      worst = Math.max(
        worst,
        Math.abs(time[k] - (5 * k) / 1000),
        Math.abs((pitch[k] * 180) / Math.PI - ((k % 400) * 100 - 20_000) / 1000),
        Math.abs(force[k] - ((k * 7) % 9001) / 1000),
      );
    }
    // Decimal to binary and degrees to radians and back: a few roundings of numbers up to 1000.
    expect(worst).toBeLessThan(1e-12);
    expect(row[COUNT - 1]).toBe(COUNT + 1);
    expect(Number.isNaN(moment[0])).toBe(true);
  });

  it('can go to a worker and back', () => {
    const read = preview(longLog('\t', '.', 4000));
    expect(structuredClone(read)).toEqual(read);
  });

  it('names the one cell near its end that is wrong', () => {
    const text = longLog(',', '.').replace(/(\r\n[^,]*,[^,]*),[^,]*(,\r\n[^\r]*)$/, '$1,soft$2');
    const { refused, readings } = derive(text);
    expect(refused.map(place)).toEqual([`${COUNT}:3 notANumber`]);
    expect(readings).toHaveLength(COUNT - 1);
  });
});

it('a text of more rows than any log has is refused at the first of them', () => {
  const read = readRecords('1\n'.repeat(MAX_ROWS + 1), ',');
  expect(read.ok || read.error).toMatchObject({
    row: MAX_ROWS + 1,
    column: null,
    reason: { code: 'tooManyRows', limit: MAX_ROWS },
  });
});

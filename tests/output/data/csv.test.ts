import { describe, expect, it } from 'vitest';
import { JYY, JZZ, M } from '../../../src/engine/mass/moments';
import { csvFile } from '../../../src/output/data/csv';
import { curveCsv } from '../../../src/output/data/curveCsv';
import { loadsCsv } from '../../../src/output/data/loadsCsv';
import { partsCsv } from '../../../src/output/data/partsCsv';
import { createSession } from '../../../src/state/createSession';
import { DEMOS, demo } from '../solids/heads';
import { readCsv } from './readCsv';

/** Nine digits are kept: half a unit of the ninth, as a share. */
const NINE_DIGITS = 5e-9;

function expectNumber(text: string, value: number): void {
  expect(text).not.toBe('');
  expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(NINE_DIGITS * Math.abs(value) + 1e-12);
}

describe.each(DEMOS)('the tables of %s', (file) => {
  const design = demo(file);
  const { reading } = createSession(design, () => {}).live;
  const { above, header, rows } = readCsv(curveCsv(reading, design));

  it('have the conditions above and a unit in every head', () => {
    expect(above[0]).toBe(`Design: ${design.name}`);
    expect(above.some((line) => line.includes(`${design.rotor.speedRpm} rpm`))).toBe(true);
    for (const title of header) expect(title).toMatch(/ \((deg|N mm|mJ|N|mm)\)$/);
    const parts = readCsv(partsCsv(reading, design));
    expect(parts.above[0]).toBe(`Design: ${design.name}`);
    for (const title of parts.header.slice(3)) expect(title).toMatch(/ \((g|mm|g mm2|%)\)$/);
  });

  it('give at each degree what the analysis has there, and nothing where it has nothing', () => {
    expect(rows).toHaveLength(181);
    const column = (title: string) => header.indexOf(title);
    for (const row of rows) {
      const pitch = Number(row[0]);
      const moment = reading.momentAt(pitch);
      if (Number.isNaN(moment)) expect(row[column('Moment (N mm)')]).toBe('');
      else expectNumber(row[column('Moment (N mm)')], 1000 * moment);
      const force = reading.forceAt(pitch);
      const text = row[column('Push-rod force (N)')];
      if (force === null || Number.isNaN(force)) expect(text).toBe('');
      else expectNumber(text, force);
    }
    expect(rows[0][0]).toBe('-90');
    expect(rows[180][0]).toBe('90');
  });

  it('have shares that add up to the moment', () => {
    const shares = header.flatMap((title, i) => (title.startsWith('Share of') ? [i] : []));
    expect(shares.length).toBeGreaterThan(2);
    const summed = rows.filter((row) => row[1] !== '');
    expect(summed.length).toBeGreaterThan(30);
    for (const row of summed) {
      const sizes = shares.map((i) => Number(row[i]));
      const sum = sizes.reduce((a, b) => a + b, 0);
      // Nine digits of each share and of the sum, and what cancels in the program's own sum.
      const rounding = 2 * NINE_DIGITS * sizes.reduce((a, b) => a + Math.abs(b), 1e-3);
      expect(Math.abs(sum - Number(row[1]))).toBeLessThan(rounding);
    }
  });

  it('list parts whose masses and J_yy - J_zz add up to the sum', () => {
    const parts = readCsv(partsCsv(reading, design)).rows;
    const counted = parts.filter((row) => row[2] === 'in the sum');
    const total = parts[parts.length - 1];
    expect(counted.length).toBeGreaterThan(2);
    const column = (i: number) => counted.map((row) => Number(row[i]));
    const sizes = (i: number) => column(i).reduce((all, one) => all + Math.abs(one), 0);
    for (const i of [3, 13]) {
      const sum = column(i).reduce((a, b) => a + b, 0);
      expect(Math.abs(sum - Number(total[i]))).toBeLessThan(2 * NINE_DIGITS * sizes(i));
    }
    expectNumber(total[3], 1000 * reading.totals[M]);
    expectNumber(total[13], 1e9 * (reading.totals[JYY] - reading.totals[JZZ]));
  });

  it('tell every load with its unit, and a limit only with the source that it is from', () => {
    const loads = reading.loadsAt(12);
    const table = readCsv(loadsCsv(reading, design, 12));
    expect(table.above.some((line) => line.includes('12 deg'))).toBe(true);
    expectNumber(table.rows[0][2], loads.axialPull);
    for (const [, , , unit, limit, use, source] of table.rows) {
      expect(['N', 'N mm', 'MPa', '1']).toContain(unit);
      expect(limit === '').toBe(use === '');
      if (limit !== '') expect(source).not.toBe('');
    }
    for (const { id, pull } of loads.pulls) {
      const row = table.rows.find(
        ([part, load]) => part === reading.part(id)?.part.name && load === 'Pull of the part',
      );
      expectNumber(row?.[2] ?? '', pull);
    }
  });
});

describe('the share of a limit', () => {
  it('is the value against the limit, both in the unit of their line', () => {
    const design = demo(DEMOS[2]);
    const { reading } = createSession(design, () => {}).live;
    const { rows } = readCsv(loadsCsv(reading, design, 20));
    const limited = rows.filter((row) => row[4] !== '');
    expect(limited.length).toBeGreaterThan(3);
    for (const [, , value, , limit, use] of limited) {
      expect(Number(use)).toBeCloseTo((100 * Number(value)) / Number(limit), 5);
    }
  });
});

describe('a cell', () => {
  const cells = (rows: Parameters<typeof csvFile>[2]) => readCsv(csvFile([], ['x'], rows)).rows;

  it('with commas, quotes and line ends comes back as it was (RFC 4180)', () => {
    const nasty = 'a,"b"\r\nc\u00d8 \u00b1';
    expect(cells([[nasty]])).toEqual([[nasty]]);
    expect(readCsv(csvFile(['a\nb'], [nasty], [])).header).toEqual([nasty]);
  });

  it('that a spreadsheet would run as a formula is text', () => {
    for (const text of ['=1+1', '+1', '-cmd', '@x', '\uff1d1', '\t=1']) {
      expect(cells([[text]])[0][0].startsWith("'")).toBe(true);
    }
  });

  it('without a value is empty, and rounding is no number', () => {
    expect(cells([[null], [Number.NaN], [Number.POSITIVE_INFINITY], [-0], [-3e-15]])).toEqual([
      [''],
      [''],
      [''],
      ['0'],
      ['0'],
    ]);
  });

  it('of a number keeps nine digits and a decimal point', () => {
    expect(cells([[Math.PI], [-1 / 3], [1234567890.123]])).toEqual([
      ['3.14159265'],
      ['-0.333333333'],
      ['1234567890'],
    ]);
  });
});

describe('the reader of these tests', () => {
  it.each(['\ufeffa\n', '\ufeffa"b\r\n', '\ufeff"a\r\n', '\ufeffa,b\r\nc\r\n', 'a\r\n'])(
    'refuses %j',
    (text) => {
      expect(() => readCsv(text)).toThrow();
    },
  );
});

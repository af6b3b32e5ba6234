import { describe, expect, it } from 'vitest';
import { JYY, JZZ, M } from '../../../src/engine/mass/moments';
import { csvFile } from '../../../src/output/data/csv';
import { curveCsv } from '../../../src/output/data/curveCsv';
import { partsCsv } from '../../../src/output/data/partsCsv';
import { createSession } from '../../../src/state/createSession';
import { DEMOS, demo } from '../solids/heads';

/** Lines without comments, cells split at commas: the demo heads have none within a cell. */
function table(text: string): string[][] {
  const lines = text.replace(/^\ufeff/, '').split('\r\n');
  return lines
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.split(','));
}

describe.each(DEMOS)('the tables of %s', (file) => {
  const design = demo(file);
  const { reading } = createSession(design, () => {}).live;
  const [header, ...rows] = table(curveCsv(reading, design));

  it('have the conditions above and a unit in every head', () => {
    const text = curveCsv(reading, design);
    expect(text.startsWith(`\ufeff# Design: ${design.name}\r\n`)).toBe(true);
    expect(text).toContain(`${design.rotor.speedRpm} rpm`);
    for (const title of header) expect(title).toMatch(/ \((deg|N mm|mJ|N|mm)\)$/);
  });

  it('give at each degree the moment that the head has, and shares that add up to it', () => {
    expect(rows).toHaveLength(181);
    const shares = header.flatMap((title, i) => (title.startsWith('Share of') ? [i] : []));
    for (const row of rows) {
      expect(row).toHaveLength(header.length);
      const moment = Number(row[1]);
      expect(moment).toBeCloseTo(1000 * reading.momentAt(Number(row[0])), 6);
      const sizes = shares.map((i) => Number(row[i]));
      const sum = sizes.reduce((a, b) => a + b, 0);
      // Nine digits of each share.
      const rounding = 1e-8 * sizes.reduce((a, b) => a + Math.abs(b), 1e-3);
      if (row[1] !== '') expect(Math.abs(sum - moment)).toBeLessThan(rounding);
    }
  });

  it('list parts whose masses and J_yy - J_zz add up to the sum', () => {
    const [, ...parts] = table(partsCsv(reading, design));
    const counted = parts.filter((row) => row[2] === 'in the sum');
    const total = parts[parts.length - 1];
    const sum = (i: number) => counted.reduce((all, row) => all + Number(row[i]), 0);
    expect(sum(3)).toBeCloseTo(Number(total[3]), 5);
    expect(Number(total[3])).toBeCloseTo(1000 * reading.totals[M], 6);
    const spread = 1e9 * (reading.totals[JYY] - reading.totals[JZZ]);
    expect(Math.abs(sum(13) - spread)).toBeLessThan(1e-6 * 1e9 * reading.totals[JYY]);
  });
});

describe('a cell', () => {
  it('that a spreadsheet would run as a formula is text, and quotes and commas survive (RFC 4180)', () => {
    const text = csvFile(['a\nb'], ['x'], [['=1+1'], ['a,"b"'], [null], [Number.NaN], [-0]]);
    expect(text).toBe(`\ufeff# a b\r\nx\r\n'=1+1\r\n"a,""b"""\r\n\r\n\r\n0\r\n`);
  });
});

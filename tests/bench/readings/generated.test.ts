import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { previewReadings } from '../../../src/bench/readings/preview';
import type { Reading, RunMetadata } from '../../../src/bench/readings/types';
import { writeReadings } from '../../../src/bench/readings/writeReadings';
import { radians } from '../../../src/engine/units';
import { derive, expectNear, NIST, preview } from './support';

/**
 * Tables made up at random from known numbers, written by a writer of this file that shares nothing with the reader:
 * order of columns, delimiter, decimal sign, quotes, line ends, blank rows, comments, letters, units. Seeded.
 */
interface Style {
  readonly delimiter: ',' | ';' | '\t' | '|';
  readonly comma: boolean;
  readonly quoteAll: boolean;
  readonly lineEnd: '\n' | '\r\n' | '\r';
  readonly mark: boolean;
  readonly letters: boolean;
  readonly unit: 'N' | 'ozf' | 'lbf' | 'kgf';
  readonly order: readonly number[];
  readonly blankEvery: number;
  readonly trailing: boolean;
}

const styles: fc.Arbitrary<Style> = fc.record({
  delimiter: fc.constantFrom(',', ';', '\t', '|'),
  comma: fc.boolean(),
  quoteAll: fc.boolean(),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  mark: fc.boolean(),
  letters: fc.boolean(),
  unit: fc.constantFrom('N', 'ozf', 'lbf', 'kgf'),
  order: fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
  blankEvery: fc.integer({ min: 2, max: 9 }),
  trailing: fc.boolean(),
});

/** Tenths of a degree and hundredths of a force: whole numbers, so that the written text is exact. */
const rows = fc.array(
  fc.record({
    tenths: fc.integer({ min: -1800, max: 1800 }),
    hundredths: fc.integer({ min: -99_999, max: 99_999 }),
    rpm: fc.integer({ min: 0, max: 30_000 }),
  }),
  { minLength: 3, maxLength: 40 },
);

const UNIT_N = { N: 1, ozf: NIST.ozf, lbf: NIST.lbf, kgf: NIST.kgf } as const;

function decimalText(whole: number, digits: number, mark: string): string {
  const text = String(Math.abs(whole)).padStart(digits + 1, '0');
  return `${whole < 0 ? '-' : ''}${text.slice(0, -digits)}${mark}${text.slice(-digits)}`;
}

function writeTable(
  table: readonly { tenths: number; hundredths: number; rpm: number }[],
  style: Style,
): { text: string; rowNumbers: number[] } {
  const decimal = style.comma ? ',' : '.';
  const lines = [['Pitch [deg]', `Force [${style.unit}]`, 'T/C', 'Speed (rpm)']];
  const rowNumbers: number[] = [];
  const out: string[] = [];
  for (const { tenths, hundredths, rpm } of table) {
    const size = style.letters ? Math.abs(hundredths) : hundredths;
    const letter = style.letters ? (hundredths < 0 ? 'C' : 'T') : '';
    lines.push([
      decimalText(tenths, 1, decimal),
      decimalText(size, 2, decimal),
      letter,
      String(rpm),
    ]);
  }
  for (const [k, cells] of lines.entries()) {
    if (k > 0) rowNumbers.push(out.length + 1);
    const kept = style.letters ? style.order : style.order.filter((column) => column !== 2);
    const shown = kept.map((column) => {
      const cell = cells[column];
      return style.quoteAll || cell.includes(style.delimiter) ? `"${cell}"` : cell;
    });
    out.push(shown.join(style.delimiter) + (style.trailing ? style.delimiter : ''));
    if (k % style.blankEvery === 1) out.push('', '# a comment; with, marks');
  }
  return { text: (style.mark ? '\ufeff' : '') + out.join(style.lineEnd), rowNumbers };
}

describe('a table written at random in any of the usual ways', () => {
  it('is read back, every number and every row', () => {
    fc.assert(
      fc.property(rows, styles, (table, style) => {
        const { text, rowNumbers } = writeTable(table, style);
        const { readings, refusedRows } = derive(text);
        expect(refusedRows).toBe(0);
        expect(readings.map(({ row }) => row)).toEqual(rowNumbers);
        expectNear(
          readings.map(({ pitch }) => pitch),
          table.map(({ tenths }) => (tenths / 10) * NIST.deg),
        );
        expectNear(
          readings.map(({ force }) => force),
          table.map(({ hundredths }) => (hundredths / 100) * UNIT_N[style.unit]),
        );
        expectNear(
          readings.map(({ speed }) => speed),
          table.map(({ rpm }) => rpm * NIST.rpm),
        );
      }),
      { seed: 7, numRuns: 400 },
    );
  });

  it('with one cell spoilt, is refused at that row and column and nowhere else', () => {
    fc.assert(
      fc.property(
        rows,
        styles,
        fc.nat(),
        fc.constantFrom('soft', '1.2.3.', '--5', '5 dyn x', '0b1', '12:30'),
        (table, style, where, spoilt) => {
          const { text, rowNumbers } = writeTable(table, style);
          const row = rowNumbers[where % rowNumbers.length];
          const kept = style.letters ? style.order : style.order.filter((column) => column !== 2);
          const column = kept.indexOf(1);
          const lines = text.split(style.lineEnd);
          const cells = splitPlain(lines[row - 1], style.delimiter);
          cells[column] = spoilt;
          lines[row - 1] = cells.join(style.delimiter);
          const { refused, readings } = derive(lines.join(style.lineEnd));
          expect(refused.map((fault) => [fault.row, fault.column])).toEqual([[row, column + 1]]);
          expect(readings).toHaveLength(table.length - 1);
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });
});

/** Cells of a line with their quotes left on: this file's writer puts no quote into a cell. */
function splitPlain(line: string, delimiter: string): string[] {
  const cells: string[] = [''];
  let open = false;
  for (const letter of line) {
    if (letter === '"') open = !open;
    if (letter === delimiter && !open) cells.push('');
    else cells[cells.length - 1] += letter;
  }
  return cells;
}

describe('no text and no bytes', () => {
  it('make the reader throw', () => {
    const letters = fc.constantFrom(
      ...' \t\n\r",;|.:-+#%10987TCNeE°[]()/=\u2212\u00a0'.split(''),
      'Pitch',
      'Force [N]',
      '\ufeff',
    );
    fc.assert(
      fc.property(fc.array(letters, { maxLength: 80 }), (parts) => {
        const read = previewReadings(parts.join(''));
        expect(typeof read.ok).toBe('boolean');
      }),
      { seed: 9, numRuns: 3000 },
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(typeof previewReadings(bytes).ok).toBe('boolean');
      }),
      { seed: 10, numRuns: 1000 },
    );
  });
});

const METADATA: RunMetadata = {
  speed: 1068.1,
  fitted: 'bolt, "long" nut; blade',
  arm: 0.0171,
  gauge: 'spring gauge',
  gaugeStep: 0.139,
  date: '2026-03-01',
  note: 'calm, dry',
};

const texts = fc
  .string({ unit: fc.constantFrom(...'abc ",;\n\'=:#1é'.split('')), maxLength: 12 })
  .map((text) => text.trim())
  // A formula gets an apostrophe in front, on purpose.
  .filter((text) => !/^[=+\-@]/.test(text));
const sizes = fc.double({ min: -100, max: 100, noNaN: true });

const readingArbitrary: fc.Arbitrary<Omit<Reading, 'row' | 'column' | 'moment'>> = fc.record({
  pitch: fc.double({ min: -3.14, max: 3.14, noNaN: true }).map(radians),
  scale: fc.option(sizes),
  force: sizes,
  travel: fc.option(fc.constantFrom('push', 'pull', 'up', 'down', 'held')),
  speed: fc.option(fc.double({ min: 0, max: 5000, noNaN: true })),
  time: fc.option(fc.double({ min: 0, max: 1e5, noNaN: true })),
  run: texts,
  note: texts,
});

describe('readings written as a table', () => {
  it('are read back to rounding, texts and metadata as they were', () => {
    fc.assert(
      fc.property(fc.array(readingArbitrary, { minLength: 1, maxLength: 20 }), (made) => {
        const before = made.map((reading, k) => ({ ...reading, row: k, column: 0, moment: null }));
        const again = preview(writeReadings(before, METADATA));
        expect(again.derived.ok).toBe(true);
        if (!again.derived.ok) return;
        const after = again.derived.value.readings;
        expect(after).toHaveLength(before.length);
        for (const key of ['pitch', 'scale', 'force', 'speed', 'time'] as const) {
          // 15 digits written: half a unit of the last is at most 5e-15; two conversions add a few 1e-16.
          expectNear(
            after.map((reading) => reading[key]),
            before.map((reading) => reading[key]),
            1e-14,
          );
        }
        for (const key of ['travel', 'run', 'note'] as const)
          expect(after.map((reading) => reading[key])).toEqual(
            before.map((reading) => reading[key]),
          );
        const { speed, arm, gaugeStep, ...words } = again.guess.metadata.run;
        expectNear(
          [speed, arm, gaugeStep],
          [METADATA.speed, METADATA.arm, METADATA.gaugeStep],
          1e-14,
        );
        expect(words).toEqual({
          fitted: METADATA.fitted,
          gauge: METADATA.gauge,
          date: METADATA.date,
          note: METADATA.note,
        });
      }),
      { seed: 11, numRuns: 300 },
    );
  });

  it('have moments in N mm, plain divisions where the scale has no unit, and no formulas', () => {
    const reading: Reading = {
      row: 1,
      column: 0,
      pitch: radians(0),
      scale: 12,
      force: null,
      moment: 0.0125,
      travel: null,
      speed: null,
      time: null,
      run: '',
      note: '=1+1',
    };
    const text = writeReadings([reading], { ...METADATA, note: '' }, 'divisions');
    expect(text).toContain(
      "pitch [deg],scale reading [div],moment [N mm],note\r\n0,12,12.5,'=1+1\r\n",
    );
    const [again] = derive(text).readings;
    expect([again.scale, again.force, again.moment]).toEqual([12, null, 0.0125]);
  });
});

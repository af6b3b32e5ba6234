import { describe, expect, it } from 'vitest';
import { cellParts, readCell } from '../../../src/bench/readings/cellValue';
import { clockSeconds } from '../../../src/bench/readings/clock';
import {
  countCell,
  isNoValue,
  type NumberStyle,
  newCount,
  ownDecimal,
  readNumber,
  shapeOf,
  styleOf,
  tidyNumber,
} from '../../../src/bench/readings/numbers';
import { isNumeric } from '../../../src/bench/readings/sniff';
import type { DecimalSign } from '../../../src/bench/readings/types';

function style(decimal: DecimalSign, otherMark: NumberStyle['otherMark'] = 'thousands') {
  return { decimal, otherMark };
}

/** What a cell says, or the code of the reason why it says nothing. */
function said(cell: string, decimal: DecimalSign, otherMark?: NumberStyle['otherMark']) {
  const read = readNumber(cell, style(decimal, otherMark));
  return typeof read === 'number' ? read : read.code;
}

/** A cell, what it is with a decimal point and what it is with a decimal comma: by the eye of who writes such numbers. */
const CELLS: readonly (readonly [cell: string, point: number | string, comma: number | string])[] =
  [
    ['0', 0, 0],
    ['-12', -12, -12],
    ['+12', 12, 12],
    ['12e2', 1200, 1200],
    ['12E-2', 0.12, 0.12],
    ['1e+2', 100, 100],
    ['1e12', 1e12, 1e12],
    ['-1.5', -1.5, 'otherDecimal'],
    ['+1.5', 1.5, 'otherDecimal'],
    ['-1,5', 'otherDecimal', -1.5],
    ['+1,5', 'otherDecimal', 1.5],
    ['1.5e1', 15, 'otherDecimal'],
    ['1,5e+1', 'otherDecimal', 15],
    ['1,5e-1', 'otherDecimal', 0.15],
    ['-.25', -0.25, 'otherDecimal'],
    ['25.', 25, 'otherDecimal'],
    ['1.234', 1.234, 1234],
    ['-1,234', -1234, -1.234],
    ['+12.345', 12.345, 12_345],
    ['123,456', 123_456, 123.456],
    ['0.234', 0.234, 'otherDecimal'],
    ['0,234', 'otherDecimal', 0.234],
    ['1234,567', 'otherDecimal', 1234.567],
    ['1.234e1', 12.34, 'otherDecimal'],
    ['1,2345', 'otherDecimal', 1.2345],
    ['1.234.567', 'otherDecimal', 1_234_567],
    ['-1,234,567', -1_234_567, 'otherDecimal'],
    ['+1.234.567', 'otherDecimal', 1_234_567],
    ['1,234.5', 1234.5, 'otherDecimal'],
    ['12.345,60', 'otherDecimal', 12_345.6],
    ['1.234.567,8', 'otherDecimal', 1_234_567.8],
    ["1'234.5", 1234.5, 'otherDecimal'],
    ['1\u2019234\u2019567', 1_234_567, 1_234_567],
    ['10 200', 10_200, 10_200],
    ['-10\u202f200,5', 'otherDecimal', -10_200.5],
    ['10\u00a0200', 10_200, 10_200],
    ['10\u2009200', 10_200, 10_200],
    ['- 2.5', -2.5, 'otherDecimal'],
    ['+ 2,5', 'otherDecimal', 2.5],
    ['\u22122.5', -2.5, 'otherDecimal'],
    ['\ufe632', -2, -2],
    ['\uff0d2', -2, -2],
    ['\u20132', -2, -2],
    [' 7 ', 7, 7],
    ['12,34,567', 'notANumber', 'notANumber'],
    ['1,234,56', 'notANumber', 'notANumber'],
    ['0,234,567', 'notANumber', 'notANumber'],
    ['1234,567.8', 'notANumber', 'notANumber'],
    ['1,234.567.8', 'notANumber', 'notANumber'],
    ['01 234', 'notANumber', 'notANumber'],
    ['10 20', 'notANumber', 'notANumber'],
    ['10\u00a020', 'notANumber', 'notANumber'],
    ['10 2000', 'notANumber', 'notANumber'],
    ['.', 'notANumber', 'notANumber'],
    [',', 'notANumber', 'notANumber'],
    ['1e', 'notANumber', 'notANumber'],
    ['e1', 'notANumber', 'notANumber'],
    ['1.5e', 'notANumber', 'notANumber'],
    ['1e1.5', 'notANumber', 'notANumber'],
    ['+-1', 'notANumber', 'notANumber'],
    ['x1', 'notANumber', 'notANumber'],
    ['1x', 'notANumber', 'notANumber'],
    ['x1.5', 'notANumber', 'notANumber'],
    ['1.5x', 'notANumber', 'notANumber'],
    ['x1,234.5', 'notANumber', 'notANumber'],
    ['1,234.5x', 'notANumber', 'notANumber'],
  ];

describe('a number in a cell', () => {
  it.each(CELLS)('%j', (cell, point, comma) => {
    expect([said(cell, '.'), said(cell, ',')]).toEqual([point, comma]);
  });

  it('that could be either is refused where the column has decimals and never groups', () => {
    expect(said('1.234', ',', 'unclear')).toBe('ambiguousNumber');
    expect(said('1,234', '.', 'unclear')).toBe('ambiguousNumber');
    expect(said('1.234', '.', 'unclear')).toBe(1.234);
    expect(said('1.234.567', ',', 'unclear')).toBe(1_234_567);
  });

  it.each([
    [
      'noValue',
      [
        '',
        'NaN',
        'nan',
        'n/a',
        'NA',
        '#N/A',
        'null',
        'None',
        'nil',
        '-',
        '---',
        '\u2013',
        '\u2014',
        '?',
        '..',
        '...',
      ],
    ],
    ['notFinite', ['inf', '-Inf', '+Infinity', 'infinity', '\u221e', '-\u221e']],
    [
      'overRange',
      ['OL', 'O.L', 'O.L.', 'OVL', 'over', 'Overload', 'overrange', 'over range', '>', '>>>'],
    ],
    [
      'notANumber',
      [
        'nano',
        'xnan',
        'an/a',
        '-x',
        'x-',
        '????',
        '....',
        'info',
        'xinf',
        '--inf',
        'cool',
        'old',
        'overdone',
        'turnover',
        '>1',
        'x>',
        'nothing',
      ],
    ],
  ] as const)('says why it is none: %s', (code, cells) => {
    expect(cells.filter((cell) => said(cell, '.') !== code)).toEqual([]);
    expect(cells.filter((cell) => isNoValue(cell) !== (code === 'noValue'))).toEqual([]);
  });

  it('a refusal holds the cell as it was written, and the decimal sign it should have', () => {
    expect(readNumber(' x ', style('.'))).toEqual({ code: 'notANumber', found: ' x ' });
    expect(readNumber('1,5', style('.'))).toEqual({
      code: 'otherDecimal',
      found: '1,5',
      decimal: '.',
    });
    expect(readNumber('1.234', style(',', 'unclear'))).toEqual({
      code: 'ambiguousNumber',
      found: '1.234',
    });
  });
});

describe('the shape of a number', () => {
  it.each([
    ['12', 'plain'],
    ['1.5', 'decimalPoint'],
    ['1,5', 'decimalComma'],
    ['1.234', 'eitherPoint'],
    ['1,234', 'eitherComma'],
    ['123,456', 'eitherComma'],
    ['1234,567', 'decimalComma'],
    ['0,234', 'decimalComma'],
    [',234', 'decimalComma'],
    ['1,234E1', 'decimalComma'],
    ['1.234.567', 'groupedPoint'],
    ['1,234,567', 'groupedComma'],
    ['1,234.5', 'decimalPoint'],
    ['1.234,5', 'decimalComma'],
    ['.', 'none'],
    ['', 'none'],
    ['soft', 'none'],
  ])('%j is %s', (cell, shape) => {
    expect(shapeOf(cell)).toBe(shape);
  });

  it('is looked at after blanks and minus signs were made the same', () => {
    expect(tidyNumber('1.5e-3')).toBe('1.5e-3');
    expect(tidyNumber('\u2212\u00a01\u2009234,5 ')).toBe('-1234,5');
    expect(tidyNumber('- x')).toBe('- x');
    expect(tidyNumber('x - 1')).toBe('x - 1');
  });
});

function counted(...cells: string[]) {
  const count = newCount();
  for (const [k, cell] of cells.entries()) countCell(count, cell, k + 1);
  return count;
}

describe('the numbers of a column', () => {
  it('are counted by what they prove', () => {
    expect(
      counted(
        '1',
        '1.5',
        '2,5',
        '1,234',
        '1.234',
        '1.234.567',
        '1,234,567',
        '1,234.5',
        '1.234,5',
        'x',
      ),
    ).toEqual({
      numbers: 9,
      point: 2,
      comma: 2,
      eitherPoint: 1,
      eitherComma: 1,
      groupedPoint: 2,
      groupedComma: 2,
      firstEither: { row: 4, found: '1,234' },
    });
    expect(counted('1.234.567', '1,234').firstEither).toEqual({ row: 2, found: '1,234' });
  });

  it.each([
    [['1', '1.234', '1,234'], null],
    [['1.5'], '.'],
    [['1,5'], ','],
    [['1,234,567'], '.'],
    [['1.234.567'], ','],
    [['1.5', '2,5'], '.'],
    [['1.5', '2,5', '3,5'], ','],
    [['1,234,567', '2,5'], '.'],
    [['1.5', '2,5', '1.234.567'], ','],
  ] as const)('%j prove the decimal sign %j', (cells, sign) => {
    expect(ownDecimal(counted(...cells))).toBe(sign);
  });

  it.each([
    [['1'], '.', 'thousands'],
    [['1.5'], '.', 'unclear'],
    [['1.5'], ',', 'thousands'],
    [['1,5'], ',', 'unclear'],
    [['1,5'], '.', 'thousands'],
    [['1.5', '1,234.5'], '.', 'thousands'],
    [['1,5', '1.234,5'], ',', 'thousands'],
    [['1,5', '1,234.5'], ',', 'unclear'],
  ] as const)('%j with %j leave the other mark to be %s', (cells, decimal, otherMark) => {
    expect(styleOf(counted(...cells), decimal)).toEqual({ decimal, otherMark });
  });
});

describe('a cell with a number and something beside it', () => {
  it.each([
    ['3.5', 3.5, null, null],
    ['3.5 ozf', 3.5, 'ozf', null],
    ['3.5ozf', 3.5, 'ozf', null],
    ['-3.5 N mm', -3.5, 'N mm', null],
    ['12.5 N T', 12.5, 'N', 'tension'],
    ['12.5 N (C)', 12.5, 'N', 'compression'],
    ['12.5 (T)', 12.5, null, 'tension'],
    ['C 4', 4, null, 'compression'],
    ['C4', 4, null, 'compression'],
    ['T 4 ozf', 4, 'ozf', 'tension'],
    ['\u22124\u00b0', -4, 'deg', null],
    ["1'234.5 N", 1234.5, 'N', null],
    ['10 200 rpm', 10_200, 'rpm', null],
    ['1e3 N', 1000, 'N', null],
    ['1.5e-3N', 0.0015, 'N', null],
    ['- 2.5 N', -2.5, 'N', null],
    ['- 2.5', -2.5, null, null],
    ['2.5 N tension', 2.5, 'N', 'tension'],
    ['2.5 ozf(T)', 2.5, 'ozf', 'tension'],
  ] as const)('%j', (cell, value, unit, sense) => {
    expect(readCell(cell, style('.'))).toEqual({ value, unit, sense });
  });

  it.each([
    '3.5 dyn',
    'x 4',
    'T 4 C',
    'T 4 x',
    '4 x y',
    '4 N x',
    '4 dyn T',
    '1.2.3 N',
    '4 N 5',
    '4 N\nT',
    'soft',
  ])('%j is no number, and the whole cell is named', (cell) => {
    expect(readCell(cell, style('.'))).toEqual({ code: 'notANumber', found: cell });
  });

  it('keeps the reason of its number where that is another', () => {
    expect(readCell('3,5 N', style('.'))).toEqual({
      code: 'otherDecimal',
      found: '3,5',
      decimal: '.',
    });
  });

  it('is taken apart into digits and the words round them', () => {
    expect(cellParts('12')).toBeNull();
    expect(cellParts('-1.5E-3')).toBeNull();
    expect(cellParts('soft')).toBeNull();
    expect(cellParts('C 4.5 N ')).toEqual({ before: 'C', number: '4.5', after: 'N' });
    // Four digits after a blank are no group of three.
    expect(cellParts('10 2000 N')).toEqual({ before: '', number: '10', after: '2000 N' });
  });

  it.each([
    ['12', true],
    ['soft', false],
    ['3.5 ozf', true],
    ['3.5 T', true],
    ['3.5 dyn', true],
    ['3.5 mbar A', true],
    ['C 4', true],
    ['Run 4', false],
    ['4 turns of it', false],
    ['4 washers', false],
    ['1.2.3 N', false],
    ['4 5,6', false],
    // Long names of units, and words for a sense.
    ['4 newtons', true],
    ['4 ozf in', true],
    ['4 tension', true],
    ['C 4 newtons', true],
  ])('%j is a number of a table: %s', (cell, numeric) => {
    expect(isNumeric(cell)).toBe(numeric);
  });
});

describe('a clock time', () => {
  // 2026-03-01 is day 20,513 after 1970-01-01: 56 years, 14 leap days among them, and 59 days.
  const march = (56 * 365 + 14 + 59) * 86_400;
  it.each([
    ['00:00', 0],
    ['1:02', 3720],
    ['14:03:05', 50_585],
    ['14:03:05.25', 50_585.25],
    ['14:03:05,25', 50_585.25],
    [' 14:03:05 ', 50_585],
    ['14:03:05Z', 50_585],
    ['14:03:05+01:00', 50_585],
    ['14:03:05-0130', 50_585],
    ['23:59:60', 86_400],
    ['23:59:59.123456789', 86_399.123456789],
    ['2026-03-01T00:00', march],
    ['2026-03-01 14:03:05', march + 50_585],
    ['2024-02-29T00:00', (54 * 365 + 13 + 59) * 86_400],
  ])('%j is %d seconds', (text, seconds) => {
    expect(clockSeconds(text)).toBe(seconds);
  });

  it.each([
    '24:00',
    '12:60',
    '12:00:61',
    '2026-02-29T12:00',
    '2026-04-31T12:00',
    '2026-13-01T12:00',
    '2026-00-10T12:00',
    '2026-03-00T12:00',
    '2026-03-01',
    '12',
    '1:2',
    'x12:00',
    '12:00x',
    '12:00:00.',
    '12:00:00.1234567890',
    '12:00+1',
    '26-03-01T12:00',
    '2026-03-01X12:00',
    '',
  ])('%j is none', (text) => {
    expect(clockSeconds(text)).toBeNull();
  });
});

import { describe, expect, it } from 'vitest';
import { lineAt, MAX_CELL, MAX_COLUMNS, readRecords } from '../../../src/bench/readings/records';
import { cellCount, commonWidth, sniffDelimiter } from '../../../src/bench/readings/sniff';
import type { Delimiter } from '../../../src/bench/readings/types';
import { place } from './support';

function cellsOf(text: string, delimiter: Delimiter = ','): readonly (readonly string[])[] {
  const read = readRecords(text, delimiter);
  if (!read.ok) throw new Error(place(read.error));
  return read.value.map(({ cells }) => cells);
}

function faultOf(text: string, delimiter: Delimiter = ',') {
  const read = readRecords(text, delimiter);
  return read.ok ? null : read.error;
}

/** Rules of RFC 4180, section 2, by number, and what tables have beside them (common practice). */
describe('the records of a text', () => {
  it.each([
    [
      'lines that end in CR LF, LF or CR (2.1)',
      'a,b\r\nc,d\ne,f\rg,h',
      ',',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
        ['g', 'h'],
      ],
    ],
    ['the last line with or without its end (2.2)', 'a,b\n', ',', [['a', 'b']]],
    [
      'cells in quotes (2.5)',
      '"a","b"\r\n"c",d\n',
      ',',
      [
        ['a', 'b'],
        ['c', 'd'],
      ],
    ],
    [
      'line ends, delimiters and quotes in quotes (2.6, 2.7)',
      '"a\r\nb","c,d","e""f"""\n',
      ',',
      [['a\r\nb', 'c,d', 'e"f"']],
    ],
    ['empty quotes', '"",a\n', ',', [['', 'a']]],
    ['blanks round quotes and cells', ' "a" ,\t"b"\t, c "d" \n', ',', [['a', 'b', 'c "d"']]],
    [
      'a tab beside a quoted cell is a delimiter where tabs are',
      '"a"\t"b"\t "c" \n',
      '\t',
      [['a', 'b', 'c']],
    ],
    ['a quote at the end of the text', 'x,"a"', ',', [['x', 'a']]],
    ['quotes with a carriage return behind them', '"a"\r"b"\r', ',', [['a'], ['b']]],
    [
      'a plain cell behind a quoted one, and line ends behind it',
      '"a",b\rc,"d",e\nf,"g"\n',
      ',',
      [
        ['a', 'b'],
        ['c', 'd', 'e'],
        ['f', 'g'],
      ],
    ],
    ['a quote in a comment', '# say "x\na,b\n', ',', [['# say "x'], ['a', 'b']]],
    [
      'a frame of pipes',
      '| a | b |\n|c|d|\n e|f \n',
      '|',
      [
        ['a', 'b'],
        ['c', 'd'],
        ['e', 'f'],
      ],
    ],
    ['a frame of pipes round quotes', '|"a"|"b"|\n', '|', [['a', 'b']]],
    ['a pipe alone', 'a\n|\n|b\n', '|', [['a'], ['b']]],
    ['empty cells at both ends that are no frame', ',a,\n', ',', [['', 'a', '']]],
    ['a mark within a row of blanks', 'a# 5 6\n', 'spaces', [['a#', '5', '6']]],
    ['a bracket that is never closed', 'x (a b\n', 'spaces', [['x', '(a', 'b']]],
    ['a bracket that is never opened', 'a b) c\n', 'spaces', [['a', 'b)', 'c']]],
    ['blanks within quotes', '" a ",b\n', ',', [['a', 'b']]],
    ['runs of blanks and tabs', '  a   b\tc  \n', 'spaces', [['a', 'b', 'c']]],
    [
      'a bracket behind a heading',
      'Pitch  (deg)   Force [N mm]\n',
      'spaces',
      [['Pitch (deg)', 'Force [N mm]']],
    ],
    [
      'a comment mark before the first heading',
      '#  pitch force\n//  pitch force\n#!% x y\n',
      'spaces',
      [
        ['# pitch', 'force'],
        ['// pitch', 'force'],
        ['#!% x', 'y'],
      ],
    ],
  ] as const)('%s', (_, text, delimiter, wanted) => {
    expect(cellsOf(text, delimiter)).toEqual(wanted);
  });

  it('know their row and where they begin, empty ones counted and left out', () => {
    const text = 'a,b\r\n\r\n,,\n"c\nd",e\rf';
    const read = readRecords(text, ',');
    expect(
      read.ok && read.value.map(({ row, start }) => [row, text.slice(start, start + 2)]),
    ).toEqual([
      [1, 'a,'],
      [4, '"c'],
      [5, 'f'],
    ]);
    expect(lineAt(text, 0)).toBe('a,b');
    expect(lineAt(text, text.length - 1)).toBe('f');
    expect(lineAt('a\rb', 0)).toBe('a');
    const spaced = readRecords('a b\n\n  \nc d\n', 'spaces');
    expect(spaced.ok && spaced.value.map(({ row }) => row)).toEqual([1, 4]);
  });

  it('are as many as are asked for', () => {
    const read = readRecords('a\n\nb\nc\n', ',', { most: 2 });
    expect(read.ok && read.value.map(({ cells }) => cells[0])).toEqual(['a', 'b']);
  });

  it('take quotes for letters where they are told to', () => {
    const read = readRecords('"a,b"\n', ',', { rough: true });
    expect(read.ok && read.value[0].cells).toEqual(['"a', 'b"']);
  });

  it('tell a quote that is never closed, and what stands behind one', () => {
    expect(faultOf('a\nb,c,"d\n')).toMatchObject({
      row: 2,
      column: 3,
      reason: { code: 'openQuote' },
    });
    expect(faultOf('a,"b""\n')).toMatchObject({ row: 1, column: 2, reason: { code: 'openQuote' } });
    expect(faultOf('a,"b" cd,e\nf\n')).toMatchObject({
      row: 1,
      column: 2,
      reason: { code: 'textAfterQuote', found: 'cd,e' },
    });
    expect(faultOf(`"b"${'x'.repeat(30)}`)).toMatchObject({ reason: { found: 'x'.repeat(20) } });
  });

  it('have at most so many columns, and cells of at most so many letters', () => {
    expect(faultOf(','.repeat(MAX_COLUMNS - 1))).toBeNull();
    expect(faultOf(`\n${','.repeat(MAX_COLUMNS)}`)).toEqual({
      row: 2,
      column: MAX_COLUMNS + 1,
      heading: '',
      reason: { code: 'tooManyColumns', count: MAX_COLUMNS + 1, limit: MAX_COLUMNS },
    });
    expect(faultOf(`a,${'x'.repeat(MAX_CELL)}`)).toBeNull();
    expect(faultOf(`a,${'x'.repeat(MAX_CELL + 1)}`)).toMatchObject({
      row: 1,
      column: 2,
      reason: { code: 'cellTooLong', length: MAX_CELL + 1, limit: MAX_CELL },
    });
  });
});

describe('the delimiter', () => {
  it.each([
    ['a;b\n1,5;2,5\n', ';'],
    ['a,b\n1.5,2.5\n', ','],
    ['a\tb\n1,5\t2,5\n', '\t'],
    ['a|b\n1|2\n', '|'],
    ['a b\n1 2\n', 'spaces'],
    ['a\n1\n', '\t'],
    ['sep=;\na,b\n1,2\n', ';'],
    ['"sep=|"\na,b\n1,2\n', '|'],
    ['SEP=;\t\r\na,b\n1,2\n', ';'],
    ['sep=;', ';'],
    // Cells that a table is made of though they are no numbers: nothing, times, dates, letters, ways.
    ['1,5;;;2,5\n2,5;;;3,5\n', ';'],
    ['12:00:01;12:00:02\n12:00:03;12:00:04\n', ';'],
    ['1:02:03;1:02:04\n', ';'],
    ['2026-03-01;2026-03-02\n', ';'],
    ['01.03.2026;02.03.2026\n', ';'],
    ['T;C;1,5\nC;T;2,5\n', ';'],
    ['up;down;1,5\ndown;up;2,5\n', ';'],
    // Marks before a time, and other marks within it, make it none: nothing looks like a table then.
    ['/12:00:01;/12:00:02\n', '\t'],
    ['12/00/01;12/00/02\n', '\t'],
    // Two numbers with a blank between them are two cells, though it could be one of thousands.
    ['10,5 111,5\n12,5 113,5\n', 'spaces'],
    // Rows of words and numbers count, and those with a date and time in front.
    ['up,1.5,k;l;m\ndown,2.5,k;l;m\n', ','],
    ['2026-03-01T12:00:01,2.5,k;l;m\n2026-03-01T12:00:02,3.5,k;l;m\n', ','],
    // The one that parts more rows alike.
    ['1,2\n1,3\n1,4\n1,5\n3;4\n3;5\n3;6\n', ','],
    ['Sheet 3\nGauge 2\nDay 12\nTest 4\nPitch;Force [N]\n1;2,5\n2;3,5\n', ';'],
    [`${'1;2\n'.repeat(300)}${'1,2,3\n'.repeat(900)}`, ';'],
    ['sep=;x\na,b\n1,2\n', ','],
    ['xsep=;\na,b\n1,2\n', ','],
    ['sep=x\na,b\n1,2\n', ','],
    // Headings alone: the more cells, the likelier.
    ['a,b c,d\n', ','],
    ['a;b;c\n', ';'],
    // Prose above a table has commas of its own.
    ['Well, well, it was calm.\nPitch;Force [N]\n1;2,5\n2;3,5\n3;4,5\n', ';'],
    ['speed: 10200, 10100, 9900\nPitch;Force [N]\n1;2\n2;3\n', ';'],
    ['# 1, 2, 3\nPitch;Force [N]\n1;2\n', ';'],
    // Rows of times and letters are rows of a table.
    ['t;F;s\n12:00:01;2,5;C\n12:00:02;3,5;T\n', ';'],
    ['t;F;s\n2026-03-01;2,5;up\n01.03.2026;3,5;down\n', ';'],
    ['Pitch,Force [N]\n1,2.5\n2,"x\n', ','],
  ] as const)('of %j is %j', (text, delimiter) => {
    expect(sniffDelimiter(text)).toBe(delimiter);
  });

  it('counts no empty cells at the end', () => {
    expect([[], [''], ['', ''], ['a'], ['a', '', ''], ['', 'a']].map(cellCount)).toEqual([
      0, 0, 0, 1, 1, 2,
    ]);
  });

  it('goes by the count of cells that most rows have, the larger of equals', () => {
    const rows = (...widths: number[]) =>
      widths.map((width, row) => ({
        row,
        start: 0,
        cells: Array.from({ length: width }, () => 'x'),
      }));
    expect(commonWidth(rows(2, 3, 3))).toBe(3);
    expect(commonWidth(rows(3, 2, 2))).toBe(2);
    expect(commonWidth(rows(2, 4, 3))).toBe(4);
    expect(commonWidth(rows(4, 2, 3))).toBe(4);
    expect(commonWidth([])).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { readTable } from '../../../src/bench/readings/readTable';
import { tableOf } from './support';

describe('headings are found', () => {
  it.each([
    ['directly over the numbers', 'Pitch,Force [N]\n1,2\n', [1], ['Pitch', 'Force [N]'], 1],
    ['nowhere', '1,2\n3,4\n', [], ['', ''], 2],
    ['in words that mean nothing', 'Foo,Bar,Baz\n1,2,3\n', [1], ['Foo', 'Bar', 'Baz'], 1],
    ['not in two words, which may be a name and its value', 'Foo,Bar\n1,2\n', [], ['', ''], 1],
    ['not in two words and a unit', 'Foo;bar;N\n1;2;3\n', [], ['', '', ''], 1],
    ['not in a word alone', 'Foo\n1,2\n', [], ['', ''], 1],
    ['not in a name and its value', 'Bar;x\nBaz;3\n1;2\n', [], ['', ''], 1],
    ['not in numbers', 'Foo,Bar,3\n1,2,3\n', [], ['', '', ''], 1],
    ['with units below', 'Pitch,Force\ndeg,N\n1,2\n', [1, 2], ['Pitch [deg]', 'Force [N]'], 1],
    [
      'with units in brackets below',
      'Pitch,Force\n[deg],(N)\n1,2\n',
      [1, 2],
      ['Pitch [deg]', 'Force [N]'],
      1,
    ],
    [
      'with units under some of them',
      'Pitch,Note,Force\ndeg,-,N\n1,a,2\n',
      [1, 2],
      ['Pitch [deg]', 'Note', 'Force [N]'],
      1,
    ],
    [
      'with groups above',
      'Push,,Pull,\nPitch,Force [N],Pitch,Force [N]\n1,2,3,4\n',
      [1, 2],
      ['Push Pitch', 'Push Force [N]', 'Pull Pitch', 'Pull Force [N]'],
      1,
    ],
    [
      'with groups above and units below',
      'Push,Pull\nPitch,Force\ndeg,N\n1,2\n',
      [1, 2, 3],
      ['Push Pitch [deg]', 'Pull Force [N]'],
      1,
    ],
    ['not with a blank row between', 'Pitch,Force\n\ndeg,N\n1,2\n', [1], ['Pitch', 'Force'], 2],
    [
      'under other lines',
      'Sheet 3\nfitted: bolt\nPitch,Force [N]\n1,2\n',
      [3],
      ['Pitch', 'Force [N]'],
      1,
    ],
    [
      'over numbers rather than further up',
      'Gauge,force gauge\nDate,x\nPitch,Force [N]\n1,2\n',
      [3],
      ['Pitch', 'Force [N]'],
      1,
    ],
    [
      'with blanks in a row',
      'Pitch   angle,Force  [N]\n1,2\n',
      [1],
      ['Pitch angle', 'Force [N]'],
      1,
    ],
    ['in words with digits, though two', 'Ch1,Ch2\n1,2\n', [1], ['Ch1', 'Ch2'], 1],
    ['in a word with nothing before it', ';Foo\n1;2\n', [1], ['', 'Foo'], 1],
    ['in units alone', 'deg,ozf\n1,2\n', [1], ['deg', 'ozf'], 1],
    [
      'with a letter explained in brackets',
      'Pitch,Force [N] (T=tension)\n1,2\n',
      [1],
      ['Pitch', 'Force [N] (T=tension)'],
      1,
    ],
    [
      'not in pairs without blanks above them',
      'gauge:spring,force:old\nPitch,Force [N]\n1,2\n',
      [2],
      ['Pitch', 'Force [N]'],
      1,
    ],
    [
      'not in a unit and its name above them, empty cells or not',
      'unit,ozf,\nPitch,Force\n1,2\n',
      [2],
      ['Pitch', 'Force'],
      1,
    ],
    [
      'in a unit\u2019s column first of three',
      'Unit,Force [N],Pitch\n-,N,deg\nx,2,1\n',
      [1, 2],
      ['Unit', 'Force [N] [N]', 'Pitch [deg]'],
      1,
    ],
    [
      'in a unit\u2019s column beside its force',
      'Unit,Force\nN,2\nN,3\n',
      [1],
      ['Unit', 'Force'],
      2,
    ],
    [
      'with units under some of them, and nothing under the others',
      'Pitch,Note,Force\ndeg,,N\n1,a,2\n',
      [1, 2],
      ['Pitch [deg]', 'Note', 'Force [N]'],
      1,
    ],
    [
      'with fewer units below than names',
      'Pitch,Force,Note\ndeg,N\n1,2,a\n',
      [1, 2],
      ['Pitch [deg]', 'Force [N]', 'Note'],
      1,
    ],
    ['without units in a row of dashes', 'Pitch,Force\n-,-\n1,2\n', [1], ['Pitch', 'Force'], 2],
    [
      'with a gap among them',
      'Pitch,Force [N],,Note\n1,2,9,a\n',
      [1],
      ['Pitch', 'Force [N]', '', 'Note'],
      1,
    ],
    [
      'under groups of which one has no name',
      'Push,,Pull\nPitch,Force [N]\n1,2,3\n',
      [1, 2],
      ['Push Pitch', 'Push Force [N]', 'Pull'],
      1,
    ],
    [
      'under groups that begin later',
      ',Push,Pull\nPitch,Force [N],Force [N]\n1,2,3\n',
      [1, 2],
      ['Pitch', 'Push Force [N]', 'Pull Force [N]'],
      1,
    ],
    [
      'under groups of which the last goes on to the end',
      'Push,,Pull\nPitch,Force [N],Pitch,Force [N]\n1,2,3,4\n',
      [1, 2],
      ['Push Pitch', 'Push Force [N]', 'Pull Pitch', 'Pull Force [N]'],
      1,
    ],
    [
      'over rows with gaps',
      'Foo,Bar,Baz,Qux,Quux\n1,,,,2\n',
      [1],
      ['Foo', 'Bar', 'Baz', 'Qux', 'Quux'],
      1,
    ],
    ['over rows of which half are numbers', 'Ch1,Ch2\n1,calm\n', [1], ['Ch1', 'Ch2'], 1],
    ['under a number that stands alone', '7\nFoo,Bar,Baz\n1,2,3\n', [2], ['Foo', 'Bar', 'Baz'], 1],
    [
      'under a name and its value with a gap between',
      'speed;;10200\nFoo;Bar;Baz\n1;2;3\n',
      [2],
      ['Foo', 'Bar', 'Baz'],
      1,
    ],
    [
      'under a name, its value and its unit',
      'speed;10200;rpm\nFoo;Bar;Baz\n1;2;3\n',
      [2],
      ['Foo', 'Bar', 'Baz'],
      1,
    ],
    [
      'under a name with a colon and its value',
      'speed:;10200\nFoo;Bar;Baz\n1;2;3\n',
      [2],
      ['Foo', 'Bar', 'Baz'],
      1,
    ],
    [
      'over rows that begin with a letter and are no pairs',
      'K1,L1,M1,N1\nT,1.5,N,5\n',
      [1],
      ['K1', 'L1', 'M1', 'N1'],
      1,
    ],
    ['nowhere over rows that begin with words', '1st pass,5\n2nd pass,6\n', [], ['', ''], 2],
    [
      'in words that begin or end like a rule',
      '--Foo,--Bar,--Baz\n1,2,3\n',
      [1],
      ['--Foo', '--Bar', '--Baz'],
      1,
    ],
    [
      'in words that end like a rule',
      'Foo--,Bar--,Baz--\n1,2,3\n',
      [1],
      ['Foo--', 'Bar--', 'Baz--'],
      1,
    ],
    [
      'rather than in a comment above them',
      '# Pitch, Moment [N m]\nWinkel,Kraft [N]\n1,2\n',
      [2],
      ['Winkel', 'Kraft [N]'],
      1,
    ],
    ['behind several marks', '## Pitch, Force [N]\n1,2\n', [1], ['Pitch', 'Force [N]'], 1],
    ['behind a mark without a blank', '#Pitch,Force [N]\n1,2\n', [1], ['Pitch', 'Force [N]'], 1],
    ['not in a comment that heads nothing', '# calm, cold\n1,2\n', [], ['', ''], 1],
    ['not in a comment with an open quote', '# he said,"x\n1,2\n2,3\n', [], ['', ''], 2],
    ['not in a mark alone', '%\n1,2\n', [], ['', ''], 1],
    [
      'not in a comment that heads half of the columns',
      '# pitch force_N\n1 2 3 4\n5 6 7 8\n',
      [],
      ['', '', '', ''],
      2,
    ],
    [
      'beside a hash that heads the number of the row',
      '#,Pitch,Force [N]\n1,5,2\n',
      [1],
      ['#', 'Pitch', 'Force [N]'],
      1,
    ],
    ['behind a comment mark', '# Pitch, Force [N]\n1,2\n', [1], ['Pitch', 'Force [N]'], 1],
    ['behind two', '// Pitch;Force [N]\n1;2\n', [1], ['Pitch', 'Force [N]'], 1],
    ['behind the last comment only', '# Pitch, Force [N]\n# calm\n1,2\n', [], ['', ''], 1],
    ['not behind one that heads other columns', '# Pitch, Force [N], Note\n1,2\n', [], ['', ''], 1],
    [
      'behind a mark that heads the number of the row',
      '# pitch force_N\n1 5 2\n2 6 3\n',
      [1],
      ['#', 'pitch', 'force_N'],
      2,
    ],
    [
      'not behind a mark in a table of commas',
      '# pitch,force [N]\n1,5,2\n2,6,3\n',
      [],
      ['', '', ''],
      2,
    ],
    ['not in a comment below the rows', '1,2\n# Pitch, Force [N]\n', [], ['', ''], 1],
    [
      'between rules',
      '+---+---+\n| Pitch | Force [N] |\n+===+===+\n| 1 | 2 |\n',
      [2],
      ['Pitch', 'Force [N]'],
      1,
    ],
    [
      'with a line that tells the delimiter above',
      'sep=,\nPitch,Force [N]\n1,2\n',
      [2],
      ['Pitch', 'Force [N]'],
      1,
    ],
  ] as const)('%s', (_, text, headingRows, headings, rows) => {
    const table = tableOf(text);
    expect([table.headingRows, table.headings, table.rows.length]).toEqual([
      headingRows,
      headings,
      rows,
    ]);
  });

  it('and what stands above them is kept, comments too, as it was written', () => {
    const { above, comments } = tableOf(
      '# one\nSheet 3, calm\n// two\nPitch,Force [N]\n# three\n1,2\n# four\n',
    );
    expect(above.map(({ row, line }) => [row, line])).toEqual([
      [1, '# one'],
      [3, '// two'],
      [5, '# three'],
      [2, 'Sheet 3, calm'],
    ]);
    expect(comments).toBe(4);
    expect(tableOf('# Pitch, Force [N]\n1,2\n').above).toEqual([]);
    expect(tableOf('#calm\nPitch,Force [N]\n1,2\n').comments).toBe(1);
  });

  it('and the line that tells the delimiter is none of them, other lines like it are', () => {
    for (const text of ['sep=,\nPitch,Force [N]\n1,2\n', '"sep=;"\nPitch;Force [N]\n1;2\n'])
      expect(tableOf(text).above).toEqual([]);
    expect(tableOf('sep=;\nPitch,Force [N]\n1,2\n', { delimiter: ',' }).above).toEqual([]);
    for (const line of ['xsep=', 'sep=calm'])
      expect(tableOf(`${line}\nPitch;Force [N]\n1;2\n`).above.map((one) => one.line)).toEqual([
        line,
      ]);
  });

  it('and a table without has the columns of its first rows', () => {
    const text = '1;2\n'.repeat(200) + '1;2;3\n'.repeat(300);
    expect(tableOf(text).headings).toEqual(['', '']);
  });

  it('and where they come again the row is passed over', () => {
    const table = tableOf('Pitch,Force\ndeg,N\n1,2\nPitch,Force\ndeg,N\n3,4\nPitch,x\n5,6\n');
    expect(table.repeated).toEqual([4, 5]);
    expect(table.rows.map(({ row }) => row)).toEqual([3, 6, 7, 8]);
    expect(tableOf('1,2\n1,2\n').repeated).toEqual([]);
  });

  it('and a table may have headings far down, and none is looked for beyond two hundred rows', () => {
    const prose = (count: number) => Array.from({ length: count }, () => 'calm').join('\n');
    expect(
      tableOf(`${prose(150)}\nPitch,Force [N]\n1,2\n`, { delimiter: ',' }).headingRows,
    ).toEqual([151]);
    expect(
      tableOf(`${prose(250)}\nPitch,Force [N]\n1,2\n`, { delimiter: ',' }).headingRows,
    ).toEqual([]);
  });

  it.each([
    ['\u00a0\n', 'empty'],
    ['\ufeff', 'empty'],
    ['Pitch,Force [N]\n', 'noRows'],
    ['calm\n', 'noTable'],
  ])('%j is no table', (text, code) => {
    const read = readTable(text);
    expect(read.ok || read.error.reason.code).toBe(code);
  });
});

import { describe, expect, it } from 'vitest';
import { decodeText } from '../../../src/bench/readings/decodeText';
import { deriveReadings } from '../../../src/bench/readings/derive';
import { type ReadingsFault, readingsFault } from '../../../src/bench/readings/fault';
import { faultText } from '../../../src/bench/readings/faultText';
import { readTable } from '../../../src/bench/readings/readTable';
import { columnsOf, isTimeSeries } from '../../../src/bench/readings/series';
import type { ColumnMapping } from '../../../src/bench/readings/types';
import { radians } from '../../../src/engine/units';
import { derive, NO_READING, preview, refusals, tableOf } from './support';

function forces(text: string) {
  return derive(text).readings.map(({ force }) => force);
}

describe('a row gives its readings', () => {
  it.each([
    // A letter decides, and a minus says compression where tension is positive.
    ['Pitch,Force [N],T/C\n1,-2,C\n2,3,T\n3,0,x\n', [-2, 3, 0]],
    // Where compression is positive, a minus says tension.
    ['Pitch,Force [N] (compression +),T/C\n1,2,C\n2,-3,T\n3,4,T\n', [-2, 3, 4]],
    // A plus is the positive sense of the column itself.
    ['Pitch,Force [N] (compression +),T/C\n1,2,+\n2,3,-\n', [-2, 3]],
    ['Pitch,Force [N],T/C\n1,2,+\n2,3,-\n3,4,T\n', [2, -3, 4]],
    // A letter in the cell, alone or with the same one in the column for it.
    ['Pitch,Force [N],T/C\n1,2 C,C\n2,3 T,\n3,4,T\n', [-2, 3, 4]],
    ['Pitch,Force [N]\n1,2 C\n2,-3 C\n3,4 T\n', [-2, -3, 4]],
    // Of a column for each sense the one that is not empty, not a dash, not zero.
    ['Pitch,Tension [N],Compression [N]\n1,2,\n2,-,3\n3,0,4\n4,5,0\n5,n/a,0\n', [2, -3, -4, 5, 0]],
    ['Pitch,Compression [N],Tension [N]\n1,2,\n2,,3\n3,0,0\n', [-2, 3, 0]],
    // A letter in the first column; one at a zero; a minus in a column whose plus is compression.
    ['T/C,Pitch,Force [N]\nC,1,2\nT,2,0\n', [-2, 0]],
    // A percent sign, a hash or an exclamation mark within a cell begins no comment.
    ['Note,Pitch,Force [N]\nbolt 5%,1,2\nbolt#2,2,3\nbolt #2,3,4\n', [2, 3, 4]],
    // Nor does an open quote in one keep the table from being read.
    [' # a, "x\nPitch,Force [N]\n1,2\n', [2]],
    ['Pitch,Force [N] (compression +),T/C\n1,2,+\n2,-3,-\n', [-2, 3]],
  ] as const)('with the sign that is meant: %j', (text, wanted) => {
    expect(refusals(text)).toEqual([]);
    expect(forces(text)).toEqual(wanted);
  });

  it.each([
    ['Pitch,Force [N] (compression +),T/C\n1,-2,C\n2,3,T\n', ['2:2 signContradicts']],
    ['Pitch,Force [N]\n1,-2 T\n2,3 T\n', ['2:2 signContradicts']],
    ['Pitch,Force [N],T/C\n1,2,T\n2,3,-\n3,1,C\n', ['3:3 senseMissing']],
    [
      'Pitch,Tension [N],Compression [N]\n1,x,2\n2,1,x\n3,1,2\n4,-,n/a\n5,1,-\n',
      ['2:3 twoForces', '3:3 notANumber', '4:3 twoForces', '5:2 noValue'],
    ],
    ['Pitch,Tension [N],Compression [N]\n1,x,0\n2,1,\n', ['2:2 notANumber']],
    // Units: of the cell, of the row, of the column.
    ['Pitch [deg],Force [N]\n1 mm,2\n2,3\n', ['2:1 unitWrong']],
    ['Pitch [deg],Force [N]\n1 T,2\n2,3\n', ['2:1 notANumber']],
    ['Pitch [deg],Force [N]\nx,2\n2,3\n', ['2:1 notANumber']],
    ['Pitch,Force,Unit\n1,2,N\n2,3,deg\n', ['3:2 unitWrong']],
    ['Pitch,Moment [N mm]\n1,2 N\n2,3\n', ['2:2 unitWrong']],
    ['Pitch,Moment [N mm]\n1,x\n2,3\n', ['2:2 notANumber']],
    // Limits: what no bench can read.
    [
      'Pitch [deg],Force [kN]\n180,1000\n-180,-1000\n-180.1,1\n1,1000.1\n2,-1001\n',
      ['4:1 outOfRange', '5:2 outOfRange', '6:2 outOfRange'],
    ],
    ['Pitch [rad],Moment [N m]\n1,1000000\n2,1000001\n', ['3:2 outOfRange']],
    [
      'Pitch [deg],Force [N],Speed [rad/s]\n1,2,100000\n2,3,100001\n3,4,x\n',
      ['3:3 outOfRange', '4:3 notANumber'],
    ],
    ['Scale [mm],Force [N]\nx,2\n2,3\n', ['2:1 notANumber']],
    ['Time [s],Force [N]\nx,2\n2,3\n', ['2:1 notANumber']],
    ['Time,Pitch,Force [N]\n25:00,1,2\n12:00,2,3\n12:01,x,3\n', ['2:1 badTime', '4:2 notANumber']],
    // No place at all: of several columns for it the first is named.
    ['Note,Pitch,Scale [mm],Force [N]\na,,,2\nb,1,,3\nc,,1,4\n', ['2:2 noValue']],
    ['Note,Time [s],Force [N]\na,,2\nb,1,3\n', ['2:2 noValue']],
    [
      'Pitch,Force [N],Direction\n1,2,up\n2,3,-\n3,4,n/a\n4,5,x\n5,6,down\n6,7,up\n7,8,up\n',
      ['5:3 badTravel'],
    ],
    ['Pitch,Scale [mm],Force [N]\n,,2\n1,,3\n', ['2:1 noValue']],
    ['Pitch [deg],Force [N]\nInf,2\n1,2\n', ['2:1 notFinite']],
    ['Unit,Pitch,Force\nN,1,2\n,2,3\n', ['3:1 unitMissing']],
    // Where a force is given for each way, a dash is no empty cell: a gauge that should have shown a number did not.
    ['Pitch,Push [N],Pull [N]\n1,-,3\n', ['2:2 noValue']],
    // The second force of a row has none of its own: the row is whole all the same.
    ['Pitch,Push [N],Pull [N]\n1,2,\n2,,\n3,,4\n', ['3:2 noValue']],
  ] as const)('or says where it cannot: %j', (text, places) => {
    expect(refusals(text)).toEqual(places);
  });

  it('with what stands in it of travel, run, note, speed and time', () => {
    const [one, two] = derive(
      'Run,Time,Pitch [deg],Force [N],Direction,Speed [Hz],Note\na,12:00:00,1,2,up,10,x\nb,12:00:01,2,3,,,\n',
    ).readings;
    expect(one).toMatchObject({
      row: 2,
      column: 3,
      run: 'a',
      time: 43_200,
      travel: 'up',
      note: 'x',
      moment: null,
    });
    expect(one.speed).toBeCloseTo(20 * Math.PI, 12);
    expect(two).toMatchObject({
      row: 3,
      run: 'b',
      time: 43_201,
      travel: null,
      speed: null,
      note: '',
      scale: null,
    });
  });

  it('of a force with the unit and the letter of its columns, and of a moment without', () => {
    const [one, two] = derive(
      'Pitch,Moment [N mm],Force,Unit,T/C\n1,2,3,N,C\n2,3,4,N,T\n',
    ).readings;
    expect([one.moment, two.force]).toEqual([0.002, -3]);
  });

  it('of two forces in one row where they do not belong together', () => {
    const mapping = (
      ...columns: [ColumnMapping['role'], ColumnMapping['unit'], boolean, string?][]
    ) =>
      columns.map(([role, unit, flipped, travel]) => ({
        role,
        unit,
        flipped,
        travel: (travel ?? null) as ColumnMapping['travel'],
      }));
    const rowsOf = (text: string, columns: ColumnMapping[]) =>
      derive(text, { mapping: columns }).readings.map(({ force, moment }) => force ?? moment);
    // A moment of the other sign beside a force, in either order; a way each; a pitch each.
    const force = ['force', 'N', false] as const;
    const turned = ['moment', 'N m', true] as const;
    const text = 'a,b,c\n1,2,3\n';
    expect(rowsOf(text, mapping(['pitch', 'deg', false], [...force], [...turned]))).toEqual([
      2, -3,
    ]);
    expect(rowsOf(text, mapping(['pitch', 'deg', false], [...turned], [...force]))).toEqual([
      -2, 3,
    ]);
    expect(
      rowsOf(
        text,
        mapping(['pitch', 'deg', false], [...force, 'push'], ['force', 'N', true, 'pull']),
      ),
    ).toEqual([2, -3]);
    expect(
      rowsOf(
        'a,b,c,d\n1,2,3,4\n',
        mapping(['pitch', 'deg', false], [...force], ['pitch', 'deg', false], ['force', 'N', true]),
      ),
    ).toEqual([2, -4]);
    // Tension and compression of one pitch are one reading: both at once are none.
    expect(
      derive(text, {
        mapping: mapping(['pitch', 'deg', false], [...force], ['force', 'N', true]),
      }).refused.map(({ reason }) => reason),
    ).toEqual([{ code: 'twoForces', first: 2 }]);
  });

  it('or the limits in the unit that they are said in', () => {
    const reasons = derive(
      'Pitch [deg],Force [kN],Moment [N m],Speed [Hz]\n181,1,1,1\n1,1001,1,1\n1,1,2000000,1\n1,1,1,20000\n',
    ).refused.map(({ reason }) => reason);
    expect(reasons).toEqual([
      { code: 'outOfRange', value: expect.closeTo(181, 9), min: -180, max: 180, unit: 'deg' },
      { code: 'outOfRange', value: expect.closeTo(1_001_000, 6), min: -1e6, max: 1e6, unit: 'N' },
      { code: 'outOfRange', value: expect.closeTo(2e6, 6), min: -1e6, max: 1e6, unit: 'N m' },
      {
        code: 'outOfRange',
        value: expect.closeTo(40_000 * Math.PI, 6),
        min: -1e5,
        max: 1e5,
        unit: 'rad/s',
      },
    ]);
  });

  it('counts the cells with another unit than their column has', () => {
    expect(derive('Pitch,Force [N]\n1,2 N\n2,3 ozf\n3,4 lbf\n4,5\n').otherUnits).toBe(2);
    expect(derive('Pitch,Force,Unit\n1,2,N\n2,3,ozf\n').otherUnits).toBe(2);
    expect(derive('Pitch,Force [N]\n1,x\n2,3 ozf\n').otherUnits).toBe(1);
  });

  it('names the heading of what is refused, and each cell once', () => {
    const { refused, refusedRows } = derive('Pitch,Push [N],Pull [N]\nx,2,3\n1,y,z\n2,3,4\n3,,\n');
    expect(refused.map(({ row, column, heading }) => [row, column, heading])).toEqual([
      [2, 1, 'Pitch'],
      [3, 2, 'Push [N]'],
      [3, 3, 'Pull [N]'],
      [5, 2, 'Push [N]'],
    ]);
    expect(refused[3].reason).toEqual({ code: 'noValue', found: '' });
    expect(refusedRows).toBe(3);
  });

  it('takes empty cells beyond the last heading for nothing', () => {
    expect(forces('Pitch,Force [N]\n1,2,,,\n2,3\n')).toEqual([2, 3]);
    const { refused } = derive('Pitch,Force [N]\n1,2,,4,\n2,3\n');
    expect(refused[0]).toMatchObject({
      column: 3,
      reason: { code: 'tooManyCells', cells: 4, columns: 2 },
    });
  });

  it('knows the rows at which the time steps back, and a pause is none', () => {
    expect(derive('Time [s],Force [N]\n1,1\n1,2\n0,3\n0.5,4\n2,x\n0.2,5\n').backwards).toEqual([
      4, 7,
    ]);
    // A row without a time is no step back, and the rows round it are held against one another.
    expect(derive('Time [s],Pitch,Force [N]\n5,1,1\n,2,2\n3,3,3\n').backwards).toEqual([4]);
  });

  it('says how far it is, and stops when it is told to', () => {
    const table = readTable('Pitch [deg],Force [N]\n1,2\n2,3\n');
    if (!table.ok) throw new Error(faultText(table.error));
    const mapping: ColumnMapping[] = [
      { role: 'pitch', unit: 'deg', flipped: false, travel: null },
      { role: 'force', unit: 'N', flipped: false, travel: null },
    ];
    const heard: number[] = [];
    const read = deriveReadings(table.value, mapping, {}, (done) => {
      heard.push(done);
    });
    expect([read.ok, heard]).toEqual([true, [0]]);
    const stopped = deriveReadings(table.value, mapping, {}, () => false);
    expect(stopped.ok ? [] : stopped.error.map(({ reason }) => reason.code)).toEqual(['cancelled']);
  });
});

describe('readings as columns', () => {
  it('hold every number in its place, and NaN where there is none', () => {
    const one = {
      ...NO_READING,
      row: 7,
      time: 1,
      pitch: radians(0.5),
      scale: 2,
      force: 3,
      moment: 4,
      speed: 5,
    };
    const columns = columnsOf([one, NO_READING]);
    expect([...columns.row]).toEqual([7, 1]);
    for (const [key, value] of [
      ['time', 1],
      ['pitch', 0.5],
      ['scale', 2],
      ['force', 3],
      ['moment', 4],
      ['speed', 5],
    ] as const)
      expect([...columns[key]], key).toEqual([value, Number.NaN]);
  });

  it.each([
    ['ten in order', [0, 1, 2, 3, 4, 5, 6, 7, 8, 9], true],
    ['ten of which two are at once', [0, 1, 1, 3, 4, 5, 6, 7, 8, 9], true],
    ['nine', [0, 1, 2, 3, 4, 5, 6, 7, 8], false],
    ['one that steps back', [0, 1, 2, 3, 4, 5, 6, 7, 9, 8], false],
    ['one without a time', [0, 1, 2, 3, 4, null, 6, 7, 8, 9], false],
    ['none', [], false],
  ] as const)('are a log: %s', (_, times, isLog) => {
    expect(isTimeSeries(times.map((time) => ({ ...NO_READING, time })))).toBe(isLog);
  });
});

describe('a fault in words', () => {
  const said = (...fault: Parameters<typeof readingsFault>) => faultText(readingsFault(...fault));
  it.each([
    [said({ code: 'empty' }), 'There is nothing in it.'],
    [said({ code: 'tooManyRows', limit: 7 }, 8), 'Row 8: there are more than 7 rows.'],
    [said({ code: 'unitMissing' }, null, 2), 'Column 2: nothing says its unit. Choose one.'],
    [
      said({ code: 'unitMissing' }, null, 2, 'Kraft'),
      'Column 2 (Kraft): nothing says its unit. Choose one.',
    ],
    [said({ code: 'unitMissing' }, 3, 2), 'Row 3, column 2: nothing says its unit. Choose one.'],
    [
      said({ code: 'noValue', found: '' }, 3, 2, 'Kraft'),
      'Row 3, column 2 (Kraft): there is no value.',
    ],
    [
      said({ code: 'unitWrong', found: 'mm', role: 'pitch' }, 3, 2),
      'Row 3, column 2: \u201cmm\u201d is no unit of a pitch angle.',
    ],
    [
      said({ code: 'signContradicts', found: '-2', sense: 'tension' }, 3, 2),
      'Row 3, column 2: the sign of \u201c-2\u201d contradicts tension.',
    ],
    [
      said({ code: 'otherDecimal', found: '1,5', decimal: '.' }, 3, 2),
      'Row 3, column 2: \u201c1,5\u201d does not fit: the decimal sign of this column is \u201c.\u201d.',
    ],
    [
      said({ code: 'outOfRange', value: 181.23456789, min: -180, max: 180, unit: 'deg' }, 3, 1),
      'Row 3, column 1: 181.235 deg is not between -180 and 180 deg.',
    ],
    [
      said({ code: 'notANumber', found: `a\n\u0007 b${'x'.repeat(60)}` }, 3, 1),
      `Row 3, column 1: \u201ca b${'x'.repeat(37)}\u2026\u201d is no number.`,
    ],
    [
      said({ code: 'notANumber', found: 'y'.repeat(40) }, 3, 1, ' K\nraft '),
      `Row 3, column 1 (K raft): \u201c${'y'.repeat(40)}\u201d is no number.`,
    ],
    [
      said({ code: 'roleTwice', role: 'toString', first: 1 }, null, 2),
      'Column 2: it is a second toString beside column 1. Choose one, or say what tells them apart.',
    ],
  ])('%s', (text, wanted) => {
    expect(text).toBe(wanted);
  });
});

function decoded(bytes: readonly number[]) {
  const read = decodeText(new Uint8Array(bytes));
  return read.ok ? [read.value.encoding, read.value.text] : read.error.reason.code;
}

describe('bytes', () => {
  it.each([
    // A mark decides, and is no part of the text.
    [
      [0xff, 0xfe, 0x31, 0],
      ['utf-16le', '1'],
    ],
    [
      [0xfe, 0xff, 0, 0x31],
      ['utf-16be', '1'],
    ],
    [
      [0xef, 0xbb, 0xbf, 0x31],
      ['utf-8', '1'],
    ],
    [
      [0xff, 0x31],
      ['windows-1252', '\u00ff1'],
    ],
    [
      [0xfe, 0x31],
      ['windows-1252', '\u00fe1'],
    ],
    [
      [0x31, 0xfe],
      ['windows-1252', '1\u00fe'],
    ],
    [
      [0x31, 0xff],
      ['windows-1252', '1\u00ff'],
    ],
    [
      [0xfe, 0xff, 0x04, 0x14, 0x04, 0x15],
      ['utf-16be', '\u0414\u0415'],
    ],
    // In UTF-8 these letters are what they are.
    [
      [0x31, 0xc2, 0x85],
      ['utf-8', '1\u0085'],
    ],
    [[], 'empty'],
    // Zero bytes in every other place, or in nearly half of them.
    [
      [0x31, 0, 0x32, 0],
      ['utf-16le', '12'],
    ],
    [
      [0, 0x31, 0, 0x32],
      ['utf-16be', '12'],
    ],
    [
      [0x31, 0, 0xac, 0x20, 0x32, 0],
      ['utf-16le', '1\u20ac2'],
    ],
    [[0x31, 0, 0x32], 'cutOff'],
    [[0, 0, 0x31, 0], 'notText'],
    [[0x31, 0, 0, 0], 'notText'],
    // As many zeros in one place as in the other, or half as many.
    [[0x31, 0, 0, 0x24], 'notText'],
    [[0, 0x31, 0x24, 0], 'notText'],
    [[0x31, 0, 0x32, 0, 0, 0x24], 'notText'],
    [[0, 0x31, 0, 0x32, 0x24, 0], 'notText'],
    [[0x31, 0x32, 0, 0x33, 0x34, 0x35, 0x36, 0x37], 'notText'],
    // More than two of five.
    [[0x31, 0, 0x32, 0, 0x33, 0x34, 0x35, 0x36, 0x37, 0x38], 'notText'],
    [[0, 0x31, 0, 0x32, 0x33, 0x34, 0x35, 0x36, 0x37, 0x38], 'notText'],
    [[0x31, 0x32, 0x33, 0, 0x34, 0x35, 0x36, 0x37], 'notText'],
    [[0x31], ['utf-8', '1']],
    // Tab, line ends, form feed are text; other controls are none.
    [
      [0x31, 9, 10, 12, 13, 0x32],
      ['utf-8', '1\t\n\f\r2'],
    ],
    [[0x31, 7], 'notText'],
    [[0x31, 0x0b], 'notText'],
    [[0x31, 0x7f], 'notText'],
    // The five bytes without a letter stay what they are (WHATWG Encoding, index windows-1252).
    [
      [0x31, 0x81],
      ['windows-1252', '1\u0081'],
    ],
    [
      [0x93, 0x94, 0x9f],
      ['windows-1252', '\u201c\u201d\u0178'],
    ],
    // Beginnings like a workbook's that go on otherwise.
    [[0x50, 0x4b, 3, 4], 'workbook'],
    [[0xd0, 0xcf, 0x11, 0xe0], 'workbook'],
    [
      [0x50, 0x4b, 0x31, 0x32],
      ['utf-8', 'PK12'],
    ],
    [
      [0xd0, 0xcf, 0x31, 0x32],
      ['windows-1252', '\u00d0\u00cf12'],
    ],
  ] as const)('%j', (bytes, wanted) => {
    expect(decoded(bytes)).toEqual(wanted);
  });

  it('are judged by the first four thousand', () => {
    const bytes = [
      ...Array.from({ length: 5000 }, () => 0x31),
      ...Array.from({ length: 9000 }, (_, k) => (k % 2) * 0x31),
    ];
    expect(decoded(bytes)).toBe('notText');
  });

  it('take every letter of Windows-1252 for what it is, whatever the decoder makes of it', () => {
    const bytes = Array.from({ length: 32 }, (_, k) => 0x80 + k);
    // The index of WHATWG Encoding for 0x80 to 0x9f (from memory).
    const letters =
      '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
      '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';
    expect(decoded(bytes)).toEqual(['windows-1252', letters]);
  });
});

describe('a table', () => {
  it.each([
    ['Pitch,Force [N]\n1,2,5\n2,3,5\n', '2:3 commaIsBoth'],
    ['Pitch,Force [N]\n1,2\n2,3,5\n3,4,5\n', '3:3 commaIsBoth'],
    // No more than half of the rows: those rows are refused, the table is not.
    ['Pitch,Force [N]\n1,2\n2,3,5\n', '3:3 tooManyCells'],
    // Whole numbers only, and three of them at least.
    ['Pitch,Force [N],N\n1.5,2,5,6\n2.5,3,5,6\n', '2:4 tooManyCells'],
    ['Pitch,Force [N]\n1,2,x\n2,3,x\n', '2:3 tooManyCells'],
    ['Pitch,Force [N]\n1,2,3,4.5 N\n2,3,4,5.5 N\n', '2:3 tooManyCells'],
    ['Pitch;Force [N]\n1;2;5\n2;3;5\n', '2:3 tooManyCells'],
    ['Pitch,Force [N]\nT1,3,5\nT2,4,5\n', '2:3 tooManyCells'],
    ['Pitch,Force [N]\n1a,3,5\n2a,4,5\n', '2:3 tooManyCells'],
    ['No,Pitch,Force\n1,-10,3,5 N\n2,10,4,5 N\n', '2:4 commaIsBoth'],
  ] as const)('whose commas part columns and decimals both: %j', (text, place) => {
    expect(refusals(text, { options: {} })[0]).toBe(place);
  });

  it('has the decimal sign that most columns prove, and the columns that prove another are known', () => {
    const { table } = preview('Pitch;Force [N];Speed [rpm]\n1,5;2,5;10.5\n2,5;3,5;11.5\n');
    expect([table.decimalFrom, table.otherDecimals]).toEqual(['proven', [2]]);
    expect(table.styles.map(({ decimal }) => decimal)).toEqual([',', ',', '.']);
    const told = preview('Pitch;Force [N]\n1;1,5\n2;2.5\n', { options: { decimal: ',' } }).table;
    expect([told.decimalFrom, told.otherDecimals]).toEqual(['told', []]);
    const drawn = preview('Pitch;Force [N];Speed\n1,5;2.5;10\n2,5;3.5;11\n').table;
    expect(drawn.styles.map(({ decimal }) => decimal)).toEqual([',', '.', '.']);
    expect(drawn.otherDecimals).toEqual([0]);
    // As many prove the one as the other: a column that proves neither is no reason to refuse the table.
    const third = preview('Pitch;Force [N];Speed\n1,5;2.5;1,234\n2,5;3.5;1,345\n').table;
    expect(third.decimalFrom).toBe('proven');
  });

  it('has the same headings behind a byte order mark, quotes or not', () => {
    expect(tableOf('\ufeff"Pitch",Force [N]\n1,2\n').headings).toEqual(['Pitch', 'Force [N]']);
  });

  it('asks with the place where it cannot decide', () => {
    const read = readTable('Pitch;Force [N]\n1;5\n2;1,234\n3;2,345\n');
    const fault: ReadingsFault = {
      row: 3,
      column: 2,
      heading: 'Force [N]',
      reason: { code: 'decimalUnclear', found: '1,234' },
    };
    expect(read.ok || read.error).toEqual(fault);
  });
});

import { describe, expect, it } from 'vitest';
import { faultText } from '../../../src/bench/readings/faultText';
import { derive, preview, refusals } from './support';

/**
 * What cannot be read right, and where: row and column counted by hand in the text, as an editor or a spreadsheet counts
 * them. A row that is refused gives no reading; the others do.
 */
const REFUSED: readonly (readonly [name: string, text: string, places: readonly string[]])[] = [
  ['nothing', '', ['-:- empty']],
  ['blanks only', ' \n\t\n', ['-:- empty']],
  ['prose', 'The gauge was not at hand.\nTomorrow again.\n', ['-:- noTable']],
  ['headings without rows', 'Pitch,Force [N]\n', ['-:- noRows']],
  ['a word for a number', 'Pitch,Force [N]\n1,2.5\n2,soft\n', ['3:2 notANumber']],
  ['NaN where a reading is needed', 'Pitch,Force [N]\n1,NaN\n2,3\n', ['2:2 noValue']],
  ['infinity', 'Pitch,Force [N]\n1,2\n2,-Inf\n', ['3:2 notFinite']],
  ['a gauge over its range', 'Pitch,Force [N]\n1,2\n2,OL\n', ['3:2 overRange']],
  ['an empty force', 'Pitch,Force [N]\n1,2\n2,\n', ['3:2 noValue']],
  ['an empty pitch', 'Pitch,Force [N]\n1,2\n,3\n', ['3:1 noValue']],
  ['a row with too many cells', 'Pitch,Force [N]\n1,2\n2,3,4\n', ['3:3 tooManyCells']],
  [
    'rows of every length',
    'Pitch,Force [N]\n1,2\n2\n3,4,5,6\n4,5\n',
    ['3:2 noValue', '4:3 tooManyCells'],
  ],
  [
    'the comma for columns and decimals both',
    'Pitch,Force [N]\n-10,3,5\n10,4,5\n',
    ['2:3 commaIsBoth'],
  ],
  ['thousands or three decimals', 'Pitch;Force [N]\n1;1,234\n2;2,345\n', ['2:2 decimalUnclear']],
  ['a point among commas', 'Pitch;Force [N]\n1;2,5\n2;3.5\n3;4,25\n', ['3:2 otherDecimal']],
  ['a comma among points', 'Pitch;Force [N]\n1;2.5\n2;3,5\n3;4.25\n', ['3:2 otherDecimal']],
  [
    'three digits after the other mark',
    'Pitch;Force [N]\n1;2,5\n2;1.234\n3;4,25\n',
    ['3:2 ambiguousNumber'],
  ],
  ['two points', 'Pitch,Force [N]\n1,2.5\n2,3.5.1\n', ['3:2 notANumber']],
  ['a number in base sixteen', 'Pitch,Force [N]\n1,2.5\n2,0x1F\n', ['3:2 notANumber']],
  ['groups of two', 'Pitch;Force [N]\n1;2.5\n2;12,34,567\n', ['3:2 notANumber']],
  ['a formula error of a spreadsheet', 'Pitch,Force [N]\n1,2.5\n2,#DIV/0!\n', ['3:2 notANumber']],
  ['no unit for the force', 'Pitch,Force\n1,2.5\n', ['-:2 unitMissing']],
  ['an unknown unit', 'Pitch,Force [dyn]\n1,2.5\n', ['-:2 unitUnknown']],
  ['an unknown unit in one cell', 'Pitch,Force [N]\n1,2.5\n2,3.5 dyn\n', ['3:2 notANumber']],
  ['a unit of something else in one cell', 'Pitch,Force [N]\n1,2.5\n2,3.5 mm\n', ['3:2 unitWrong']],
  [
    'an unknown unit in the column for it',
    'Pitch,Force,Unit\n1,2.5,N\n2,3.5,dyn\n',
    ['3:3 unitUnknown'],
  ],
  ['no unit in the column for it', 'Pitch,Force,Unit\n1,2.5,N\n2,3.5,\n', ['3:3 unitMissing']],
  ['no force and no moment', 'Pitch,Speed (rpm)\n1,10200\n', ['-:- noReadingColumn']],
  ['no place', 'Force [N],Note\n1.5,a\n2.5,b\n', ['-:- noPlaceColumn']],
  ['a column name twice', 'Pitch,Force [N],Force [N]\n1,2.5,2.6\n', ['-:3 roleTwice']],
  ['two pitches for one force', 'Pitch,Pitch,Force [N]\n1,2,2.5\n', ['-:2 roleTwice']],
  [
    'a letter that is none',
    'Pitch,Force [N],T/C\n1,2.5,T\n2,3.5,x\n3,4,C\n4,5,C\n5,6,T\n',
    ['3:3 badSense'],
  ],
  ['no letter for a force', 'Pitch,Force [N],T/C\n1,2.5,T\n2,3.5,\n', ['3:3 senseMissing']],
  [
    'a minus against the letter',
    'Pitch,Force [N],T/C\n1,-2.5,T\n2,-3.5,C\n',
    ['2:2 signContradicts'],
  ],
  [
    'a letter in the cell against the column',
    'Pitch,Force [N],T/C\n1,2.5 C,T\n2,3.5,C\n',
    ['2:2 signContradicts'],
  ],
  [
    'tension and compression at once',
    'Pitch,Tension [N],Compression [N]\n1,2,\n2,3,1\n',
    ['3:3 twoForces'],
  ],
  [
    'a way that is none',
    'Pitch,Force [N],Direction\n1,2,up\n2,3,down\n3,4,up\n4,5,down\n5,6,sideways\n',
    ['6:3 badTravel'],
  ],
  [
    'a quote that is never closed',
    'Pitch,Force [N],Note\n1,2.5,"soft\n2,3.5,b\n',
    ['2:3 openQuote'],
  ],
  ['text after a closing quote', 'Pitch,Force [N],Note\n1,2.5,"soft" x\n', ['2:3 textAfterQuote']],
  ['a pitch beyond half a turn', 'Pitch [deg],Force [N]\n1,2.5\n181,3\n', ['3:1 outOfRange']],
  [
    'a pitch in degrees under radians',
    'Pitch [rad],Force [N]\n0.1,2.5\n10,3\n',
    ['3:1 outOfRange'],
  ],
  ['an hour that does not exist', 'Time,Force [N]\n12:00:00,2.5\n25:00:00,3\n', ['3:1 badTime']],
  [
    'a day that does not exist',
    'Time,Force [N]\n2026-02-28T12:00,2.5\n2026-02-30T12:00,3\n',
    ['3:1 badTime'],
  ],
  [
    'faults after a cell of three lines: rows are counted as a spreadsheet does',
    'Pitch,Force [N],Note\n1,2.5,"a\nb\nc"\n2,x,\n',
    ['3:2 notANumber'],
  ],
  [
    'faults after blank rows and comments',
    '# a\n\nPitch,Force [N]\n\n1,2.5\n# b\n2,x\n',
    ['7:2 notANumber'],
  ],
];

describe('what cannot be read right is refused with row and column', () => {
  it.each(REFUSED)('%s', (_, text, places) => {
    expect(refusals(text)).toEqual(places);
  });

  it('a refused row gives no reading, the rows round it do', () => {
    const { readings, refusedRows, takenRows } = derive('Pitch,Force [N]\n1,2.5\n2,soft\n3,4.5\n');
    expect(readings.map(({ row }) => row)).toEqual([2, 4]);
    expect([takenRows, refusedRows]).toEqual([2, 1]);
  });

  it('a row with two forces of which one is no number gives neither', () => {
    const { readings, refused } = derive('Pitch,Push [N],Pull [N]\n1,2.5,x\n2,3.5,1\n');
    expect(readings.map(({ row }) => row)).toEqual([3, 3]);
    expect(refused).toHaveLength(1);
  });

  it('what the person says settles what the table leaves open', () => {
    const text = 'Pitch;Force [N]\n1;1,234\n2;2,345\n';
    const asDecimal = derive(text, { options: { decimal: ',' } }).readings;
    const asThousands = derive(text, { options: { decimal: '.' } }).readings;
    expect(asDecimal.map(({ force }) => force)).toEqual([1.234, 2.345]);
    expect(asThousands.map(({ force }) => force)).toEqual([1234, 2345]);
  });

  it('says when it assumed that a point is a decimal point', () => {
    expect(preview('Pitch;Force [N]\n1;1.234\n2;2.345\n').table.decimalFrom).toBe('assumed');
    expect(preview('Pitch;Force [N]\n1;1.23\n2;2.345\n').table.decimalFrom).toBe('proven');
    expect(preview('Pitch;Force [N]\n1;2\n2;3\n').table.decimalFrom).toBe('none');
  });

  it('says it in words that hold every number of the fault', () => {
    const { refused } = derive('Pitch [deg],Force [N]\n1,2.5\n181,3\n2,soft\n');
    expect(refused.map(faultText)).toEqual([
      'Row 3, column 1 (Pitch [deg]): 181 deg is not between -180 and 180 deg.',
      'Row 4, column 2 (Force [N]): \u201csoft\u201d is no number.',
    ]);
  });

  it('no text of a table can break the words of a fault', () => {
    const { refused } = derive('Pitch,Force [N]\n1,2\n2,"a {reason}\n\n$& {row} <b>"\n');
    expect(refused.map(faultText)).toEqual([
      'Row 3, column 2 (Force [N]): \u201ca {reason} $& {row} <b>\u201d is no number.',
    ]);
  });
});

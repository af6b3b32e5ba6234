import { describe, expect, it } from 'vitest';
import { readNumberList } from '../../src/bench/numberList';

const LIMITS = { min: -50, max: 50, most: 6 };

describe('numbers typed in a row', () => {
  it.each([
    ['-20 -10 0 10 20', [-20, -10, 0, 10, 20]],
    ['\u221220\u00b0; +10\u00b0;0', [-20, 0, 10]],
    ['20, 10, 0', [0, 10, 20]],
    ['-20,-10,0', [-20, -10, 0]],
    ['10,20,30', [10, 20, 30]],
    ['2,5 5 7,5', [2.5, 5, 7.5]],
    ['2.5,5', [2.5, 5]],
    ['-20, -10, 0,', [-20, -10, 0]],
    ['2,5;5', [2.5, 5]],
    ['5 5 5.0', [5]],
    [' .5\t-0 ', [0, 0.5]],
  ] as const)('%j is read as what it says', (text, values) => {
    expect(readNumberList(text, LIMITS)).toEqual({ ok: true, value: values });
  });

  it.each([
    ['', 'empty'],
    [' ; ', 'empty'],
    ['10,20', 'unclear'],
    ['2,5, 5', 'unclear'],
    ['10,20,30 40', 'unclear'],
    ['ten', 'notANumber'],
    ['1e3', 'notANumber'],
    ['1..2', 'notANumber'],
    ['10 51', 'outOfRange'],
    ['1 2 3 4 5 6 7', 'tooMany'],
  ] as const)('%j is refused: %s', (text, kind) => {
    expect(readNumberList(text, LIMITS)).toMatchObject({ ok: false, error: { kind } });
  });
});

import { describe, expect, it } from 'vitest';
import { EMPTY_ROW, type GridRow, gridFromPaste, rowsOfGrid } from '../../../src/bench/typedRows';

const row = (cells: Partial<GridRow>): GridRow => ({ ...EMPTY_ROW, ...cells });

describe('readings typed in a grid', () => {
  it('reads points, commas and a real minus sign, and passes empty rows over', () => {
    const rows = rowsOfGrid(
      [
        row({ pitch: '-10', force: '1,25', travel: 'pull' }),
        EMPTY_ROW,
        row({ pitch: '\u221210.5', force: ' -.5 ', note: ' shaky ' }),
      ],
      'N',
    );
    expect(rows).toEqual({
      ok: true,
      value: [
        { pitchDeg: -10, forceN: 1.25, travel: 'pull' },
        { pitchDeg: -10.5, forceN: -0.5, note: 'shaky' },
      ],
    });
  });

  it('takes ounces-force at 0.278 013 9 N', () => {
    // NIST SP 811 (2008), B.8: ounce (avoirdupois)-force, 2.780 139 E-01 N, rounded to seven digits: half of the last.
    const rows = rowsOfGrid([row({ pitch: '0', force: '1' })], 'ozf');
    expect(Math.abs((rows.ok ? rows.value[0].forceN : 0) - 0.2780139)).toBeLessThan(0.5e-7);
  });

  it('refuses all of it where a cell is wrong, naming row and field', () => {
    const rows = rowsOfGrid(
      [
        row({ pitch: '5', force: '1' }),
        row({ pitch: '', force: '2' }),
        row({ pitch: '200', force: '1.2.3' }),
      ],
      'N',
    );
    expect(rows.ok ? [] : rows.error).toMatchObject([
      { row: 2, field: 'pitch', why: 'missing' },
      { row: 3, field: 'pitch', why: 'outOfRange', min: -180, max: 180, unit: 'deg' },
      { row: 3, field: 'force', why: 'notANumber' },
    ]);
  });

  it('takes cells from a spreadsheet', () => {
    expect(gridFromPaste('-10\t1.5\tpull\tok\r\n\r\n10;2;push\n')).toEqual([
      { pitch: '-10', force: '1.5', travel: 'pull', note: 'ok' },
      { pitch: '10', force: '2', travel: 'push', note: '' },
    ]);
  });
});

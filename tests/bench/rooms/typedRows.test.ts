import { describe, expect, it } from 'vitest';
import {
  EMPTY_ROW,
  type GridRow,
  gridFromPaste,
  gridOfPlan,
  gridOfRows,
  rowsOfGrid,
  rowsWithoutForce,
} from '../../../src/bench/typedRows';
import { checkDesign } from '../../../src/design/checkDesign';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { MAX_NOTE } from '../../../src/design/limits';
import { EMPTY_DESIGN } from '../../../src/state/store';

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

  it('refuses a pasted note longer than a design keeps, at its row, and takes one of that length', () => {
    const noted = (letters: number) =>
      rowsOfGrid(gridFromPaste(`0\t1\n5\t1.5\tpull\t${'n'.repeat(letters)}\n`), 'N');
    const kept = noted(MAX_NOTE);
    expect(kept.ok && kept.value[1].note?.length).toBe(MAX_NOTE);
    const keep = (note: string) => {
      const rows = kept.ok ? kept.value.map((one) => ({ ...one, note })) : [];
      return { ...EMPTY_DESIGN, bench: { runs: [{ id: 'a', name: 'a', rows }] } };
    };
    const [fits, over] = [MAX_NOTE, MAX_NOTE + 1].map((letters) => keep('n'.repeat(letters)));
    expect([checkDesign(fits), parseDesign(serializeDesign(fits)).ok]).toEqual([null, true]);
    expect(parseDesign(serializeDesign(over)).ok).toBe(false);
    expect(checkDesign(over)?.path).toBe('bench.runs[0].rows[0].note');
    expect(noted(MAX_NOTE + 1)).toMatchObject({
      ok: false,
      error: [{ row: 2, field: 'note', why: 'tooLong', max: MAX_NOTE }],
    });
  });

  it('takes cells from a spreadsheet', () => {
    expect(gridFromPaste('-10\t1.5\tpull\tok\r\n\r\n10;2;push\n')).toEqual([
      { pitch: '-10', force: '1.5', travel: 'pull', note: 'ok' },
      { pitch: '10', force: '2', travel: 'push', note: '' },
    ]);
  });
});

describe('a force as a gauge shows it', () => {
  it.each([
    ['3.5 T', 3.5],
    ['C 2,5', -2.5],
    ['0 C', 0],
    // Exact by definition: a gram-force is 9.80665e-3 N (3rd CGPM 1901).
    ['100 gf C', -0.980665],
    ['-1.5 N', -1.5],
  ] as const)('%j is read with its letter and its unit', (force, newtons) => {
    const rows = rowsOfGrid([row({ pitch: '0', force })], 'N');
    expect(rows.ok && rows.value[0].forceN).toBeCloseTo(newtons, 12);
  });

  it.each([
    ['-2 C', 'signTwice'],
    ['2 T C', 'notANumber'],
    ['2 mm', 'notANumber'],
    ['two N', 'notANumber'],
    // A thousand and a quarter, or one and a quarter: nothing tells.
    ['1,250', 'ambiguous'],
    ['12,345 ozf T', 'ambiguous'],
  ] as const)('%j is refused: %s', (force, why) => {
    const rows = rowsOfGrid([row({ pitch: '0', force })], 'N');
    expect(rows.ok ? [] : rows.error).toMatchObject([{ row: 1, field: 'force', why }]);
  });

  it('is missed in the rows that name a place, not in empty ones', () => {
    const grid = [row({ pitch: '0', force: '1' }), row({ pitch: '5' }), row({})];
    expect(rowsWithoutForce(grid)).toEqual([1]);
  });

  it('goes back into the grid as it was typed, scale readings too', () => {
    const typed = [row({ pitch: '2.5', force: '1.25', travel: 'up', note: 'n' })];
    const rows = rowsOfGrid(typed, 'ozf', 'scale');
    expect(rows.ok && rows.value[0].scaleMm).toBe(2.5);
    expect(gridOfRows(rows.ok ? rows.value : [], 'ozf')).toEqual({ place: 'scale', rows: typed });
  });

  it('has rows for the plan in the order in which the control goes through it', () => {
    const plan = { pitchesDeg: [0, 10], senses: ['pull', 'push'] as const };
    const degs = (pullRaises: boolean) =>
      gridOfPlan({ ...plan, pullRaises }).map(({ pitch, travel }) => `${travel} ${pitch}`);
    expect(degs(true)).toEqual(['pull 0', 'pull 10', 'push 10', 'push 0']);
    expect(degs(false)).toEqual(['pull 10', 'pull 0', 'push 0', 'push 10']);
  });
});

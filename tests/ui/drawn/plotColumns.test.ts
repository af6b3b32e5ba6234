import { describe, expect, it } from 'vitest';
import { plotColumns, plotRowsToShow } from '../../../src/ui/drawn/plotColumns';
import type { PlotData } from '../../../src/ui/drawn/plotLayout';

/** A straight line 2 x + 1 with a gap at its end, and a band of 1 either side of 3 x. */
const PLOT: PlotData = {
  x: [0, 1, 2, 3],
  lines: [{ name: 'line', look: 'total', values: [1, 3, 5, Number.NaN] }],
  bands: [{ name: 'band', look: 'about', low: [-1, 2, 5, 8], high: [1, 4, 7, 10] }],
  points: [
    { name: 'up', shape: 'up', state: 'full', x: [2.5, 0.5], y: [7, 8], half: [0.1, 0.2] },
    { name: 'down', shape: 'down', state: 'crossed', x: [1], y: [9] },
  ],
  xTitle: 'Pitch',
  yTitle: 'N',
};

describe('the numbers of a plot with points', () => {
  const columns = plotColumns(PLOT);
  const column = (title: string) => {
    const found = columns.find((one) => one.title === title);
    if (!found) throw new Error(`no column ${title}`);
    return Array.from(found.values);
  };

  it('has a row for every place and every point, in the order of x', () => {
    expect(column('Pitch')).toEqual([0, 0.5, 1, 1, 2, 2.5, 3]);
  });

  it('says what the lines are beside every point, straight between their places and nothing beside a gap', () => {
    // By hand: 2 x 0.5 + 1 = 2 beside the first point.
    expect(column('line, N')).toEqual([1, 2, 3, 3, 5, Number.NaN, Number.NaN]);
    expect(column('\u2265 band, N')).toEqual([-1, 0.5, 2, 2, 5, 6.5, 8]);
    expect(column('\u2264 band, N')).toEqual([1, 2.5, 4, 4, 7, 8.5, 10]);
  });

  it('gives each point in the column of its own kind, with its interval', () => {
    const nothing = Number.NaN;
    expect(column('up, N')).toEqual([nothing, 8, nothing, nothing, nothing, 7, nothing]);
    expect(column('\u00b1 up, N')).toEqual([nothing, 0.2, nothing, nothing, nothing, 0.1, nothing]);
    expect(column('down, N').filter((one) => !Number.isNaN(one))).toEqual([9]);
  });

  it('shows a reader the points, and of lines alone a few places with both ends', () => {
    const shown = plotRowsToShow(PLOT, 2);
    expect(shown.map((row) => columns[0].values[row])).toEqual([0.5, 1, 2.5]);
    const { points: _, ...lines } = PLOT;
    expect(plotRowsToShow(lines, 2)).toEqual([0, 3]);
  });
});

describe('readings at the same place', () => {
  it('share a row where they are of different kinds, and have one each where they are of one', () => {
    const columns = plotColumns({
      x: [0.5, 2.5],
      xNames: ['bare grip', 'with bolt'],
      lines: [],
      points: [
        { name: 'measured', shape: 'round', state: 'full', x: [1, 2, 2], y: [10, 20, 21] },
        { name: 'model', shape: 'up', state: 'full', x: [1, 2], y: [11, 22] },
      ],
      xTitle: 'Step',
      yTitle: 'g mm2',
    });
    const rows = Array.from(columns[0].values, (_, i) => columns.map(({ values }) => values[i]));
    expect(rows).toEqual([
      ['bare grip', 10, 11],
      ['with bolt', 20, 22],
      ['with bolt', 21, Number.NaN],
    ]);
  });
});

describe('a plot with a second quantity below', () => {
  it('has both in one table over the same x', () => {
    const titles = plotColumns({
      x: [0, 1],
      lines: [{ name: 'a', look: 'total', values: [1, 2] }],
      xTitle: 'x, mm',
      yTitle: 'g/mm',
      below: {
        x: [0, 1],
        lines: [{ name: 'b', look: '2', values: [3, 4] }],
        xTitle: 'x, mm',
        yTitle: 'y, mm',
      },
    }).map(({ title, values }) => [title, ...Array.from(values)]);
    expect(titles).toEqual([
      ['x, mm', 0, 1],
      ['g/mm', 1, 2],
      ['y, mm', 3, 4],
    ]);
  });
});

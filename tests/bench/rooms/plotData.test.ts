import { expect, test } from 'vitest';
import { plotData } from '../../../src/bench/rooms/plots/plotData';
import type { PlotContent } from '../../../src/bench/rooms/plots/plotScene';
import { plotColumns } from '../../../src/ui/drawn/plotColumns';

const point = { kind: 'pull', state: 'counts', text: '' } as const;
const CONTENT: PlotContent = {
  x: [-10, 0, 10],
  curves: [
    { look: 'model', y: [1, 2, 3] },
    // Nothing could be fitted.
    { look: 'fit', y: [Number.NaN, Number.NaN, Number.NaN] },
  ],
  bands: [{ look: 'friction', low: [0, 1, 2], high: [2, 3, 4] }],
  points: [
    { ...point, id: 'a', x: 5, y: 2.5 },
    { ...point, id: 'b', x: -5, y: 0.5, state: 'doubted' },
    { ...point, id: 'c', x: 0, y: 9, kind: 'push', state: 'aside' },
  ],
};

test('the readings of the bench leave it with what they are, beside the curves and bands at their pitches', () => {
  const columns = plotColumns(plotData(CONTENT, { x: 'Pitch', y: 'N', held: 'held' }));
  const rows = Array.from(columns[0].values, (_, i) => columns.map(({ values }) => values[i]));
  expect(columns.map(({ title }) => title)).toEqual([
    'Pitch',
    'model, N',
    '\u2265 the model\u2019s friction, N',
    '\u2264 the model\u2019s friction, N',
    'pull, N',
    'pull, doubted, N',
    'push, set aside, N',
  ]);
  // By hand: the model is 0.1 x + 2, the band 1 either side.
  const none = Number.NaN;
  expect(rows.find(([x]) => x === -5)).toEqual([-5, 1.5, 0.5, 2.5, none, 0.5, none]);
  expect(rows.find(([x]) => x === 5)).toEqual([5, 2.5, 1.5, 3.5, 2.5, none, none]);
  expect(rows.filter(([x]) => x === 0).map((row) => row[6])).toEqual([none, 9]);
});

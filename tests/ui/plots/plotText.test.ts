import { expect, test } from 'vitest';
import { plotText } from '../../../src/ui/plots/plotText';

test('a copied plot is a table of its axes, a column for each line and its band, empty where there is no value', () => {
  const text = plotText(
    {
      x: [0, 1 / 3],
      lines: [
        { name: 'all', look: 'total', values: [-2, Number.NaN] },
        { name: 'air', look: '2', values: [0.1 + 0.2, 4] },
      ],
      band: [0.5, 0.25],
      xTitle: 'Speed, rpm',
      yTitle: 'Force, N',
    },
    'At +5.0\u00b0 of pitch',
  );
  // Read as text/tab-separated-values of IANA: one line a record, tabs between, the same count in every one.
  const [said, ...records] = text.split('\n');
  const cells = records.map((record) => record.split('\t'));
  expect(said).toBe('At +5.0\u00b0 of pitch');
  expect(cells).toEqual([
    ['Speed, rpm', 'all, Force, N', 'air, Force, N', '\u00b1, Force, N'],
    ['0', '-2', '0.3', '0.5'],
    ['0.333333', '', '4', '0.25'],
  ]);
});

import { describe, expect, it } from 'vitest';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { markedText, wrongMark } from '../../../src/state/words/markedText';

// 1 in = 25.4 mm, 1 ozf = 0.2780139 N, 1 oz = 28.34952 g: NIST SP 811, appendix B (from memory).
const INCH: readonly (readonly [string, string])[] = [
  ['{10 mm}', '0.394\u00a0in'], // 10 / 25.4 = 0.39370
  ['{16.25 mm}', '0.6398\u00a0in'], // four digits as written; 0.63976
  ['{101 N mm}', '14.3\u00a0ozf\u00a0in'], // 101 / (0.2780139 x 25.4) = 14.303
  ['{-0.28 N}', '\u22121.01\u00a0ozf'], // 0.28 / 0.2780139 = 1.00714
  ['{20 g}', '0.705\u00a0oz'], // 20 / 28.34952 = 0.70548
  ['{1000 g mm2}', '0.0547\u00a0oz\u00a0in\u00b2'], // 1000 / 28.34952 / 25.4^2 = 0.054674
];

describe('a text with marked quantities', () => {
  it('keeps every number as it was written where the unit is the one written', () => {
    const text = 'Two of {5 g}, {10.0 mm} ahead, {+8 mm} up: {-109 N mm} at {10000 rpm}.';
    expect(markedText(text, METRIC_UNITS)).toBe(
      'Two of 5\u00a0g, 10.0\u00a0mm ahead, +8\u00a0mm up: \u2212109\u00a0N\u00a0mm at 10\u202f000\u00a0rpm.',
    );
  });

  it.each(INCH)('shows %s in inch units as %s', (mark, shown) => {
    expect(markedText(`(${mark})`, INCH_UNITS)).toBe(`(${shown})`);
  });

  it('leaves alone what is no quantity, and finds it', () => {
    for (const wrong of ['{10 furlong}', '{}', '{ten mm}', '{1e3 mm}']) {
      expect(markedText(wrong, INCH_UNITS)).toBe(wrong);
      expect(wrongMark(`So {5 g} and ${wrong}.`)).toBe(wrong);
    }
    expect(wrongMark('an open { brace')).toBe('{');
    expect(wrongMark('{5 g} and {0.3 N} to {0.6 N}')).toBeNull();
  });
});

import { expect, test } from 'vitest';
import { textWidth, wrapText } from '../../../src/output/drawing/textSize';

test('a line of a drawing ends between words, and never between a number and its unit', () => {
  const text =
    'outside \u22120.1 mm, inside +0.1 mm. Density \u00b11 %. Scale 0.01 g shows 2 grips in turn.';
  for (let width = 20; width < 200; width += 3) {
    const lines = wrapText(text, 3.5, width);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) {
      expect(line).not.toMatch(/^(?:mm|%|g)(?!\p{L})/u);
      if (line.includes(' ') && !/^\S+ (?:mm|%|g)\S*$/.test(line)) {
        expect(textWidth(line, 3.5)).toBeLessThanOrEqual(width);
      }
    }
  }
  // "grips" and "in" are words here, not units: each word alone where there is no room.
  expect(wrapText('2 grips in turn', 3.5, 1)).toEqual(['2', 'grips', 'in', 'turn']);
});

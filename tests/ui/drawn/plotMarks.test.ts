import { describe, expect, it } from 'vitest';
import { placeMarks } from '../../../src/ui/drawn/plotMarks';

const EDGES = { left: 50, right: 500, top: 20, bottom: 200 };
const LETTER = 6.7;
const place = (
  marks: readonly { at: number; text: string }[],
  names: readonly number[] = [],
  zeroY: number | null = null,
) =>
  placeMarks(marks, { edges: EDGES, zeroY, names, letter: LETTER }).map((mark) => {
    const wide = mark.text.length * LETTER;
    const from = mark.anchor === 'end' ? mark.x - wide : mark.x;
    return { ...mark, from, to: from + wide };
  });

describe('texts of the marks of a plot', () => {
  it('lie on no line and no other text where two marks stand close at its edge', () => {
    const marks = [
      { at: 455, text: 'speed' },
      { at: 500, text: 'overspeed' },
    ];
    const [speed, over] = place(marks);
    expect(speed).toMatchObject({ anchor: 'end', y: 194 });
    for (const { from, to } of [speed, over]) {
      for (const { at } of marks) expect(at > from && at < to).toBe(false);
    }
    expect(speed.y !== over.y || speed.to < over.from || over.to < speed.from).toBe(true);
  });

  it('go a line higher where the name of a line ends at the edge at their height', () => {
    const [mark] = place(
      [
        { at: 500, text: 'overspeed' },
        { at: 470, text: 'speed' },
      ],
      [196],
    ).slice(1);
    expect(mark.text).toBe('overspeed');
    expect(Math.abs(mark.y - 196)).toBeGreaterThanOrEqual(14);
  });

  it('go to the right of a line that stands too near the left edge', () => {
    const [mark] = place([{ at: 60, text: 'speed' }]);
    expect(mark).toMatchObject({ anchor: 'start' });
    expect(mark.from).toBeGreaterThan(60);
  });

  it('keep off the line at zero', () => {
    const [mark] = place([{ at: 300, text: 'rests' }], [], 192);
    expect(mark.y - 11 > 192 || mark.y + 4 < 192).toBe(true);
  });
});

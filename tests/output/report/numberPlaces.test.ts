import { describe, expect, it } from 'vitest';
import { placeNumbers } from '../../../src/output/report/figures/numberPlaces';

const BOX = { left: 0, right: 400, top: 0, bottom: 300 };
/** Five letters of ten pixels bold are at most this wide and high. */
const [WIDTH, HEIGHT] = [30, 8];

function box({ x, y }: { readonly x: number; readonly y: number }) {
  return { left: x - WIDTH / 2, right: x + WIDTH / 2, top: y - HEIGHT, bottom: y };
}

function apart(a: ReturnType<typeof box>, b: ReturnType<typeof box>): boolean {
  return a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
}

describe('numbers beside a curve', () => {
  it('stand straight over their points where nothing is in the way', () => {
    const [place] = placeNumbers([{ x: 100, y: 100, words: '-1.23' }], [], BOX);
    expect(place.x).toBe(100);
    expect(place.y).toBeLessThan(100);
  });

  it('stay off one another, off the curve and in the box, on the curves of both signs of slope', () => {
    for (const slope of [-2, -0.5, 0, 0.5, 2]) {
      const curve = Array.from({ length: 321 }, (_, i) => {
        const x = 40 + i;
        return [x, Math.min(299, Math.max(1, 150 + slope * (x - 200)))] as const;
      });
      const numbers = [-60, -30, 0, 30, 60].map((step) => ({
        x: 200 + step,
        y: 150 + slope * step,
        words: '-1.23',
      }));
      const boxes = placeNumbers(numbers, curve, BOX).map(box);
      for (const [i, own] of boxes.entries()) {
        expect(own.left).toBeGreaterThanOrEqual(BOX.left);
        expect(own.bottom).toBeLessThanOrEqual(BOX.bottom);
        for (const other of boxes.slice(i + 1)) expect(apart(own, other), `${slope}`).toBe(true);
        const covered = curve.filter(
          ([x, y]) => x > own.left && x < own.right && y > own.top && y < own.bottom,
        );
        expect(covered, `slope ${slope}, number ${i}`).toEqual([]);
      }
    }
  });

  it('go under a point at the top of the plot', () => {
    const [place] = placeNumbers([{ x: 200, y: 2, words: '+9.99' }], [], BOX);
    expect(place.y).toBeGreaterThan(2 + HEIGHT);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Label, placeLabels } from '../../../src/ui/drawn/labels';
import { real } from '../../support/arbitrary';

const labels = fc.array(
  fc.record({
    at: real(-50, 250),
    size: real(1, 20),
  }),
  { minLength: 1, maxLength: 8 },
);

function cost(wanted: readonly Label[], places: readonly number[]): number {
  return wanted.reduce(
    (sum, label, i) => sum + (label.weight ?? 1) * (places[i] - label.at) ** 2,
    0,
  );
}

describe('placing labels along a line', () => {
  it('leaves labels that do not touch where they want to be', () => {
    const wanted = [
      { at: 80, size: 10 },
      { at: 20, size: 10 },
    ];
    expect(placeLabels(wanted, 0, 100)).toEqual([80, 20]);
  });

  it('pushes two equal wishes apart by half each', () => {
    const wanted = [
      { at: 50, size: 10 },
      { at: 50, size: 10 },
    ];
    expect(placeLabels(wanted, 0, 100, 2)).toEqual([44, 56]);
  });

  it('lets a heavy label keep its place and moves the light one', () => {
    const [heavy, light] = placeLabels(
      [
        { at: 50, size: 10, weight: 1e6 },
        { at: 51, size: 10 },
      ],
      0,
      100,
    ) as number[];
    expect(heavy).toBeCloseTo(50, 4);
    expect(light).toBeCloseTo(60, 4);
  });

  it('says that labels do not fit', () => {
    const wanted = [
      { at: 5, size: 10 },
      { at: 5, size: 10 },
    ];
    expect(placeLabels(wanted, 0, 19)).toBeNull();
    expect(placeLabels(wanted, 0, 20)).toEqual([5, 15]);
  });

  it('has nothing to place where there is nothing', () => {
    expect(placeLabels([], 0, 1)).toEqual([]);
  });

  it('never overlaps, never leaves the bounds, and keeps the order, whatever is asked', () => {
    fc.assert(
      fc.property(labels, (wanted) => {
        const places = placeLabels(wanted, 0, 200, 2);
        if (places === null) {
          const needed =
            wanted.reduce((sum, label) => sum + label.size, 0) + 2 * (wanted.length - 1);
          expect(needed).toBeGreaterThan(200 - 1e-6);
          return;
        }
        const order = wanted
          .map((_, i) => i)
          .toSorted((i, j) => wanted[i].at - wanted[j].at || i - j);
        order.forEach((i, k) => {
          expect(places[i] - wanted[i].size / 2).toBeGreaterThan(-1e-9);
          expect(places[i] + wanted[i].size / 2).toBeLessThan(200 + 1e-9);
          if (k === 0) return;
          const previous = order[k - 1];
          const room = places[i] - places[previous] - (wanted[i].size + wanted[previous].size) / 2;
          expect(room).toBeGreaterThan(2 - 1e-9);
        });
      }),
      { seed: 7 },
    );
  });

  it('cannot be bettered by moving the labels a little in any lawful way', () => {
    fc.assert(
      fc.property(
        labels,
        fc.array(real(-1, 1), { minLength: 8, maxLength: 8 }),
        (wanted, nudges) => {
          const places = placeLabels(wanted, 0, 200, 2);
          if (places === null) return;
          const moved = placeLabels(
            wanted.map((label, i) => ({ at: places[i] + nudges[i], size: label.size })),
            0,
            200,
            2,
          ) as number[];
          // The nudged wishes may have changed order; then it is another problem.
          const inOrder = wanted.every((label, i) =>
            wanted.every((other, j) => !(label.at < other.at) || moved[i] < moved[j]),
          );
          if (inOrder) expect(cost(wanted, places)).toBeLessThan(cost(wanted, moved) + 1e-6);
        },
      ),
      { seed: 11 },
    );
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dialLayout, pointAt } from '../../../src/ui/drawn/dialLayout';
import {
  freePlace,
  placeRingLabels,
  type RingLabel,
  touches,
} from '../../../src/ui/drawn/ringLabels';
import { real } from '../../support/arbitrary';

/** Real boxes of the texts at their places: 12 px type, 14 px lines. */
function boxes(labels: readonly RingLabel[], radius: number) {
  const layout = { ...dialLayout(400, 400), radius };
  const placed = placeRingLabels(labels, radius, 14) ?? [];
  return placed.map((spot, i) => {
    const [x, y] = pointAt(layout, spot.pitchDeg, spot.distance);
    return { x, y, width: labels[i].text.length * 6.8, height: 12 };
  });
}

function overlap(
  a: ReturnType<typeof boxes>[number],
  b: ReturnType<typeof boxes>[number],
): boolean {
  return (
    Math.abs(a.x - b.x) < (a.width + b.width) / 2 - 1 &&
    Math.abs(a.y - b.y) < (a.height + b.height) / 2 - 1
  );
}

describe('texts round the ring', () => {
  it('leave the firm one where it belongs', () => {
    const placed = placeRingLabels(
      [
        { pitchDeg: 10, text: '+10.0\u00b0', firm: true },
        { pitchDeg: 11, text: '+11.0\u00b0' },
      ],
      120,
      14,
    );
    expect(placed?.[0].pitchDeg).toBeCloseTo(10, 3);
    expect(placed?.[1].pitchDeg).toBeGreaterThan(15);
  });

  it('do not cover one another, wherever they belong', () => {
    const angles = fc.array(real(-90, 90), {
      minLength: 2,
      maxLength: 5,
    });
    fc.assert(
      fc.property(angles, fc.integer({ min: 70, max: 160 }), (pitches, radius) => {
        const labels = pitches.map((pitchDeg) => ({ pitchDeg, text: '+88.8\u00b0' }));
        const found = boxes(labels, radius);
        expect(found.length).toBe(labels.length);
        found.forEach((a, i) => {
          for (const b of found.slice(i + 1)) expect(overlap(a, b)).toBe(false);
        });
      }),
      { seed: 3, numRuns: 300 },
    );
  });
});

describe('tick labels beside placed ones', () => {
  const firm: RingLabel = { pitchDeg: 0, text: '0.0\u00b0', firm: true };

  it('+60 stays beside two marks near +90, as on the demo head in a wide window', () => {
    const labels = [
      firm,
      { pitchDeg: 88.9, text: '+88.9\u00b0' },
      { pitchDeg: 88.5, text: '+88.5\u00b0' },
    ];
    const placed = placeRingLabels(labels, 106, 14) ?? [];
    expect(placed).toHaveLength(3);
    expect(touches('+60\u00b0', freePlace('+60\u00b0', 60, 106, 14), labels, placed)).toBe(false);
  });

  it('a tick label gives way to a mark at its own place', () => {
    const labels = [firm, { pitchDeg: 58, text: '+58.0\u00b0' }];
    const placed = placeRingLabels(labels, 106, 14) ?? [];
    expect(touches('+60\u00b0', freePlace('+60\u00b0', 60, 106, 14), labels, placed)).toBe(true);
  });
});

import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import {
  createSegmentMoments,
  J00,
  J01,
  J02,
  J03,
  J20,
  J21,
  segmentMoments,
} from '../../../src/engine/mass/circularSegment';
import { exact } from '../../support/precise';

const Real = Decimal.clone({ precision: 26 });

/** Flat to deep, with both sides of where the closed form takes over, and the half circle. */
const BULGES = [1e-4, 0.3999, 0.4, 0.7, 1];

const LEVELS = 7;

/** The arc over half its chord in equal steps of the angle p, turned on step by step, 26 digits: c, w, and dc over dp. */
function arcOf(bulge: number) {
  const half = exact(bulge, Real).atan().mul(2);
  const step = half.div(2 ** LEVELS);
  const [stepCosine, stepSine] = [step.cos(), step.sin()];
  const [halfCosine, halfSine] = [half.cos(), half.sin()];
  let cosine = new Real(1);
  let sine = new Real(0);
  const points = Array.from({ length: 2 ** LEVELS + 1 }, () => {
    const point = {
      c: sine.div(halfSine),
      w: cosine.sub(halfCosine).div(halfSine),
      rate: cosine.div(halfSine),
    };
    const turned = cosine.mul(stepCosine).sub(sine.mul(stepSine));
    sine = sine.mul(stepCosine).add(cosine.mul(stepSine));
    cosine = turned;
    return point;
  });
  return { half, points };
}

/** int w^(q+1) / (q+1) c^p dc over the chord: the definition itself, by Romberg's rule. */
function byDefinition({ half, points }: ReturnType<typeof arcOf>, p: number, q: number): number {
  const values = points.map(({ c, w, rate }) =>
    w
      .pow(q + 1)
      .div(q + 1)
      .mul(c.pow(p))
      .mul(rate),
  );
  const last = values.length - 1;
  let row = [values[0].add(values[last]).mul(half).div(2)];
  for (let level = 1; level <= LEVELS; level++) {
    const step = last / 2 ** level;
    let middles = new Real(0);
    for (let i = step; i < last; i += 2 * step) middles = middles.add(values[i]);
    const next = [row[0].div(2).add(middles.mul(half).div(2 ** level))];
    for (let k = 1; k <= level; k++) {
      const order = new Real(4).pow(k);
      const finer = order.mul(next[k - 1]);
      next.push(finer.sub(row[k - 1]).div(order.sub(1)));
    }
    row = next;
  }
  return row[LEVELS].mul(2).toNumber();
}

const PLACES = [
  [J00, 0, 0],
  [J01, 0, 1],
  [J20, 2, 0],
  [J02, 0, 2],
  [J21, 2, 1],
  [J03, 0, 3],
] as const;

describe('the moments of a circular segment in half chords', () => {
  test.each(BULGES)('are those of its definition for a bulge of %s', (bulge) => {
    const out = createSegmentMoments();
    segmentMoments(bulge, out);
    const arc = arcOf(bulge);
    for (const [place, p, q] of PLACES) {
      const truth = byDefinition(arc, p, q);
      // Flat arcs keep their digits; deep ones are summed from terms of the size of the half chord.
      const size = bulge < 0.4 ? truth : 1;
      expect(Math.abs(out[place] - truth) / size).toBeLessThan(2e-15);
    }
  });

  test('of a half circle are pi / 2, 2 / 3, pi / 8, pi / 8, 2 / 15 and 4 / 15 (handbook; the last two in polar form)', () => {
    const out = createSegmentMoments();
    segmentMoments(1, out);
    const half = [Math.PI / 2, 2 / 3, Math.PI / 8, Math.PI / 8, 2 / 15, 4 / 15];
    half.forEach((value, place) => {
      expect(Math.abs(out[place] - value)).toBeLessThan(2e-16);
    });
  });

  test('change their sign with the bulge where w enters by an odd power', () => {
    for (const bulge of BULGES) {
      const [left, right] = [createSegmentMoments(), createSegmentMoments()];
      segmentMoments(bulge, left);
      segmentMoments(-bulge, right);
      expect([...right]).toEqual([-1, 1, -1, -1, 1, 1].map((sign, place) => sign * left[place]));
    }
  });
});

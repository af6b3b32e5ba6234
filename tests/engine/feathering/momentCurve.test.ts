import { describe, expect, test } from 'vitest';
import { findEquilibria, type MomentCurve } from '../../../src/engine/feathering/equilibria';
import { radians } from '../../../src/engine/units';
import { touchingDips } from '../../support/equilibria';
import { seeded } from '../../support/seeded';

describe('any smooth moment curve with honest bounds', () => {
  const wave: MomentCurve = {
    value: (t) => Math.cos(40 * t) - 0.5 * t,
    slope: (t) => -40 * Math.sin(40 * t) - 0.5,
    slopeBound: 40.5,
    curvatureBound: 1600,
    scale: 2,
  };

  test('a ripple of forty turns loses none of its roots', () => {
    const found = findEquilibria(wave, radians(-3), radians(3));
    let changes = 0;
    for (let k = 0; k < 60_000; k++) {
      const t = -3 + k * 1e-4;
      if (wave.value(t) > 0 !== wave.value(t + 1e-4) > 0) changes++;
    }
    expect(changes).toBeGreaterThan(45);
    expect(found).toHaveLength(changes);
    for (const root of found) expect(Math.abs(wave.value(root.pitch))).toBeLessThan(1e-12);
  });

  test('loose bounds cost time and no roots', () => {
    const loose = { ...wave, slopeBound: 4000, curvatureBound: 160_000 };
    const pitches = (curve: MomentCurve) =>
      findEquilibria(curve, radians(-3), radians(3)).map((root) => root.pitch.toFixed(12));
    expect(pitches(loose)).toEqual(pitches(wave));
  });

  test('two roots a hair apart are two or one touch, never half of it, wherever the range begins', () => {
    const touches = touchingDips(seeded(76), 200);
    expect(touches[1]).toBe(0);
    expect(touches[0]).toBeGreaterThan(30);
  });

  // Met among thousands at random: cells that lie side by side, searched one by one, make a rest angle and a touch of them.
  test.each([
    {
      at: 0.055434411764144875,
      curvature: 1.079976044408977,
      bound: 2 * 3.3372016992053752,
      depth: 5.13295498074024e-15,
      range: [0.023500285663270226, 0.0588564951406784],
      kinds: ['tangent'],
    },
    {
      at: -0.08797137495130301,
      curvature: 1.4790567295625805,
      bound: 2 * 3.6929399952198825,
      depth: 5.388326599591539e-15,
      range: [-0.1422823982378692, -0.0571214311103959],
      kinds: ['stable', 'unstable'],
    },
    {
      at: -0.1965759945102036,
      curvature: 1.3555125297047197,
      bound: 2 * 7.737702522028659,
      depth: 8.205370686090618e-15,
      range: [-0.20185157810674415, -0.17854454958393484],
      kinds: ['stable', 'unstable'],
    },
  ])('about $at a dip of $depth is $kinds', ({ at, curvature, bound, depth, range, kinds }) => {
    const dip: MomentCurve = {
      value: (t) => (curvature / 2) * (t - at) ** 2 - depth,
      slope: (t) => curvature * (t - at),
      slopeBound: bound,
      curvatureBound: bound,
      scale: 1,
    };
    const found = findEquilibria(dip, radians(range[0]), radians(range[1]));
    expect(found.map(({ kind }) => kind)).toEqual(kinds);
  });

  test('loose bounds do not turn a near miss into a touch', () => {
    const miss = (gap: number): MomentCurve => ({
      value: (t) => t * t + gap,
      slope: (t) => 2 * t,
      slopeBound: 10,
      curvatureBound: 1e4,
      scale: 1,
    });
    // Well above rounding (1e-15 of the scale), well below what cells of 5e-8 hide at that curvature, 3e-12.
    expect(findEquilibria(miss(1e-13), radians(-1), radians(1))).toEqual([]);
    expect(findEquilibria(miss(0), radians(-1), radians(1)).map((root) => root.kind)).toEqual([
      'tangent',
    ]);
  });

  test('bounds and scale that are not positive and finite are a fault that throws', () => {
    for (const name of ['slopeBound', 'curvatureBound', 'scale'] as const) {
      for (const bad of [0, -1, NaN, Infinity]) {
        expect(() => findEquilibria({ ...wave, [name]: bad }, radians(0), radians(1))).toThrow(
          RangeError,
        );
      }
    }
  });
});

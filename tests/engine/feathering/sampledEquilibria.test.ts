import { describe, expect, test } from 'vitest';
import { inertialEquilibria } from '../../../src/engine/feathering/equilibria';
import { featheringMoment, featheringSlope } from '../../../src/engine/feathering/harmonics';
import { sampledEquilibria } from '../../../src/engine/feathering/sampledEquilibria';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';

const from = radians(-Math.PI / 2 + 0.001);
const to = radians(Math.PI / 2 - 0.002);

describe('equilibria found by samples', () => {
  test('are those of the certified search, on 1,000 seeded inertial curves', () => {
    const random = seeded(61);
    let roots = 0;
    for (let i = 0; i < 1000; i++) {
      const h = Float64Array.from({ length: 4 }, () => random.between(-1, 1));
      const exact = inertialEquilibria(h, from, to, 1);
      const sampled = sampledEquilibria(
        {
          value: (t) => featheringMoment(h, radians(t)),
          slope: (t) => featheringSlope(h, radians(t)),
        },
        from,
        to,
        1,
      );
      if (exact.kind !== 'found' || sampled.kind !== 'found') throw new Error('neutral');
      expect(sampled.roots.map(({ kind }) => kind)).toEqual(exact.roots.map(({ kind }) => kind));
      sampled.roots.forEach((root, k) => {
        roots++;
        expect(Math.abs(root.pitch - exact.roots[k].pitch)).toBeLessThan(1e-9);
        expect(Math.abs(root.stiffness - exact.roots[k].stiffness)).toBeLessThan(1e-6);
      });
    }
    expect(roots).toBeGreaterThan(1500);
  });

  test('a pair within one cell is found, a touch is neither, a gap hides nothing else', () => {
    const pair = sampledEquilibria(
      { value: (t) => (t - 0.1001) * (t - 0.1003), slope: (t) => 2 * t - 0.2004 },
      from,
      to,
      1,
    );
    expect(pair).toMatchObject({
      kind: 'found',
      roots: [{ kind: 'stable' }, { kind: 'unstable' }],
    });
    const touch = sampledEquilibria(
      { value: (t) => (t - 0.1001) ** 2, slope: (t) => 2 * (t - 0.1001) },
      from,
      to,
      1,
    );
    expect(touch).toMatchObject({ kind: 'found', roots: [{ kind: 'tangent' }] });
    const parted = sampledEquilibria(
      {
        value: (t) => (Math.abs(t) < 0.2 ? NaN : -Math.sin(3 * t)),
        slope: (t) => -3 * Math.cos(3 * t),
      },
      from,
      to,
      1,
    );
    if (parted.kind !== 'found') throw new Error('neutral');
    expect(parted.roots.map(({ pitch }) => Math.abs(pitch).toFixed(6))).toEqual([
      '1.047198',
      '1.047198',
    ]);
    expect(parted.roots.every(({ kind }) => kind === 'unstable')).toBe(true);
  });

  test('a curve of nothing but rounding is neutral', () => {
    const flat = { value: () => 1e-14, slope: () => 0 };
    expect(sampledEquilibria(flat, from, to, 1)).toEqual({ kind: 'neutral' });
    expect(sampledEquilibria({ value: () => NaN, slope: () => NaN }, from, to, 1)).toEqual({
      kind: 'neutral',
    });
  });
});

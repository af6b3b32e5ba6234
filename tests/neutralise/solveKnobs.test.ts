import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { createMoments, JYY, JYZ, JZZ } from '../../src/engine/mass/moments';
import type { Goal } from '../../src/neutralise/goal';
import { solveKnobs } from '../../src/neutralise/solveKnobs';
import { TrialHead, type TurnedKnob } from '../../src/neutralise/trialHead';

const AT_ORIGIN = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] } as const;

function designOf(parts: readonly Part[]): Design {
  return {
    format: 'stillgrip-design',
    version: 1,
    name: 'test',
    rotor: { speedRpm: 10_000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
    parts,
  };
}

function point(id: string, positionMm: readonly [number, number, number], massGrams = 1): Part {
  return {
    id,
    kind: 'pointMass',
    name: id,
    massGrams,
    pose: { positionMm, rotationDeg: [0, 0, 0] },
  } as Part;
}

/** 10 g, chord 30, thickness 3.6 mm. */
const BOX_BLADE = {
  id: 'blade',
  kind: 'block',
  name: 'blade',
  sizeMm: [92, 30, 3.6],
  densityKgM3: 10e-3 / (0.092 * 0.03 * 0.0036),
  pose: { positionMm: [80, 0, 0], rotationDeg: [0, 0, 0] },
} as unknown as Part;

function trial(parts: readonly Part[], knobs: readonly TurnedKnob[], goal: Goal = NEUTRAL) {
  const made = TrialHead.of(designOf(parts), { goal, speedsRpm: [10_000] }, knobs);
  if (!made.ok) throw new Error(made.error.path);
  return made.value;
}
const NEUTRAL: Goal = { kind: 'neutral' };

function spreadOf(parts: readonly Part[]) {
  const model = new HeadModel();
  const outcome = model.load(designOf(parts));
  if (!outcome.ok) throw new Error(outcome.error.path);
  const totals = model.totals(createMoments());
  return { even: totals[JYY] - totals[JZZ], odd: totals[JYZ], yy: totals[JYY] };
}

describe('solveKnobs', () => {
  it('finds the two points of 3.696 g that cancel the box blade (10 g (30^2 - 3.6^2) / 12 over 2 x 10^2)', () => {
    const head = trial(
      [BOX_BLADE, point('up', [38, 0, 10]), point('down', [38, 0, -10])],
      [{ ref: { part: 'up', field: 'massGrams' }, also: [{ part: 'down', field: 'massGrams' }] }],
    );
    const { solutions, obstacle } = solveKnobs(head, [{ min: 0.01, max: 50 }]);
    expect(obstacle).toBeNull();
    expect(solutions).toHaveLength(1);
    expect(solutions[0].values[0]).toBeCloseTo((10 * (30 ** 2 - 3.6 ** 2)) / 12 / 200, 10);
    expect(solutions[0].values[0]).toBeCloseTo(3.696, 4);
    head.set(solutions[0].values);
    const { even, yy } = spreadOf(head.currentParts);
    expect(Math.abs(even)).toBeLessThan(1e-12 * yy);
  });

  it('finds that a cylinder square to the chord counts for nothing at L = sqrt(3) radius', () => {
    const pin = {
      id: 'pin',
      kind: 'cylinder',
      name: 'pin',
      diameterMm: 8,
      boreMm: 0,
      lengthMm: 20,
      densityKgM3: 7850,
      pose: AT_ORIGIN,
    } as unknown as Part;
    const head = trial([pin], [{ ref: { part: 'pin', field: 'lengthMm' } }]);
    const { solutions } = solveKnobs(head, [{ min: 1, max: 40 }]);
    expect(solutions.map(({ values }) => values[0])).toEqual([
      expect.closeTo(Math.sqrt(3) * 4, 11),
    ]);
  });

  it('cancels J_yz too by where a weight sits, and says what its mass must be', () => {
    // Weights of m at (y, z) and of m at (y, -z): J_yz cancels only when the lone ball's is taken up.
    const ball = point('ball', [12, 17, 4], 0.7);
    const head = trial(
      [BOX_BLADE, ball, point('weight', [38, 0, 14], 2)],
      [
        { ref: { part: 'weight', field: 'massGrams' } },
        { ref: { part: 'weight', field: 'positionMm', component: 1 } },
      ],
    );
    const { solutions } = solveKnobs(head, [
      { min: 0.1, max: 20 },
      { min: -20, max: 20 },
    ]);
    expect(solutions[0].met).toBe(true);
    const [mass, y] = solutions[0].values;
    // By hand: m y z = -0.7 x 17 x 4 and m (z^2 - y^2) = 10 (900 - 12.96)/12 + 0.7 (17^2 - 4^2).
    expect(mass * y * 14).toBeCloseTo(-0.7 * 17 * 4, 6);
    expect(mass * (14 ** 2 - y ** 2)).toBeCloseTo(
      (10 * (900 - 12.96)) / 12 + 0.7 * (17 ** 2 - 4 ** 2),
      5,
    );
    head.set(solutions[0].values);
    const left = spreadOf(head.currentParts);
    expect(Math.abs(left.even)).toBeLessThan(1e-9 * left.yy);
    expect(Math.abs(left.odd)).toBeLessThan(1e-9 * left.yy);
  });

  it('says which limit stands in the way and what would do', () => {
    const head = trial(
      [BOX_BLADE, point('up', [38, 0, 10]), point('down', [38, 0, -10])],
      [{ ref: { part: 'up', field: 'massGrams' }, also: [{ part: 'down', field: 'massGrams' }] }],
    );
    const { solutions, obstacle } = solveKnobs(head, [{ min: 0.01, max: 2 }]);
    expect(solutions[0]).toMatchObject({ values: [2], met: false, held: [1] });
    expect(obstacle).toMatchObject({ kind: 'limit', knob: 0, limit: 2 });
    const needed = obstacle?.kind === 'limit' ? obstacle.needed : null;
    expect(needed).toBeCloseTo((10 * (30 ** 2 - 3.6 ** 2)) / 12 / 200, 9);
  });

  it('says that a knob does nothing for it', () => {
    const head = trial(
      [BOX_BLADE],
      [{ ref: { part: 'blade', field: 'positionMm', component: 0 } }],
    );
    expect(solveKnobs(head, [{ min: 50, max: 100 }]).obstacle).toEqual({ kind: 'noEffect' });
  });

  it('gives the wanted gentle centring: rest and pull on both sides', () => {
    // Without an arm one N m counts as one newton: M(10 deg) = -T asks for A W^2 / 2 sin 20 deg = T.
    const goal: Goal = { kind: 'centring', restDeg: 0, awayDeg: 10, forceN: 0.05 };
    const head = trial(
      [BOX_BLADE, point('up', [38, 0, 10]), point('down', [38, 0, -10])],
      [{ ref: { part: 'up', field: 'massGrams' }, also: [{ part: 'down', field: 'massGrams' }] }],
      goal,
    );
    const { solutions } = solveKnobs(head, [{ min: 0.01, max: 50 }]);
    const W = (10_000 * Math.PI) / 30;
    const even = (2 * 0.05) / (W * W * Math.sin(Math.PI / 9));
    const mass = ((10 * (30 ** 2 - 3.6 ** 2)) / 12 - even * 1e9) / 200;
    expect(solutions[0].values[0]).toBeCloseTo(mass, 9);
  });
});

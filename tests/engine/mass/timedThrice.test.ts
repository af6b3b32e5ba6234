import { describe, expect, test } from 'vitest';
import { linearFit } from '../../../src/engine/identify/linearFit';
import { centralSecondMoment } from '../../../src/engine/mass/inertia';
import { applyMeasured } from '../../../src/engine/mass/measured';
import { createMoments, JXX, JYY, JZZ, M, type Moments } from '../../../src/engine/mass/moments';

/** A body of spreads J_xx, J_yy, J_zz about its centre, no products. */
function body(xx: number, yy: number, zz: number): Moments {
  const moments = createMoments();
  moments[M] = 0.01;
  moments[JXX] = xx;
  moments[JYY] = yy;
  moments[JZZ] = zz;
  return moments;
}
function spreads(model: Moments, timed: readonly number[], uncertainty: readonly number[]) {
  const out = createMoments();
  const inertia = timed.map((moment, k) => ({
    axis: k as 0 | 1 | 2,
    moment,
    uncertainty: uncertainty[k],
  }));
  const result = applyMeasured(model, { inertia }, out);
  if (!result.ok) throw new Error(result.error.kind);
  const J = centralSecondMoment(out);
  return [J?.xx ?? 0, J?.yy ?? 0, J?.zz ?? 0];
}

describe('three timings and the least spread as drawn', () => {
  const drawn = [9e-6, 4e-6, 0.5e-6];
  /** I_x = J_yy + J_zz and so on, each off by a little. */
  const TIMED = [4.6e-6, 9.6e-6, 13.05e-6];
  const UNSURE = [2e-8, 5e-8, 9e-8];

  test.each([0, 1, 2])(
    'are adjusted to each other by least squares, spread %d being the least',
    (least) => {
      // Turned round so that each axis has its turn; the drawn spread is known to a twentieth of itself.
      const turn = <T>(list: readonly T[]): T[] =>
        list.map((_, i) => list[(i + 2 - least + 3) % 3]);
      const [model, timed, unsure] = [turn(drawn), turn(TIMED), turn(UNSURE)];
      const k = model.indexOf(Math.min(...model));
      expect(k).toBe(least);
      const unit = [0, 1, 2].map((i) => (i === k ? 1 : 0));
      const fit = linearFit({
        design: [0, 1, 1, 1, 0, 1, 1, 1, 0, ...unit],
        parameters: 3,
        observed: [...timed, model[k]],
        sigma: [...unsure, 0.05 * model[k]],
      });
      spreads(body(model[0], model[1], model[2]), timed, unsure).forEach((spread, i) =>
        expect(spread / fit.estimate[i]).toBeCloseTo(1, 9),
      );
    },
  );

  test('are left alone where they are far from it: by more than six uncertainties and half of it', () => {
    // J_zz by the timings is (I_x + I_y - I_z) / 2.
    const at = (zz: number, unsure: number) =>
      spreads(body(9e-6, 4e-6, 0.5e-6), [4e-6 + zz, 9e-6 + zz, 13e-6], [unsure, unsure, unsure])[2];
    // Its own uncertainty is root 3 / 2 of 1e-9, that of the drawn one 2.5e-8: six of both are 1.5e-7.
    expect(at(0.76e-6, 1e-9)).toBeCloseTo(0.76e-6, 14);
    // Farther than six of them, yet within half of what is drawn: adjusted, if by little.
    const near = at(0.74e-6, 1e-9);
    const share = 0.75e-18 / (0.75e-18 + 2.5e-8 ** 2);
    expect((0.74e-6 - near) / (0.24e-6 * share)).toBeCloseTo(1, 4);
    // Within six of them, though beyond half.
    const wide = at(0.8e-6, 6e-8);
    const pull = (0.75 * 36e-16) / (0.75 * 36e-16 + 2.5e-8 ** 2);
    expect((0.8e-6 - wide) / (0.3e-6 * pull)).toBeCloseTo(1, 6);
  });
});

import { describe, expect, it } from 'vitest';
import { type RestReading, restDrag } from '../../src/bench/restDrag';
import { normalQuantile } from '../../src/engine/math/normal';
import { seeded } from '../support/seeded';

const STEP = 0.1;
const NOISE = 0.05;

/** Nine travels read both ways: drag of 0.2 N, a zero of 0.13 N; the gauge stands anywhere in its step each time. */
function still(seed: number): RestReading[] {
  const random = seeded(seed);
  const read = (force: number) => {
    const tare = STEP * random.unit();
    const noisy = force + tare + NOISE * normalQuantile(Math.max(random.unit(), 1e-12));
    return Math.round(noisy / STEP) * STEP - tare;
  };
  return Array.from({ length: 9 }, (_, k) =>
    ([1, -1] as const).map((sense) => ({
      travel: 0.001 * k,
      force: 0.13 + read(sense * 0.2),
      sense,
      place: 2 * k,
    })),
  ).flat();
}

describe('drag at rest', () => {
  it.each([
    { name: 'told', noise: NOISE, freedom: Infinity },
    { name: 'learnt from the middles', noise: null, freedom: 8 },
  ])(
    'has the uncertainty that brute force finds where the noise is $name',
    ({ noise, freedom }) => {
      let [squares, lean, count] = [0, 0, 0];
      for (let seed = 0; seed < 400; seed++) {
        for (const { force, sigma } of restDrag(still(seed), { step: STEP, noise }).drag) {
          squares += ((force - 0.2) / sigma) ** 2;
          lean += (force - 0.2) / NOISE;
          count++;
        }
      }
      // The mean square of a deviate is 1, of Student's t on nu degrees of freedom nu / (nu - 2). 3,600 of them scatter by
      // sqrt(2 / 3,600) = 0.024 and, sharing their sigma by nine, by some three times that.
      const expected = freedom === Infinity ? 1 : freedom / (freedom - 2);
      expect(Math.abs(squares / count - expected)).toBeLessThan(0.15);
      // Each is sqrt((noise^2 + step^2/12)/2) = 0.82 of the noise: the mean of 3,600 scatters by 0.014.
      expect(Math.abs(lean / count)).toBeLessThan(4 * 0.014);
    },
  );

  it('below nothing by noise is not cut off: else friction would lean', () => {
    const rows: RestReading[] = [
      { travel: 0, force: -0.02, sense: 1, place: 0 },
      { travel: 0, force: 0.02, sense: -1, place: 1 },
    ];
    expect(restDrag(rows, { step: 0, noise: 0.05 }).drag[0].force).toBeCloseTo(-0.02, 12);
  });

  it('read one way only goes by the zero of the other travels, and is as uncertain as reading and zero together', () => {
    const rows: RestReading[] = [
      { travel: 0, force: 0.33, sense: 1, place: 0 },
      { travel: 0, force: -0.07, sense: -1, place: 1 },
      { travel: 0.001, force: 0.33, sense: 1, place: 2 },
      { travel: 0.001, force: -0.07, sense: -1, place: 3 },
      { travel: 0.002, force: 0.43, sense: 1, place: 4 },
    ];
    const { drag, zero } = restDrag(rows, { step: 0, noise: 0.05 });
    // By hand: middles of 0.13 whose sigma is 0.05 / sqrt 2 each, 0.05 / 2 for the mean of two.
    expect(zero?.force).toBeCloseTo(0.13, 12);
    expect(zero?.sigma).toBeCloseTo(0.05 / 2, 12);
    expect(drag[2].force).toBeCloseTo(0.3, 12);
    expect(drag[2].sigma).toBeCloseTo(0.05 * Math.sqrt(1 + 1 / 4), 12);
  });
});

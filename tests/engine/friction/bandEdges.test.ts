import { expect, test } from 'vitest';
import { bandKnots, holdingBands } from '../../../src/engine/friction/holdingBands';
import { radians } from '../../../src/engine/units';

const [FROM, TO] = [radians(-1), radians(1)];
/** Crosses zero at -0.5, 0.1 and 0.7; friction holds some 0.01 rad about each, far narrower than a step. */
const moment = (pitch: number) => 30 * (pitch + 0.5) * (pitch - 0.1) * (pitch - 0.7);
const friction = () => 0.1;

test('narrow bands are found about equilibria told in any order, and none outside the range', () => {
  const bands = holdingBands(moment, friction, FROM, TO, 0.3, [0.7, -0.5, 1.2, 0.1, -1.1]);
  expect(bands).toHaveLength(3);
  bands.forEach(([low, high], k) => {
    const place = [-0.5, 0.1, 0.7][k];
    expect(low).toBeLessThan(place);
    expect(high).toBeGreaterThan(place);
    for (const end of [low, high]) expect(Math.abs(moment(end))).toBeCloseTo(0.1, 9);
  });
});

test('what is known at the knots is taken from there: less the size of the moment', () => {
  const knots = bandKnots(FROM, TO, 0.05);
  const slope = (pitch: number) => -pitch;
  const atKnots = {
    knots,
    moments: knots.map(slope),
    frictions: knots.map(() => 0.33),
  };
  for (const known of [atKnots, undefined]) {
    const [[low, high], ...others] = holdingBands(slope, () => 0.33, FROM, TO, 0.05, [], known);
    expect(others).toEqual([]);
    expect(low).toBeCloseTo(-0.33, 12);
    expect(high).toBeCloseTo(0.33, 12);
  }
});

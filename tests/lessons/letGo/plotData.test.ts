import { expect, test } from 'vitest';
import { hillsData } from '../../../src/lessons/letGo/hillsData';
import { traceData } from '../../../src/lessons/letGo/traceData';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';
import { DEMOS, demo } from '../../output/solids/heads';

test('the energy of a grip leaves the page in mJ: its slope is the moment, and friction holds where the moment is smaller', () => {
  const { live } = createSession(demo(DEMOS[2]), () => {});
  live.flush();
  const { reading } = live;
  const { x, lines } = hillsData(reading, METRIC_UNITS);
  const [{ values }, held] = lines;
  // M = -dV/dt, by differences of two neighbours; in mN m per radian.
  for (let i = 10; i < x.length - 10; i += 25) {
    const step = ((x[i + 1] - x[i - 1]) * Math.PI) / 180;
    const slope = (values[i + 1] - values[i - 1]) / step;
    expect(Math.abs(-slope - 1000 * reading.momentAt(x[i]))).toBeLessThan(
      1e-3 * Math.max(1, Math.abs(1000 * reading.momentAt(x[i]))) + 0.05,
    );
  }
  const isHeld = (deg: number) => reading.bandsDeg.some(([from, to]) => from <= deg && deg <= to);
  Array.from(x).forEach((deg, i) => {
    expect(Number.isNaN(held?.values[i] ?? Number.NaN)).toBe(!isHeld(deg));
  });
});

test('a run leaves the page as its samples, pitch in degrees against milliseconds; before one there is nothing', () => {
  expect(traceData({ run: null })).toBeNull();
  const trace = { length: 3, time: [0, 0.01, 0.02, 9], pitch: [0, Math.PI / 18, -Math.PI / 9, 9] };
  const data = traceData({ run: { trace } as never });
  expect(data?.x).toEqual([0, 10, 20]);
  const values = Array.from(data?.lines[0].values ?? []);
  expect(values.map((one) => Number(one.toFixed(9)))).toEqual([0, 10, -20]);
});

import { describe, expect, it } from 'vitest';
import { markEnds, measuredMarks } from '../../../src/panels/chart/benchMarks';
import { plottedQuantity, plottedValue } from '../../../src/panels/chart/quantity';
import { createSession } from '../../../src/state/createSession';
import { CHART_QUANTITIES, DEFAULT_SETTINGS } from '../../../src/state/settings';
import { demo } from '../../bench/heads';

describe('points of the bench over the chart', () => {
  const { live } = createSession(demo('4-turned-nut'), () => undefined);
  live.flush();
  const { reading } = live;

  it('that have the head\u2019s own moment lie on its curve, whatever is plotted', () => {
    const pitches = [-30, -12.25, 0, 7.5, 20];
    const points = pitches.map((pitchDeg) => ({
      pitchDeg,
      moment: reading.momentAt(pitchDeg),
      half: 0.001,
      speedRpm: 10_200,
    }));
    for (const chartQuantity of CHART_QUANTITIES) {
      const quantity = plottedQuantity(reading, { ...DEFAULT_SETTINGS, chartQuantity });
      const marks = measuredMarks(points, reading, quantity);
      if (quantity.kind === 'energy') expect(marks).toEqual([]);
      else
        marks.forEach(({ value, point }) => {
          const curve = plottedValue(reading, quantity, point.pitchDeg) ?? Number.NaN;
          // The lever is straight between samples half a degree apart: (0.5 deg)^2 / 8 of its bend, less than 1e-4 of it.
          expect(Math.abs(value - curve)).toBeLessThan(1e-4 * Math.abs(curve) + 1e-12);
        });
      if (quantity.kind !== 'energy') expect(marks).toHaveLength(pitches.length);
    }
  });

  it('reach the scale with both ends of their bars', () => {
    const quantity = plottedQuantity(reading, { ...DEFAULT_SETTINGS, chartQuantity: 'moment' });
    const point = { pitchDeg: 10, moment: 0.5, half: 0.1, speedRpm: 9000 };
    const [low, high] = markEnds(measuredMarks([point], reading, quantity), reading.curve.pitchDeg);
    const known = (values: Float64Array) => values.filter((value) => !Number.isNaN(value));
    expect(known(low)[0]).toBeCloseTo(0.4 * quantity.factor, 9);
    expect(known(high)[0]).toBeCloseTo(0.6 * quantity.factor, 9);
  });

  it('none are drawn where the rod reaches no further', () => {
    const quantity = plottedQuantity(reading, DEFAULT_SETTINGS);
    const point = { pitchDeg: 89, moment: 0.5, half: 0.1, speedRpm: 9000 };
    expect(measuredMarks([point], reading, quantity)).toEqual([]);
  });
});

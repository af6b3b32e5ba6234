import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { ChartData } from '../../../src/panels/chart/chartData';
import { plottedQuantity, plottedValue } from '../../../src/panels/chart/quantity';
import { createSession } from '../../../src/state/createSession';
import { CHART_QUANTITIES, DEFAULT_SETTINGS, INCH_UNITS } from '../../../src/state/settings';

function demoSession(name: string) {
  const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const design = parseDesign(readFileSync(file, 'utf8'));
  if (!design.ok) throw new Error(`demo design is not sound: ${JSON.stringify(design.error)}`);
  const session = createSession(design.value, (update) => update());
  session.live.flush();
  return session;
}

describe('the columns of the chart', () => {
  const session = demoSession('3-ordinary-bolt');
  const { reading } = session.live;

  it.each(CHART_QUANTITIES)(
    'have shares of the %s that add up to the total at every pitch',
    (kind) => {
      const quantity = plottedQuantity(reading, { ...DEFAULT_SETTINGS, chartQuantity: kind });
      expect(quantity.kind).toBe(kind);
      const data = new ChartData(reading.curve.pitchDeg);
      data.update(reading, quantity, true, 'others');
      expect(data.shares.filter((share) => share !== null).length).toBeGreaterThan(3);
      // Sums of a few terms of similar size: rounding of each, times their count.
      const largest = data.total.reduce((size, value) => Math.max(size, Math.abs(value) || 0), 0);
      let gaps = 0;
      data.total.forEach((total, i) => {
        let sum = 0;
        data.shares.forEach((share, k) => {
          if (share) sum += data.shareValues[k][i];
        });
        // Out of the rod's reach both are gaps.
        if (Number.isNaN(total)) gaps++;
        expect(Number.isNaN(sum)).toBe(Number.isNaN(total));
        if (!Number.isNaN(total)) expect(Math.abs(sum - total)).toBeLessThan(1e-10 * largest);
      });
      // The crank of the demo swings as far as 36 degrees of pitch.
      expect(gaps).toBeLessThan((kind === 'servo' ? 0.65 : 0.25) * data.total.length);
    },
  );

  it('follow the display units', () => {
    const settings = { ...DEFAULT_SETTINGS, units: INCH_UNITS };
    const quantity = plottedQuantity(reading, settings);
    expect(quantity.unit).toBe('ozf');
    // 1 ozf = 0.45359237 kg / 16 x 9.80665 m/s^2.
    const ounces = (reading.forceAt(20) as number) / ((0.45359237 / 16) * 9.80665);
    expect(plottedValue(reading, quantity, 20)).toBeCloseTo(ounces, 9);
  });

  it('hold the moment in place of the force where there is no arm', () => {
    const armless = demoSession('1-bare-grip');
    const arm = armless.store.getState().design.parts.find((part) => part.kind === 'pitchArm');
    armless.actions.removePart(arm?.id ?? '');
    armless.live.flush();
    const quantity = plottedQuantity(armless.live.reading, DEFAULT_SETTINGS);
    expect(quantity.kind).toBe('moment');
    expect(plottedValue(armless.live.reading, quantity, 10)).not.toBeNull();
  });
});

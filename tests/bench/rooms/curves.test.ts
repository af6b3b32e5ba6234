import { describe, expect, it } from 'vitest';
import { analyseBench } from '../../../src/bench/analysis';
import { exampleBench } from '../../../src/bench/examples';
import { FIRST_FIT } from '../../../src/bench/fitChoice';
import { runFromTable } from '../../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../../src/bench/readings/preview';
import { rungCurves, speedsOf } from '../../../src/bench/rooms/fit/curves';
import { zerosOf } from '../../../src/bench/splitRung';
import { degreesFromRadians } from '../../../src/engine/units';
import { demo } from '../heads';

const DESIGN = demo('4-turned-nut');

function wholeHead() {
  const run = exampleBench(DESIGN).runs.find(({ key }) => key === 'asDesigned');
  const preview = previewReadings(run?.text ?? '');
  if (!preview.ok) throw new Error('not read');
  const runs = [runFromTable('one', storedFrom('one', preview.value))];
  const set = { fit: FIRST_FIT, gaugeStepN: 0.1, gaugeLimitN: null, place: 'rod' } as const;
  const analysis = analyseBench(DESIGN, { ...set, pullsAlong: 1, runs }, null);
  const rung = analysis.rungs[0];
  if (!rung.fitted.ok) throw new Error('not fitted');
  return { rung, fitted: rung.fitted.value };
}

/** Straight between the samples. */
function at(xs: readonly number[], ys: readonly number[], x: number): number {
  const k = xs.findIndex((one) => one > x);
  return ys[k - 1] + ((x - xs[k - 1]) / (xs[k] - xs[k - 1])) * (ys[k] - ys[k - 1]);
}

describe('the curves over which readings are shown', () => {
  const { rung, fitted } = wholeHead();

  it('are at the two speeds of the example', () => {
    expect(speedsOf(rung).map((speed) => Math.round((speed * 30) / Math.PI))).toEqual([
      7140, 10_200,
    ]);
  });

  it('go through the middle of what the fit itself gives for pull and push, its zero taken off', () => {
    const [, speed] = speedsOf(rung);
    const curves = rungCurves(rung, fitted, speed);
    const { readings } = rung;
    let checked = 0;
    readings.forEach(({ pitch, sense, angularSpeed, zero }, i) => {
      const deg = degreesFromRadians(pitch);
      if (sense !== 1 || Math.abs(angularSpeed - speed) > 1 || Math.abs(deg) > 20.5) return;
      const j = readings.findIndex(
        (other) =>
          other.sense === -1 && other.pitch === pitch && other.angularSpeed === angularSpeed,
      );
      const middle = (fitted.fit.fitted[i] + fitted.fit.fitted[j]) / 2 - zerosOf(fitted.fit)[zero];
      // Samples 1.6 degrees apart: h^2/8 = 1e-4 times a bend of up to 100 N/rad^2 within 20 degrees.
      expect(Math.abs(at(curves.pitchDeg, curves.fit, deg) - middle), `${deg}`).toBeLessThan(0.01);
      checked++;
    });
    expect(checked).toBe(9);
    // The model itself is not there: the blade of the example is a tenth heavier.
    const gap = at(curves.pitchDeg, curves.model, 20) - at(curves.pitchDeg, curves.fit, 20);
    expect(Math.abs(gap)).toBeGreaterThan(0.5);
  });

  it('have the friction band about the model and the fit within its own band', () => {
    const curves = rungCurves(rung, fitted, speedsOf(rung)[1]);
    curves.pitchDeg.forEach((_, i) => {
      expect(curves.frictionLow[i]).toBeLessThan(curves.model[i]);
      expect(curves.frictionHigh[i]).toBeGreaterThan(curves.model[i]);
      expect(curves.fitLow[i]).toBeLessThanOrEqual(curves.fit[i]);
      expect(curves.fitHigh[i]).toBeGreaterThanOrEqual(curves.fit[i]);
    });
  });
});

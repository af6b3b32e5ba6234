import { describe, expect, it } from 'vitest';
import { analyseBench } from '../../src/bench/analysis';
import { EXAMPLE_ERRORS, exampleBench } from '../../src/bench/examples';
import { FIRST_FIT } from '../../src/bench/fitChoice';
import { type BenchRun, runFromTable } from '../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../src/bench/readings/preview';
import { splitRung, zerosOf } from '../../src/bench/splitRung';
import { demo } from './heads';

const DESIGN = demo('4-turned-nut');

/** A run at rest of the same head comes first and takes the first zero; it has no readings for the fit. */
const AT_REST: BenchRun = {
  id: 'rest',
  name: 'At rest',
  fitted: 'As designed',
  speedRpm: 0,
  rows: [
    { pitchDeg: 0, forceN: 0.5, travel: 'pull' },
    { pitchDeg: 0, forceN: -0.3, travel: 'push' },
  ],
};

function turning(): BenchRun {
  const made = exampleBench(DESIGN).runs.find(({ key }) => key === 'asDesigned');
  const preview = previewReadings(made?.text ?? '');
  if (!preview.ok) throw new Error('not read');
  return runFromTable('turning', storedFrom('turning', preview.value));
}

describe('push and pull split pitch by pitch', () => {
  it('take off the zero of the run that was read, whichever runs came before it', () => {
    const bench = { fit: FIRST_FIT, gaugeStepN: 0.1, gaugeLimitN: null } as const;
    const [rung] = analyseBench(
      DESIGN,
      { ...bench, place: 'rod', pullsAlong: 1, runs: [AT_REST, turning()] },
      null,
    ).rungs;
    if (!rung.fitted.ok) throw new Error('not fitted');
    const { fit } = rung.fitted.value;
    const zeros = zerosOf(fit);
    expect(rung.readings.every(({ zero }) => zero === 1)).toBe(true);
    const key = fit.estimates.find((one) => one.key.kind === 'zero');
    // The virtual gauge was off by this: its own truth, and four standard uncertainties about it.
    expect(Math.abs(zeros[1] - EXAMPLE_ERRORS.zeroN)).toBeLessThan(4 * (key?.sigma ?? 0));
    const { rows } = splitRung(rung, rung.fitted.value);
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) {
      const here = rung.readings.filter(
        ({ pitch, angularSpeed }) => pitch === row.pitch && angularSpeed === row.angularSpeed,
      );
      const pull = here.find(({ sense }) => sense === 1);
      const push = here.find(({ sense }) => sense === -1);
      if (!pull || !push) throw new Error('one way only');
      // By hand: the middle less the zero. Two sums of numbers up to 100 N round to 1e-13.
      expect(row.momentForce).toBeCloseTo((pull.force + push.force) / 2 - zeros[1], 12);
    }
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyseDesign } from '../../../src/design/analysis';
import { parseDesign } from '../../../src/design/file';
import { chartSummary } from '../../../src/panels/chart/chartSummary';
import { createSession } from '../../../src/state/createSession';
import { shownLoad, spokenPitch } from '../../../src/state/words/pitchText';
import { verdictText } from '../../../src/state/words/verdictText';

/** The demo head with its feathering axis moved 20 mm back, from where the rod reaches the slider at no pitch. */
function shifted() {
  const url = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const read = parseDesign(readFileSync(url, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return { ...read.value, rotor: { ...read.value.rotor, torqueOffsetMm: -20 } };
}

describe('a head whose push rod does not reach the slider', () => {
  const design = shifted();
  const session = createSession(design, (call) => call());
  const { reading } = session.live;
  const { units } = session.store.getState().settings;

  it('is not called neutral: its mass turns it, by hand 0.42 N m at 30 degrees', () => {
    // -W^2 [a (S_y sin t + S_z cos t) + A/2 sin 2t + P cos 2t], sums of the demo head by quadrature of each part (own script).
    const [W, a, t] = [(10200 * 2 * Math.PI) / 60, -0.02, Math.PI / 6];
    const [Sy, Sz, A, P] = [-1.845143528e-5, -2.697743857e-6, 3.159387e-7, 3.655171e-9];
    const byHand =
      -W *
      W *
      (a * (Sy * Math.sin(t) + Sz * Math.cos(t)) + (A / 2) * Math.sin(2 * t) + P * Math.cos(2 * t));
    const analysis = analyseDesign(design, { fromDeg: 30, toDeg: 30, stepDeg: 1 });
    if (!analysis.ok) throw new Error(analysis.error.path);
    expect(analysis.value.curve[0].inertialMoment_Nm).toBeCloseTo(byHand, 5);
    expect(byHand).toBeCloseTo(-0.422, 3);
    expect(analysis.value.warnings.join(' ')).not.toContain('neutral');
    expect(analysis.value.warnings).toContain(
      'The push rod does not reach the slider at flat pitch.',
    );
  });

  it('is told so in verdict, chart and at the pointer, and nowhere that it rests or that an arm is missing', () => {
    const summary = chartSummary(reading, units);
    expect(summary).toContain('The push rod does not reach the slider at flat pitch');
    expect(summary).not.toContain('Neutral');
    expect(summary).not.toContain('no further');
    expect(shownLoad(reading, 0, units)).toBe('out of reach');
    expect(spokenPitch(reading, 0, units)).toContain('out of the push rod');
    const text = verdictText(reading.verdict(), [], units);
    expect(text.line).toContain('does not reach');
    expect(text.overCentre).toBe('\u2013');
  });
});

it('a rotor that stands still is not called neutral, and its rod is told no force', () => {
  const still = shifted();
  const { live, store } = createSession(
    { ...still, rotor: { ...still.rotor, torqueOffsetMm: 0, speedRpm: 0 } },
    (call) => call(),
  );
  const summary = chartSummary(live.reading, store.getState().settings.units);
  expect(summary).toContain('stands still');
  expect(summary).not.toMatch(/Neutral|carries/);
});

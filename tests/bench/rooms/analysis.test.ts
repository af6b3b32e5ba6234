import { describe, expect, it } from 'vitest';
import { analyseBench, returningIn } from '../../../src/bench/analysis';
import { calibrate } from '../../../src/bench/calibrate';
import { exampleBench } from '../../../src/bench/examples';
import { FIRST_FIT } from '../../../src/bench/fitChoice';
import { type BenchRun, runFromTable } from '../../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../../src/bench/readings/preview';
import { fixesFor } from '../../../src/bench/rooms/correct/fixes';
import { createSession } from '../../../src/state/createSession';
import { demo } from '../heads';

const DESIGN = demo('4-turned-nut');
const BENCH = exampleBench(DESIGN);
const SET = {
  fit: FIRST_FIT,
  gaugeStepN: 0.1,
  gaugeLimitN: null,
  place: 'rod',
  pullsAlong: 1,
} as const;

function exampleRuns(): BenchRun[] {
  return BENCH.runs.map(({ key, text }) => {
    const preview = previewReadings(text);
    if (!preview.ok) throw new Error(key);
    return runFromTable(key, storedFrom(key, preview.value));
  });
}

describe('the runs of a bench against its design', () => {
  const analysis = analyseBench(DESIGN, { ...SET, runs: exampleRuns() }, null);

  it('give each rung the truth that the virtual gauge read, within its uncertainty', () => {
    expect(analysis.rungs.map(({ rung }) => rung.key)).toEqual([
      'bare',
      'bolt',
      'ordinary',
      'asDesigned',
    ]);
    for (const { rung, fitted } of analysis.rungs) {
      const truth = BENCH.runs.find(({ key }) => key === rung.key)?.truth;
      const measured = fitted.ok ? fitted.value.measured : null;
      if (!truth || !measured) throw new Error(rung.key);
      // Eight numbers: beyond four standard uncertainties one bench in 2,000, and the seed is fixed.
      const sigmas = [Math.sqrt(measured.covariance[0]), Math.sqrt(measured.covariance[3])];
      expect(Math.abs(measured.spread - truth.spread), rung.key).toBeLessThan(4 * sigmas[0]);
      expect(Math.abs(measured.product - truth.product), rung.key).toBeLessThan(4 * sigmas[1]);
    }
    expect(analysis.rest?.drag.length).toBeGreaterThan(5);
    expect(analysis.faults).toEqual([]);
    expect(analysis.assumed).toEqual([]);
  });

  it('find the step of the ladder at which the blade was made a tenth heavier', () => {
    const { ladder } = analysis;
    const blade = ladder.find(({ added }) => added.includes('blade'));
    expect(blade?.agreement.agrees).toBe(false);
    expect(ladder.find(({ to }) => to === 'bare')?.agreement.agrees).toBe(true);
  });

  it('offer first the blade at the mass that was hidden, and the offer leaves nothing to correct', () => {
    const rung = analysis.rungs.at(-1);
    const deficit = rung?.fitted.ok ? rung.fitted.value.deficit : null;
    if (!rung?.fitted.ok || !deficit) throw new Error('no deficit');
    const { model } = rung.fitted.value;
    const place = { stationMm: 45, radiusMm: 10 };
    const fixes = fixesFor(DESIGN, deficit, place, { lump: 'Lump', added: 'Weight' }, model.spread);
    const blade = fixes.masses.find(({ part }) => part === 'blade');
    if (!blade) throw new Error('the blade is not offered');
    expect(Math.abs(blade.factor - 1.1)).toBeLessThan(4 * blade.factorSigma);
    const again = analyseBench(blade.design, { ...SET, runs: exampleRuns() }, null);
    const whole = again.rungs.at(-1);
    const left = whole?.fitted.ok ? whole.fitted.value.deficit : null;
    expect(Math.abs(left?.spread ?? 1)).toBeLessThan(
      2 * Math.sqrt(left?.covariance[0] ?? Number.NaN),
    );
  });

  it('hold the air to be what brings the force back, as the design counts it', () => {
    const whole = analysis.rungs.at(-1);
    if (!whole) throw new Error('not fitted');
    const found = returningIn(whole, analysis, BENCH.errors.pitchSigmaDeg);
    expect(found).toMatchObject({ kind: 'returns', looks: 'aerodynamic', restoring: true });
  });

  it('say of a run why it takes no part', () => {
    const rows = [{ pitchDeg: 0, forceN: 1, travel: 'pull' }] as const;
    const runs: BenchRun[] = [
      { id: 'a', name: 'a', fitted: 'something else', speedRpm: 9000, rows },
      { id: 'b', name: 'b', speedRpm: 9000, rows },
    ];
    const rod = analyseBench(DESIGN, { ...SET, runs }, null);
    expect(rod.faults.map(({ fault }) => fault)).toEqual([
      { kind: 'noRung', fitted: 'something else' },
    ]);
    expect(rod.assumed.map(({ id }) => id)).toEqual(['b']);
    const arm = analyseBench(DESIGN, { ...SET, place: 'arm', runs: [runs[1]] }, null);
    expect(arm.faults.map(({ fault }) => fault)).toEqual([{ kind: 'noArm' }]);
    expect(arm.rungs).toEqual([]);
  });

  it('of a log that only names the drag count as read at rest', () => {
    const rows = [
      { pitchDeg: 0, forceN: 0.5, travel: 'pull' },
      { pitchDeg: 0, forceN: -0.3, travel: 'push' },
    ] as const;
    const runs = [{ id: 'a', name: 'a', fitted: 'Drag at rest', rows }];
    const { rest } = analyseBench(DESIGN, { ...SET, runs }, null);
    // Half of pull less push, and their middle.
    expect(rest?.drag[0].force).toBeCloseTo(0.4, 12);
    expect(rest?.zero?.force).toBeCloseTo(0.1, 12);
  });
});

describe('the scale of the control', () => {
  const { reading } = createSession(DESIGN, () => undefined).live;

  it('goes straight through pairs on a line', () => {
    const pairs = [-10, 0, 5].map((scale) => ({ scale, pitchDeg: 2 * scale + 3 }));
    const made = calibrate({ pairs, scaleUnit: 'div', calibration: 'line' }, reading);
    if (!made.ok) throw new Error(made.error.kind);
    // 2 x 7 + 3 degrees.
    expect(made.value.pitchAt(7)).toBeCloseTo((17 * Math.PI) / 180, 12);
  });

  it('goes as the linkage turns, a scale of millimetres turned round and off its zero included', () => {
    const { linkage } = reading;
    if (!linkage) throw new Error('no linkage');
    const pairs = [-30, -15, 0, 10, 25].map((pitchDeg) => ({
      scale: 4 - 1000 * linkage.travelAt(pitchDeg),
      pitchDeg,
    }));
    const made = calibrate({ pairs, scaleUnit: 'mm', calibration: 'linkage' }, reading);
    if (!made.ok) throw new Error(made.error.kind);
    // The curve is straight between samples half a degree apart: h^2/8 = 1e-5 times its bend by pitch, which is
    // about one; a bend of three is allowed.
    for (const left of made.value.residual) expect(Math.abs(left)).toBeLessThan(3e-5);
    const line = calibrate({ pairs, scaleUnit: 'mm', calibration: 'line' }, reading);
    if (!line.ok) throw new Error(line.error.kind);
    expect(Math.max(...line.value.residual.map(Math.abs))).toBeGreaterThan(3e-4);
  });
});

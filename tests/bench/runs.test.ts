import { describe, expect, it } from 'vitest';
import { fitHead } from '../../src/bench/fitRung';
import type { BenchRun } from '../../src/bench/readings/benchSection';
import { restDrag } from '../../src/bench/restDrag';
import { buildRungs } from '../../src/bench/rungs';
import { benchReadings, readingsOfRun, rungOfRun } from '../../src/bench/runs';
import { benchSetup, designDrag, senseOf } from '../../src/bench/setup';
import { lineCalibration } from '../../src/engine/identify/calibration';
import { radiansFromDegrees } from '../../src/engine/units';
import { demo, gaugeHead } from './heads';

const DESIGN = demo('4-turned-nut');
const GAUGE = { step: 0, noise: 0.01 };

function readingsOf(run: BenchRun) {
  const read = readingsOfRun(run);
  if (!read.ok) throw new Error('not read');
  return read.value;
}

/** Rows as a gauge without noise would give them: force and friction of the model, pulling and pushing. */
function exactRun(pullsAlong: 1 | -1): BenchRun {
  const head = gaugeHead(DESIGN, { kind: 'slider', pullsAlong });
  const rows = [-20, -12, -5, 0, 5, 12, 20].flatMap((pitchDeg) => {
    const pitch = radiansFromDegrees(pitchDeg);
    const force = head.force(pitch, head.designSpeed);
    const friction = head.frictionForce(pitch, head.designSpeed);
    return [
      { pitchDeg, forceN: force + friction, travel: 'pull' as const },
      { pitchDeg, forceN: force - friction, travel: 'push' as const },
    ];
  });
  return { id: 'run', name: 'run', speedRpm: 10_200, rows };
}

function fitOf(run: BenchRun, pullsAlong: 1 | -1) {
  const head = gaugeHead(DESIGN, { kind: 'slider', pullsAlong });
  const { readings } = benchReadings(readingsOf(run), run, { head, zero: 0 });
  const fitted = fitHead(head, readings, GAUGE, benchSetup(head));
  if (!fitted.ok || !fitted.value.measured) throw new Error('no fit');
  return fitted.value;
}

describe('the readings of a run', () => {
  it('give the same moment and friction when the gauge is on the other side, all signs mirrored', () => {
    const [one, other] = [fitOf(exactRun(1), 1), fitOf(exactRun(-1), -1)];
    // Mirrored by hand: the force changes its sign, and what was a pull is a push.
    const rows = (exactRun(1).rows ?? []).map((row) => ({
      ...row,
      forceN: -row.forceN,
      travel: row.travel === 'pull' ? ('push' as const) : ('pull' as const),
    }));
    const byHand = fitOf({ ...exactRun(1), rows }, -1);
    for (const mirrored of [other, byHand]) {
      // Rounding of a well-conditioned fit.
      expect(mirrored.measured?.spread).toBeCloseTo(one.measured?.spread ?? Number.NaN, 18);
      expect(mirrored.measured?.product).toBeCloseTo(one.measured?.product ?? Number.NaN, 18);
      const friction = (fit: typeof one) =>
        fit.fit.estimates.find(({ key }) => key.kind === 'friction')?.value ?? Number.NaN;
      expect(friction(mirrored)).toBeCloseTo(friction(one), 10);
    }
    // Read with the signs of the wrong side it is another head.
    const reversed = fitOf({ ...exactRun(1), rows }, 1);
    const { spread = 0, covariance = [0, 0, 0, 0] } = reversed.measured ?? {};
    expect(Math.abs(spread - one.model.spread)).toBeGreaterThan(10 * Math.sqrt(covariance[0]));
  });

  it('give the model back from its own forces', () => {
    const { measured, model, fit } = fitOf(exactRun(1), 1);
    // Friction goes with the load, which turns a little with pitch; push and pull are symmetric, so that A and P do not feel it.
    expect(measured?.spread).toBeCloseTo(model.spread, 14);
    expect(measured?.product).toBeCloseTo(model.product, 14);
    const zero = fit.estimates.find(({ key }) => key.kind === 'zero');
    expect(Math.abs(zero?.value ?? 1)).toBeLessThan(1e-9);
  });

  it('tell pulling from pushing by the pitch where the run says up and down', () => {
    // In the demo a positive moment puts the rod in tension, so a pull lowers the leading edge.
    const head = gaugeHead(DESIGN);
    const per = head.forcePerMoment(radiansFromDegrees(5));
    expect(per).toBeGreaterThan(0);
    expect(senseOf('down', per)).toBe(1);
    expect(senseOf('up', per)).toBe(-1);
    expect(senseOf('up', -per)).toBe(1);
    expect(senseOf('held', per)).toBe(0);
    expect(senseOf(null, per)).toBeNull();
  });

  it('take pitch from a scale through its calibration, and say where it was not calibrated', () => {
    const pairs = [-10, 0, 10].map((scale) => ({
      scale: scale / 1000,
      pitch: radiansFromDegrees(2 * scale),
    }));
    const calibration = lineCalibration(pairs);
    if (!calibration.ok) throw new Error('no line');
    const run: BenchRun = {
      id: 'scaled',
      name: 'scaled',
      speedRpm: 9000,
      rows: [
        { scaleMm: 5, forceN: 1, travel: 'pull' },
        { scaleMm: 12, forceN: 1, travel: 'push' },
      ],
    };
    const head = gaugeHead(DESIGN);
    const context = { head, zero: 0, calibration: calibration.value };
    const read = benchReadings(readingsOf(run), run, context);
    expect(read.readings[0].pitch).toBeCloseTo(radiansFromDegrees(10), 12);
    expect(read.beyondCalibration).toEqual([1]);
    const without = benchReadings(readingsOf(run), run, { head, zero: 0 });
    expect(without.readings).toEqual([]);
    expect(without.leftOut.map(({ why }) => why)).toEqual(['noCalibration', 'noCalibration']);
  });

  it('leave out, with the reason, what says nothing, and keep what was set aside', () => {
    const rows = [0, 10, 89.9].map((pitchDeg) => ({ pitchDeg, forceN: 1 }));
    const head = gaugeHead(DESIGN);
    const run: BenchRun = { id: 'a', name: 'a', speedRpm: 9000, rows, setAside: [0] };
    const read = benchReadings(readingsOf(run), run, { head, zero: 0 });
    expect(read.leftOut[0]).toEqual({ place: 0, why: 'setAside' });
    expect(read.places).toContain(1);
    expect(read.unsaid).toContain(1);
    const { speedRpm: _, ...slow } = run;
    const unknown = benchReadings(readingsOf(slow), slow, { head, zero: 0 });
    expect(unknown.leftOut.slice(1).map(({ why }) => why)).toEqual(['noSpeed', 'noSpeed']);
  });

  it('leave out what was read at the very end of the linkage, where a pitch a little further on has no force', () => {
    const head = gaugeHead(DESIGN);
    // The end by halving: there is a lever at the one and none at the other.
    let [low, high] = [0, 89.9];
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2;
      if (Number.isFinite(head.forcePerMoment(radiansFromDegrees(middle)))) low = middle;
      else high = middle;
    }
    expect(head.forcePerMoment(radiansFromDegrees(high))).toBeNaN();
    const rows = [-10, 0, 10, low].flatMap((pitchDeg) =>
      (['pull', 'push'] as const).map((travel) => ({ pitchDeg, forceN: 1, travel })),
    );
    const run: BenchRun = { id: 'a', name: 'a', speedRpm: 9000, rows };
    const read = benchReadings(readingsOf(run), run, { head, zero: 0 });
    expect(read.leftOut).toEqual([6, 7].map((place) => ({ place, why: 'noLever' })));
    expect(fitHead(head, read.readings, GAUGE, benchSetup(head)).ok).toBe(true);
  });

  it('belong to the rung that they name or whose parts were on', () => {
    const { rungs } = buildRungs(DESIGN);
    expect(rungOfRun({ fitted: ' bare GRIP' }, rungs)?.key).toBe('bare');
    expect(rungOfRun({ fitted: 'ordinary' }, rungs)?.key).toBe('ordinary');
    expect(rungOfRun({ parts: [...rungs[1].on].toReversed() }, rungs)?.key).toBe('bare');
    expect(rungOfRun({ fitted: 'something else' }, rungs)).toBeNull();
  });
});

describe('drag at rest', () => {
  it('is half of pull less push, their middle the zero of the gauge', () => {
    const rest = restDrag(
      [
        { travel: 0, force: 0.5, sense: 1, place: 0 },
        { travel: 0, force: -0.3, sense: -1, place: 1 },
        { travel: 0.003, force: 0.7, sense: 1, place: 2 },
        { travel: 0.006, force: 9, sense: 0, place: 3 },
      ],
      { step: 0.1, noise: 0 },
    );
    expect(rest.zero?.force).toBeCloseTo(0.1, 12);
    expect(rest.drag.map(({ force }) => force)).toEqual([0.4, expect.closeTo(0.6, 12)]);
    // Half the difference of two readings of a step of 0.1: 0.1 / sqrt(12) / sqrt(2).
    expect(rest.drag[0].sigma).toBeCloseTo(0.0204124, 6);
    expect(rest.unused).toEqual([3]);
  });

  it('of the design is told at the slider as written and at the rod of one grip as its share', () => {
    const written = DESIGN.friction?.drag?.map(({ forceN }) => forceN) ?? [];
    const slider = designDrag(gaugeHead(DESIGN, { kind: 'slider' }));
    expect(slider.map(({ force }) => force)).toEqual(written);
    const rod = designDrag(gaugeHead(DESIGN));
    // Two grips; the rod of 16 mm leans by no more than (19 - 15 cos 43) / 16, the rows reaching to 43 degrees: 30 degrees.
    rod.forEach(({ force }, k) => {
      expect(force).toBeGreaterThanOrEqual(written[k] / 2);
      expect(force).toBeLessThan(written[k] / 2 / Math.cos(radiansFromDegrees(30)));
    });
    expect(designDrag(gaugeHead(DESIGN, { kind: 'arm', arm: 0.02 }))).toEqual([]);
  });
});

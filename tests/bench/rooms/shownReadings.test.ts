import { describe, expect, it } from 'vitest';
import { analyseBench } from '../../../src/bench/analysis';
import { chartPoints } from '../../../src/bench/chartPoints';
import { exampleBench } from '../../../src/bench/examples';
import { FIRST_FIT } from '../../../src/bench/fitChoice';
import { type BenchRun, runFromTable } from '../../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../../src/bench/readings/preview';
import { shownReadings } from '../../../src/bench/rooms/fit/shownReadings';
import {
  nearestPoint,
  PLOT_EDGES,
  type PlotPoint,
  placedPoints,
  plotScene,
} from '../../../src/bench/rooms/plots/plotScene';
import { radiansFromDegrees } from '../../../src/engine/units';
import { demo } from '../heads';

const DESIGN = demo('4-turned-nut');
const BENCH = exampleBench(DESIGN);

function wholeRun(): BenchRun {
  const made = BENCH.runs.find(({ key }) => key === 'asDesigned');
  const preview = previewReadings(made?.text ?? '');
  if (!preview.ok) throw new Error('not read');
  return runFromTable('one', storedFrom('one', preview.value));
}

function analysed(run: BenchRun) {
  const set = { fit: FIRST_FIT, gaugeStepN: 0.1, gaugeLimitN: null, place: 'rod' } as const;
  const analysis = analyseBench(DESIGN, { ...set, pullsAlong: 1, runs: [run] }, null);
  const [rung] = analysis.rungs;
  if (!rung.fitted.ok) throw new Error('not fitted');
  const context = { calibration: null, air: FIRST_FIT.air };
  return { analysis, rung, shown: shownReadings(rung, rung.fitted.value, context) };
}

describe('the readings that plots show', () => {
  const all = analysed(wholeRun());
  const aside = [3, 10];
  const less = analysed({ ...wholeRun(), setAside: aside });

  it('hold what was set aside, marked, at the pitch and with the force that it was read with', () => {
    expect(all.shown.every(({ state }) => state !== 'aside')).toBe(true);
    const gone = less.shown.filter(({ state }) => state === 'aside');
    expect(gone.map(({ origin }) => origin.place)).toEqual(aside);
    expect(less.shown).toHaveLength(all.shown.length);
    for (const { origin, reading } of gone) {
      const before = all.shown.find((one) => one.origin.place === origin.place);
      expect(reading.pitch).toBe(before?.reading.pitch);
      expect(reading.force).toBe(before?.reading.force);
    }
  });

  it('say of one set aside about what they said of it while it counted', () => {
    for (const { origin, standardised, state } of less.shown) {
      if (state !== 'aside') continue;
      const before = all.shown.find((one) => one.origin.place === origin.place);
      // Two of 52 readings carry little of the fit: the residual grows by 1 / (1 - leverage), less than a third here, and
      // the noise learnt without them changes its unit by a few hundredths.
      const was = before?.standardised ?? Number.NaN;
      expect(Math.abs(standardised - was)).toBeLessThan(0.1 + Math.abs(was) / 3);
    }
  });
});

describe('the points over the chart', () => {
  it('are the true head\u2019s moment at the design\u2019s speed, whichever speed they were read at', () => {
    const { analysis, rung } = analysed(wholeRun());
    const points = chartPoints(analysis);
    const { head } = rung;
    const truth = BENCH.runs.find(({ key }) => key === 'asDesigned')?.truth;
    if (!truth) throw new Error('no truth');
    const model = head.totals;
    expect(new Set(points.map(({ speedRpm }) => Math.round(speedRpm)))).toEqual(
      new Set([7140, 10_200]),
    );
    const outside = points.filter(({ pitchDeg, moment, half }) => {
      const pitch = radiansFromDegrees(pitchDeg);
      // By hand: M = -W^2 ((J_yy - J_zz)/2 sin 2t + J_yz cos 2t), for what the model lacks of the truth.
      const lacks =
        ((truth.spread - model.spread) / 2) * Math.sin(2 * pitch) +
        (truth.product - model.product) * Math.cos(2 * pitch);
      const whole = head.moment(pitch, head.designSpeed) - head.designSpeed ** 2 * lacks;
      // The pitch setting and the fitted zero are not in the bar: they may add as much again.
      return Math.abs(moment - whole) > 2 * half;
    });
    // 26 points, one in twenty beyond its own bar.
    expect(points).toHaveLength(26);
    expect(outside.length).toBeLessThan(3);
  });

  it('leave out a pitch of which everything was set aside', () => {
    const { rung } = analysed(wholeRun());
    const [{ pitch, angularSpeed }] = rung.readings;
    const setAside = rung.origins.flatMap(({ place }, i) => {
      const one = rung.readings[i];
      return one.pitch === pitch && one.angularSpeed === angularSpeed ? [place] : [];
    });
    const { analysis } = analysed({ ...wholeRun(), setAside });
    expect(setAside.length).toBeGreaterThan(1);
    expect(chartPoints(analysis)).toHaveLength(25);
  });
});

describe('a plot of readings', () => {
  const point = (id: string, x: number, y: number, state: PlotPoint['state']): PlotPoint => ({
    id,
    x,
    y,
    kind: 'pull',
    state,
    text: id,
  });
  const points = [
    point('b', 10, 1, 'counts'),
    point('a', -10, -1, 'counts'),
    point('wild', 0, 500, 'aside'),
  ];
  const scene = plotScene({ x: [-12, 12], curves: [], bands: [], points }, 400);
  const placed = placedPoints(points, scene);

  it('steps from left to right, and draws at its edge what lies far beyond it, saying so', () => {
    expect(placed.map(({ point: { id } }) => id)).toEqual(['a', 'wild', 'b']);
    expect(placed.map(({ beyond }) => beyond)).toEqual([0, -1, 0]);
    expect(placed[1].y).toBeGreaterThanOrEqual(PLOT_EDGES.top);
    // The two that count still fill a good part of the height.
    expect(placed[0].y - placed[2].y).toBeGreaterThan(50);
  });

  it('gives the point that is meant, and none far from all', () => {
    const [a] = placed;
    expect(nearestPoint(placed, a.x + 5, a.y - 5)?.point.id).toBe('a');
    expect(nearestPoint(placed, a.x + 60, a.y)).toBeNull();
  });
});

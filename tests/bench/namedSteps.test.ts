import { describe, expect, it } from 'vitest';
import {
  findLoadSteps,
  lacksPlace,
  namedReadings,
  pitchesForSteps,
  travelsOf,
} from '../../src/bench/namedSteps';
import { type BenchRun, runFromTable } from '../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../src/bench/readings/preview';
import {
  firstNaming,
  namedInOrder,
  namedSteps,
  withPitches,
} from '../../src/bench/rooms/readings/stepsDraft';
import { countedReadings, runReadings } from '../../src/bench/runReadings';
import { checkBench } from '../../src/design/checkBench';
import { radiansFromDegrees } from '../../src/engine/units';

/** What was logged: up through three pitches and down again, 3 s each, 20 samples a second, a jerk after each change. */
const LEVELS = [4.1, 0.2, -3.8, -4.4, -0.4, 3.5];
const PITCHES = [-10, 0, 10, 10, 0, -10];
const PER = 60;

function log(): string {
  const rows = LEVELS.flatMap((level, step) =>
    Array.from({ length: PER }, (_, k) => {
      const jerk = k < 6 ? 1.5 : 0;
      // A flicker of the last digit, as a gauge of 0.05 N has it.
      const flicker = k % 7 === 3 ? 0.05 : 0;
      return `${((step * PER + k) / 20).toFixed(2)},${(level + jerk + flicker).toFixed(2)}`;
    }),
  );
  return `time [s],force [N]\n${rows.join('\n')}\n`;
}

function takenRun(): BenchRun {
  const preview = previewReadings(log());
  if (!preview.ok) throw new Error('not read');
  return { ...runFromTable('log', storedFrom('log', preview.value)), gaugeStepN: 0.05 };
}

function readingsOf(run: BenchRun) {
  const read = runReadings(run);
  if (!read.ok) throw new Error('not read');
  return read.value;
}

describe('a log of time and force alone', () => {
  it('has its steps found where the force stood still', () => {
    const readings = readingsOf(takenRun());
    expect(lacksPlace(readings)).toBe(true);
    const found = findLoadSteps(readings, { smallest: 0.2, shortest: 1, settling: 0.5 });
    // The levels that were written into the log; the flicker stays below the median.
    expect(found.map(({ level }) => level)).toEqual(LEVELS);
    for (const [k, { from, to }] of found.entries()) {
      expect(from).toBeGreaterThanOrEqual(k * PER);
      expect(to).toBeLessThanOrEqual((k + 1) * PER);
    }
  });

  it('gives a reading a step at the pitches that the plan has, and leaves the log as it came', () => {
    const run = takenRun();
    const readings = readingsOf(run);
    const draft = firstNaming(run, readings, 0.14);
    const pitches = pitchesForSteps(draft.steps.length, { pitchesDeg: [-10, 0, 10] });
    const { steps, wrong } = namedSteps(withPitches(draft, pitches ?? []));
    expect(wrong).toEqual([]);
    const named: BenchRun = { ...run, steps };
    const { readings: counted, steady } = countedReadings(named);
    if (!counted.ok) throw new Error('not counted');
    expect(counted.value.map(({ force }) => force)).toEqual(LEVELS);
    expect(counted.value.map(({ pitch }) => pitch)).toEqual(PITCHES.map(radiansFromDegrees));
    expect(counted.value.map(({ travel }) => travel)).toEqual([
      'up',
      'up',
      'up',
      'down',
      'down',
      'down',
    ]);
    expect(steady?.of).toBe(LEVELS.length * PER);
    expect(named.table).toBe(run.table);
    expect(named.table?.text).toBe(log());
    expect(checkBench({ runs: [named] })).toBeNull();
    // Without steps nothing is made up: the samples stay without a pitch.
    expect(countedReadings(run).steady).toBeNull();
  });

  it('asks for every pitch that is missing, and for none of a step that does not count', () => {
    const run = takenRun();
    const draft = firstNaming(run, readingsOf(run), 0.14);
    expect(namedSteps(draft).wrong).toEqual([1, 2, 3, 4, 5, 6]);
    const steps = draft.steps.map((step, k) => ({
      ...step,
      pitch: k < 2 ? '5' : 'x',
      counts: k < 3,
    }));
    expect(namedSteps({ ...draft, steps }).wrong).toEqual([3]);
  });

  it('takes the plan both ways, with its last pitch once or twice, or one way; nothing else', () => {
    const plan = { pitchesDeg: [-10, 0, 10] };
    const degs = (count: number) => pitchesForSteps(count, plan)?.map(({ pitchDeg }) => pitchDeg);
    expect(degs(3)).toEqual([-10, 0, 10]);
    expect(degs(5)).toEqual([-10, 0, 10, 0, -10]);
    expect(degs(6)).toEqual(PITCHES);
    expect(degs(4)).toBeUndefined();
  });

  it('tells the way from the pitch before, at a turn from the pitch after, and nothing of the first', () => {
    expect(travelsOf(PITCHES)).toEqual([null, 'up', 'up', 'down', 'down', 'down']);
    expect(namedInOrder([5, 5]).map(({ travel }) => travel)).toEqual([null, null]);
  });

  it('gives nothing for a step beyond the log', () => {
    const readings = readingsOf(takenRun());
    const steps = [{ from: 0, to: readings.length + 1, pitchDeg: 0 }];
    expect(namedReadings(readings, steps).readings).toEqual([]);
    expect(
      checkBench({ runs: [{ id: 'a', name: '', steps: [{ from: 5, to: 5, pitchDeg: 0 }] }] }),
    ).toMatchObject({
      path: 'bench.runs[0].steps[0].to',
    });
  });
});

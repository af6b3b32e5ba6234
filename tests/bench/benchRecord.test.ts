import { describe, expect, it } from 'vitest';
import { exampleFiles } from '../../src/bench/examples';
import { type BenchRun, runFromTable, tableOfRun } from '../../src/bench/readings/benchSection';
import { previewReadings, storedFrom } from '../../src/bench/readings/preview';
import { checkBench } from '../../src/design/checkBench';
import { benchSchema } from '../../src/design/schemaBench';
import { type BenchRunRecord } from '../../src/design/sections/bench';
import { demo } from './heads';

/** The compiler's own check that a run of the bench is one of the document. */
const asRecord = (run: BenchRun): BenchRunRecord => run;

function exampleRuns(): BenchRunRecord[] {
  return exampleFiles(demo('4-turned-nut')).map(({ file, text }, k) => {
    const preview = previewReadings(text);
    if (!preview.ok) throw new Error(file);
    return asRecord(runFromTable(`run-${k}`, storedFrom(file, preview.value)));
  });
}

const ROW = { pitchDeg: 10, forceN: 1.5, travel: 'pull' } as const;
const HAND: BenchRunRecord = { id: 'hand', name: 'By hand', speedRpm: 9000, rows: [ROW] };

describe('what a design keeps of the bench', () => {
  it('takes the example runs as they came and gives them back unaltered', () => {
    const bench = {
      place: 'rod',
      gaugeStepN: 0.1,
      calibration: { kind: 'line', scaleUnit: 'mm', pairs: [{ scale: 1, pitchDeg: 2 }] },
      runs: [...exampleRuns(), HAND],
    } as const;
    const read = benchSchema.safeParse(JSON.parse(JSON.stringify(bench)));
    expect(read.success).toBe(true);
    expect(read.data).toEqual(bench);
    expect(checkBench(bench)).toBeNull();
    const stored = tableOfRun(bench.runs[1] as BenchRun);
    expect(stored.ok && stored.value.text).toBe(exampleFiles(demo('4-turned-nut'))[1].text);
  });

  it('names field and limit of what is wrong', () => {
    const faults = [
      [{ runs: [HAND, HAND] }, 'bench.runs[1].id', 'repeatedId'],
      [{ runs: [{ ...HAND, id: '' }] }, 'bench.runs[0].id', 'emptyText'],
      [{ runs: [{ ...HAND, speedRpm: -1 }] }, 'bench.runs[0].speedRpm', 'tooSmall'],
      [{ runs: [{ ...HAND, rows: [{ forceN: 1 }] }] }, 'bench.runs[0].rows[0].pitchDeg', 'missing'],
      [
        { runs: [{ ...HAND, rows: [{ ...ROW, forceN: 2e6 }] }] },
        'bench.runs[0].rows[0].forceN',
        'tooLarge',
      ],
      [{ runs: [{ ...exampleRuns()[0], rows: [ROW] }] }, 'bench.runs[0].rows', 'unsound'],
      [{ runs: [{ ...HAND, note: 'x'.repeat(4001) }] }, 'bench.runs[0].note', 'textTooLong'],
      [{ gaugeStepN: Number.NaN }, 'bench.gaugeStepN', 'notFinite'],
    ] as const;
    for (const [bench, path, code] of faults) {
      expect(checkBench(bench)).toMatchObject({ path, reason: { code } });
    }
    expect(checkBench(undefined)).toBeNull();
  });

  it('counts the tables with what the parts fill of a file, escapes and all', () => {
    const [run] = exampleRuns();
    const length = JSON.stringify(run.table?.text).length;
    expect(checkBench({ runs: [run] }, 1000, 1000 + length)).toBeNull();
    expect(checkBench({ runs: [run] }, 1001, 1000 + length)).toMatchObject({
      path: 'bench.runs',
      reason: { code: 'tooLong', length, limit: length - 1 },
    });
  });

  it('is refused by the schema where the form is wrong', () => {
    for (const bench of [
      { place: 'elsewhere' },
      { runs: [{ ...HAND, more: 1 }] },
      { runs: [{ name: 'no id' }] },
      { pullsAlong: 0 },
      { calibration: { kind: 'line', scaleUnit: 'mm' } },
    ]) {
      expect(benchSchema.safeParse(bench).success).toBe(false);
    }
  });
});

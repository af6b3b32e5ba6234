import type { Design } from '../design/design';
import type { HeadReading } from '../state/reading';
import { analyseBench, type BenchAnalysis } from './analysis';
import { calibrate } from './calibrate';
import type { BenchState } from './deskTypes';
import { type ApartRun, runsOfHead } from './headRuns';

/** What the runs say of the head on the stage, and the runs that were left out of it. */
export interface HeadAnalysis extends BenchAnalysis {
  readonly apart: readonly ApartRun[];
}

type Asked = Pick<
  BenchState,
  | 'runs'
  | 'fit'
  | 'place'
  | 'pullsAlong'
  | 'gaugeStepN'
  | 'gaugeLimitN'
  | 'pairs'
  | 'scaleUnit'
  | 'calibration'
>;

let last: { readonly of: readonly unknown[]; readonly said: HeadAnalysis } | null = null;

/**
 * The bench's runs against a design. The last answer is kept: rooms and chart that ask the same share it. `reading` is that
 * of the same design: a scale is calibrated along its linkage.
 */
export function headAnalysis(design: Design, asked: Asked, reading: HeadReading): HeadAnalysis {
  const { runs, fit, place, pullsAlong, gaugeStepN, gaugeLimitN } = asked;
  const { pairs, scaleUnit, calibration } = asked;
  // What the design keeps of the bench is the desk's own, and no part of the head.
  const { bench: _, ...head } = design;
  const of = [
    runs,
    fit,
    place,
    pullsAlong,
    gaugeStepN,
    gaugeLimitN,
    pairs,
    scaleUnit,
    calibration,
    ...Object.values(head),
  ];
  if (last?.of.length === of.length && last.of.every((one, k) => one === of[k])) return last.said;
  const scale = calibrate({ pairs, scaleUnit, calibration }, reading);
  const { counted, apart } = runsOfHead(runs, design);
  const analysis = analyseBench(
    design,
    { runs: counted, fit, place, pullsAlong, gaugeStepN, gaugeLimitN },
    scale.ok ? scale.value : null,
  );
  last = { of, said: { ...analysis, apart } };
  return last.said;
}

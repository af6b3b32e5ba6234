import type { Design } from '../design/design';
import type { BenchSetup } from '../engine/identify/benchDesign';
import type { BenchFault } from '../engine/identify/benchFitTypes';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import type { Calibration } from '../engine/identify/calibration';
import { flagOutliers, type OutlierFlag } from '../engine/identify/outliers';
import type { Result } from '../engine/result';
import { radiansFromDegrees } from '../engine/units';
import type { BenchState } from './deskTypes';
import { type FittedHead, fitHead } from './fitRung';
import { GaugeHead, type GaugeHeadFault } from './gaugeHead';
import { gaugePlace } from './gaugePlace';
import { type LadderStep, ladderSteps } from './ladder';
import type { BenchRun } from './readings/benchSection';
import { type RestReading, type RestResult, restDrag } from './restDrag';
import { type ReturningForce, returningForce } from './returningForce';
import { buildRungs, type Rung } from './rungs';
import { countedReadings } from './runReadings';
import { benchReadings, type RunReadings, rungOfRun, saysFitted } from './runs';
import { benchSetup } from './setup';
import { sharedErrors } from './sharedErrors';

/** Where a reading of a fit came from. */
export interface Origin {
  readonly run: string;
  /** Counted from 0 in the run's readings. */
  readonly place: number;
}

/** A run of a rung: the head with the gauge on, and which zero of the gauge holds. */
export interface RungRun {
  readonly run: BenchRun;
  readonly head: GaugeHead;
  readonly zero: number;
  readonly read: RunReadings;
}

/** A step of the ladder with the runs that were of it, and what they say. */
export interface RungAnalysis {
  readonly rung: Rung;
  readonly head: GaugeHead;
  readonly runs: readonly RungRun[];
  readonly readings: readonly BenchReading[];
  /** Beside each of `readings`. */
  readonly origins: readonly Origin[];
  readonly gauge: Gauge;
  readonly setup: BenchSetup;
  readonly fitted: Result<FittedHead, BenchFault>;
  readonly flags: readonly OutlierFlag[];
}

/** Why a run takes no part. */
export type RunFault =
  | { readonly kind: 'unreadable' }
  /** What was fitted is no step of the ladder. */
  | { readonly kind: 'noRung'; readonly fitted: string }
  /** The gauge pulls at an arm, and the run does not say how long it is. */
  | { readonly kind: 'noArm' }
  | { readonly kind: 'head'; readonly fault: GaugeHeadFault };

export interface BenchAnalysis {
  readonly rungs: readonly RungAnalysis[];
  readonly ladder: readonly LadderStep[];
  readonly rest: RestResult | null;
  readonly faults: readonly { readonly run: BenchRun; readonly fault: RunFault }[];
  /** Runs that do not say what was fitted: taken as the head as designed. */
  readonly assumed: readonly BenchRun[];
  /** What scale readings went through. */
  readonly calibration: Calibration | null;
}

type Bench = Pick<
  BenchState,
  'runs' | 'fit' | 'gaugeStepN' | 'gaugeLimitN' | 'place' | 'pullsAlong'
>;

/** All runs against the design as it stands: a fit for each step of the ladder, and the differences between them. */
export function analyseBench(
  design: Design,
  bench: Bench,
  calibration: Calibration | null,
): BenchAnalysis {
  const { rungs } = buildRungs(design);
  const faults: BenchAnalysis['faults'][number][] = [];
  const assumed: BenchRun[] = [];
  const rest: RestReading[] = [];
  const found: Found[] = [];
  for (const run of bench.runs) {
    if (!saysFitted(run)) assumed.push(run);
    const rung = rungOfRun(run, rungs);
    const place = gaugePlace(bench, run.armMm);
    const { readings: read } = countedReadings(run);
    if (!read.ok) faults.push({ run, fault: { kind: 'unreadable' } });
    else if (!rung) faults.push({ run, fault: { kind: 'noRung', fitted: run.fitted ?? '' } });
    else if (!place) faults.push({ run, fault: { kind: 'noArm' } });
    else {
      const head = GaugeHead.of(rung.design, place);
      if (!head.ok) {
        faults.push({ run, fault: { kind: 'head', fault: head.error } });
        continue;
      }
      const zero = found.filter((one) => one.rung === rung).length;
      const still = rung.key === 'drag' && run.speedRpm === undefined ? { speedRpm: 0 } : {};
      const readings = benchReadings(
        read.value,
        { ...run, ...still },
        { head: head.value, zero, calibration, air: bench.fit.air },
      );
      rest.push(...readings.rest);
      found.push({ rung, head: head.value, run, zero, read: readings });
    }
  }
  const dragged = rest.length > 0 ? restDrag(rest, gaugeOf(bench, bench.runs)) : null;
  const analysed = rungs.flatMap((rung) => {
    const own = found.filter((one) => one.rung === rung && one.read.readings.length > 0);
    return own.length > 0 ? [analyseRung(rung, own, bench, dragged, calibration)] : [];
  });
  return {
    rungs: analysed,
    ladder: ladderSteps(analysed.flatMap(measuredRung)),
    rest: dragged,
    faults,
    assumed,
    calibration,
  };
}

interface Found extends RungRun {
  readonly rung: Rung;
}

/** The coarsest step among the runs; the largest reading as the bench says. */
function gaugeOf({ gaugeStepN, gaugeLimitN, fit }: Bench, runs: readonly BenchRun[]): Gauge {
  return {
    step: Math.max(0, ...runs.map((run) => run.gaugeStepN ?? gaugeStepN)),
    noise: fit.noiseN,
    ...(gaugeLimitN === null ? {} : { limit: gaugeLimitN }),
  };
}

function analyseRung(
  rung: Rung,
  own: readonly Found[],
  bench: Bench,
  rest: RestResult | null,
  calibration: Calibration | null,
): RungAnalysis {
  const [{ head }] = own;
  const gauge = gaugeOf(
    bench,
    own.map(({ run }) => run),
  );
  const { friction, zeros, air, pitchSigmaDeg } = bench.fit;
  const measured = rest && rest.drag.length > 0 ? { drag: rest.drag } : {};
  const readings = own.flatMap(({ read }) => read.readings);
  const isCalibrated = readings.some(({ scaleShifts }) => scaleShifts !== undefined);
  const shared = sharedErrors(bench.fit, isCalibrated ? calibration : null);
  const setup = benchSetup(head, { friction, zeros, air, shared, ...measured });
  const fitted = fitHead(head, readings, gauge, setup, radiansFromDegrees(pitchSigmaDeg));
  return {
    rung,
    head,
    runs: own,
    readings,
    origins: own.flatMap(({ run, read }) => read.places.map((place) => ({ run: run.id, place }))),
    gauge,
    setup,
    fitted,
    flags: fitted.ok ? flagOutliers(readings, setup, gauge, fitted.value.fit) : [],
  };
}

function measuredRung({ rung, fitted }: RungAnalysis) {
  if (!fitted.ok || !fitted.value.measured) return [];
  const { model, measured } = fitted.value;
  return [{ key: rung.key, added: rung.added, model, measured }];
}

/** Whether force comes back past some pitch in the runs of a rung, the modelled air left in them. */
export function returningIn(
  { runs, gauge, setup }: RungAnalysis,
  { calibration }: BenchAnalysis,
  pitchSigmaDeg: number,
): ReturningForce {
  const readings = runs.flatMap(({ run, head, zero }) => {
    const { readings: read } = countedReadings(run);
    if (!read.ok) return [];
    return benchReadings(read.value, run, { head, zero, calibration, air: 'left' }).readings;
  });
  const pitchSigma = radiansFromDegrees(pitchSigmaDeg);
  // What all readings share has the shape of mass, or none: it makes no force return.
  return returningForce(readings, gauge, { ...setup, extras: [], shared: [] }, pitchSigma);
}

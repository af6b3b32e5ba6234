import { type BenchKey, benchDesign } from '../../../engine/identify/benchDesign';
import { type BenchFit, fittedOf } from '../../../engine/identify/benchFitTypes';
import type { BenchReading } from '../../../engine/identify/benchReading';
import type { Calibration } from '../../../engine/identify/calibration';
import type { OutlierReason } from '../../../engine/identify/outliers';
import type { Origin, RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { countedReadings } from '../../runReadings';
import { benchReadings } from '../../runs';
import type { AirUse } from '../../setup';
import { zerosOf } from '../../splitRung';

/** A reading as plots and lists show it, whether it takes part in the fit or not. */
export interface ShownReading {
  readonly origin: Origin;
  /** Name of its run. */
  readonly name: string;
  readonly reading: BenchReading;
  /** At the gauge, N, without its fitted zero. */
  readonly force: number;
  /** What is left over, in standard uncertainties; NaN where it cannot be told. */
  readonly standardised: number;
  readonly state: 'counts' | 'doubted' | 'aside';
  readonly reasons: readonly OutlierReason[];
}

/** All readings of a rung: those that count, those that are doubted (they count all the same), those set aside. */
export function shownReadings(
  rung: RungAnalysis,
  fitted: FittedHead,
  context: { readonly calibration: Calibration | null; readonly air: AirUse },
): readonly ShownReading[] {
  const names = new Map(rung.runs.map(({ run }) => [run.id, run.name]));
  const flags = new Map(rung.flags.map(({ index, reasons }) => [index, reasons]));
  const zeros = zerosOf(fitted.fit);
  const counting = rung.readings.map((reading, i): ShownReading => {
    const reasons = flags.get(i) ?? [];
    return {
      origin: rung.origins[i],
      name: names.get(rung.origins[i].run) ?? '',
      reading,
      force: reading.force - (zeros[reading.zero] ?? 0),
      standardised: fitted.fit.standardised[i],
      state: reasons.length > 0 ? 'doubted' : 'counts',
      reasons,
    };
  });
  return [...counting, ...asideReadings(rung, fitted, context)];
}

function asideReadings(
  rung: RungAnalysis,
  fitted: FittedHead,
  context: Parameters<typeof shownReadings>[2],
): ShownReading[] {
  const found = rung.runs.flatMap(({ run, head, zero }) => {
    const aside = new Set(run.setAside);
    const { readings: read } = countedReadings(run);
    if (aside.size === 0 || !read.ok) return [];
    const { setAside: _, ...whole } = run;
    const all = benchReadings(read.value, whole, { head, zero, ...context });
    return all.places.flatMap((place, k) =>
      aside.has(place) ? [{ run, place, reading: all.readings[k] }] : [],
    );
  });
  const zeros = zerosOf(fitted.fit);
  const left = leftOver(
    found.map(({ reading }) => reading),
    rung,
    fitted.fit,
  );
  return found.map(({ run, place, reading }, k) => ({
    origin: { run: run.id, place },
    name: run.name,
    reading,
    force: reading.force - (zeros[reading.zero] ?? 0),
    standardised: left[k],
    state: 'aside',
    reasons: [],
  }));
}

/**
 * Readings that took no part, less what the fit says there, over the standard uncertainty of the reading of the same sense
 * nearest in pitch that did.
 */
function leftOver(
  readings: readonly BenchReading[],
  { setup, readings: counted }: RungAnalysis,
  fit: BenchFit,
): number[] {
  const { keys, rows, observed } = benchDesign(readings, setup, fittedOf(fit));
  const values = keys.map((key) => valueOf(fit, key));
  return readings.map((reading, i) => {
    const said = values.reduce((sum, value, j) => sum + rows[i * keys.length + j] * value, 0);
    return (observed[i] - said) / sigmaNear(reading, counted, fit);
  });
}

/** NaN where the fit has no such number: the zero of a run of which nothing counts. */
function valueOf({ estimates }: BenchFit, key: BenchKey): number {
  const index = 'index' in key ? key.index : -1;
  const found = estimates.find(
    ({ key: one }) => one.kind === key.kind && ('index' in one ? one.index : -1) === index,
  );
  return found?.determined ? found.value : Number.NaN;
}

function sigmaNear(reading: BenchReading, counted: readonly BenchReading[], fit: BenchFit): number {
  let nearest = -1;
  let least = Number.POSITIVE_INFINITY;
  counted.forEach(({ pitch, sense }, i) => {
    const far = Math.abs(pitch - reading.pitch) + (sense === reading.sense ? 0 : Math.PI);
    if (far < least) [nearest, least] = [i, far];
  });
  return nearest < 0 ? Number.NaN : fit.sigma[nearest];
}

import { type BenchSetup, benchDesign } from '../engine/identify/benchDesign';
import { type BenchFit, fittedOf } from '../engine/identify/benchFitTypes';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import { SAME_PITCH } from '../engine/identify/reduce';
import { forceSlope } from '../engine/identify/sharedErrors';
import { degreesFromRadians } from '../engine/units';

/** Force at one pitch and speed beyond what mass makes, found at small pitch. */
export interface Excess {
  readonly pitchDeg: number;
  readonly angularSpeed: number;
  /** Moment over the square of the speed, kg m^2 (N m s^2): what goes with the square is the same at every speed. */
  readonly perSpeedSquared: number;
  readonly sigma: number;
}

interface Gap {
  readonly reading: BenchReading;
  /** Observed less what the inner fit says there, N. */
  readonly gap: number;
  /** Variance of the reading itself, and of what the inner fit says, which all readings of a pitch share. */
  readonly own: number;
  readonly common: number;
}

/** The gauge with its noise known, and how surely pitch was set. */
export interface KnownGauge extends Gauge {
  readonly noise: number;
  readonly pitchSigma: number;
}

/**
 * What the readings beyond a pitch have more than a fit of those within says, by pitch and speed, both senses together so
 * that friction which was fitted wrongly cancels; ascending. Null where the outer readings need what the inner ones do not
 * determine (a zero of their own).
 */
export function excessBeyond(
  readings: readonly BenchReading[],
  limit: number,
  gauge: KnownGauge,
  setup: BenchSetup,
  inner: BenchFit,
): readonly Excess[] | null {
  const { keys, rows, observed } = benchDesign(readings, setup);
  const n = keys.length;
  if (inner.estimates.length !== n) return null;
  const at = fittedOf(inner);
  const groups = new Map<string, Gap[]>();
  readings.forEach((reading, i) => {
    if (Math.abs(reading.pitch) <= limit + SAME_PITCH) return;
    const said = saidBy(inner, rows.subarray(i * n, (i + 1) * n));
    const slope = forceSlope(reading, at, setup.precone) * gauge.pitchSigma;
    const own = gauge.noise ** 2 + gauge.step ** 2 / 12 + slope ** 2;
    const key = `${Math.round(reading.pitch / SAME_PITCH)} ${reading.angularSpeed}`;
    const group = groups.get(key) ?? [];
    group.push({ reading, gap: observed[i] - said.force, own, common: said.variance });
    groups.set(key, group);
  });
  const out = [...groups.values()].map(excessOf);
  return out.every(({ perSpeedSquared, sigma }) => Number.isFinite(perSpeedSquared + sigma))
    ? out.toSorted((a, b) => a.pitchDeg - b.pitchDeg || a.angularSpeed - b.angularSpeed)
    : null;
}

/** Force that a fit gives for a row of the design, with its variance. */
function saidBy({ estimates, covariance }: BenchFit, row: Float64Array) {
  const n = row.length;
  let force = 0;
  let variance = 0;
  for (let j = 0; j < n; j++) {
    if (row[j] === 0) continue;
    force += row[j] * estimates[j].value;
    for (let k = 0; k < n; k++) {
      if (row[k] !== 0) variance += row[j] * row[k] * covariance[j * n + k];
    }
  }
  return { force, variance };
}

function excessOf(group: readonly Gap[]): Excess {
  const { pitch, angularSpeed, forcePerMoment } = group[0].reading;
  const per = forcePerMoment * angularSpeed ** 2;
  const sum = (of: (one: Gap) => number) => group.reduce((total, one) => total + of(one), 0);
  const gap = sum((one) => one.gap) / group.length;
  const variance =
    sum(({ own }) => own) / group.length ** 2 + sum((one) => one.common) / group.length;
  return {
    pitchDeg: degreesFromRadians(pitch),
    angularSpeed,
    perSpeedSquared: gap / per,
    sigma: Math.sqrt(variance) / Math.abs(per),
  };
}

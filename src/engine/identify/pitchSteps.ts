/** A stretch of a logged series in which the value stands still. Places count from 0, `to` not included. */
export interface SteadyStretch {
  readonly from: number;
  readonly to: number;
  /** Times of its first and last sample, s. */
  readonly begins: number;
  readonly ends: number;
  /** Median of its samples, and the standard deviation of one sample about their mean. */
  readonly level: number;
  readonly deviation: number;
  /** Slope over it, unit per second, and whether it is beyond what noise explains: still settling or creeping. */
  readonly drift: number;
  readonly creeping: boolean;
}

export interface StepOptions {
  /** Shortest stretch that counts, s. */
  readonly shortest: number;
  /** Smallest jump between two stretches worth telling apart, unit of the value: about half of a pitch step. */
  readonly smallest: number;
  /** Time cut off after each jump, s: the control and the gauge settle. */
  readonly settling: number;
}

/**
 * Finds the steps in a series logged while the pitch was set from one place to the next. Cut in two where that lessens the
 * squares about the means most, and so on (binary segmentation, Scott and Knott, Biometrics 30, 1974), as long as the jump is
 * at least `smallest` and beyond what noise makes (its standard deviation from the median of differences between
 * neighbours; five standard uncertainties of the jump); n log n for n samples. Stretches that are short, because the pitch was
 * on its way, are left out; equal neighbours are joined. Times ascend.
 *
 * Throws for lengths that do not match; samples that are not finite cut the series.
 */
export function findSteady(
  time: ArrayLike<number>,
  value: ArrayLike<number>,
  { shortest, smallest, settling }: StepOptions,
): SteadyStretch[] {
  if (time.length !== value.length) {
    throw new RangeError(`findSteady(): ${time.length} times for ${value.length} values`);
  }
  const sums = prefixSums(value);
  const noise = noiseOf(value);
  const cuts: number[] = [];
  for (const [from, to] of finiteRuns(value)) {
    cuts.push(from);
    split(sums, from, to, smallest, noise, cuts);
    cuts.push(to);
  }
  const edges = [...new Set(cuts)].toSorted((a, b) => a - b);
  const stretches: [number, number][] = [];
  for (let k = 1; k < edges.length; k++) {
    const [from, to] = [edges[k - 1], edges[k]];
    if (Number.isFinite(value[from]) && time[to - 1] - time[from] >= shortest)
      stretches.push([from, to]);
  }
  return joined(stretches, sums, smallest)
    .map(([from, to]) => [from > 0 ? settled(time, from, to, settling) : from, to])
    .filter(([from, to]) => to - from >= 2)
    .map(([from, to]) => describe(time, value, from, to, noise));
}

type Sums = { readonly one: Float64Array; readonly two: Float64Array };

/** Sums of values and squares up to each place, about the first value, so that far-off levels keep their digits. */
function prefixSums(value: ArrayLike<number>): Sums {
  const one = new Float64Array(value.length + 1);
  const two = new Float64Array(value.length + 1);
  const base = Number.isFinite(value[0]) ? value[0] : 0;
  for (let i = 0; i < value.length; i++) {
    const v = Number.isFinite(value[i]) ? value[i] - base : 0;
    one[i + 1] = one[i] + v;
    two[i + 1] = two[i] + v * v;
  }
  return { one, two };
}

function finiteRuns(value: ArrayLike<number>): [number, number][] {
  const runs: [number, number][] = [];
  let from = -1;
  for (let i = 0; i <= value.length; i++) {
    const good = i < value.length && Number.isFinite(value[i]);
    if (good && from < 0) from = i;
    if (!good && from >= 0) {
      runs.push([from, i]);
      from = -1;
    }
  }
  return runs;
}

/** Standard deviation of one sample: the median size of differences between neighbours, which jumps hardly touch. */
function noiseOf(value: ArrayLike<number>): number {
  const sizes: number[] = [];
  for (let i = 1; i < value.length; i++) {
    const size = Math.abs(value[i] - value[i - 1]);
    if (Number.isFinite(size)) sizes.push(size);
  }
  if (sizes.length === 0) return 0;
  const middle = Float64Array.from(sizes).toSorted()[sizes.length >> 1];
  return (1.4826 * middle) / Math.SQRT2;
}

/** A jump must be this many of its standard uncertainties. */
const SURE = 5;

function split(
  sums: Sums,
  first: number,
  last: number,
  smallest: number,
  noise: number,
  cuts: number[],
): void {
  const open: [number, number][] = [[first, last]];
  while (open.length > 0) {
    const [from, to] = open.pop() as [number, number];
    const count = to - from;
    const whole = sums.one[to] - sums.one[from];
    let best = -1;
    let most = 0;
    for (let cut = from + 1; cut < to; cut++) {
      const left = sums.one[cut] - sums.one[from];
      const n = cut - from;
      const excess = left - (whole * n) / count;
      const gain = (excess * excess * count) / (n * (count - n));
      if (gain > most) {
        most = gain;
        best = cut;
      }
    }
    if (best < 0) continue;
    const n = best - from;
    const jump = Math.abs(mean(sums, from, best) - mean(sums, best, to));
    const doubt = noise * Math.sqrt(1 / n + 1 / (count - n));
    if (!(jump > SURE * doubt) || !canHold(sums, from, to, smallest, jump, noise)) continue;
    cuts.push(best);
    open.push([from, best], [best, to]);
  }
}

/** A jump below `smallest` may still hide two larger ones that cancel: seen in the squares. */
function canHold(
  { one, two }: Sums,
  from: number,
  to: number,
  smallest: number,
  jump: number,
  noise: number,
): boolean {
  if (jump >= smallest) return true;
  const count = to - from;
  const m = (one[to] - one[from]) / count;
  const variance = (two[to] - two[from]) / count - m * m;
  return variance > noise * noise + (smallest / 4) ** 2;
}

function mean({ one }: Sums, from: number, to: number): number {
  return (one[to] - one[from]) / (to - from);
}

/** Joins neighbours that touch and whose means differ by less than `smallest`. */
function joined(
  stretches: readonly [number, number][],
  sums: Sums,
  smallest: number,
): [number, number][] {
  const out: [number, number][] = [];
  for (const [from, to] of stretches) {
    const last = out.at(-1);
    if (
      last &&
      last[1] === from &&
      Math.abs(mean(sums, ...last) - mean(sums, from, to)) < smallest
    ) {
      last[1] = to;
    } else out.push([from, to]);
  }
  return out;
}

function settled(time: ArrayLike<number>, from: number, to: number, settling: number): number {
  let i = from;
  while (i < to && time[i] < time[from] + settling) i++;
  return i;
}

function describe(
  time: ArrayLike<number>,
  value: ArrayLike<number>,
  from: number,
  to: number,
  noise: number,
): SteadyStretch {
  const count = to - from;
  const values = Float64Array.from({ length: count }, (_, i) => value[from + i]);
  const sorted = values.toSorted();
  const average = values.reduce((sum, v) => sum + v, 0) / count;
  const middle = (time[from] + time[to - 1]) / 2;
  let squares = 0;
  let tt = 0;
  let tv = 0;
  values.forEach((v, i) => {
    const t = time[from + i] - middle;
    squares += (v - average) ** 2;
    tt += t * t;
    tv += t * (v - average);
  });
  const drift = tt > 0 ? tv / tt : 0;
  return {
    from,
    to,
    begins: time[from],
    ends: time[to - 1],
    level: (sorted[(count - 1) >> 1] + sorted[count >> 1]) / 2,
    deviation: Math.sqrt(squares / (count - 1)),
    drift,
    creeping: Math.abs(drift) > (SURE * Math.max(noise, 1e-300)) / Math.sqrt(tt),
  };
}

import type { Gauge, RestDrag, Sense } from '../engine/identify/benchReading';

/** A reading with the rotor still. SI; `place` counts the run's readings from 0. */
export interface RestReading {
  readonly travel: number;
  readonly force: number;
  /** Null: nothing says; the force is then taken for its size. */
  readonly sense: Sense | null;
  readonly place: number;
}

export interface RestResult {
  /** Ascending in travel. */
  readonly drag: readonly RestDrag[];
  /** Zero of the gauge: the middle of push and pull, N; null where no travel was read both ways. */
  readonly zero: { readonly force: number; readonly sigma: number } | null;
  /** Places that could not be used: held still, or a travel read one way only with no zero known. */
  readonly unused: readonly number[];
}

/** Two travels closer than this are one, m. */
const SAME_TRAVEL = 2e-5;

/**
 * Drag at rest from readings with the rotor still: half of pull less push at each travel, their middle being the zero of
 * the gauge. Gravity and springs that pull one way go into that zero and must not change with travel; where they do,
 * push and pull still give the drag right. Uncertainty of a reading: noise and step of the gauge; a noise that is not known is
 * learnt from how the middles scatter, where there are three at least. A drag below nothing by noise stays below: cut off at
 * nothing it would lean the fit.
 */
export function restDrag(readings: readonly RestReading[], gauge: Gauge): RestResult {
  const places = grouped(readings);
  const pairs = places.flatMap((group) => {
    const [pull, push] = [meanOf(group, 1), meanOf(group, -1)];
    return pull && push ? [{ travel: group[0].travel, pull, push }] : [];
  });
  const own = variance(pairs, gauge);
  const zero = zeroOf(pairs, own);
  const unused: number[] = [];
  const drag = places.flatMap((group): RestDrag[] => {
    const [pull, push, size] = [meanOf(group, 1), meanOf(group, -1), meanOf(group, null)];
    const travel = group[0].travel;
    for (const { sense, place } of group) if (sense === 0) unused.push(place);
    if (pull && push) {
      const both = own * (1 / pull.count + 1 / push.count);
      return [{ travel, force: (pull.mean - push.mean) / 2, sigma: Math.sqrt(both) / 2 }];
    }
    const one = pull ?? push;
    if (one && zero) {
      const sigma = Math.hypot(Math.sqrt(own / one.count), zero.sigma);
      return [{ travel, force: Math.abs(one.mean - zero.force), sigma }];
    }
    if (size) return [{ travel, force: size.mean, sigma: Math.sqrt(own / size.count) }];
    for (const { sense, place } of group) if (sense !== 0) unused.push(place);
    return [];
  });
  return { drag: drag.map(withSomeSigma), zero, unused };
}

function grouped(readings: readonly RestReading[]): RestReading[][] {
  const groups: RestReading[][] = [];
  for (const reading of readings.toSorted((a, b) => a.travel - b.travel)) {
    const last = groups.at(-1);
    if (last && reading.travel - last[0].travel < SAME_TRAVEL) last.push(reading);
    else groups.push([reading]);
  }
  return groups;
}

interface Mean {
  readonly mean: number;
  readonly count: number;
}

/** Mean of the readings of one sense; of those whose sense nothing says, of their sizes. */
function meanOf(group: readonly RestReading[], sense: Sense | null): Mean | null {
  const forces = group.flatMap((one) =>
    one.sense === sense ? [sense === null ? Math.abs(one.force) : one.force] : [],
  );
  const sum = forces.reduce((total, force) => total + force, 0);
  return forces.length === 0 ? null : { mean: sum / forces.length, count: forces.length };
}

interface Pair {
  readonly pull: Mean;
  readonly push: Mean;
}

/**
 * Of one reading, N^2. A middle of n pulls and m pushes scatters by (1/n + 1/m)/4 of it: each is weighed by that.
 */
function variance(pairs: readonly Pair[], { noise, step }: Gauge): number {
  const least = step ** 2 / 12;
  if (noise !== null) return noise ** 2 + least;
  if (pairs.length < 3) return least;
  const shares = pairs.map(({ pull, push }) => (1 / pull.count + 1 / push.count) / 4);
  const weights = shares.reduce((sum, share) => sum + 1 / share, 0);
  const mean = pairs.reduce((sum, pair, k) => sum + middle(pair) / shares[k], 0) / weights;
  const square = pairs.reduce((sum, pair, k) => sum + (middle(pair) - mean) ** 2 / shares[k], 0);
  return Math.max(least, square / (pairs.length - 1));
}

function middle({ pull, push }: Pair): number {
  return (pull.mean + push.mean) / 2;
}

function zeroOf(pairs: readonly Pair[], own: number): RestResult['zero'] {
  if (pairs.length === 0) return null;
  const middles = pairs.map(middle);
  const force = middles.reduce((sum, one) => sum + one, 0) / middles.length;
  const scatter =
    middles.length > 1
      ? middles.reduce((sum, one) => sum + (one - force) ** 2, 0) / (middles.length - 1)
      : 0;
  return { force, sigma: Math.sqrt(Math.max(own / 2, scatter) / middles.length) };
}

/** A gauge without step and noise is still no perfect one: a thousandth of the drag, so that its weight stays finite. */
function withSomeSigma(row: RestDrag): RestDrag {
  return row.sigma > 0 ? row : { ...row, sigma: Math.max(1e-3 * row.force, 1e-6) };
}

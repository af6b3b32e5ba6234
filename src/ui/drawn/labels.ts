/**
 * Places labels along a line so that none overlaps another and each stands as near as can be to where it belongs.
 *
 * A label wants its middle at `at` and takes up `size` (same unit, any: pixels, degrees of a ring). The order of the
 * wanted places is kept; the weighted sum of squared displacements is the least possible. With q_i = p_i minus the
 * room that the labels before i need, the labels do not overlap exactly when q is ascending: an isotonic regression,
 * solved by pooling neighbours that are out of order (pool adjacent violators), and the bounds clip it.
 */
export interface Label {
  readonly at: number;
  readonly size: number;
  /** How dear its own place is to it; 1 by default. A large number makes the others give way. */
  readonly weight?: number;
}

/**
 * Middles of the labels, in the order given. Null when they do not fit between `low` and `high` with `gap` between
 * neighbours: leave one out and ask again. Labels with the same wish keep the order given.
 */
export function placeLabels(
  labels: readonly Label[],
  low: number,
  high: number,
  gap = 0,
): number[] | null {
  if (labels.length === 0) return [];
  const order = labels.map((_, i) => i).toSorted((i, j) => labels[i].at - labels[j].at || i - j);
  const before = roomBefore(labels, order, gap);
  const last = order.length - 1;
  const lowest = low + labels[order[0]].size / 2;
  const highest = high - labels[order[last]].size / 2 - before[last];
  if (lowest > highest + 1e-9) return null;

  const wanted = order.map((i, k) => labels[i].at - before[k]);
  const weights = order.map((i) => labels[i].weight ?? 1);
  const places = new Array<number>(labels.length);
  ascendingFit(wanted, weights).forEach((q, k) => {
    places[order[k]] = Math.min(highest, Math.max(lowest, q)) + before[k];
  });
  return places;
}

/** Distance from the first label's middle to each one's, when they stand as close as they may. */
function roomBefore(labels: readonly Label[], order: readonly number[], gap: number): number[] {
  const before = [0];
  for (let k = 1; k < order.length; k++) {
    const apart = (labels[order[k - 1]].size + labels[order[k]].size) / 2 + gap;
    before.push(before[k - 1] + apart);
  }
  return before;
}

/** The ascending sequence nearest to `values` in weighted least squares. */
function ascendingFit(values: readonly number[], weights: readonly number[]): number[] {
  const pools: { mean: number; weight: number; count: number }[] = [];
  values.forEach((value, k) => {
    let pool = { mean: value, weight: weights[k], count: 1 };
    for (let previous = pools.at(-1); previous && previous.mean > pool.mean; ) {
      pools.pop();
      const weight = previous.weight + pool.weight;
      const mean = (previous.mean * previous.weight + pool.mean * pool.weight) / weight;
      pool = { mean, weight, count: previous.count + pool.count };
      previous = pools.at(-1);
    }
    pools.push(pool);
  });
  return pools.flatMap((pool) => new Array<number>(pool.count).fill(pool.mean));
}

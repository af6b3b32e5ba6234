/** At most so many samples are passed over at a time; a power of two. */
const LONGEST = 16;

/**
 * Of a curve's samples `first` to `last` those that a line has to go through, so that it leaves none of the others aside by
 * more than `tolerance` (in units of the values). Every sample that is no number is kept, with both its neighbours, and so
 * are the two on either side of each of `breaks`. Written into `out`, which has room for all of them; returns how many.
 */
export function thinned(
  out: Int32Array,
  xs: Float64Array,
  ys: Float64Array,
  [first, last]: readonly [number, number],
  tolerance: number,
  breaks: readonly number[],
): number {
  let count = 0;
  let i = first;
  out[count++] = i;
  while (i < last) {
    let step = LONGEST;
    while (step > 1 && !(i + step <= last && isStraight(xs, ys, i, i + step, tolerance, breaks))) {
      step /= 2;
    }
    i += step;
    out[count++] = i;
  }
  return count;
}

function isStraight(
  xs: Float64Array,
  ys: Float64Array,
  from: number,
  to: number,
  tolerance: number,
  breaks: readonly number[],
): boolean {
  const slope = (ys[to] - ys[from]) / (xs[to] - xs[from]);
  for (let k = from + 1; k < to; k++) {
    const aside = ys[k] - ys[from] - slope * (xs[k] - xs[from]);
    // No number is not within it.
    if (!(aside <= tolerance && aside >= -tolerance)) return false;
  }
  for (let b = 0; b < breaks.length; b++) {
    if (breaks[b] > xs[from] && breaks[b] < xs[to]) return false;
  }
  return true;
}

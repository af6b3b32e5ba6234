/**
 * Round numbers for an axis, ascending, all within [low, high]: steps of 1, 2 or 5 times a power of ten. About `most` of
 * them, and two at least.
 */
export function roundTicks(low: number, high: number, most: number): readonly number[] {
  const span = high - low;
  if (!(span > 0) || !Number.isFinite(span)) return [low];
  const rough = span / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? 10 * power;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  // One number alone is no scale.
  if (last - first < 1) return roundTicks(low, high, 2 * most);
  return Array.from({ length: last - first + 1 }, (_, i) =>
    Number(((first + i) * step).toFixed(digits)),
  );
}

/** Where a value stands between two places, `low` at `from` and `high` at `to`. */
export function place(value: number, low: number, high: number, from: number, to: number): number {
  return high === low ? (from + to) / 2 : from + ((value - low) / (high - low)) * (to - from);
}

/** An SVG path through points; a NaN lifts the pen. */
export function linePath(xs: ArrayLike<number>, ys: ArrayLike<number>): string {
  let path = '';
  let down = false;
  for (let i = 0; i < xs.length; i++) {
    if (Number.isNaN(ys[i])) {
      down = false;
      continue;
    }
    path += `${down ? 'L' : 'M'}${xs[i].toFixed(2)} ${ys[i].toFixed(2)}`;
    down = true;
  }
  return path;
}

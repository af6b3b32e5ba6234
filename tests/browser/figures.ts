import { test } from './fixtures';

/** Keeps the times of a test, ms, beside its result; a long mode says them as well. */
export function noteTimes(what: string, times: readonly number[], isLong: boolean): void {
  const sorted = times.toSorted((a, b) => a - b);
  const median = sorted[Math.floor(sorted.length / 2)];
  const [least, most] = [sorted[0], sorted[sorted.length - 1]];
  const text = `${what}: ${times.length} times, ${least.toFixed(0)} to ${most.toFixed(0)} ms, median ${median.toFixed(0)} (${times.map((one) => one.toFixed(0)).join(' ')})`;
  test.info().annotations.push({ type: 'figures', description: text });
  if (isLong) console.log(text);
}

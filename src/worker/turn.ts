/**
 * Lets a worker's thread do what waits for it, then goes on. A worker that is to end, by the page or from outside, ends here:
 * browsers stop a thread that computes without a pause only after seconds, and till then it holds its lock (see life.ts).
 */
export function turn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

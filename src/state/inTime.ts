/** Runs it after so many ms; the call takes that back. */
export type Later = (ms: number, act: () => void) => () => void;

export const browserLater: Later = (ms, act) => {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
};

/** Rejects with `late` where the work takes longer than so many ms. The work goes on all the same. */
export function inTime<T>(
  work: Promise<T>,
  ms: number,
  late: () => Error,
  later: Later,
): Promise<T> {
  return new Promise((resolve, reject) => {
    const stop = later(ms, () => reject(late()));
    work.finally(stop).then(resolve, reject);
  });
}

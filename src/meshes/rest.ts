/** Awaited again and again in long work: where a worker can be ended. */
export type Rest = () => Promise<void>;

/** Time at a stretch, ms. */
const STRETCH = 100;
const NONE = Promise.resolve();

/** A rest that may be called often: it lets `turn` in only where the last time is a stretch ago. */
export function seldom(turn: Rest, now: () => number = () => performance.now()): Rest {
  let began = now();
  return () => {
    if (now() - began < STRETCH) return NONE;
    return turn().then(() => {
      began = now();
    });
  };
}

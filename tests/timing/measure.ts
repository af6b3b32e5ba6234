/** One way of doing a job, called again and again; `i` tells which of the alternating designs. */
export interface Route {
  readonly name: string;
  /** Calls between two looks at the clock. */
  readonly calls: number;
  readonly run: (i: number) => number;
}

export interface Timed {
  readonly name: string;
  /** Median over the rounds, of the time of one call, microseconds. */
  readonly micros: number;
  /** Times of one call, round by round. */
  readonly rounds: readonly number[];
}

/** Results land here, so that no call can be left out as unused. */
let sink = 0;

/**
 * Times routes in turns, round by round, so that a slow spell of the machine falls on all of them. The first rounds warm
 * up and are not counted.
 */
export function interleaved(routes: readonly Route[], rounds: number, warmUp = 3): Timed[] {
  const times = routes.map((): number[] => []);
  for (let round = -warmUp; round < rounds; round++) {
    for (const [r, route] of routes.entries()) {
      const began = performance.now();
      for (let i = 0; i < route.calls; i++) sink += route.run(i);
      const micros = (1000 * (performance.now() - began)) / route.calls;
      if (round >= 0) times[r].push(micros);
    }
  }
  if (Number.isNaN(sink)) throw new Error('interleaved(): a route gave no number');
  return routes.map(({ name }, r) => ({ name, micros: median(times[r]), rounds: times[r] }));
}

/** How many times longer `slow` takes: the median of the ratios of each round. */
export function ratio(slow: Timed, fast: Timed): number {
  return median(slow.rounds.map((time, i) => time / fast.rounds[i]));
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

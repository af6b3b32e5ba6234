import { createStore, type StoreApi } from 'zustand/vanilla';

/** What the bench read at a pitch, reduced: friction, the gauge's zero and the gauge's place are taken out of it. */
export interface BenchPoint {
  readonly pitchDeg: number;
  /** Total moment of one grip as it would be at the design's speed, N m: what the chart's own curve is of. */
  readonly moment: number;
  /** Half of its 95 % interval, N m. */
  readonly half: number;
  /** At which it was read; what spins goes with its square. */
  readonly speedRpm: number;
}

/** Points of the bench for who shows them beside what is predicted; filled by the bench, empty where there are none. */
export type BenchPoints = StoreApi<readonly BenchPoint[]>;

export function createBenchPoints(): BenchPoints {
  return createStore<readonly BenchPoint[]>(() => []);
}

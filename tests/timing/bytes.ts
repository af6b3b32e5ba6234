import { GCProfiler, setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
} from '../../src/engine/feathering/harmonics';
import { MassLedger } from '../../src/engine/mass/ledger';
import { createMoments, transformMoments } from '../../src/engine/mass/moments';
import { radians } from '../../src/engine/units';
import { median } from './measure';
import { type OwnHead, POINTS } from './routes/ours';

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

const ROUNDS = 5;

/** Heap bytes that one call of `run` takes: the median of five rounds of so many calls, collections between counted in. */
export function bytesPerCall(run: (i: number) => void, calls: number): number {
  for (let i = 0; i < calls; i++) run(i);
  return median(Array.from({ length: ROUNDS }, () => bytesTaken(run, calls) / calls));
}

/** The same of a call that does nothing: what the measurement itself is good to. */
export function bytesOfNothing(calls: number): number {
  return bytesPerCall(() => {}, calls);
}

/**
 * What is on the heap at the end less what was there at the start, and at every collection what was there before it less
 * what it left.
 */
function bytesTaken(run: (i: number) => void, calls: number): number {
  collect();
  const profiler = new GCProfiler();
  profiler.start();
  let from = process.memoryUsage().heapUsed;
  for (let i = 0; i < calls; i++) run(i);
  const end = process.memoryUsage().heapUsed;
  let taken = 0;
  for (const { beforeGC, afterGC } of profiler.stop()?.statistics ?? []) {
    taken += beforeGC.heapStatistics.usedHeapSize - from;
    from = afterGC.heapStatistics.usedHeapSize;
  }
  return taken + end - from;
}

/** The engine's own work of a tick: one part out, placed anew, in again, totals, coefficients, 721 moments. */
export function engineTick({ model }: OwnHead): (i: number) => void {
  const ledger = new MassLedger();
  for (const part of model.parts) ledger.add(part.moments_G);
  const [part] = model.parts;
  const held = part.moments_G.slice();
  const poses = [part.pose, { ...part.pose, translation: [0.001, 0.002, 0.003] as const }];
  const totals = createMoments();
  const harmonics = createHarmonics();
  const curve = new Float64Array(POINTS);
  const { rotor } = model;
  return (i) => {
    ledger.remove(held);
    transformMoments(part.moments_P, poses[i & 1], held);
    ledger.add(held);
    ledger.total(totals);
    featheringHarmonics(totals, rotor, harmonics);
    for (let k = 0; k < POINTS; k++) {
      curve[k] = featheringMoment(harmonics, radians((k - 360) * 0.004));
    }
  };
}

import { setFlagsFromString } from 'node:v8';
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

/** Heap bytes that one call of `run` leaves behind: the median of nine batches short enough that nothing is collected. */
export function bytesPerCall(run: (i: number) => void, calls: number): number {
  for (let i = 0; i < 20_000; i++) run(i);
  const batches: number[] = [];
  for (let batch = 0; batch < 9; batch++) {
    collect();
    const before = process.memoryUsage().heapUsed;
    for (let i = 0; i < calls; i++) run(i);
    batches.push((process.memoryUsage().heapUsed - before) / calls);
  }
  return median(batches);
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

import {
  accumulate,
  createMoments,
  JYY,
  JZZ,
  transformMoments,
} from '../../../src/engine/mass/moments';
import { sumSolids } from '../../../src/engine/mass/weigh';
import type { PlacedSolids } from '../pieces';

const one = createMoments();
const all = createMoments();

/** Every part weighed, placed and summed anew by the engine, from the same solids that the mesh routes get. */
export function weighAll(parts: readonly PlacedSolids[]): number {
  all.fill(0);
  for (const { solids, pose } of parts) {
    sumSolids(solids, one);
    transformMoments(one, pose, one);
    accumulate(all, one);
  }
  return all[JYY] - all[JZZ];
}

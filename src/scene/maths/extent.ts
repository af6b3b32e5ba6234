import type { Vec3 } from '../../engine/math/vector';
import type { ChordExtent } from './ghosts';

/** An axis-parallel box, mm. */
export interface Bounds {
  readonly min: Vec3;
  readonly max: Vec3;
}

/** The measures of a head by which the stage draws its lines and discs, in the grip frame, mm. */
export interface Extent {
  /** Farthest station. */
  readonly outboard: number;
  /** Half the height across the chord plane. */
  readonly height: number;
  /** Farthest that anything reaches along y or z from the feathering axis. */
  readonly clearance: number;
  /** The chord plane of what reaches farthest out: the blade, when there is one. */
  readonly chord: ChordExtent;
}

export const START_EXTENT: Extent = {
  outboard: 60,
  height: 10,
  clearance: 15,
  chord: { inboard: 0, outboard: 60, leading: 10, trailing: -10 },
};

export function measureBoxes(boxes: readonly Bounds[]): Extent {
  let blade: Bounds | null = null;
  let height = 0;
  let clearance = 0;
  for (const box of boxes) {
    if (!blade || box.max[0] > blade.max[0]) blade = box;
    const y = Math.max(Math.abs(box.min[1]), Math.abs(box.max[1]));
    const z = Math.max(Math.abs(box.min[2]), Math.abs(box.max[2]));
    height = Math.max(height, z);
    clearance = Math.max(clearance, y, z);
  }
  if (!blade || !(blade.max[0] > 0)) return START_EXTENT;
  return {
    outboard: blade.max[0],
    height,
    clearance,
    chord: {
      inboard: blade.min[0],
      outboard: blade.max[0],
      leading: blade.max[1],
      trailing: blade.min[1],
    },
  };
}

/** Room left when a measure is taken anew, so that the next small change does not move it again. */
const SLACK = 1.1;

/**
 * The measures to draw by: those held, as long as they hold the head with at most a quarter to spare. A measure that
 * is outgrown follows at once; one that has become too large waits until the drag is over.
 */
export function steadyExtent(held: Extent, measured: Extent, dragging: boolean): Extent {
  const follow = (before: number, now: number): number => {
    const tooLarge = now * SLACK * 1.2 < before;
    return now > before || (tooLarge && !dragging) ? now * SLACK : before;
  };
  const outboard = follow(held.outboard, measured.outboard);
  const height = follow(held.height, measured.height);
  const clearance = follow(held.clearance, measured.clearance);
  return { outboard, height, clearance, chord: measured.chord };
}

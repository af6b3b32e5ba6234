import { Vector3 } from 'three';
import type { Rectangle } from '../drawing/labels';
import type { Line } from './dragMaths';
import type { HandleSpec } from './handleSpec';

/** A handle as it stands in the world (mm), and where it is seen. */
export interface PosedHandle {
  readonly spec: HandleSpec;
  /** Along the drag, or the axis that it turns about. */
  readonly line: Line;
  /** Foot of the arrow, or the knob itself. */
  readonly foot: Vector3;
  /** Middle of what is grabbed, world; set each drawn frame. */
  readonly knob: Vector3;
  /** The same in pixels from the host's upper left corner; null while it is not seen. */
  spot: readonly [x: number, y: number] | null;
}

/** Half of 44 px: how near to a handle's middle a pointer takes hold of it. */
export const GRAB_RADIUS = 22;
/** Half of what a knob covers, px. */
const KNOB = 9;

/** The handles of a stage as they are drawn. Written by the handle layer, read by pointer, list and tests. */
export class HandleBoard {
  handles: readonly PosedHandle[] = [];
  /** Key of the handle under the pointer, or whose twin has the focus. */
  hot: string | null = null;
  /** Key of the handle being dragged. */
  active: string | null = null;

  /** Puts these in the place of the others. Until it is drawn, each is grabbed where it was seen last. */
  take(handles: readonly PosedHandle[]): void {
    for (const handle of handles) handle.spot = this.find(handle.spec.key)?.spot ?? null;
    this.handles = handles;
  }

  find(key: string): PosedHandle | undefined {
    return this.handles.find(({ spec }) => spec.key === key);
  }

  /** What the knobs cover, pixels: words are put elsewhere. */
  boxes(): Rectangle[] {
    return this.handles.flatMap(({ spot }) => {
      if (!spot) return [];
      const [x, y] = spot;
      return [{ left: x - KNOB, top: y - KNOB, right: x + KNOB, bottom: y + KNOB }];
    });
  }

  /** The handle nearest to a point of the host, within reach. */
  nearest(x: number, y: number): PosedHandle | null {
    let best: PosedHandle | null = null;
    let least = GRAB_RADIUS;
    for (const handle of this.handles) {
      if (!handle.spot) continue;
      const distance = Math.hypot(handle.spot[0] - x, handle.spot[1] - y);
      if (distance > least) continue;
      least = distance;
      best = handle;
    }
    return best;
  }
}

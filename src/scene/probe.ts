import type { Vec3 } from '../engine/math/vector';
import type { StageKit } from './stageKit';

/**
 * A read-only door into the stage: `window.stillgrip.scene`. Meant for the browser tests (has the drawn object really
 * moved?) and for the curious; nothing on the page uses it.
 */
export interface SceneProbe {
  /** World box of a part as it is drawn now, rotor frame, mm; null when it is not drawn. */
  worldPosition(partId: string): {
    readonly min: Vec3;
    readonly max: Vec3;
    readonly centre: Vec3;
  } | null;
  /**
   * Where to press to drag a handle, in client pixels; null when it is not shown. `parameter` as in the design file
   * (`extensionLengthMm`, `offsetMm`), a component of a vector as `sizeMm.0`; the pitch pointer is
   * ('pitch', 'pitchDeg').
   */
  handleScreenPosition(
    partId: string,
    parameter: string,
  ): { readonly x: number; readonly y: number } | null;
  /** Client pixels of a point of the rotor frame, mm; null behind the camera. */
  screenPosition(point: Vec3): { readonly x: number; readonly y: number } | null;
  /** Keys of the handles shown, `<part id>/<parameter>`. */
  handles(): readonly string[];
  /** Centre of the slider's ball as it is drawn now, rotor frame, mm; null where none is drawn. */
  sliderBall(): Vec3 | null;
  /** Pulls drawn one by one in the room Pulls. */
  pullArrows(): number;
  /** How far the rotor has gone round, seen from outside, radians. */
  turned(): number;
  /** Triangles of the last drawn frame. */
  drawnTriangles(): number;
  /** Frames drawn so far. */
  drawnFrames(): number;
}

interface Door {
  scene?: SceneProbe;
}

/** Opens the door; returns the way to close it. */
export function openProbe(
  kit: StageKit,
  project: (point: Vec3) => readonly [number, number] | null,
): () => void {
  const page = window as unknown as { stillgrip?: Door };
  page.stillgrip ??= {};
  const door = page.stillgrip;
  const client = (spot: readonly [number, number] | null | undefined) => {
    if (!spot || !kit.eye) return null;
    const { left, top } = kit.eye.host.getBoundingClientRect();
    return { x: left + spot[0], y: top + spot[1] };
  };
  const probe: SceneProbe = {
    worldPosition(partId) {
      const box = kit.drawnBoxOf(partId);
      if (!box) return null;
      const min: Vec3 = [box.min.x, box.min.y, box.min.z];
      const max: Vec3 = [box.max.x, box.max.y, box.max.z];
      return {
        min,
        max,
        centre: [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2],
      };
    },
    handleScreenPosition: (partId, parameter) =>
      client(kit.handles.find(`${partId}/${parameter}`)?.spot),
    screenPosition: (point) => client(project(point)),
    handles: () => kit.handles.handles.map(({ spec }) => spec.key),
    sliderBall: () => kit.sliderBall,
    pullArrows: () => kit.pullArrows,
    turned: () => -kit.roomFrame.rotation.z,
    drawnTriangles: () => kit.eye?.renderer.info.render.triangles ?? 0,
    drawnFrames: () => kit.eye?.renderer.info.render.frame ?? 0,
  };
  door.scene = Object.freeze(probe);
  return () => {
    if (door.scene === probe) delete door.scene;
  };
}

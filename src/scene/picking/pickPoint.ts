import { type Mesh, type PerspectiveCamera, Raycaster, Vector2, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vector';

/** A corner of the surface within this of the pointer is taken instead of the spot under it, px. */
const SNAP = 12;

const caster = new Raycaster();
const pixel = new Vector2();

/**
 * The point of a body's surface under a spot of the canvas (px), in the body's own frame, metres; null beside it. A
 * corner of the triangle that was hit, when it is near on the screen, is taken instead: the rim of a hole is made of
 * corners.
 */
export function pickPoint(
  mesh: Mesh,
  camera: PerspectiveCamera,
  spot: { readonly x: number; readonly y: number },
  width: number,
  height: number,
): Vec3 | null {
  pixel.set((2 * spot.x) / width - 1, 1 - (2 * spot.y) / height);
  caster.setFromCamera(pixel, camera);
  const [hit] = caster.intersectObject(mesh, false);
  if (!hit?.face) return null;
  const positions = mesh.geometry.getAttribute('position');
  let best = mesh.worldToLocal(hit.point.clone());
  let nearest = SNAP;
  for (const index of [hit.face.a, hit.face.b, hit.face.c]) {
    const corner = new Vector3().fromBufferAttribute(positions, index);
    const seen = corner.clone().applyMatrix4(mesh.matrixWorld).project(camera);
    const away = Math.hypot(
      ((seen.x + 1) / 2) * width - spot.x,
      ((1 - seen.y) / 2) * height - spot.y,
    );
    if (away < nearest) {
      nearest = away;
      best = corner;
    }
  }
  return [best.x, best.y, best.z];
}

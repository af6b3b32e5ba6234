import { type PerspectiveCamera, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vector';
import type { Ray } from './dragMaths';

const scratch = new Vector3();

/** The ray through a pixel, from the host's upper left corner; world, mm. */
export function pointerRay(
  camera: PerspectiveCamera,
  x: number,
  y: number,
  width: number,
  height: number,
): Ray {
  scratch.set((2 * x) / width - 1, 1 - (2 * y) / height, 0.5).unproject(camera);
  scratch.sub(camera.position).normalize();
  return { origin: tuple(camera.position), direction: tuple(scratch) };
}

/** Pixels of a world point from the host's upper left corner; null behind the camera. */
export function pixelOf(
  camera: PerspectiveCamera,
  point: Vector3,
  width: number,
  height: number,
): [number, number] | null {
  scratch.copy(point).project(camera);
  if (scratch.z > 1 || scratch.z < -1) return null;
  return [((scratch.x + 1) / 2) * width, ((1 - scratch.y) / 2) * height];
}

/** Millimetres that one pixel covers at the depth of a point. */
export function mmPerPixel(camera: PerspectiveCamera, point: Vector3, height: number): number {
  scratch.copy(point).applyMatrix4(camera.matrixWorldInverse);
  const half = Math.tan((camera.fov * Math.PI) / 360);
  return (2 * Math.max(camera.near, -scratch.z) * half) / height / camera.zoom;
}

export function tuple(vector: Vector3): Vec3 {
  return [vector.x, vector.y, vector.z];
}

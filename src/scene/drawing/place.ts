import type { Object3D } from 'three';
import type { Pose } from '../../engine/math/pose';

/**
 * Units of the stage. The world of three.js is the rotor frame (Z up along the shaft) in millimetres, so that near,
 * far and pattern lengths are everyday numbers. Parts and poses are in metres, as everywhere in the program; objects
 * that hold metres sit under a group scaled by `MM`.
 */
export const MM = 1000;

/** Puts an object where a pose says, by its matrix. The object's `matrixAutoUpdate` must be off. */
export function placeObject(object: Object3D, pose: Pose): void {
  const r = pose.rotation;
  const p = pose.translation;
  if (stands(object.matrix.elements, pose)) return;
  // biome-ignore format: rows of a matrix
  object.matrix.set(
    r[0], r[1], r[2], p[0],
    r[3], r[4], r[5], p[1],
    r[6], r[7], r[8], p[2],
    0, 0, 0, 1,
  );
  object.matrixWorldNeedsUpdate = true;
}

/** What hangs in an object that stands still need not be placed anew. */
function stands(m: readonly number[], { rotation: r, translation: p }: Pose): boolean {
  for (let row = 0; row < 3; row++) {
    for (let column = 0; column < 3; column++) {
      if (m[4 * column + row] !== r[3 * row + column]) return false;
    }
    if (m[12 + row] !== p[row]) return false;
  }
  return true;
}

/** The same with the pose in metres and the object in millimetres. */
export function placeObjectMm(object: Object3D, pose: Pose): void {
  const [x, y, z] = pose.translation;
  placeObject(object, { rotation: pose.rotation, translation: [x * MM, y * MM, z * MM] });
}

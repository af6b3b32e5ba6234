import { writeStl } from '../../meshes/writeStl';
import { bodyMesh, perMetre, type SolidUnit } from './bodyMesh';
import type { FileBody } from './fileBodies';

/** Binary STL of bodies in the file's frame. STL states no unit: the header's text names it. */
export function stlFile(
  bodies: readonly FileBody[],
  title: string,
  unit: SolidUnit,
  segmentsPerTurn: number,
): Uint8Array {
  const meshes = bodies.map((body) => bodyMesh(body, segmentsPerTurn));
  return writeStl(meshes, perMetre(unit), `${title.slice(0, 60)}, ${unit}`);
}

import { MeshoptSimplifier } from 'meshoptimizer/simplifier';
import { meshVolumeMoments } from '../engine/mass/mesh';
import { createMoments, M } from '../engine/mass/moments';
import type { TriangleMesh } from '../engine/mass/solid';
import { MAX_PICTURE_TRIANGLES } from '../parts/meshBody/picture';
import { boxOf } from './checks/clean';

export interface Picture extends TriangleMesh {
  readonly reduced: boolean;
}

/**
 * The mesh itself where it has few enough triangles; else one with at most `MAX_PICTURE_TRIANGLES`, by collapsing
 * edges (meshoptimizer), and where that does not get there, or leaves less than half or more than twice the volume, by
 * merging points in cells. Only drawn, never weighed.
 */
export async function pictureOf(mesh: TriangleMesh): Promise<Picture> {
  if (mesh.triangles.length <= 3 * MAX_PICTURE_TRIANGLES)
    return { ...compact(mesh), reduced: false };
  await MeshoptSimplifier.ready;
  const points = Float32Array.from(centred(mesh.positions));
  const target = 3 * MAX_PICTURE_TRIANGLES;
  const volume = meshVolumeMoments(mesh, createMoments())[M];
  const flags = [[], ['Prune'], ['Prune', 'Permissive']] as const;
  let best: TriangleMesh | undefined;
  for (const flag of flags) {
    const [triangles] = MeshoptSimplifier.simplify(mesh.triangles, points, 3, target, 1, [...flag]);
    if (triangles.length > target || triangles.length === 0) continue;
    best ??= { positions: mesh.positions, triangles };
    if (holdsVolume(mesh.positions, triangles, volume)) {
      return { ...compact({ positions: mesh.positions, triangles }), reduced: true };
    }
  }
  const [rough] = MeshoptSimplifier.simplifySloppy(mesh.triangles, points, 3, null, target, 1);
  const isBetter = rough.length > 0 && holdsVolume(mesh.positions, rough, volume);
  const chosen = isBetter || !best ? { positions: mesh.positions, triangles: rough } : best;
  return { ...compact(chosen), reduced: true };
}

function holdsVolume(positions: Float64Array, triangles: Uint32Array, volume: number): boolean {
  const drawn = meshVolumeMoments({ positions, triangles }, createMoments())[M];
  return drawn > 0.6 * volume && drawn < 1.7 * volume;
}

/** About the middle of the box, where float32 is finest. */
function centred(positions: Float64Array): Float64Array {
  const { low, high } = boxOf(positions);
  return positions.map((value, i) => value - (low[i % 3] + high[i % 3]) / 2);
}

/** Only the points that are used, in the order of their use. */
function compact({ positions, triangles }: TriangleMesh): TriangleMesh {
  const place = new Int32Array(positions.length / 3).fill(-1);
  const kept: number[] = [];
  const corners = triangles.map((v) => {
    if (place[v] < 0) place[v] = kept.push(v) - 1;
    return place[v];
  });
  const points = new Float64Array(3 * kept.length);
  kept.forEach((v, i) => points.set(positions.subarray(3 * v, 3 * v + 3), 3 * i));
  return { positions: points, triangles: corners };
}

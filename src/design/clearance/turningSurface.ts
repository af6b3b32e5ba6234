import { buildTree, type TriangleTree } from '../../engine/clearance/triangleTree';
import type { Solid } from '../../engine/mass/solid';
import { MAX_PICTURE_TRIANGLES } from '../../parts/meshBody/picture';
import { partType } from '../../parts/registry';
import { weldedMeshes } from '../../parts/tessellate';
import { surfaceDeviation } from '../../parts/tessellation/deviation';
import type { PlacedPart } from '../headNode';

/** A part's surface as triangles, part frame, and how far they lie from the true one at most, m. */
export interface TurningSurface {
  readonly tree: TriangleTree;
  readonly deviation: number;
  /** It is a picture with fewer triangles than the mesh that was weighed: how far it is off is not known. */
  readonly reduced: boolean;
}

/** Steps of a turn that are tried, until the triangles lie within `CLOSE_ENOUGH` of the true surface. */
const STEPS = [48, 96, 192, 384] as const;
/** m. */
const CLOSE_ENOUGH = 1e-5;

/**
 * The surface that is held against keep-outs; null of a part without one (a point mass). A hollow is taken as full: what
 * stood wholly inside it would be an overlap.
 */
export function turningSurface({ part, values }: PlacedPart): TurningSurface | null {
  let deviation = 0;
  const solids = partType(part.kind).solids(values).filter(isBody);
  const meshes = solids.flatMap((solid) => {
    const segmentsPerTurn =
      STEPS.find((steps) => surfaceDeviation(solid, steps) <= CLOSE_ENOUGH) ?? STEPS[3];
    deviation = Math.max(deviation, surfaceDeviation(solid, segmentsPerTurn));
    return weldedMeshes([solid], { segmentsPerTurn });
  });
  const tree = buildTree(meshes);
  if (tree.count.length === 0) return null;
  return { tree, deviation, reduced: isReduced(values) };
}

function isBody(solid: Solid): boolean {
  return 'density' in solid && solid.density > 0;
}

/** Whether the picture of a mesh has fewer triangles than were weighed. */
export function isReduced(values: Readonly<Record<string, unknown>>): boolean {
  const { triangleCount } = values;
  return Array.isArray(triangleCount) && triangleCount[0] > MAX_PICTURE_TRIANGLES;
}

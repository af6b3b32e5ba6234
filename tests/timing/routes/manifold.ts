import type { Manifold as ManifoldBody, ManifoldToplevel, Mat4 } from 'manifold-3d';
import Module from 'manifold-3d';
import type { Outline, Solid } from '../../../src/engine/mass/solid';
import type { Pose } from '../../../src/engine/math/pose';
import { weldedMeshes } from '../../../src/parts/tessellate';
import { flatten } from '../../../src/parts/tessellation/flatten';
import { addMeshMoments, type Ten } from '../meshIntegral';
import { isLump, type Peer, type PlacedSolids, SEGMENTS } from '../pieces';

/** Weighs through solids of the mesh library manifold, each built, placed, read back and integrated. */
export interface ManifoldRoute {
  whole(parts: readonly PlacedSolids[]): Ten;
  /** One part built anew, added to what was kept of the others. */
  oneChanged(peer: Peer): (state: 0 | 1) => Ten;
}

export async function manifoldRoute(): Promise<ManifoldRoute> {
  const module = await Module();
  module.setup();
  const whole = (parts: readonly PlacedSolids[]) => {
    const out: Ten = new Array(10).fill(0);
    for (const part of parts) addPart(module, part, out);
    return out;
  };
  return {
    whole,
    oneChanged({ states, changed }) {
      const kept = whole(states[0].filter((_, i) => i !== changed));
      return (state) => {
        const out = [...kept];
        addPart(module, states[state][changed], out);
        return out;
      };
    },
  };
}

function addPart(module: ManifoldToplevel, { solids, pose }: PlacedSolids, out: Ten): void {
  for (const solid of solids) {
    if (isLump(solid)) continue;
    const built = build(module, solid);
    const placed = solid.pose ? built.transform(matrixOf(solid.pose)) : built;
    const inHead = placed.transform(matrixOf(pose));
    const mesh = inHead.getMesh();
    addMeshMoments(out, mesh.vertProperties, mesh.numProp, mesh.triVerts, solid.density);
    inHead.delete();
    if (placed !== built) placed.delete();
    built.delete();
  }
}

function build({ Manifold, CrossSection, Mesh }: ManifoldToplevel, solid: Solid): ManifoldBody {
  const { shape } = solid;
  if (shape.shape === 'revolution') {
    // Turned about the section's y axis, which becomes z.
    return Manifold.revolve([ring(shape.profile)], SEGMENTS);
  }
  if (shape.shape === 'prism') {
    const section = new CrossSection([ring(shape.outer), ...shape.holes.map(ring)], 'EvenOdd');
    const raised = section.extrude(Math.abs(shape.to - shape.from));
    const body = raised.translate([0, 0, Math.min(shape.from, shape.to)]);
    raised.delete();
    section.delete();
    return body;
  }
  // Lofts have no maker of their own there: the drawn mesh.
  const [mesh] = weldedMeshes([{ ...solid, pose: undefined, density: 1 } as unknown as Solid], {
    segmentsPerTurn: SEGMENTS,
  });
  return new Manifold(
    new Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(mesh.positions),
      triVerts: Uint32Array.from(mesh.triangles),
    }),
  );
}

function ring(outline: Outline): [number, number][] {
  return flatten(outline, SEGMENTS).points.map(([x, y]) => [x, y]);
}

/** Column by column. */
function matrixOf({ rotation: r, translation: [x, y, z] }: Pose): Mat4 {
  return [r[0], r[3], r[6], 0, r[1], r[4], r[7], 0, r[2], r[5], r[8], 0, x, y, z, 1];
}

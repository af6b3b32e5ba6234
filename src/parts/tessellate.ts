import type { Shape, Solid, TriangleMesh } from '../engine/mass/solid';
import { unreachable } from '../engine/result';
import { sameData } from './sameData';
import { sphereProfile } from './shapes';
import { meshSurface } from './tessellation/creases';
import { givenMesh, placedShading, shadedOnce } from './tessellation/givenMesh';
import { loftSurface } from './tessellation/loft';
import { prismSurface } from './tessellation/prism';
import { revolutionSurface } from './tessellation/revolution';
import { sectionLoftSurface } from './tessellation/sectionLoft';
import {
  type MadeShading,
  type ShadedMesh,
  shade,
  type Topology,
  topologyOf,
} from './tessellation/shading';
import { insideOut, readMesh, type Surface, weldedMesh } from './tessellation/surface';

/**
 * Triangle surfaces of solids, in the part's frame and in metres, from the same shapes that are weighed.
 *
 * Round walls become flats with their edges on the true surface, so a circle of n steps loses (2 pi / n)^2 / 6 of its
 * area (0.29 % at the standard 48) and a hole as much; the error falls by four when n doubles. Plane-sided solids are
 * exact to rounding.
 */
export interface Resolution {
  /** Steps in a full turn, a whole number from 12 on. */
  readonly segmentsPerTurn?: number;
}

export const STANDARD_SEGMENTS = 48;

/** The closed surface of one solid. */
export interface SolidMesh extends TriangleMesh {
  readonly name: string;
  /** The solid itself has no size: this is only what is drawn in its place. */
  readonly symbolic: boolean;
}

/** What the stage draws of a part. */
export interface PartMesh {
  readonly positions: Float32Array;
  /** Unit normals, smooth over round walls and broken at sharp edges. */
  readonly normals: Float32Array;
  readonly triangles: Uint32Array;
  /** Ends of the sharp edges, six numbers to an edge. */
  readonly edges: Float32Array;
  /** The stretch of `triangles` of each solid, in the order of the solids. */
  readonly pieces: readonly MeshPiece[];
}
export interface MeshPiece {
  readonly name: string;
  readonly symbolic: boolean;
  readonly firstTriangle: number;
  readonly triangleCount: number;
}

/** One mesh with normals of all solids of a part. A given mesh is shaded once and remembered by its array of points. */
export function tessellate(solids: readonly Solid[], resolution: Resolution = {}): PartMesh {
  return assembled(solids.map((solid) => ({ solid, ...shadedSolid(solid, resolution) }))).mesh;
}

/** A solid with its surface. */
interface Piece {
  readonly solid: Solid;
  readonly shaded: ShadedMesh;
  /** Null where the mesh was given. */
  readonly made: Made | null;
}
interface Made {
  readonly topology: Topology;
  readonly shaded: MadeShading;
}

/**
 * The mesh of a part that changes a little and often, the same to the bit as `tessellate` makes: solids that are as they were
 * keep their surface, and one whose points alone moved keeps its triangles. The arrays are written in place while their
 * lengths stay the same: read them before the next `take`.
 */
export class Mesher {
  private pieces: readonly Piece[] = [];
  private mesh: PartMesh | null = null;

  /** Which arrays hold other numbers than before: those of triangles seldom do. */
  take(solids: readonly Solid[]): { readonly mesh: PartMesh; readonly newTriangles: boolean } {
    const pieces = solids.map((solid, i): Piece => {
      const before = this.pieces[i];
      if (before && sameData(before.solid, solid)) return before;
      return { solid, ...shadedSolid(solid, {}, before?.made) };
    });
    const { mesh, newTriangles } = assembled(pieces, this.mesh, this.pieces);
    this.pieces = pieces;
    this.mesh = mesh;
    return { mesh, newTriangles };
  }
}

/** Puts the pieces into one mesh: into the arrays of `into` where all lengths are the same, only what differs from `before`. */
function assembled(
  pieces: readonly Piece[],
  into: PartMesh | null = null,
  before: readonly Piece[] = [],
): { readonly mesh: PartMesh; readonly newTriangles: boolean } {
  const shaded = pieces.map((piece) => piece.shaded);
  const fits =
    into !== null &&
    pieces.length === before.length &&
    shaded.every((one, i) => sameLengths(one, before[i].shaded));
  const drawn = fits
    ? into
    : {
        positions: new Float32Array(total(shaded, 'positions')),
        normals: new Float32Array(total(shaded, 'normals')),
        triangles: new Uint32Array(total(shaded, 'triangles')),
        edges: new Float32Array(total(shaded, 'edges')),
      };
  const stretches: MeshPiece[] = [];
  const at = { positions: 0, triangles: 0, edges: 0 };
  let newTriangles = !fits;
  shaded.forEach(({ positions, normals, triangles, edges }, i) => {
    const { solid } = pieces[i];
    stretches.push({
      name: solid.name,
      symbolic: isSymbolic(solid),
      firstTriangle: at.triangles / 3,
      triangleCount: triangles.length / 3,
    });
    if (!fits || pieces[i] !== before[i]) {
      drawn.positions.set(positions, at.positions);
      drawn.normals.set(normals, at.positions);
      drawn.edges.set(edges, at.edges);
      if (!fits || triangles !== before[i].shaded.triangles) {
        newTriangles = true;
        const firstVertex = at.positions / 3;
        for (let k = 0; k < triangles.length; k++) {
          drawn.triangles[at.triangles + k] = firstVertex + triangles[k];
        }
      }
    }
    at.positions += positions.length;
    at.triangles += triangles.length;
    at.edges += edges.length;
  });
  return { mesh: { ...drawn, pieces: stretches }, newTriangles };
}

const ARRAYS = ['positions', 'triangles', 'edges'] as const;

function sameLengths(a: ShadedMesh, b: ShadedMesh): boolean {
  return ARRAYS.every((name) => a[name].length === b[name].length);
}

function total(shaded: readonly ShadedMesh[], key: keyof ShadedMesh): number {
  return shaded.reduce((sum, one) => sum + one[key].length, 0);
}

function shadedSolid(
  solid: Solid,
  resolution: Resolution,
  before: Made | null = null,
): Omit<Piece, 'solid'> {
  const given = givenMesh(solid.shape);
  const hole = 'density' in solid && solid.density < 0;
  if (given && !hole) {
    return { shaded: placedShading(shadedOnce(given), solid.pose), made: null };
  }
  const surface = solidSurface(solid, resolution);
  const mesh = readMesh(surface, solid.pose);
  const topology = topologyOf(mesh, surface.faces, before?.topology);
  const shaded = shade(mesh, surface.faces, topology, before?.shaded);
  return { shaded, made: { topology, shaded } };
}

/**
 * The closed surface of every solid with one vertex per point, in double precision: for `inspectMesh`, moments, files.
 * Solids that touch are not joined. The surface of a hole (negative density) faces inward, so volumes add up.
 */
export function weldedMeshes(solids: readonly Solid[], resolution: Resolution = {}): SolidMesh[] {
  return solids.map((solid) => ({
    ...weldedMesh(solidSurface(solid, resolution), solid.pose),
    name: solid.name,
    symbolic: isSymbolic(solid),
  }));
}

function isSymbolic(solid: Solid): boolean {
  return solid.shape.shape === 'point';
}

function solidSurface(solid: Solid, resolution: Resolution): Surface {
  const segments = resolution.segmentsPerTurn ?? STANDARD_SEGMENTS;
  if (!Number.isInteger(segments) || segments < 12) {
    throw new RangeError(
      `tessellate(): segmentsPerTurn is not a whole number from 12 on: ${segments}`,
    );
  }
  if (solid.shape.shape === 'point') {
    const profile = sphereProfile(steelSphereRadius(solid.shape.mass));
    return revolutionSurface({ shape: 'revolution', profile }, segments);
  }
  const surface = shapeSurface(solid.shape, segments);
  return 'density' in solid && solid.density < 0 ? insideOut(surface) : surface;
}

function shapeSurface(shape: Shape, segments: number): Surface {
  switch (shape.shape) {
    case 'revolution':
      return revolutionSurface(shape, segments);
    case 'prism':
      return prismSurface(shape, segments);
    case 'airfoilLoft':
      return loftSurface(shape, segments);
    case 'sectionLoft':
      return sectionLoftSurface(shape, segments);
    case 'mesh':
      return meshSurface(shape);
    case 'known':
      return meshSurface(shape.picture);
    default:
      return unreachable(shape);
  }
}

const STEEL = 7850;

/** Radius of a steel sphere of this mass (kg): the size at which a point mass is drawn. */
function steelSphereRadius(mass: number): number {
  return Math.cbrt((3 * mass) / (4 * Math.PI * STEEL));
}

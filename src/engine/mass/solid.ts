import type { Pose } from '../math/pose';

/**
 * A closed planar outline: vertices in order, the last joined to the first. The third number of a vertex is
 * the *bulge* of the edge that leaves it, the tangent of a quarter of the arc's sweep: 0 (or absent) is a
 * straight edge, +1 a half circle turning counter-clockwise, -1 a half circle turning clockwise.
 * |bulge| may not exceed 1; a full circle is two half circles. Metres.
 */
export type OutlineVertex = readonly [x: number, y: number, bulge?: number];
export type Outline = readonly OutlineVertex[];

/** Swept round the local z axis by a full turn: `profile` is an outline in (radius >= 0, z). */
export interface Revolution {
  readonly shape: 'revolution';
  readonly profile: Outline;
}

/** Pushed along local z from `from` to `to`; `outer` and `holes` are outlines in (x, y). */
export interface Prism {
  readonly shape: 'prism';
  readonly outer: Outline;
  readonly holes: readonly Outline[];
  readonly from: number;
  readonly to: number;
}

/** One end of a loft: its x, chord length, greatest thickness, the leading edge's y, the mid-plane's z. Metres. */
export interface AirfoilStation {
  readonly x: number;
  readonly chord: number;
  readonly thickness: number;
  readonly leadingEdgeY: number;
  readonly z: number;
}

/**
 * A symmetric four-digit airfoil section (NACA Report 460 thickness polynomial, open trailing edge) carried
 * along x; chord, thickness, leading edge and mid-plane vary linearly between the ends (ruled surfaces).
 * The chord runs from the leading edge toward -y; thickness is along z.
 */
export interface AirfoilLoft {
  readonly shape: 'airfoilLoft';
  readonly root: AirfoilStation;
  readonly tip: AirfoilStation;
}

/**
 * One end of a loft between polygons: its x, and the corners (y, z) as y0, z0, y1, z1, ..., the last joined to the first.
 * Metres. Either sense; corners may coincide, edges may not cross.
 */
export interface SectionEnd {
  readonly x: number;
  readonly corners: Float64Array;
}

/**
 * Two polygons of equally many corners in planes of constant x, each corner joined straight to its fellow (ruled
 * surfaces): a blade of any section, its hollow, with taper, sweep and twist. Both ends run the same way round.
 */
export interface SectionLoft {
  readonly shape: 'sectionLoft';
  readonly root: SectionEnd;
  readonly tip: SectionEnd;
}

/** A closed triangle surface facing outward: xyz triples in metres, and index triples. */
export interface TriangleMesh {
  readonly positions: Float64Array;
  readonly triangles: Uint32Array;
}
export interface MeshSolid extends TriangleMesh {
  readonly shape: 'mesh';
}

/**
 * A body whose volume moments are already known (ten numbers, density 1, m^3 to m^5, about the local origin), as of a
 * mesh too fine to keep: weighed by `moments`, drawn by `picture`, which may be coarser. The caller sees to it that
 * the two belong together.
 */
export interface KnownBody {
  readonly shape: 'known';
  readonly moments: Float64Array;
  readonly picture: TriangleMesh;
}

/** All mass at the local origin; `density` of the solid is not used, `mass` is in kg. */
export interface PointMass {
  readonly shape: 'point';
  readonly mass: number;
}

export type Shape = Revolution | Prism | AirfoilLoft | SectionLoft | MeshSolid | KnownBody;

/**
 * A homogeneous piece of a part. `density` in kg/m^3; a negative density takes material away (a hole).
 * `pose` places the shape's local frame in the part's frame.
 */
export interface HomogeneousSolid {
  readonly name: string;
  readonly shape: Shape;
  readonly density: number;
  readonly pose?: Pose;
}
export interface PointSolid {
  readonly name: string;
  readonly shape: PointMass;
  readonly pose?: Pose;
}
export type Solid = HomogeneousSolid | PointSolid;

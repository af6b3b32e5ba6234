import type { HeadModel } from '../../../src/design/headModel';
import { transformPoint } from '../../../src/engine/math/pose';
import { partType } from '../../../src/parts/registry';
import { weldedMeshes } from '../../../src/parts/tessellate';

/** A mass point in the grip frame, kg and m. */
export interface Point {
  readonly mass: number;
  readonly at: readonly [number, number, number];
}

/** Steps in a full turn: a circle loses (2 pi / 72)^2 / 6 = 1.3e-3 of its area, twice that of its second moment. */
const SEGMENTS = 72;
/** Four points of a tetrahedron of equal weight, exact to second degree (Hammer and Stroud, 1956; from memory). */
const NEAR = (5 + 3 * Math.sqrt(5)) / 20;
const FAR = (5 - Math.sqrt(5)) / 20;

/**
 * The turning parts of a head as mass points, from the drawn surfaces: every triangle spans a tetrahedron with the part's
 * origin, inward ones count negative. Shares no code with the weighing of solids.
 */
export function pointsOf(model: HeadModel): readonly Point[] {
  return model.parts
    .filter(({ part, carriedBy }) => !part.hidden && carriedBy === 'grip')
    .flatMap(({ part, values, pose }) => {
      const solids = partType(part.kind).solids(values);
      const meshes = weldedMeshes(solids, { segmentsPerTurn: SEGMENTS });
      return meshes.flatMap((mesh, i) => {
        const solid = solids[i];
        if (!('density' in solid)) throw new Error(`pointsOf(): no density: ${part.id}`);
        return tetrahedra(mesh, Math.abs(solid.density)).map(({ mass, at }) => ({
          mass,
          at: transformPoint(pose, at),
        }));
      });
    });
}

function tetrahedra(
  mesh: { readonly positions: ArrayLike<number>; readonly triangles: ArrayLike<number> },
  density: number,
): readonly Point[] {
  const corner = (index: number) =>
    [0, 1, 2].map((axis) => mesh.positions[3 * index + axis]) as [number, number, number];
  const points: Point[] = [];
  for (let k = 0; k < mesh.triangles.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((j) => corner(mesh.triangles[k + j]));
    const volume =
      (a[0] * (b[1] * c[2] - b[2] * c[1]) -
        a[1] * (b[0] * c[2] - b[2] * c[0]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    for (const weights of [
      [FAR, FAR, FAR],
      [NEAR, FAR, FAR],
      [FAR, NEAR, FAR],
      [FAR, FAR, NEAR],
    ]) {
      const at = [0, 1, 2].map(
        (axis) => weights[0] * a[axis] + weights[1] * b[axis] + weights[2] * c[axis],
      ) as [number, number, number];
      points.push({ mass: (density * volume) / 4, at });
    }
  }
  return points;
}

export interface Spin {
  readonly angularSpeed: number;
  readonly torqueOffset: number;
  readonly precone: number;
}

/** A point of the grip in the rotor frame at a pitch: turned about x, tilted by the precone, moved by the offset. */
export function inRotor({ at: [x, y, z] }: Point, rotor: Spin, pitch: number) {
  const forward = y * Math.cos(pitch) - z * Math.sin(pitch);
  const up = y * Math.sin(pitch) + z * Math.cos(pitch);
  const [s, c] = [Math.sin(rotor.precone), Math.cos(rotor.precone)];
  return { X: x * c - up * s, Y: rotor.torqueOffset + forward, Z: x * s + up * c, forward, up };
}

/** Moment of the force W^2 (X, Y, 0) dm on every point about the feathering axis, N m. */
export function momentOf(points: readonly Point[], rotor: Spin, pitch: number): number {
  let sum = 0;
  for (const point of points) {
    const { X, Y, forward, up } = inRotor(point, rotor, pitch);
    // u = (cos b, 0, sin b), the axis square to it upward is (-sin b, 0, cos b).
    const lift = -Math.sin(rotor.precone) * X;
    sum += point.mass * (forward * lift - up * Y);
  }
  return rotor.angularSpeed ** 2 * sum;
}

/** -(W^2/2) int (X^2 + Y^2) dm, J. */
export function energyOf(points: readonly Point[], rotor: Spin, pitch: number): number {
  let sum = 0;
  for (const point of points) {
    const { X, Y } = inRotor(point, rotor, pitch);
    sum += point.mass * (X * X + Y * Y);
  }
  return (-(rotor.angularSpeed ** 2) / 2) * sum;
}

import {
  addHolesInFace,
  assembleWire,
  basicFaceExtrusion,
  cast,
  type Edge,
  getOC,
  isShape3D,
  makeCircle,
  makeFace,
  makeLine,
  makeThreePointArc,
  revolution as revolveFace,
  type Shape3D,
  Transformation,
  Vector,
  type Wire,
} from 'replicad';
import type { Outline, Prism, Revolution, Solid } from '../../engine/mass/solid';
import type { Pose } from '../../engine/math/pose';
import { mmFromMetres } from '../../engine/units';

/**
 * Shapes of the CAD kernel (Open CASCADE) from the solids that are weighed: arcs stay arcs, round walls are cylinders,
 * cones and spheres, straight ones planes. Lengths in mm. `setOC` must have been called. The shapes live in the kernel's
 * memory until the worker ends.
 */
type Point3 = [number, number, number];

/** Ends that lie nearer than this are one point, m: below the kernel's own 1e-7 mm. */
const SAME = 1e-11;

/** The kernel's shape of a solid, in the part's frame. Throws for a shape that it has no true surfaces for. */
export function kernelShape({ shape, pose }: Solid): Shape3D {
  if (shape.shape !== 'revolution' && shape.shape !== 'prism') {
    throw new RangeError(`kernelShape(): shape has no true surfaces: ${shape.shape}`);
  }
  const made = shape.shape === 'revolution' ? turned(shape) : straight(shape);
  return pose ? placed(made, pose) : made;
}

/** Profile in the x-z plane, turned about z. */
function turned({ profile }: Revolution): Shape3D {
  const wire = wireOf(profile, ([radius, z]) => [mmFromMetres(radius), 0, mmFromMetres(z)]);
  return revolveFace(makeFace(wire), [0, 0, 0], [0, 0, 1]);
}

function straight({ outer, holes, from, to }: Prism): Shape3D {
  const low = mmFromMetres(Math.min(from, to));
  const at = ([x, y]: readonly [number, number]): Point3 => [mmFromMetres(x), mmFromMetres(y), low];
  const whole = makeFace(wireOf(outer, at));
  const face =
    holes.length === 0
      ? whole
      : addHolesInFace(
          whole,
          holes.map((hole) => wireOf(hole, at)),
        );
  return basicFaceExtrusion(face, new Vector([0, 0, mmFromMetres(Math.abs(to - from))]));
}

function wireOf(outline: Outline, at: (point: readonly [number, number]) => Point3): Wire {
  const circle = wholeCircle(outline);
  if (circle) {
    const [x, y, z] = at([circle.x, circle.y]);
    return assembleWire([makeCircle(mmFromMetres(circle.radius), [x, y, z], [0, 0, 1])]);
  }
  const edges: Edge[] = [];
  outline.forEach(([x, y, bulge = 0], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length];
    if (Math.hypot(nextX - x, nextY - y) < SAME) return;
    const [from, to] = [at([x, y]), at([nextX, nextY])];
    if (bulge === 0) edges.push(makeLine(from, to));
    else edges.push(makeThreePointArc(from, at(arcMiddle(x, y, nextX, nextY, bulge)), to));
  });
  return assembleWire(edges);
}

/** Half way along an arc: beside the chord's middle, to its right when it turns counter-clockwise, by bulge / 2 of it. */
function arcMiddle(
  x: number,
  y: number,
  nextX: number,
  nextY: number,
  bulge: number,
): readonly [number, number] {
  const [dx, dy] = [nextX - x, nextY - y];
  return [(x + nextX) / 2 + (bulge * dy) / 2, (y + nextY) / 2 - (bulge * dx) / 2];
}

/** Two half circles are one whole one, which the kernel keeps as one wall. In (x, y) outlines only. */
function wholeCircle(outline: Outline): { x: number; y: number; radius: number } | null {
  if (outline.length !== 2) return null;
  const [[ax, ay, first = 0], [bx, by, second = 0]] = outline;
  if (Math.abs(first) !== 1 || first !== second) return null;
  return { x: (ax + bx) / 2, y: (ay + by) / 2, radius: Math.hypot(bx - ax, by - ay) / 2 };
}

/** The shape moved from the frame B to the frame A of X_AB. */
export function placed(shape: Shape3D, { rotation: r, translation }: Pose): Shape3D {
  const [x, y, z] = translation.map(mmFromMetres);
  const oc = getOC();
  const move = new oc.gp_Trsf();
  move.SetValues(r[0], r[1], r[2], x, r[3], r[4], r[5], y, r[6], r[7], r[8], z);
  const moved = cast(new Transformation(move).transform(shape.wrapped));
  if (!isShape3D(moved)) throw new Error('placed(): the kernel gave no solid');
  return moved;
}

import { airfoilHalfThickness } from '../../src/engine/mass/airfoil';
import type { Outline, OutlineVertex, Solid } from '../../src/engine/mass/solid';
import { POSE_IDENTITY } from '../../src/engine/math/pose';
import { apply, subtract, transpose, type Vec3 } from '../../src/engine/math/vector';

/** Whether the point (part frame) lies inside the solid, from the shape's definition: no moments, no mesh. */
export function contains(solid: Solid, point: Vec3): boolean {
  const pose = solid.pose ?? POSE_IDENTITY;
  const [x, y, z] = apply(transpose(pose.rotation), subtract(point, pose.translation));
  const shape = solid.shape;
  switch (shape.shape) {
    case 'revolution':
      return insideOutline(shape.profile, Math.hypot(x, y), z);
    case 'prism':
      return (
        z > Math.min(shape.from, shape.to) &&
        z < Math.max(shape.from, shape.to) &&
        insideOutline(shape.outer, x, y) &&
        !shape.holes.some((hole) => insideOutline(hole, x, y))
      );
    case 'airfoilLoft': {
      const { root, tip } = shape;
      const t = (x - root.x) / (tip.x - root.x);
      if (!(t > 0 && t < 1)) return false;
      const blend = (key: 'chord' | 'thickness' | 'leadingEdgeY' | 'z') =>
        root[key] + t * (tip[key] - root[key]);
      const s = (blend('leadingEdgeY') - y) / blend('chord');
      if (!(s > 0 && s < 1)) return false;
      return Math.abs(z - blend('z')) < airfoilHalfThickness(s) * blend('thickness');
    }
    case 'sectionLoft': {
      const { root, tip } = shape;
      const t = (x - root.x) / (tip.x - root.x);
      if (!(t > 0 && t < 1)) return false;
      const corners: OutlineVertex[] = [];
      for (let i = 0; i < root.corners.length; i += 2) {
        const blend = (k: number) => root.corners[k] + t * (tip.corners[k] - root.corners[k]);
        corners.push([blend(i), blend(i + 1)]);
      }
      return insideOutline(corners, y, z);
    }
    default:
      throw new Error(`contains(): not for ${shape.shape}`);
  }
}

/**
 * Even-odd rule on the polygon of chords; the sliver between each chord and its arc then turns the answer over once.
 */
function insideOutline(outline: Outline, x: number, y: number): boolean {
  let inside = false;
  for (let i = 0; i < outline.length; i++) {
    const [x0, y0, bulge = 0] = outline[i];
    const [x1, y1] = outline[(i + 1) % outline.length];
    if (y0 > y !== y1 > y && x < x0 + ((y - y0) / (y1 - y0)) * (x1 - x0)) inside = !inside;
    if (bulge !== 0 && inSegment(x0, y0, x1, y1, bulge, x, y)) inside = !inside;
  }
  return inside;
}

function inSegment(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  bulge: number,
  x: number,
  y: number,
): boolean {
  const chord = Math.hypot(x1 - x0, y1 - y0);
  const sagitta = (bulge * chord) / 2;
  const radius = (chord * chord) / 4 / (2 * Math.abs(sagitta)) + Math.abs(sagitta) / 2;
  // The arc lies to the right of the chord when the bulge is positive.
  const [rightX, rightY] = [(y1 - y0) / chord, -(x1 - x0) / chord];
  const side = Math.sign(bulge);
  const toCentre = side * (Math.abs(sagitta) - radius);
  const cx = (x0 + x1) / 2 + toCentre * rightX;
  const cy = (y0 + y1) / 2 + toCentre * rightY;
  const beyond = (x - x0) * rightX + (y - y0) * rightY;
  return side * beyond > 0 && Math.hypot(x - cx, y - cy) < radius;
}

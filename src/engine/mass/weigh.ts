import { gaussLegendre } from '../math/gaussLegendre';
import { unreachable } from '../result';
import { AIRFOIL_SECTION } from './airfoil';
import { meshVolumeMoments } from './mesh';
import {
  accumulate,
  clearMoments,
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  M,
  type Moments,
  SX,
  SY,
  SZ,
  transformMoments,
} from './moments';
import { addRegionMoments, clearArea, createAreaMoments } from './outline';
import { revolutionMoments } from './revolution';
import { sectionLoftMoments } from './sectionLoft';
import type { AirfoilLoft, HomogeneousSolid, Prism, Shape, Solid } from './solid';

const region = createAreaMoments();

/**
 * Volume moments (density 1) of a prism: area moments, those of the holes taken away, times the powers of z integrated
 * over its height. Neither the outlines' sense nor the order of `from` and `to` matters.
 */
export function prismMoments(solid: Prism, out: Moments): Moments {
  const { outer, holes, from, to } = solid;
  clearArea(region);
  addRegionMoments(outer, 1, region);
  for (let i = 0; i < holes.length; i++) addRegionMoments(holes[i], -1, region);
  const height = Math.abs(to - from);
  const middle = (to + from) / 2;
  const volume = region.area * height;
  const x = region.x * height;
  const y = region.y * height;
  out[M] = volume;
  out[SX] = x;
  out[SY] = y;
  out[SZ] = volume * middle;
  out[JXX] = region.xx * height;
  out[JYY] = region.yy * height;
  out[JZZ] = volume * (middle * middle + (height * height) / 12);
  out[JXY] = region.xy * height;
  out[JXZ] = x * middle;
  out[JYZ] = y * middle;
  return out;
}

const SPAN_RULE = gaussLegendre(5);

/**
 * Volume moments (density 1) of a tapered airfoil loft. At each x the section's moments are products of chord,
 * thickness, leading edge and mid-plane, each linear in x: polynomials of degree <= 4 in x (area times x^2, thickness^3
 * times chord), for which five Gauss-Legendre points are exact (degree 9). The order of root and tip does not matter.
 */
export function airfoilLoftMoments(solid: AirfoilLoft, out: Moments): Moments {
  const { root, tip } = solid;
  const halfSpan = (tip.x - root.x) / 2;
  clearMoments(out);
  for (let k = 0; k < 5; k++) {
    const t = (SPAN_RULE.nodes[k] + 1) / 2;
    const w = SPAN_RULE.weights[k] * Math.abs(halfSpan);
    const x = root.x + t * (tip.x - root.x);
    const chord = root.chord + t * (tip.chord - root.chord);
    const thickness = root.thickness + t * (tip.thickness - root.thickness);
    const edge = root.leadingEdgeY + t * (tip.leadingEdgeY - root.leadingEdgeY);
    const z = root.z + t * (tip.z - root.z);
    const area = w * AIRFOIL_SECTION.area * thickness * chord;
    const aft = w * AIRFOIL_SECTION.first * thickness * chord * chord;
    const aftSquared = w * AIRFOIL_SECTION.second * thickness * chord * chord * chord;
    const across = w * AIRFOIL_SECTION.cube * thickness * thickness * thickness * chord;
    const y = edge * area - aft;
    out[M] += area;
    out[SX] += x * area;
    out[SY] += y;
    out[SZ] += z * area;
    out[JXX] += x * x * area;
    out[JYY] += edge * edge * area - 2 * edge * aft + aftSquared;
    out[JZZ] += across + z * z * area;
    out[JXY] += x * y;
    out[JXZ] += x * z * area;
    out[JYZ] += z * y;
  }
  return out;
}

/** Volume moments (density 1) of any shape about its own origin, in its own frame. */
export function volumeMoments(shape: Shape, out: Moments): Moments {
  switch (shape.shape) {
    case 'revolution':
      return revolutionMoments(shape, out);
    case 'prism':
      return prismMoments(shape, out);
    case 'airfoilLoft':
      return airfoilLoftMoments(shape, out);
    case 'sectionLoft':
      return sectionLoftMoments(shape, out);
    case 'mesh':
      return meshVolumeMoments(shape, out);
    case 'known':
      out.set(shape.moments);
      return out;
    default:
      return unreachable(shape);
  }
}

const solidScratch = createMoments();

/** Mass moments of one solid in its part's frame, about the part's origin (kg, m). */
export function solidMoments(solid: Solid, out: Moments): Moments {
  clearMoments(out);
  addSolid(solid, out);
  return out;
}

/** Mass moments of a list of solids, holes (negative density) taken away. */
export function sumSolids(solids: readonly Solid[], out: Moments): Moments {
  clearMoments(out);
  for (let i = 0; i < solids.length; i++) addSolid(solids[i], out);
  return out;
}

function addSolid(solid: Solid, out: Moments): void {
  const { shape, pose } = solid;
  let density = 1;
  if (shape.shape === 'point') {
    clearMoments(solidScratch);
    solidScratch[M] = shape.mass;
  } else {
    volumeMoments(shape, solidScratch);
    density = (solid as HomogeneousSolid).density;
  }
  if (pose) transformMoments(solidScratch, pose, solidScratch);
  accumulate(out, solidScratch, density);
}

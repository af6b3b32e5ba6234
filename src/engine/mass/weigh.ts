import { gaussLegendre } from '../math/gaussLegendre';
import { unreachable } from '../result';
import { AIRFOIL_SECTION } from './airfoil';
import { meshVolumeMoments } from './mesh';
import {
  accumulate,
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
import { type AreaMoments, addAreaMoments, type ProfileMoments, profileMoments } from './outline';
import { sectionLoftMoments } from './sectionLoft';
import type { AirfoilLoft, Prism, Revolution, Shape, Solid } from './solid';

const profileScratch: ProfileMoments = { r: 0, rh: 0, rhh: 0, rrr: 0 };

/**
 * Volume moments (density 1) of a solid of revolution about its own origin. With w = int r dA and so on over the
 * profile: V = 2 pi int r, S_z = 2 pi int r h, J_zz = 2 pi int r h^2, J_xx = J_yy = pi int r^3 (the mean of
 * cos^2 over a turn is one half). The profile's sense does not matter.
 */
export function revolutionMoments(solid: Revolution, out: Moments): Moments {
  const h0 = solid.profile[0][1];
  profileMoments(solid.profile, h0, profileScratch);
  const sense = profileScratch.r < 0 ? -1 : 1;
  const turn = 2 * Math.PI * sense;
  const volume = turn * profileScratch.r;
  const first = turn * profileScratch.rh;
  out.fill(0);
  out[M] = volume;
  out[SZ] = first + volume * h0;
  out[JXX] = (turn / 2) * profileScratch.rrr;
  out[JYY] = out[JXX];
  out[JZZ] = turn * profileScratch.rhh + 2 * h0 * first + h0 * h0 * volume;
  return out;
}

const outerScratch: AreaMoments = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
const holeScratch: AreaMoments = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };

function clearArea(area: AreaMoments): void {
  area.area = 0;
  area.x = 0;
  area.y = 0;
  area.xx = 0;
  area.yy = 0;
  area.xy = 0;
}

/**
 * Volume moments (density 1) of a prism: area moments times the powers of z integrated over its height. Neither the
 * outlines' sense nor the order of `from` and `to` matters.
 */
export function prismMoments(solid: Prism, out: Moments): Moments {
  const { from, to } = solid;
  const height = Math.abs(to - from);
  const middle = (to + from) / 2;
  const spread = (height * height) / 12;
  out.fill(0);
  clearArea(outerScratch);
  addAreaMoments(solid.outer, 1, outerScratch);
  const sense = outerScratch.area < 0 ? -1 : 1;
  addPrism(outerScratch, sense * height, middle, spread, out);
  for (const hole of solid.holes) {
    clearArea(holeScratch);
    addAreaMoments(hole, 1, holeScratch);
    addPrism(holeScratch, (holeScratch.area < 0 ? 1 : -1) * height, middle, spread, out);
  }
  return out;
}

function addPrism(
  area: AreaMoments,
  height: number,
  middle: number,
  spread: number,
  out: Moments,
): void {
  out[M] += area.area * height;
  out[SX] += area.x * height;
  out[SY] += area.y * height;
  out[SZ] += area.area * height * middle;
  out[JXX] += area.xx * height;
  out[JYY] += area.yy * height;
  out[JXY] += area.xy * height;
  out[JXZ] += area.x * height * middle;
  out[JYZ] += area.y * height * middle;
  out[JZZ] += area.area * height * (middle * middle + spread);
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
  out.fill(0);
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
  if (solid.shape.shape === 'point') {
    out.fill(0);
    out[M] = solid.shape.mass;
  } else {
    volumeMoments(solid.shape, out);
    const density = (solid as { readonly density: number }).density;
    for (let i = 0; i < out.length; i++) out[i] *= density;
  }
  return solid.pose ? transformMoments(out, solid.pose, out) : out;
}

/** Mass moments of a list of solids, holes (negative density) taken away. */
export function sumSolids(solids: readonly Solid[], out: Moments): Moments {
  out.fill(0);
  for (const solid of solids) accumulate(out, solidMoments(solid, solidScratch));
  return out;
}

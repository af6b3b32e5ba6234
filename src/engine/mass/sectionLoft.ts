import { gaussLegendre } from '../math/gaussLegendre';
import { JXX, JXY, JXZ, JYY, JYZ, JZZ, M, type Moments, SX, SY, SZ } from './moments';
import type { AreaMoments } from './outline';
import type { SectionLoft } from './solid';

/**
 * Area moments of the polygon that lies the share `t` of the way from one end of a loft to the other, about the section
 * frame's origin: `x` and `y` of `AreaMoments` are the section's y and z. Counter-clockwise seen from +x is positive.
 * Summed over triangles from the first corner, then shifted, so that a small section far out keeps its digits.
 */
export function sectionMoments(loft: SectionLoft, t: number, out: AreaMoments): AreaMoments {
  const a = loft.root.corners;
  const b = loft.tip.corners;
  const y0 = a[0] + t * (b[0] - a[0]);
  const z0 = a[1] + t * (b[1] - a[1]);
  let py = 0;
  let pz = 0;
  let area = 0;
  let sy = 0;
  let sz = 0;
  let yy = 0;
  let zz = 0;
  let yz = 0;
  for (let i = 2; i + 1 < a.length; i += 2) {
    const qy = a[i] + t * (b[i] - a[i]) - y0;
    const qz = a[i + 1] + t * (b[i + 1] - a[i + 1]) - z0;
    const twice = py * qz - qy * pz;
    area += twice;
    sy += twice * (py + qy);
    sz += twice * (pz + qz);
    yy += twice * (py * py + py * qy + qy * qy);
    zz += twice * (pz * pz + pz * qz + qz * qz);
    yz += twice * (2 * (py * pz + qy * qz) + py * qz + qy * pz);
    py = qy;
    pz = qz;
  }
  area /= 2;
  sy /= 6;
  sz /= 6;
  out.area = area;
  out.x = sy + y0 * area;
  out.y = sz + z0 * area;
  out.xx = yy / 12 + y0 * (2 * sy + y0 * area);
  out.yy = zz / 12 + z0 * (2 * sz + z0 * area);
  out.xy = yz / 24 + y0 * sz + z0 * sy + y0 * z0 * area;
  return out;
}

const SPAN_RULE = gaussLegendre(3);
const scratch: AreaMoments = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };

/**
 * Volume moments (density 1) of a loft between polygons. The corners are linear in x, so the section's area is of degree
 * 2 in x, its first moments of degree 3, its second moments of degree 4; with the powers of x that S and J want nothing
 * exceeds degree 4, for which three Gauss-Legendre stations are exact (degree 5). Neither the order of root and tip nor
 * the sense of the polygons matters, as long as both ends have the same. Throws where they differ in number of corners.
 */
export function sectionLoftMoments(solid: SectionLoft, out: Moments): Moments {
  const { root, tip } = solid;
  if (root.corners.length !== tip.corners.length) {
    throw new RangeError(
      `sectionLoftMoments(): ends differ in corners: ${root.corners.length}, ${tip.corners.length}`,
    );
  }
  const halfSpan = Math.abs(tip.x - root.x) / 2;
  out.fill(0);
  for (let k = 0; k < 3; k++) {
    const t = (SPAN_RULE.nodes[k] + 1) / 2;
    const w = SPAN_RULE.weights[k] * halfSpan;
    const x = root.x + t * (tip.x - root.x);
    sectionMoments(solid, t, scratch);
    out[M] += w * scratch.area;
    out[SX] += w * x * scratch.area;
    out[SY] += w * scratch.x;
    out[SZ] += w * scratch.y;
    out[JXX] += w * x * x * scratch.area;
    out[JYY] += w * scratch.xx;
    out[JZZ] += w * scratch.yy;
    out[JXY] += w * x * scratch.x;
    out[JXZ] += w * x * scratch.y;
    out[JYZ] += w * scratch.xy;
  }
  if (out[M] < 0) for (let i = 0; i < out.length; i++) out[i] = -out[i];
  return out;
}

import {
  createSegmentMoments,
  J00,
  J01,
  J02,
  J03,
  J20,
  J21,
  segmentMoments,
} from './circularSegment';
import { clearMoments, JXX, JYY, JZZ, M, type Moments, SZ } from './moments';
import { bulgeOf } from './outline';
import type { Outline, Revolution } from './solid';

/**
 * Volume moments (density 1) of a solid of revolution about its own origin. With int r = int r dA and so on over the
 * profile: V = 2 pi int r, S_z = 2 pi int r h, J_zz = 2 pi int r h^2, J_xx = J_yy = pi int r^3 (the mean of
 * cos^2 over a turn is one half). The profile's sense does not matter.
 */
export function revolutionMoments({ profile }: Revolution, out: Moments): Moments {
  clearMoments(out);
  if (isTube(profile)) tubeMoments(profile, out);
  else turnedMoments(profile, out);
  return out;
}

/** Whether a profile is a rectangle along the axes that begins with a level edge: a tube, a disc or a shaft. */
function isTube(profile: Outline): boolean {
  if (profile.length !== 4) return false;
  const a = profile[0];
  const b = profile[1];
  const c = profile[2];
  const d = profile[3];
  return (
    a[1] === b[1] &&
    b[0] === c[0] &&
    c[1] === d[1] &&
    d[0] === a[0] &&
    // A vertex of two numbers has no bulge.
    a.length + b.length + c.length + d.length === 8
  );
}

/** The commonest of all: V = pi (R^2 - r^2) H, and by handbook V H^2 / 12 along and V (R^2 + r^2) / 4 across it. */
function tubeMoments(profile: Outline, out: Moments): void {
  const from = profile[0];
  const to = profile[2];
  const inner = from[0];
  const outer = to[0];
  const height = to[1] - from[1];
  const middle = (to[1] + from[1]) / 2;
  const volume = Math.PI * Math.abs((outer - inner) * height) * (outer + inner);
  const across = (volume * (outer * outer + inner * inner)) / 4;
  out[M] = volume;
  out[SZ] = volume * middle;
  out[JXX] = across;
  out[JYY] = across;
  out[JZZ] = volume * (middle * middle + (height * height) / 12);
}

const integrals: ProfileMoments = { r: 0, rh: 0, rhh: 0, rrr: 0 };

function turnedMoments(profile: Outline, out: Moments): void {
  const h0 = profile[0][1];
  profileMoments(profile, h0, integrals);
  const turn = (integrals.r < 0 ? -2 : 2) * Math.PI;
  const volume = turn * integrals.r;
  const first = turn * integrals.rh;
  const across = (turn / 2) * integrals.rrr;
  out[M] = volume;
  out[SZ] = first + volume * h0;
  out[JXX] = across;
  out[JYY] = across;
  out[JZZ] = turn * integrals.rhh + h0 * (2 * first + h0 * volume);
}

/** int r dA, int r h dA, int r h^2 dA, int r^3 dA of a profile in (r, h). */
interface ProfileMoments {
  r: number;
  rh: number;
  rhh: number;
  rrr: number;
}

const segment = createSegmentMoments();

/** int u^p h^q dA over the segments on the arcs of a profile, in the order of `profileMoments`. */
const profileArcs = new Float64Array(8);

/**
 * The integrals a solid of revolution needs, h taken from `h0`. Counter-clockwise (r to the right, h up) is positive.
 * Edge by edge as in `outline.ts`, here with the middle (m, k) and the half edge (d, e). About the first vertex in r too, then shifted: a thin ring far from its axis keeps its digits.
 */
function profileMoments(profile: Outline, h0: number, out: ProfileMoments): void {
  const r0 = profile[0][0];
  const n = profile.length;
  let area = 0;
  let u1 = 0;
  let u2 = 0;
  let u3 = 0;
  let h1 = 0;
  let uh = 0;
  let hh = 0;
  let uhh = 0;
  let arcs = 0;
  let fromU = 0;
  let fromH = profile[0][1] - h0;
  let bulge = bulgeOf(profile[0]);
  for (let i = 1; i <= n; i++) {
    const to = profile[i < n ? i : 0];
    const toU = to[0] - r0;
    const toH = to[1] - h0;
    const m = (fromU + toU) / 2;
    const k = (fromH + toH) / 2;
    const d = (toU - fromU) / 2;
    const e = (toH - fromH) / 2;
    // A level edge has dh = 0 and gives nothing.
    if (e !== 0) {
      const mm = m * m;
      const dd = (d * d) / 3;
      const de = (d * e) / 3;
      const kk = k * k + (e * e) / 3;
      area += 2 * m * e;
      u1 += (mm + dd) * e;
      u2 += (2 / 3) * m * (mm + 3 * dd) * e;
      u3 += (mm * (mm / 2 + 3 * dd) + 0.9 * dd * dd) * e;
      h1 += 2 * (m * k + de) * e;
      uh += ((mm + dd) * k + 2 * m * de) * e;
      hh += 2 * (m * kk + 2 * k * de) * e;
      uhh += (mm * kk + k * (4 * m * de + dd * k) + 1.8 * de * de) * e;
    }
    if (bulge !== 0) {
      if (arcs++ === 0) profileArcs.fill(0);
      addProfileSegment(m, k, d, e, bulge, profileArcs);
    }
    fromU = toU;
    fromH = toH;
    bulge = bulgeOf(to);
  }
  if (arcs > 0) {
    area += profileArcs[0];
    u1 += profileArcs[1];
    u2 += profileArcs[2];
    u3 += profileArcs[3];
    h1 += profileArcs[4];
    uh += profileArcs[5];
    hh += profileArcs[6];
    uhh += profileArcs[7];
  }
  out.r = r0 * area + u1;
  out.rh = r0 * h1 + uh;
  out.rhh = r0 * hh + uhh;
  out.rrr = r0 * (r0 * (r0 * area + 3 * u1) + 3 * u2) + u3;
}

/** The segment over the chord through (m, k) with the half chord (d, e), about the origin of these. */
function addProfileSegment(
  m: number,
  k: number,
  d: number,
  e: number,
  bulge: number,
  out: Float64Array,
): void {
  segmentMoments(bulge, segment);
  const scale = d * d + e * e;
  const area = scale * segment[J00];
  const first = scale * segment[J01];
  const along = scale * segment[J20];
  const across = scale * segment[J02];
  const mixed = scale * segment[J21];
  const cube = scale * segment[J03];
  // About the chord's middle; w points along (e, -d).
  const u = first * e;
  const h = -first * d;
  const uu = along * d * d + across * e * e;
  const uh = (along - across) * d * e;
  const hh = along * e * e + across * d * d;
  const uuu = e * (3 * mixed * d * d + cube * e * e);
  const uhh = e * (mixed * (e * e - 2 * d * d) + cube * d * d);
  const shifted = hh + k * (2 * h + k * area);
  out[0] += area;
  out[1] += u + m * area;
  out[2] += uu + m * (2 * u + m * area);
  out[3] += uuu + m * (3 * uu + m * (3 * u + m * area));
  out[4] += h + k * area;
  out[5] += uh + m * h + k * (u + m * area);
  out[6] += shifted;
  out[7] += uhh + k * (2 * uh + k * u) + m * shifted;
}

import { inverse, type Pose, transformPoint } from '../math/pose';
import type { Vec3 } from '../math/vector';
import { type ConvexShape, type KeepOutShape, middleDepth } from './keepOut';
import { isInside, meshDistance } from './meshDistance';
import { AT_MIDDLE, type Motion } from './motion';
import { ClearanceSearch, type Nearest, type Span } from './search';
import { sinkSearch } from './sink';
import type { PlacedSurface } from './surface';
import { Target } from './target';
import { buildTree, type TriangleTree } from './triangleTree';

/** A keep-out ready to be held against parts. */
export interface PlacedKeepOut {
  readonly shape: KeepOutShape;
  /** Of a mesh: its triangles. */
  readonly tree: TriangleTree | null;
  /** Its frame in the frame that it is fixed to: the rotor's (hub), or the case's, which is the rotor's at azimuth zero. */
  readonly pose: Pose;
  /** The shaft turns past it: fixed to the case, and not the same all round the shaft. */
  readonly passed: boolean;
}

/** How the two meet. 'cut': some of the part's surface lies in the keep-out, or touches it; 'keepOutInside': it lies wholly within the part. */
export type Meeting = 'clear' | 'cut' | 'keepOutInside';

export interface Gap {
  readonly meeting: Meeting;
  /**
   * Least distance between the surfaces, m. Where they overlap it is negative: how deep the part's surface reaches into
   * the keep-out, or, where the keep-out lies wholly within the part, how deep its own middle lies in itself.
   */
  readonly gap: number;
  /** The true value for the surface given is not below gap - error, nor above gap (overlap of a mesh: see `overlapOf`). */
  readonly error: number;
  readonly pitch: number;
  readonly azimuth: number;
  /** Where on the part, in the frame that carries it; and where on the keep-out, in the frame that it is fixed to. */
  readonly onPart: Vec3;
  readonly onKeepOut: Vec3;
  readonly evaluations: number;
}

/** To which a gap is proven, m; surfaces of triangles no farther apart are taken to touch. */
export const TOLERANCE = 5e-6;
/** Bounds that one search may work out. */
export const BUDGET = 250_000;
/** Distances that the depth of a mesh's overlap may take. */
const SINK_BUDGET = 4_000;

const search = new ClearanceSearch();

export function placeKeepOut(
  shape: KeepOutShape,
  pose: Pose,
  fixedTo: 'hub' | 'case',
): PlacedKeepOut {
  const tree = shape.shape === 'mesh' ? buildTree([shape.mesh]) : null;
  return { shape, tree, pose, passed: fixedTo === 'case' && !isRound(shape, pose) };
}

/** Whether it looks the same from everywhere round the shaft: a plane square to it, a cylinder about it. */
function isRound(shape: KeepOutShape, { rotation: r, translation: t }: Pose): boolean {
  const upright = Math.hypot(r[2], r[5]) < 1e-12;
  if (shape.shape === 'plane') return upright;
  return shape.shape === 'cylinder' && upright && Math.hypot(t[0], t[1]) < 1e-12;
}

/**
 * The least gap between a moving surface (closed, facing outward) and a keep-out over a span of pitch and, where the shaft
 * turns past the keep-out, a whole turn of azimuth; overlap where there is one. Exact to `tolerance` for the triangles
 * given, unless the budget ends first: then `error` says what is proven.
 */
export function nearestGap(
  surface: PlacedSurface,
  motion: Motion,
  keepOut: PlacedKeepOut,
  range: { readonly low: number; readonly high: number },
  tolerance = TOLERANCE,
  budget = BUDGET,
): Gap {
  const span: Span = { ...range, turn: keepOut.passed ? 2 * Math.PI : 0 };
  const target = new Target(keepOut.tree ?? (keepOut.shape as ConvexShape), keepOut.pose);
  const nearest = search.run(surface, motion, target, span, tolerance, budget);
  const near = gapOf(nearest, motion, target);
  if (keepOut.tree) {
    const overlap = overlapOf(surface, motion, keepOut, span, near, tolerance);
    if (overlap) return overlap;
  } else if (near.gap <= 0) {
    return { ...near, meeting: 'cut' };
  }
  return keepOutWithin(surface, motion, keepOut, span, near) ?? near;
}

function gapOf(nearest: Nearest, motion: Motion, target: Target): Gap {
  const { bound, point, pitch, azimuth, evaluations } = nearest;
  const p = fixedPoint(point, motion, pitch, azimuth);
  const out = new Float64Array(4);
  // Of a mesh another triangle may be nearer still than the one that was looked at.
  target.nearest(p[0], p[1], p[2], out);
  const [gap, x, y, z] = out;
  return {
    meeting: 'clear',
    gap,
    error: Math.max(0, gap - bound),
    pitch,
    azimuth,
    onPart: point,
    // One step down the gradient.
    onKeepOut: [p[0] - gap * x, p[1] - gap * y, p[2] - gap * z],
    evaluations,
  };
}

/** A point of the part in the frame that the keep-out is fixed to. */
function fixedPoint([x, y, z]: Vec3, motion: Motion, pitch: number, azimuth: number): Vec3 {
  const p = new Float64Array(3);
  motion.aim(pitch, pitch);
  motion.place(AT_MIDDLE, x, y, z, p);
  const c = Math.cos(azimuth);
  const s = Math.sin(azimuth);
  return [c * p[0] - s * p[1], s * p[0] + c * p[1], p[2]];
}

/**
 * Overlap with a mesh: its surface is met, or a corner of the part lies within it (if surfaces never meet over the whole
 * span, one place speaks for all). The depth is found by halving with the distance's own bound, that it changes by no
 * more than a point moves: slower, so its error is larger, and said.
 */
function overlapOf(
  surface: PlacedSurface,
  motion: Motion,
  keepOut: PlacedKeepOut,
  span: Span,
  near: Gap,
  tolerance: number,
): Gap | null {
  const { tree } = keepOut;
  if (!tree) return null;
  const corner: Vec3 = [surface.corners[0], surface.corners[1], surface.corners[2]];
  const [x, y, z] = transformPoint(
    inverse(keepOut.pose),
    fixedPoint(corner, motion, (span.low + span.high) / 2, 0),
  );
  // Where the search could not prove a gap there may be an overlap.
  const meets = near.gap <= Math.max(tolerance, near.error);
  if (!meets && !isInside(tree, x, y, z)) return null;
  const X_KF = inverse(keepOut.pose);
  const depth = (pitch: number, azimuth: number, point: Vec3) => {
    const [kx, ky, kz] = transformPoint(X_KF, fixedPoint(point, motion, pitch, azimuth));
    return meshDistance(tree, kx, ky, kz);
  };
  const sunk = sinkSearch(surface, motion, depth, span, SINK_BUDGET);
  // Surfaces that only touch have nothing inside.
  if (meets && sunk.distance >= 0) {
    const error = Math.max(near.error, -sunk.bound);
    return near.gap <= tolerance ? { ...near, gap: 0, error, meeting: 'cut' } : null;
  }
  return {
    meeting: 'cut',
    gap: sunk.distance,
    error: sunk.distance - sunk.bound,
    pitch: sunk.pitch,
    azimuth: sunk.azimuth,
    onPart: sunk.point,
    onKeepOut: fixedPoint(sunk.point, motion, sunk.pitch, sunk.azimuth),
    evaluations: near.evaluations + sunk.evaluations,
  };
}

/** A keep-out whose surface is never met and one point of which lies within the part lies within it all. */
function keepOutWithin(
  surface: PlacedSurface,
  motion: Motion,
  keepOut: PlacedKeepOut,
  span: Span,
  near: Gap,
): Gap | null {
  const { shape, tree, pose } = keepOut;
  if (shape.shape === 'plane' || near.gap <= 0) return null;
  const own: Vec3 = tree ? [tree.corners[0], tree.corners[1], tree.corners[2]] : [0, 0, 0];
  const at = transformPoint(pose, own);
  const pitch = (span.low + span.high) / 2;
  if (!holds(surface, motion, pitch, at)) return null;
  return {
    ...near,
    meeting: 'keepOutInside',
    gap: -innerDepth(keepOut),
    error: 0,
  };
}

/** Whether the part holds a point of the rotor frame at a pitch. */
function holds(surface: PlacedSurface, motion: Motion, pitch: number, at: Vec3): boolean {
  motion.aim(pitch, pitch);
  const axes = [0, 1, 2].map((k) => {
    const out = new Float64Array(3);
    motion.face(k === 0 ? 1 : 0, k === 1 ? 1 : 0, k === 2 ? 1 : 0, out);
    return out;
  });
  const origin = new Float64Array(3);
  motion.place(AT_MIDDLE, 0, 0, 0, origin);
  // p_C = R_CR (p_R - o): `face` gives the columns of R_CR.
  const [x, y, z] = [0, 1, 2].map((i) =>
    axes.reduce((sum, column, k) => sum + column[i] * (at[k] - origin[k]), 0),
  );
  return isInside({ ...surface.tree, ...inCarrier(surface) }, x, y, z);
}

/** The tree with its corners in C. Its boxes are turned, so each is given the ball round it. */
function inCarrier({ tree, corners, centres }: PlacedSurface) {
  const halves = new Float64Array(tree.halves.length);
  for (let h = 0; h < halves.length; h += 3) {
    const radius = Math.hypot(tree.halves[h], tree.halves[h + 1], tree.halves[h + 2]);
    halves.fill(radius, h, h + 3);
  }
  return { corners, centres, halves };
}

/** How deep the middle of a keep-out lies in itself, m: of a mesh the middle of its box, or nothing where that is outside. */
function innerDepth({ shape, tree }: PlacedKeepOut): number {
  if (shape.shape !== 'mesh') return middleDepth(shape);
  if (!tree) return 0;
  return Math.max(0, -meshDistance(tree, tree.centres[0], tree.centres[1], tree.centres[2]));
}

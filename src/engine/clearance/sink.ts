import type { Vec3 } from '../math/vector';
import { AT_MIDDLE, type Motion } from './motion';
import type { Nearest, Span } from './search';
import type { PlacedSurface } from './surface';

/** Signed distance of a point of the part (C) at a pitch and azimuth. */
export type Depth = (pitch: number, azimuth: number, point: Vec3) => number;

type Triangle = readonly [Vec3, Vec3, Vec3];
/** A node of the part's tree, or a triangle. */
type Piece = number | Triangle;

interface Part {
  readonly piece: Piece;
  readonly low: number;
  readonly high: number;
  readonly from: number;
  readonly to: number;
  readonly bound: number;
  /** Sizes of its ball, its way with pitch and with azimuth, m. */
  readonly sizes: readonly [number, number, number];
}

/** Depth is wanted to this share of itself, or to this, m. */
const SHARE = 0.05;
const LEAST = 5e-6;

/**
 * The deepest point of a surface in a field of signed distance that need not be convex (a mesh): best first, by the bound
 * that distance changes by no more than a point moves. Only looked for where there is an overlap; what the budget leaves
 * open stands between `distance` and `bound`.
 */
export function sinkSearch(
  surface: PlacedSurface,
  motion: Motion,
  depth: Depth,
  span: Span,
  budget: number,
): Nearest {
  const { second, first, count, halves } = surface.tree;
  const out = new Float64Array(3);
  let evaluations = 0;
  let best = { distance: Infinity, point: [0, 0, 0] as Vec3, pitch: span.low, azimuth: 0 };

  function look(point: Vec3, pitch: number, azimuth: number, isSurface: boolean): number {
    evaluations++;
    const distance = depth(pitch, azimuth, point);
    if (isSurface && distance < best.distance) best = { distance, point, pitch, azimuth };
    return distance;
  }

  function made(piece: Piece, low: number, high: number, from: number, to: number): Part {
    const [pitch, azimuth] = [(low + high) / 2, (from + to) / 2];
    const isNode = typeof piece === 'number';
    const centre = isNode ? pointAt(surface.centres, 3 * piece) : middleOf(piece);
    const distance = look(centre, pitch, azimuth, !isNode);
    const radius = isNode
      ? Math.hypot(halves[3 * piece], halves[3 * piece + 1], halves[3 * piece + 2])
      : Math.max(...piece.map((corner) => apart(corner, centre)));
    motion.aim(low, high);
    motion.place(AT_MIDDLE, centre[0], centre[1], centre[2], out);
    const way = motion.reach(centre[0], centre[1], centre[2]);
    const swing = ((to - from) / 2) * Math.hypot(out[0], out[1]);
    const bound = distance - radius - way - swing;
    return { piece, low, high, from, to, bound, sizes: [radius, way, swing] };
  }

  function pieces(piece: Piece): readonly Piece[] {
    if (typeof piece !== 'number') return halved(piece);
    if (second[piece] > 0) return [piece + 1, second[piece]];
    return Array.from({ length: count[piece] }, (_, i) => {
      const at = 9 * (first[piece] + i);
      const corner = (k: number) => pointAt(surface.corners, at + k);
      return [corner(0), corner(3), corner(6)] as const;
    });
  }

  function parts({ piece, low, high, from, to, sizes, bound }: Part): Part[] {
    const [radius, way, swing] = sizes;
    const inherit = (part: Part) => (part.bound < bound ? { ...part, bound } : part);
    if (radius >= way && radius >= swing) {
      return pieces(piece).map((one) => inherit(made(one, low, high, from, to)));
    }
    if (way >= swing) {
      const middle = (low + high) / 2;
      return [made(piece, low, middle, from, to), made(piece, middle, high, from, to)].map(inherit);
    }
    const middle = (from + to) / 2;
    return [made(piece, low, high, from, middle), made(piece, low, high, middle, to)].map(inherit);
  }

  const open: Part[] = [made(0, span.low, span.high, 0, span.turn)];
  let bound = -Infinity;
  while (open.length > 0) {
    const part = takeLeast(open);
    bound = part.bound;
    const enough = Math.max(LEAST, SHARE * Math.abs(best.distance));
    if (bound >= best.distance - enough || evaluations >= budget) break;
    open.push(...parts(part));
  }
  return { ...best, bound: Math.min(bound, best.distance), evaluations };
}

function takeLeast(open: Part[]): Part {
  let at = 0;
  for (let i = 1; i < open.length; i++) if (open[i].bound < open[at].bound) at = i;
  const least = open[at];
  open[at] = open[open.length - 1];
  open.pop();
  return least;
}

/** Across its longest side. */
function halved([a, b, c]: Triangle): readonly [Triangle, Triangle] {
  const [ab, bc, ca] = [apart(a, b), apart(b, c), apart(c, a)];
  if (ab >= bc && ab >= ca) {
    const m = between(a, b);
    return [
      [a, m, c],
      [m, b, c],
    ];
  }
  return bc >= ca ? halved([b, c, a]) : halved([c, a, b]);
}

function middleOf([a, b, c]: Triangle): Vec3 {
  return [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3, (a[2] + b[2] + c[2]) / 3];
}
function between(a: Vec3, b: Vec3): Vec3 {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
}
function apart(a: Vec3, b: Vec3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}
function pointAt(points: Float64Array, at: number): Vec3 {
  return [points[at], points[at + 1], points[at + 2]];
}

/**
 * A turned piece as it is drawn: lengths in mm, u along its axis from the left end of the main view, r from the axis.
 * The upper half of the main view shows it from outside, the lower half cut open (half section, ISO 128-3).
 */

/** A corner of a meridian; `bulge` as in `engine/mass/solid` of the edge that leaves it. */
export type MeridianPoint = readonly [u: number, r: number, bulge?: number];

export interface Segment {
  readonly from: readonly [u: number, r: number];
  readonly to: readonly [u: number, r: number];
  readonly bulge?: number;
}

/** A hexagonal stretch with its corners up and down; chamfers are heights at the corners. */
export interface HexStretch {
  readonly from: number;
  readonly to: number;
  readonly across: number;
  readonly chamferLeft: number;
  readonly chamferRight: number;
}

/** Metal that is cut through. Neighbouring pieces are hatched the other way. */
export interface CutRegion {
  readonly points: readonly MeridianPoint[];
  readonly tilt: 1 | -1;
}

/** What is seen looking at the left end. */
export type EndShape =
  | { readonly shape: 'circle'; readonly r: number }
  | { readonly shape: 'hexagon'; readonly across: number }
  /** Three quarters of a thin circle (ISO 6410-1). */
  | { readonly shape: 'thread'; readonly r: number };

export interface LengthSize {
  readonly kind: 'length';
  readonly feature: string;
  readonly from: number;
  readonly to: number;
  /** Radii that the extension lines begin at. */
  readonly radii: readonly [number, number];
  readonly text: string;
}
export interface DiameterSize {
  readonly kind: 'diameter';
  readonly feature: string;
  readonly r: number;
  /** Ends of the stretch that it is the diameter of. */
  readonly from: number;
  readonly to: number;
  /** Of a hole: only its lower side is seen, and it opens to this side. */
  readonly hole?: 'left' | 'right';
  readonly text: string;
}
/** A leader from the upper half of the main view. */
export interface NoteSize {
  readonly kind: 'note';
  readonly feature: string;
  readonly at: readonly [u: number, r: number];
  readonly text: string;
}
/** Across flats, on the end view. */
export interface FlatsSize {
  readonly kind: 'flats';
  readonly feature: string;
  readonly across: number;
  readonly text: string;
}
/** A leader from the end view. */
export interface EndNote {
  readonly kind: 'endNote';
  readonly feature: string;
  readonly at: readonly [x: number, y: number];
  readonly text: string;
}
export type Size = LengthSize | DiameterSize | NoteSize | FlatsSize | EndNote;

export interface Piece {
  readonly outer: readonly MeridianPoint[];
  /** Lines of the lower half only: what is seen inside. */
  readonly inside: readonly Segment[];
  readonly regions: readonly CutRegion[];
  readonly hexes: readonly HexStretch[];
  /** Thin lines of threads: on both halves, or on the cut one only. */
  readonly threads: readonly (Segment & { readonly hidden: boolean })[];
  readonly end: readonly EndShape[];
  readonly sizes: readonly Size[];
  /** Words for the notes: features that are no length. */
  readonly remarks: readonly string[];
}

/** Distance from the axis to a hexagon's corner over that to its flats. */
export const CORNER = 2 / Math.sqrt(3);

/** Radius of a hexagon's chamfer circle on the face. */
export function chamferCircle(across: number, chamfer: number): number {
  return (across / 2) * CORNER - Math.sqrt(3) * chamfer;
}

/** Without corners that fall on the one before. */
export function withoutRepeats(points: readonly MeridianPoint[]): MeridianPoint[] {
  return points.filter(
    ([u, r], i) =>
      i === 0 || Math.abs(u - points[i - 1][0]) > 1e-9 || Math.abs(r - points[i - 1][1]) > 1e-9,
  );
}

export function segmentsOf(points: readonly MeridianPoint[]): Segment[] {
  return points.slice(1).map(([u, r], i) => {
    const [u0, r0, bulge] = points[i];
    return { from: [u0, r0], to: [u, r], ...(bulge ? { bulge } : {}) };
  });
}

/** Each sharp corner of a meridian is a circle, seen edge on as a line from the axis: u, and the largest radius there. */
export function cornerEdges(points: readonly MeridianPoint[]): Map<number, number> {
  const edges = new Map<number, number>();
  points.forEach(([u, r, bulge], i) => {
    if (bulge && i > 0 && points[i - 1][2]) return;
    const key = Number(u.toFixed(9));
    edges.set(key, Math.max(edges.get(key) ?? 0, r));
  });
  return edges;
}

/** Contour of a hole and the edges seen across it. */
export function insideOf(points: readonly MeridianPoint[]): Segment[] {
  const across = Array.from(
    cornerEdges(points),
    ([u, r]): Segment => ({ from: [u, 0], to: [u, r] }),
  );
  return [...segmentsOf(points), ...across.filter(({ to }) => to[1] > 0)];
}

/** Largest outer radius anywhere from u0 to u1. */
export function widestBetween(points: readonly MeridianPoint[], u0: number, u1: number): number {
  let widest = 0;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if (Math.max(a[0], b[0]) > u0 + 1e-9 && Math.min(a[0], b[0]) < u1 - 1e-9) {
      widest = Math.max(widest, a[1], b[1]);
    }
  }
  return widest;
}

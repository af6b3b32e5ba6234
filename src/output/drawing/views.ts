import { arcPoints, arcThrough, edge, line } from './arcs';
import { hatchLines } from './hatch';
import {
  CORNER,
  chamferCircle,
  cornerEdges,
  type HexStretch,
  type MeridianPoint,
  type Piece,
  type Segment,
  segmentsOf,
} from './piece';
import type { Entity, Layer } from './sheetTypes';

/** Centre lines run this far beyond the outline, mm on paper (common practice). */
const BEYOND = 3;
const HATCH_SPACING = 2;

/** Half section of a piece: axis along x, its left end at (0, 0), from outside above, cut open below. */
export function mainView(piece: Piece, scale: number): Entity[] {
  const { outer } = piece;
  const length = outer[outer.length - 1][0] * scale;
  return [
    ...piece.regions.flatMap(({ points, tilt }) =>
      hatchLines(outlineOf(points, scale), tilt, HATCH_SPACING),
    ),
    ...piece.threads.flatMap((segment) => [
      ...(segment.hidden ? [] : [drawn('thread', segment, scale, 1)]),
      drawn('thread', segment, scale, -1),
    ]),
    ...segmentsOf(outer).flatMap((segment) => contour(segment, scale)),
    ...outsideEdges(piece, scale),
    ...piece.hexes.flatMap((hex) => hexFaces(hex, scale)),
    ...piece.inside.map((segment) => drawn('visible', segment, scale, -1)),
    line('centre', -BEYOND, 0, length + BEYOND, 0),
  ];
}

function drawn(
  layer: Layer,
  { from, to, bulge = 0 }: Segment,
  scale: number,
  side: 1 | -1,
): Entity {
  const [x1, y1, x2, y2] = [from[0] * scale, from[1] * scale, to[0] * scale, to[1] * scale];
  return edge(layer, x1, side * y1, x2, side * y2, side * bulge);
}

/** A step square to the axis is one line in the upper half (it belongs to an edge) and its own length in the lower. */
function contour(segment: Segment, scale: number): Entity[] {
  const upright = segment.from[0] === segment.to[0];
  const touchesAxis = segment.from[1] === 0 || segment.to[1] === 0;
  const below = drawn('visible', segment, scale, -1);
  // The face at an end is drawn whole by its edge above; below it ends at a hole, drawn with the cut.
  if (upright && touchesAxis) return [below];
  return upright ? [below] : [drawn('visible', segment, scale, 1), below];
}

/** Circles seen edge on in the upper half; within a hexagon its own lines take their place. */
function outsideEdges({ outer, hexes }: Piece, scale: number): Entity[] {
  return Array.from(cornerEdges(outer))
    .filter(([u]) => !hexes.some(({ from, to }) => u > from + 1e-9 && u < to - 1e-9))
    .map(([u, r]) => line('visible', u * scale, 0, u * scale, r * scale));
}

/**
 * A hexagon's faces in the upper half: the edge between two of them, and at a chamfer the curves that end the faces, drawn
 * as arcs through the ends and the middle of the true hyperbolas.
 */
function hexFaces(hex: HexStretch, scale: number): Entity[] {
  const corner = (hex.across / 2) * CORNER * scale;
  const [from, to] = [hex.from * scale, hex.to * scale];
  const left = hex.chamferLeft * scale;
  const right = hex.chamferRight * scale;
  return [
    line('visible', from + left, corner / 2, to - right, corner / 2),
    ...chamferArcs(hex, hex.chamferLeft, scale, from, 1),
    ...chamferArcs(hex, hex.chamferRight, scale, to, -1),
  ];
}

function chamferArcs(
  { across }: HexStretch,
  chamfer: number,
  scale: number,
  face: number,
  inward: 1 | -1,
): Entity[] {
  if (chamfer === 0) return [];
  const flat = across / 2;
  const corner = flat * CORNER * scale;
  const middle = Math.max(0, flat - chamferCircle(across, chamfer)) / Math.sqrt(3);
  const deep = face + inward * chamfer * scale;
  const shallow = face + inward * Math.min(middle, chamfer) * scale;
  const whole = arcThrough('visible', [deep, -corner / 2], [shallow, 0], [deep, corner / 2]);
  const upper = arcThrough('visible', [deep, corner / 2], [shallow, 0.75 * corner], [deep, corner]);
  if (whole.shape === 'line') return [{ ...whole, y1: 0 }, upper];
  // The upper half of the arc about the axis.
  return [inward === 1 ? { ...whole, to: 180 } : { ...whole, from: 0 }, upper];
}

function outlineOf(points: readonly MeridianPoint[], scale: number): [number, number][] {
  return points.flatMap(([u, r, bulge], i) => {
    const next = points[(i + 1) % points.length];
    const start: [number, number] = [u * scale, -r * scale];
    if (!bulge) return [start];
    const arc = edge('hatch', ...start, next[0] * scale, -next[1] * scale, -bulge);
    if (arc.shape === 'line') return [start];
    const along = arcPoints(arc);
    // The arc's own sense is counter-clockwise; the outline's may be the other.
    const forward = Math.hypot(along[0][0] - start[0], along[0][1] - start[1]) < 1e-6;
    return (forward ? along : along.toReversed()).slice(0, -1);
  });
}

/** Radius of the circle that the end view lies within, mm. */
export function endRadius({ end }: Piece): number {
  return Math.max(
    ...end.map((one) => (one.shape === 'hexagon' ? (one.across / 2) * CORNER : one.r)),
  );
}

/** The view on the left end about (0, 0), hexagons with corners up and down as in the main view. */
export function endView(piece: Piece, scale: number): Entity[] {
  const reach = endRadius(piece) * scale + BEYOND;
  return [
    ...piece.end.flatMap((one): Entity[] => {
      if (one.shape === 'hexagon') return hexagonLines((one.across / 2) * CORNER * scale);
      const round = { x: 0, y: 0, r: one.r * scale };
      if (one.shape === 'circle') return [{ shape: 'circle', layer: 'visible', ...round }];
      // Three quarters, the gap not on a centre line (ISO 6410-1).
      return [{ shape: 'arc', layer: 'thread', ...round, from: 100, to: 10 }];
    }),
    line('centre', -reach, 0, reach, 0),
    line('centre', 0, -reach, 0, reach),
  ];
}

function hexagonLines(corner: number): Entity[] {
  const point = (k: number) => {
    const angle = Math.PI / 2 + (k * Math.PI) / 3;
    return [corner * Math.cos(angle), corner * Math.sin(angle)] as const;
  };
  return Array.from({ length: 6 }, (_, k) => line('visible', ...point(k), ...point(k + 1)));
}

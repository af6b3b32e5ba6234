import { meshVolumeMoments } from '../engine/mass/mesh';
import { createMoments, M } from '../engine/mass/moments';
import type { TriangleMesh } from '../engine/mass/solid';
import { type Box, boxOf, cleanMesh } from './checks/clean';
import { findCrossings } from './checks/crossings';
import type { EdgeTable } from './checks/edges';
import { orientMesh } from './checks/shells';
import { guessUnit } from './checks/unit';
import { estimateWinding } from './checks/winding';
import type { Rest } from './rest';
import type {
  CrossingReport,
  MeshFormat,
  MeshProgress,
  MeshReport,
  MeshVerdict,
  RawMesh,
} from './types';

type ReportStart = Omit<MeshReport, 'picture'>;

export interface CheckedMesh {
  readonly mesh: TriangleMesh;
  readonly report: ReportStart;
  /** Null where the mesh is cracked. */
  readonly moments: Float64Array | null;
}

/** Depth, as a share of the box's diagonal, that is touching and not crossing. */
const TOUCH_SHARE = 2e-6;
/** Share of the volume counted twice or negatively that is rounding. */
const OVERLAP_SHARE = 1e-6;
const CROSSING_MS = 20_000;

/**
 * Cleans, orients and inspects a mesh and, where it closes, weighs it with density 1 (exact moments of the triangles as
 * they are, in file units about the file's origin). Only exact repairs are made, and every one is in the report.
 */
export async function checkMesh(
  raw: RawMesh,
  format: MeshFormat,
  progress: (progress: MeshProgress) => void,
  rest: Rest,
): Promise<CheckedMesh> {
  progress({ step: 'check', share: 0 });
  const clean = cleanMesh(raw);
  await rest();
  progress({ step: 'check', share: 0.5 });
  const oriented = orientMesh(clean.positions, clean.triangles, clean.edges);
  await rest();
  const mesh = { positions: clean.positions, triangles: oriented.triangles };
  const box = boxOf(clean.positions);
  const size = Math.max(...box.high.map((value, k) => value - box.low[k]));
  const moments = closes(oriented.edges) ? meshVolumeMoments(mesh, createMoments()) : null;
  const weighed = moments && moments[M] > 0 ? moments : null;
  await rest();
  progress({ step: 'crossings' });
  const crossing = await findOverlaps(
    mesh,
    { box, moments: weighed, shells: oriented.shells },
    rest,
  );
  const verdict = verdictOf(weighed, crossing);
  return {
    mesh,
    moments: weighed,
    report: {
      format,
      notes: raw.notes,
      verdict,
      weighable: verdict !== 'cracked',
      trianglesInFile: raw.triangles.length / 3,
      triangles: mesh.triangles.length / 3,
      points: clean.positions.length / 3 - clean.joinedPoints,
      degenerateTriangles: clean.degenerateTriangles,
      repeatedTriangles: clean.repeatedTriangles,
      flippedTriangles: oriented.flippedTriangles,
      turnedInsideOut: oriented.turnedInsideOut,
      shellsTurned: oriented.shellsTurned,
      joinedPoints: clean.joinedPoints,
      weldTolerance: clean.weldTolerance,
      shells: oriented.shells,
      cavities: oriented.cavities,
      openEdges: oriented.edges.openEdges,
      crowdedEdges: oriented.edges.crowdedEdges,
      unorientedEdges: oriented.edges.unorientedEdges,
      crossing,
      low: box.low,
      high: box.high,
      unit: guessUnit(size, raw.unitInFile),
      volume: weighed ? weighed[M] : null,
    },
  };
}

/**
 * As many triangles one way as the other on every edge: then the surface bounds something, and its moments do not
 * depend on the point that they are taken from. Edges of more than two triangles may be among them.
 */
function closes({ openEdges, unorientedEdges }: EdgeTable): boolean {
  return openEdges === 0 && unorientedEdges === 0;
}

function verdictOf(moments: Float64Array | null, crossing: CrossingReport): MeshVerdict {
  if (!moments) return 'cracked';
  return crossing.pairs > 0 || overlaps(crossing, moments) ? 'crossing' : 'sound';
}

type Counted = Pick<CrossingReport, 'countedTwice' | 'countedNegative'>;

/** Whether more than rounding is known to be counted twice or negatively. */
function overlaps({ countedTwice, countedNegative }: Counted, moments: Float64Array): boolean {
  return (countedTwice ?? 0) + (countedNegative ?? 0) > OVERLAP_SHARE * moments[M];
}

interface Weighed {
  readonly box: Box;
  readonly moments: Float64Array | null;
  readonly shells: number;
}

async function findOverlaps(
  mesh: TriangleMesh,
  { box, moments, shells }: Weighed,
  rest: Rest,
): Promise<CrossingReport> {
  const diagonal = Math.hypot(...box.high.map((value, k) => value - box.low[k]));
  const end = performance.now() + CROSSING_MS;
  const { through, onBorder, finished } = await findCrossings(
    mesh.positions,
    mesh.triangles,
    TOUCH_SHARE * diagonal,
    { outOfTime: () => performance.now() > end, rest },
  );
  const found = { pairs: through + onBorder, finished };
  // One shell that does not cross itself encloses nothing twice.
  if (!moments || (found.pairs === 0 && finished && shells === 1)) {
    return { ...found, countedTwice: 0, countedNegative: 0 };
  }
  // Where triangles meet on their borders alone, bodies touch or one reaches into the other with its sides in line: by
  // rays along every axis, since what they share may be thin.
  const axes = through === 0 && onBorder > 0 && finished ? ([0, 1, 2] as const) : ([0] as const);
  let counted: Counted = { countedTwice: 0, countedNegative: 0 };
  for (const axis of axes) {
    await rest();
    const winding = await estimateWinding(mesh, box, { rest, axis });
    if (!winding) return { ...found, countedTwice: null, countedNegative: null };
    counted = winding;
    if (overlaps(counted, moments)) return { ...found, ...counted };
  }
  return { ...found, pairs: axes.length > 1 ? 0 : found.pairs, ...counted };
}

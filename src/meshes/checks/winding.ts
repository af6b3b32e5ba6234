import type { TriangleMesh } from '../../engine/mass/solid';
import type { Rest } from '../rest';
import type { Box } from './clean';

/** Volumes of the space that the surface encloses more than once, and inside out; file units cubed. */
export interface WindingEstimate {
  readonly countedTwice: number;
  readonly countedNegative: number;
}

/** Rays on a side of the grid, tried in turn until the work is bearable. */
const GRIDS: readonly number[] = [256, 64, 16];
/** What is bearable: points where rays meet the surface, and points of the grid that are asked for. */
const MOST = { hits: 1_000_000, visits: 200_000_000 } as const;
/** Points of the grid between two rests: some milliseconds. */
const VISITS = 500_000;

interface Casting {
  readonly rest: Rest;
  readonly grids?: readonly number[];
  readonly most?: { readonly hits: number; readonly visits: number };
  /** The axis along which the rays run; what is thin along it is found where others may pass it by. */
  readonly axis?: 0 | 1 | 2;
}

/**
 * Volume moments count every place by its winding number w: a place in two shells twice. Rays along one axis on a grid
 * over the box, each exact along its length, sum the lengths with w > 1 (times w - 1) and w < 0 (times -w). The error is
 * that of the midpoint rule over the other two: about the outline of what overlaps times half the spacing. Null where the
 * surface is too intricate even for the coarsest grid. The surface is closed. `rest` is called on the way.
 */
export async function estimateWinding(
  mesh: TriangleMesh,
  box: Box,
  { rest, grids = GRIDS, most = MOST, axis = 0 }: Casting,
): Promise<WindingEstimate | null> {
  for (const grid of grids) {
    const hits = await castRays(mesh, box, grid, { rest, most, axis });
    if (hits) return sumHits(hits, cellOf(box, grid, axis));
  }
  return null;
}

interface Hits {
  /** Ray of each hit, where on x, and +1 on entering, -1 on leaving. */
  readonly ray: number[];
  readonly x: number[];
  readonly step: number[];
}

async function castRays(
  { positions: p, triangles }: TriangleMesh,
  { low, high }: Box,
  grid: number,
  { rest, most, axis }: Omit<Required<Casting>, 'grids'>,
): Promise<Hits | null> {
  // Names are those of rays along x; along another axis the three are turned round.
  const [X, Y, Z] = turnedAxes(axis);
  const dy = (high[Y] - low[Y]) / grid;
  const dz = (high[Z] - low[Z]) / grid;
  // Off the middle by odd amounts, so that rays seldom meet corners.
  const y0 = low[Y] + 0.4871 * dy;
  const z0 = low[Z] + 0.5133 * dz;
  const hits: Hits = { ray: [], x: [], step: [] };
  let visits = 0;
  let restAt = VISITS;
  for (let t = 0; t < triangles.length; t += 3) {
    if (visits > restAt) {
      restAt = visits + VISITS;
      await rest();
    }
    const a = triangles[t];
    const b = triangles[t + 1];
    const c = triangles[t + 2];
    const [ax, bx, cx] = [p[3 * a + X], p[3 * b + X], p[3 * c + X]];
    const [ay, by, cy] = [p[3 * a + Y], p[3 * b + Y], p[3 * c + Y]];
    const [az, bz, cz] = [p[3 * a + Z], p[3 * b + Z], p[3 * c + Z]];
    const area = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
    if (area === 0) continue;
    const fromY = Math.max(0, Math.ceil((Math.min(ay, by, cy) - y0) / dy));
    const toY = Math.min(grid - 1, Math.floor((Math.max(ay, by, cy) - y0) / dy));
    const fromZ = Math.max(0, Math.ceil((Math.min(az, bz, cz) - z0) / dz));
    const toZ = Math.min(grid - 1, Math.floor((Math.max(az, bz, cz) - z0) / dz));
    if (toY < fromY || toZ < fromZ) continue;
    visits += (toY - fromY + 1) * (toZ - fromZ + 1);
    if (visits > most.visits || hits.x.length > most.hits) return null;
    for (let i = fromY; i <= toY; i++) {
      for (let k = fromZ; k <= toZ; k++) {
        const y = y0 + i * dy;
        const z = z0 + k * dz;
        if (
          !onInner(p, a, b, Y, Z, y, z, area) ||
          !onInner(p, b, c, Y, Z, y, z, area) ||
          !onInner(p, c, a, Y, Z, y, z, area)
        ) {
          continue;
        }
        const wb = ((y - ay) * (cz - az) - (z - az) * (cy - ay)) / area;
        const wc = ((by - ay) * (z - az) - (bz - az) * (y - ay)) / area;
        hits.ray.push(i * grid + k);
        hits.x.push(ax + wb * (bx - ax) + wc * (cx - ax));
        // A face toward +x is where a ray along x leaves.
        hits.step.push(area > 0 ? -1 : 1);
      }
    }
  }
  return hits;
}

/** An axis and the two after it, round and round: the sense of a triangle seen along it stays. */
function turnedAxes(axis: 0 | 1 | 2): readonly [number, number, number] {
  return [axis, (axis + 1) % 3, (axis + 2) % 3];
}

function cellOf({ low, high }: Box, grid: number, axis: 0 | 1 | 2): number {
  const [, Y, Z] = turnedAxes(axis);
  return ((high[Y] - low[Y]) / grid) * ((high[Z] - low[Z]) / grid);
}

/**
 * Whether (y, z) is on the inner side of the edge from a to b. Computed from the corner of the lower number to the higher
 * whichever way the edge runs, so that the two triangles on an edge never both have, or both miss, a point near it.
 */
function onInner(
  p: Float64Array,
  a: number,
  b: number,
  Y: number,
  Z: number,
  y: number,
  z: number,
  area: number,
): boolean {
  const [low, high] = a < b ? [a, b] : [b, a];
  const [ly, lz] = [p[3 * low + Y], p[3 * low + Z]];
  const side = (p[3 * high + Y] - ly) * (z - lz) - (p[3 * high + Z] - lz) * (y - ly);
  return a < b === area > 0 ? side >= 0 : side < 0;
}

function sumHits({ ray, x, step }: Hits, cell: number): WindingEstimate {
  const order = Uint32Array.from(ray.keys());
  order.sort((a, b) => ray[a] - ray[b] || x[a] - x[b]);
  let countedTwice = 0;
  let countedNegative = 0;
  let winding = 0;
  for (let i = 0; i < order.length; i++) {
    const at = order[i];
    if (i === 0 || ray[order[i - 1]] !== ray[at]) winding = 0;
    else {
      const length = x[at] - x[order[i - 1]];
      if (winding > 1) countedTwice += (winding - 1) * length;
      if (winding < 0) countedNegative -= winding * length;
    }
    winding += step[at];
  }
  return { countedTwice: countedTwice * cell, countedNegative: countedNegative * cell };
}

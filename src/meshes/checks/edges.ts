/** `twin` of a half-edge that has no partner. */
export const OPEN = -1;

/** Whether a `twin` stands for an edge of more than two triangles. */
export function isCrowded(twin: number): boolean {
  return twin < OPEN;
}
/** The half-edge that a crowded one is linked with: the next of the same edge, round and round. */
export function nextCrowded(twin: number): number {
  return -2 - twin;
}

/**
 * Half-edge h runs from corner h of `triangles` to the next corner of the same triangle. `twin[h]` is the other
 * half-edge of the same undirected edge (in either sense), OPEN where there is none, a crowded link where there are several.
 */
export interface EdgeTable {
  readonly twin: Int32Array;
  /** Undirected edges with one triangle. */
  readonly openEdges: number;
  /** Undirected edges with more than two. */
  readonly crowdedEdges: number;
  /** Undirected edges with two or more that do not run as often one way as the other. */
  readonly unorientedEdges: number;
}

export function edgeEnd(triangles: Uint32Array, h: number): number {
  return triangles[h % 3 === 2 ? h - 2 : h + 1];
}

/**
 * Gathers half-edges under their lower vertex (a counting sort: no Map, which ends at 2^24 entries), the higher beside
 * each, and matches them there. No triangle is degenerate and every index is in range. Twelve bytes an edge beside the
 * table.
 */
export function buildEdges(triangles: Uint32Array, vertexCount: number): EdgeTable {
  const count = triangles.length;
  const first = new Uint32Array(vertexCount + 1);
  for (let h = 0; h < count; h++) first[Math.min(triangles[h], edgeEnd(triangles, h)) + 1]++;
  for (let v = 0; v < vertexCount; v++) first[v + 1] += first[v];
  const halves = new Uint32Array(count);
  const uppers = new Uint32Array(count);
  const next = first.slice(0, vertexCount);
  for (let h = 0; h < count; h++) {
    const from = triangles[h];
    const to = edgeEnd(triangles, h);
    const place = next[Math.min(from, to)]++;
    halves[place] = h;
    uppers[place] = Math.max(from, to);
  }
  const twin = new Int32Array(count).fill(OPEN);
  let openEdges = 0;
  let crowdedEdges = 0;
  let unorientedEdges = 0;
  for (let v = 0; v < vertexCount; v++) {
    const end = first[v + 1];
    sortByUpper(halves, uppers, first[v], end);
    for (let i = first[v]; i < end; ) {
      const start = i;
      const other = uppers[start];
      let balance = 0;
      for (; i < end && uppers[i] === other; i++) {
        balance += triangles[halves[i]] === v ? 1 : -1;
      }
      const users = i - start;
      if (users === 1) openEdges++;
      else if (balance !== 0) unorientedEdges++;
      if (users === 2) {
        twin[halves[start]] = halves[start + 1];
        twin[halves[start + 1]] = halves[start];
      } else if (users > 2) {
        crowdedEdges++;
        for (let k = start; k < i; k++) twin[halves[k]] = -2 - halves[k + 1 < i ? k + 1 : start];
      }
    }
  }
  return { twin, openEdges, crowdedEdges, unorientedEdges };
}

/** Most vertices have few edges: insertion; a hub of many goes through the language's own sort. */
function sortByUpper(halves: Uint32Array, uppers: Uint32Array, from: number, to: number): void {
  if (to - from > 32) {
    sortHub(halves, uppers, from, to);
    return;
  }
  for (let i = from + 1; i < to; i++) {
    const half = halves[i];
    const upper = uppers[i];
    let k = i;
    for (; k > from && uppers[k - 1] > upper; k--) {
      halves[k] = halves[k - 1];
      uppers[k] = uppers[k - 1];
    }
    halves[k] = half;
    uppers[k] = upper;
  }
}

/** By one number of both, below 2^53: half-edges under one vertex stand in ascending order, and stay so among equals. */
function sortHub(halves: Uint32Array, uppers: Uint32Array, from: number, to: number): void {
  const count = halves.length;
  const keys = Float64Array.from({ length: to - from }, (_, i) => {
    return uppers[from + i] * count + halves[from + i];
  }).toSorted();
  for (let i = 0; i < keys.length; i++) {
    uppers[from + i] = Math.floor(keys[i] / count);
    halves[from + i] = keys[i] % count;
  }
}

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
 * Gathers half-edges under their lower vertex (a counting sort: no Map, which ends at 2^24 entries) and matches them
 * there. No triangle is degenerate and every index is in range. Eight bytes an edge beside the table.
 */
export function buildEdges(triangles: Uint32Array, vertexCount: number): EdgeTable {
  const count = triangles.length;
  const first = new Uint32Array(vertexCount + 1);
  for (let h = 0; h < count; h++) first[Math.min(triangles[h], edgeEnd(triangles, h)) + 1]++;
  for (let v = 0; v < vertexCount; v++) first[v + 1] += first[v];
  const halves = new Uint32Array(count);
  const next = first.slice(0, vertexCount);
  for (let h = 0; h < count; h++) {
    halves[next[Math.min(triangles[h], edgeEnd(triangles, h))]++] = h;
  }
  const twin = new Int32Array(count).fill(OPEN);
  let openEdges = 0;
  let crowdedEdges = 0;
  let unorientedEdges = 0;
  const upper = (h: number) => Math.max(triangles[h], edgeEnd(triangles, h));
  for (let v = 0; v < vertexCount; v++) {
    const here = halves.subarray(first[v], first[v + 1]);
    if (here.length > 1) sortBy(here, upper);
    for (let i = 0; i < here.length; ) {
      const start = i;
      const other = upper(here[i]);
      let balance = 0;
      for (; i < here.length && upper(here[i]) === other; i++) {
        balance += triangles[here[i]] === v ? 1 : -1;
      }
      const users = i - start;
      if (users === 1) openEdges++;
      else if (balance !== 0) unorientedEdges++;
      if (users === 2) {
        twin[here[start]] = here[start + 1];
        twin[here[start + 1]] = here[start];
      } else if (users > 2) {
        crowdedEdges++;
        for (let k = start; k < i; k++) twin[here[k]] = -2 - here[k + 1 < i ? k + 1 : start];
      }
    }
  }
  return { twin, openEdges, crowdedEdges, unorientedEdges };
}

/** Most vertices have few edges: insertion; a hub of many goes through the language's own sort. */
function sortBy(list: Uint32Array, key: (h: number) => number): void {
  if (list.length > 32) {
    list.sort((a, b) => key(a) - key(b));
    return;
  }
  for (let i = 1; i < list.length; i++) {
    const one = list[i];
    const size = key(one);
    let k = i;
    for (; k > 0 && key(list[k - 1]) > size; k--) list[k] = list[k - 1];
    list[k] = one;
  }
}

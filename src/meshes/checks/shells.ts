import { buildEdges, type EdgeTable, isCrowded, nextCrowded } from './edges';

/** Shells of surface, turned outward as far as that is possible. */
export interface Oriented {
  readonly triangles: Uint32Array;
  readonly edges: EdgeTable;
  readonly shells: number;
  readonly cavities: number;
  readonly flippedTriangles: number;
  readonly turnedInsideOut: boolean;
  readonly shellsTurned: number;
}

interface Shell {
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** Six times over: only its sign counts, and which is larger. */
  volume: number;
}

/**
 * Turns triangles to agree with their neighbours, shell by shell (the lesser number of a shell is turned); then all,
 * if the surface as a whole encloses a negative volume; then single shells of negative volume that no larger shell's
 * box encloses, which cannot be cavities. A surface with one side only stays as it is and shows in `unorientedEdges`.
 */
export function orientMesh(
  positions: Float64Array,
  source: Uint32Array,
  table: EdgeTable,
): Oriented {
  const triangles = source.slice();
  const { pieceOf, pieces, flippedTriangles } = walkPieces(triangles, table);
  const { shellOf, count } = joinPieces(pieceOf, pieces, table);
  const shells = Array.from({ length: count }, emptyShell);
  measure(positions, triangles, shellOf, shells);
  const total = shells.reduce((sum, shell) => sum + shell.volume, 0);
  const turnedInsideOut = total < 0;
  const sense = turnedInsideOut ? -1 : 1;
  const turn = new Uint8Array(shells.length).fill(turnedInsideOut ? 1 : 0);
  for (const shell of shells) shell.volume *= sense;
  let shellsTurned = 0;
  let cavities = 0;
  const outer = largestPositive(shells);
  shells.forEach((shell, i) => {
    if (shell.volume >= 0) return;
    if (outer.some((other) => encloses(other, shell))) cavities++;
    else {
      turn[i] = 1 - turn[i];
      shellsTurned++;
    }
  });
  turnShells(triangles, shellOf, turn);
  const changed = flippedTriangles > 0 || turnedInsideOut || shellsTurned > 0;
  return {
    triangles,
    edges: changed ? buildEdges(triangles, positions.length / 3) : table,
    shells: shells.length,
    cavities,
    flippedTriangles,
    turnedInsideOut,
    shellsTurned,
  };
}

function turnShells(triangles: Uint32Array, shellOf: Int32Array, turn: Uint8Array): void {
  for (let t = 0; t < shellOf.length; t++) if (turn[shellOf[t]]) turnOver(triangles, t);
}

function turnOver(triangles: Uint32Array, t: number): void {
  const b = triangles[3 * t + 1];
  triangles[3 * t + 1] = triangles[3 * t + 2];
  triangles[3 * t + 2] = b;
}

/** Numbers the pieces that hang together by edges of two triangles, and turns the lesser part of each in place. */
function walkPieces(triangles: Uint32Array, { twin }: EdgeTable) {
  const count = triangles.length / 3;
  const pieceOf = new Int32Array(count).fill(-1);
  // Whether a triangle is turned against the first of its piece; half-edges keep the numbers that the table has.
  const turned = new Uint8Array(count);
  const queue = new Int32Array(count);
  let pieces = 0;
  let flippedTriangles = 0;
  for (let seed = 0; seed < count; seed++) {
    if (pieceOf[seed] >= 0) continue;
    pieceOf[seed] = pieces;
    let length = 0;
    let against = 0;
    queue[length++] = seed;
    // Nothing is taken off: at the end the queue is the piece.
    for (let done = 0; done < length; done++) {
      const t = queue[done];
      against += turned[t];
      for (let h = 3 * t; h < 3 * t + 3; h++) {
        // Without a partner, or with several, this is below zero as well.
        const other = Math.floor(twin[h] / 3);
        if (other < 0 || pieceOf[other] >= 0) continue;
        pieceOf[other] = pieces;
        const sameWay = triangles[h] === triangles[twin[h]];
        turned[other] = sameWay ? 1 - turned[t] : turned[t];
        queue[length++] = other;
      }
    }
    const lesser = 2 * against <= length ? 1 : 0;
    for (const t of queue.subarray(0, length)) if (turned[t] === lesser) turnOver(triangles, t);
    flippedTriangles += Math.min(against, length - against);
    pieces++;
  }
  return { pieceOf, pieces, flippedTriangles };
}

/**
 * The shell of every triangle: pieces that meet in a crowded edge are one, since only together do they close. The
 * sense of neighbours there is not compared: which belongs to which cannot be told.
 */
function joinPieces(pieceOf: Int32Array, pieces: number, { twin }: EdgeTable) {
  const parent = Int32Array.from({ length: pieces }, (_, piece) => piece);
  function rootOf(piece: number): number {
    let root = piece;
    while (parent[root] !== root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }
  for (let h = 0; h < twin.length; h++) {
    if (!isCrowded(twin[h])) continue;
    const a = rootOf(pieceOf[Math.floor(h / 3)]);
    const b = rootOf(pieceOf[Math.floor(nextCrowded(twin[h]) / 3)]);
    parent[Math.max(a, b)] = Math.min(a, b);
  }
  const number = new Int32Array(pieces).fill(-1);
  let count = 0;
  const shellOf = pieceOf.map((piece) => {
    const root = rootOf(piece);
    if (number[root] < 0) number[root] = count++;
    return number[root];
  });
  return { shellOf, count };
}

function emptyShell(): Shell {
  return {
    low: new Float64Array(3).fill(Infinity),
    high: new Float64Array(3).fill(-Infinity),
    volume: 0,
  };
}

/** Volume about the first corner of the mesh, six times over, and box, of every shell. */
function measure(
  p: Float64Array,
  triangles: Uint32Array,
  shellOf: Int32Array,
  shells: Shell[],
): void {
  const [ox, oy, oz] = p;
  for (let t = 0; t < shellOf.length; t++) {
    const shell = shells[shellOf[t]];
    const [i, j, k] = [3 * triangles[3 * t], 3 * triangles[3 * t + 1], 3 * triangles[3 * t + 2]];
    const [ax, ay, az] = [p[i] - ox, p[i + 1] - oy, p[i + 2] - oz];
    const [bx, by, bz] = [p[j] - ox, p[j + 1] - oy, p[j + 2] - oz];
    const [cx, cy, cz] = [p[k] - ox, p[k + 1] - oy, p[k + 2] - oz];
    shell.volume += ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    for (const at of [i, j, k]) {
      for (let axis = 0; axis < 3; axis++) {
        const value = p[at + axis];
        if (value < shell.low[axis]) shell.low[axis] = value;
        if (value > shell.high[axis]) shell.high[axis] = value;
      }
    }
  }
}

/** The shells that may hold cavities; the largest will do. */
function largestPositive(shells: readonly Shell[]): Shell[] {
  return shells
    .filter((shell) => shell.volume > 0)
    .toSorted((a, b) => b.volume - a.volume)
    .slice(0, 64);
}

function encloses(outer: Shell, inner: Shell): boolean {
  return [0, 1, 2].every(
    (axis) => outer.low[axis] <= inner.low[axis] && outer.high[axis] >= inner.high[axis],
  );
}

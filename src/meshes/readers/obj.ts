import earcut from 'earcut';
import { MAX_TRIANGLES, type MeshNote } from '../types';
import { shownWord } from './decimal';
import { GrowingFloats, GrowingIndices } from './growing';
import { checkCoordinate, checkTriangleCount, malformed, reader, refuse } from './signal';
import { Words } from './words';

/** Corners beyond which a face is cut as a fan without looking for hollows. */
const MOST_EAR_CORNERS = 10_000;

/**
 * OBJ text: `v x y z` and `f` with corners as `v`, `v/vt`, `v//vn` or `v/vt/vn`, counted from 1 or, negative, back from
 * the last point so far. Faces of more than three corners are cut: a fan where they are convex, ears where they are
 * hollow. Lines and points are counted; free-form surfaces are refused; all else (texture, groups, materials) is
 * passed over.
 */
export const readObj = reader((bytes, progress) => {
  const words = new Words(bytes);
  const state: ObjState = {
    points: new GrowingFloats(),
    triangles: new GrowingIndices(),
    face: [],
    count: 0,
    lines: 0,
    concave: 0,
  };
  let shown = 0;
  while (words.next()) {
    if (words.start >= shown) {
      progress(words.start / bytes.length);
      shown = words.start + (1 << 22);
    }
    if (words.is('v')) readPoint(words, state.points);
    else if (words.is('f')) readFace(words, state);
    else if (words.is('l') || words.is('p')) state.lines++;
    else if (words.is('cstype')) {
      refuse({ kind: 'unsupported', format: 'obj', name: 'free-form surfaces (cstype)' });
    }
    words.skipLine();
  }
  checkTriangleCount(state.count, 'obj');
  const notes: MeshNote[] = [];
  if (state.lines > 0) notes.push({ kind: 'leftOut', what: 'lines', count: state.lines });
  if (state.concave > 0) notes.push({ kind: 'concaveFaces', count: state.concave });
  return { positions: state.points.toArray(), triangles: state.triangles.toArray(), notes };
});

interface ObjState {
  readonly points: GrowingFloats;
  readonly triangles: GrowingIndices;
  readonly face: number[];
  count: number;
  lines: number;
  concave: number;
}

function readPoint(words: Words, points: GrowingFloats): void {
  const x = coordinate(words);
  const y = coordinate(words);
  points.push3(x, y, coordinate(words));
}

function coordinate(words: Words): number {
  if (!words.nextInLine()) {
    malformed('obj', `has a point of fewer than three coordinates in line ${words.line}`);
  }
  const value = words.number();
  if (Number.isNaN(value)) {
    malformed('obj', `has "${shownWord(words.text())}" for a coordinate in line ${words.line}`);
  }
  return checkCoordinate(value, 'obj', () => `line ${words.line}`);
}

function readFace(words: Words, state: ObjState): void {
  const { face, points, triangles } = state;
  face.length = 0;
  while (words.nextInLine()) face.push(cornerIndex(words, points.length / 3));
  if (face.length < 3) {
    malformed('obj', `has a face of fewer than three corners in line ${words.line}`);
  }
  state.count += face.length - 2;
  if (state.count > MAX_TRIANGLES) return;
  const ears = face.length > 3 ? cutHollow(face, points) : undefined;
  if (ears === 'cannot') state.concave++;
  if (Array.isArray(ears)) {
    for (let i = 0; i < ears.length; i += 3) {
      triangles.push3(face[ears[i]], face[ears[i + 1]], face[ears[i + 2]]);
    }
  } else {
    for (let i = 2; i < face.length; i++) triangles.push3(face[0], face[i - 1], face[i]);
  }
}

function cornerIndex(words: Words, pointCount: number): number {
  const { bytes, start, end } = words;
  let i = start;
  const negative = bytes[i] === 45;
  if (negative) i++;
  let value = 0;
  const from = i;
  for (; i < end && bytes[i] !== 47; i++) {
    const digit = bytes[i] - 48;
    if (!(digit >= 0 && digit <= 9)) value = Infinity;
    else value = 10 * value + digit;
  }
  const index = negative ? pointCount - value : value - 1;
  if (i === from || !(index >= 0 && index < pointCount) || value === 0) {
    const word = shownWord(words.text());
    malformed('obj', `names the point "${word}" of ${pointCount} in line ${words.line}`);
  }
  return index;
}

/** Ears of a hollow face as corner numbers; undefined where it is convex and a fan will do. */
function cutHollow(
  face: readonly number[],
  points: GrowingFloats,
): number[] | 'cannot' | undefined {
  const normal = faceNormal(face, points);
  const drop = normal.map(Math.abs).indexOf(Math.max(...normal.map(Math.abs)));
  const u = (drop + 1) % 3;
  const v = (drop + 2) % 3;
  const flat: number[] = [];
  for (const point of face) flat.push(points.at(3 * point + u), points.at(3 * point + v));
  const sense = Math.sign(normal[drop]);
  if (sense === 0 || isConvex(flat, sense)) return undefined;
  if (face.length > MOST_EAR_CORNERS) return 'cannot';
  const ears = earcut(flat);
  // Corners in a straight line may be left out by the cutter, which would open the surface there.
  if (ears.length !== 3 * (face.length - 2)) return 'cannot';
  const [a, b, c] = ears;
  const turned = Math.sign(turn(flat, a, b, c)) !== sense;
  return turned ? ears.toReversed() : ears;
}

/** Newell's sum: twice the face's area as a vector. */
function faceNormal(face: readonly number[], points: GrowingFloats): number[] {
  const n = [0, 0, 0];
  const o = 3 * face[0];
  for (let i = 1; i + 1 < face.length; i++) {
    const a = [0, 1, 2].map((k) => points.at(3 * face[i] + k) - points.at(o + k));
    const b = [0, 1, 2].map((k) => points.at(3 * face[i + 1] + k) - points.at(o + k));
    n[0] += a[1] * b[2] - a[2] * b[1];
    n[1] += a[2] * b[0] - a[0] * b[2];
    n[2] += a[0] * b[1] - a[1] * b[0];
  }
  return n;
}

function turn(flat: readonly number[], a: number, b: number, c: number): number {
  return (
    (flat[2 * b] - flat[2 * a]) * (flat[2 * c + 1] - flat[2 * a + 1]) -
    (flat[2 * b + 1] - flat[2 * a + 1]) * (flat[2 * c] - flat[2 * a])
  );
}

function isConvex(flat: readonly number[], sense: number): boolean {
  const count = flat.length / 2;
  for (let i = 0; i < count; i++) {
    if (sense * turn(flat, i, (i + 1) % count, (i + 2) % count) < 0) return false;
  }
  return true;
}

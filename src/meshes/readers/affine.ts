import type { GrowingIndices } from './growing';
import type { PointPool } from './pointPool';

/** A 3 x 3 matrix by rows and a shift: p' = A p + t, as twelve numbers [A row 0, t0, A row 1, t1, A row 2, t2]. */
export type Affine = readonly number[];

export const AFFINE_IDENTITY: Affine = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];

/** First `inner`, then `outer`. */
export function compose(outer: Affine, inner: Affine): Affine {
  const out: number[] = [];
  for (let r = 0; r < 12; r += 4) {
    for (let c = 0; c < 4; c++) {
      let sum = c === 3 ? outer[r + 3] : 0;
      for (let k = 0; k < 3; k++) sum += outer[r + k] * inner[4 * k + c];
      out.push(sum);
    }
  }
  return out;
}

/** Negative where it mirrors: triangles then have to be turned over. */
export function determinant(a: Affine): number {
  return (
    a[0] * (a[5] * a[10] - a[6] * a[9]) -
    a[1] * (a[4] * a[10] - a[6] * a[8]) +
    a[2] * (a[4] * a[9] - a[5] * a[8])
  );
}

/** Adds a triangle surface as it lies under `place` to the pool and the list. */
export function addPlaced(
  place: Affine,
  positions: { readonly length: number; at(index: number): number | undefined },
  triangles: { readonly length: number; at(index: number): number | undefined },
  pool: PointPool,
  out: GrowingIndices,
  check: (value: number) => number,
): void {
  const [a, b, c, x, d, e, f, y, g, h, i, z] = place;
  const index = new Uint32Array(positions.length / 3);
  for (let v = 0; v < index.length; v++) {
    const px = positions.at(3 * v) as number;
    const py = positions.at(3 * v + 1) as number;
    const pz = positions.at(3 * v + 2) as number;
    index[v] = pool.add(
      check(a * px + b * py + c * pz + x),
      check(d * px + e * py + f * pz + y),
      check(g * px + h * py + i * pz + z),
    );
  }
  const [second, third] = determinant(place) < 0 ? [2, 1] : [1, 2];
  for (let t = 0; t < triangles.length; t += 3) {
    out.push3(
      index[triangles.at(t) as number],
      index[triangles.at(t + second) as number],
      index[triangles.at(t + third) as number],
    );
  }
}

/** What a triangle surface gives: its volume, first and second moments, ten numbers in the order of `Moments`. */
export type Ten = number[];

/**
 * Moments of the body inside a closed surface about the origin, density 1, as the sum of the tetrahedra that its
 * triangles make with the origin (A. M. Messner and G. Q. Taylor, ACM TOMS 6(1), 1980; formula from memory, checked by
 * the ball in `checkRoutes`). `stride` numbers a vertex, the first three its coordinates; `index` null: three in a row.
 */
export function addMeshMoments(
  out: Ten,
  vertices: ArrayLike<number>,
  stride: number,
  index: ArrayLike<number> | null,
  factor: number,
): void {
  const count = index ? index.length : vertices.length / stride;
  for (let t = 0; t < count; t += 3) {
    const a = stride * (index ? index[t] : t);
    const b = stride * (index ? index[t + 1] : t + 1);
    const c = stride * (index ? index[t + 2] : t + 2);
    const ax = vertices[a];
    const ay = vertices[a + 1];
    const az = vertices[a + 2];
    const bx = vertices[b];
    const by = vertices[b + 1];
    const bz = vertices[b + 2];
    const cx = vertices[c];
    const cy = vertices[c + 1];
    const cz = vertices[c + 2];
    const six = ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    const sx = ax + bx + cx;
    const sy = ay + by + cy;
    const sz = az + bz + cz;
    const v = (factor * six) / 6;
    const j = v / 20;
    out[0] += v;
    out[1] += (v * sx) / 4;
    out[2] += (v * sy) / 4;
    out[3] += (v * sz) / 4;
    out[4] += j * (sx * sx + ax * ax + bx * bx + cx * cx);
    out[5] += j * (sy * sy + ay * ay + by * by + cy * cy);
    out[6] += j * (sz * sz + az * az + bz * bz + cz * cz);
    out[7] += j * (sx * sy + ax * ay + bx * by + cx * cy);
    out[8] += j * (sx * sz + ax * az + bx * bz + cx * cz);
    out[9] += j * (sy * sz + ay * az + by * bz + cy * cz);
  }
}

/** The lateral spread that makes the moment: J_yy - J_zz of ten numbers. */
export function spreadOf(ten: ArrayLike<number>): number {
  return ten[5] - ten[6];
}

import { COS1, COS2, type Harmonics, SIN1, SIN2 } from '../../src/engine/feathering/harmonics';

/**
 * The equilibria by algebra: with z = exp(i t) the moment times 2 z^2 is the quartic
 *   (c2 - i s2) z^4 + (c1 - i s1) z^3 + (c1 + i s1) z + (c2 + i s2),
 * whose roots on the unit circle are the pitch angles of no moment; the others come in pairs z, 1 / conj(z). All four
 * are found at once by the iteration of Durand (1960) and Kerner (1966).
 */
export interface CircleRoots {
  /** Angles in [-pi, pi), ascending. */
  readonly angles: readonly number[];
  /** Least |log |z|| of the roots off the circle: how near a miss it was. Infinity where there are none. */
  readonly nearestMiss: number;
}

type Complex = readonly [re: number, im: number];
const times = (a: Complex, b: Complex): Complex => [
  a[0] * b[0] - a[1] * b[1],
  a[0] * b[1] + a[1] * b[0],
];
const minus = (a: Complex, b: Complex): Complex => [a[0] - b[0], a[1] - b[1]];
function over(a: Complex, b: Complex): Complex {
  const size = b[0] * b[0] + b[1] * b[1];
  return [(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size];
}

export function circleRoots(h: Harmonics): CircleRoots {
  const lead: Complex = [h[COS2], -h[SIN2]];
  const third = over([h[COS1], -h[SIN1]], lead);
  const first = over([h[COS1], h[SIN1]], lead);
  const constant = over([h[COS2], h[SIN2]], lead);
  const value = (z: Complex): Complex => {
    const cubic = times(times(times([z[0] + third[0], z[1] + third[1]], z), z), z);
    const linear = times(first, z);
    return [cubic[0] + linear[0] + constant[0], cubic[1] + linear[1] + constant[1]];
  };
  const roots: Complex[] = [];
  for (let k = 0; k < 4; k++) roots.push(k ? times(roots[k - 1], [0.4, 0.9]) : [1, 0]);
  for (let step = 0; step < 500; step++) {
    let moved = 0;
    for (let k = 0; k < 4; k++) {
      let product: Complex = [1, 0];
      for (let j = 0; j < 4; j++) if (j !== k) product = times(product, minus(roots[k], roots[j]));
      const change = over(value(roots[k]), product);
      roots[k] = minus(roots[k], change);
      moved = Math.max(moved, Math.hypot(...change));
    }
    if (moved < 1e-15) break;
  }
  const off = roots.map((z) => Math.abs(Math.log(Math.hypot(...z))));
  const angles = roots
    .filter((_, k) => off[k] < 1e-9)
    .map(([re, im]) => Math.atan2(im, re))
    .toSorted((a, b) => a - b);
  return { angles, nearestMiss: Math.min(Infinity, ...off.filter((miss) => miss >= 1e-9)) };
}

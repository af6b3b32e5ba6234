import type { Harmonics } from '../../src/engine/feathering/harmonics';

/** The moment curve moved by `by` along the pitch axis: M(t - by). */
export function shifted([s1, c1, s2, c2]: Harmonics, by: number): Harmonics {
  const [c, s] = [Math.cos(by), Math.sin(by)];
  const [cc, ss] = [Math.cos(2 * by), Math.sin(2 * by)];
  return Float64Array.of(s1 * c + c1 * s, c1 * c - s1 * s, s2 * cc + c2 * ss, c2 * cc - s2 * ss);
}

/**
 * (1 - cos t)(b/2 + b cos t + g sin t), multiplied out; the constant cancels. A double root at t = 0, where the moment
 * is (3 b / 4) t^2; for b = 0 a triple one, (g / 2) t^3. Derived.
 */
export function touching(b: number, g: number, lift = 0): Harmonics {
  return Float64Array.of(g, b / 2 + lift, -g / 2, -b / 2);
}

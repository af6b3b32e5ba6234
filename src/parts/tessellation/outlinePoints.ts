import type { Prism, Revolution } from '../../engine/mass/solid';
import { flatten } from './flatten';

/** The points of `prismSurface`, xyz, without its triangles: cutting the caps takes most of its time. Holes lie inside and are left out. */
export function prismPoints(solid: Prism, segmentsPerTurn: number): Float64Array {
  const { points } = flatten(solid.outer, segmentsPerTurn);
  const bottom = Math.min(solid.from, solid.to);
  const top = Math.max(solid.from, solid.to);
  const out = new Float64Array(6 * points.length);
  points.forEach(([x, y], i) => out.set([x, y, bottom, x, y, top], 6 * i));
  return out;
}

/**
 * The points of `revolutionSurface`; one near the axis is not moved onto it. `choose` gives those of the profile's points (r, z)
 * that are wanted.
 */
export function revolutionPoints(
  solid: Revolution,
  segmentsPerTurn: number,
  choose: (
    profile: readonly (readonly [number, number])[],
  ) => readonly (readonly [number, number])[],
): Float64Array {
  const points = choose(flatten(solid.profile, segmentsPerTurn).points);
  const out = new Float64Array(3 * points.length * segmentsPerTurn);
  for (let k = 0; k < segmentsPerTurn; k++) {
    const angle = (2 * Math.PI * k) / segmentsPerTurn;
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    for (let i = 0; i < points.length; i++) {
      const [radius, z] = points[i];
      const at = 3 * (k * points.length + i);
      out[at] = radius * c;
      out[at + 1] = radius * s;
      out[at + 2] = z;
    }
  }
  return out;
}

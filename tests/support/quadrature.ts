import type { Moments } from '../../src/engine/mass/moments';
import type { Outline } from '../../src/engine/mass/solid';
import { type CloudPoint, cloudMoments } from './shapes';

/**
 * Brute-force volume integrals on a grid of points, with nothing in common with the engine's boundary integrals. The
 * ten-point Gauss rule is typed in from Abramowitz and Stegun, Table 25.4.
 */
const TEN_POINTS: readonly (readonly [node: number, weight: number])[] = [
  [0.148874338981631, 0.295524224714753],
  [0.433395394129247, 0.269266719309996],
  [0.679409568299024, 0.219086362515982],
  [0.865063366688985, 0.149451349150581],
  [0.973906528517172, 0.066671344308688],
];

/** Points and weights on [low, high] in `panels` equal panels. */
export function grid(low: number, high: number, panels: number): [number, number][] {
  const width = (high - low) / panels;
  const points: [number, number][] = [];
  for (let p = 0; p < panels; p++) {
    const middle = low + (p + 0.5) * width;
    for (const [node, weight] of TEN_POINTS) {
      points.push([middle - (node * width) / 2, (weight * width) / 2]);
      points.push([middle + (node * width) / 2, (weight * width) / 2]);
    }
  }
  return points;
}

/** A plane region: for each x between `low` and `high`, y between two curves. */
export interface Region {
  readonly low: number;
  readonly high: number;
  readonly floor: (x: number) => number;
  readonly roof: (x: number) => number;
}

/**
 * Points and weights over the region. x = middle - half cos(s) crowds them at the ends, where the curves of a circle
 * stand upright and a plain rule would lose its order.
 */
export function regionGrid(region: Region, panels = 3): [number, number, number][] {
  const middle = (region.low + region.high) / 2;
  const half = (region.high - region.low) / 2;
  const points: [number, number, number][] = [];
  for (const [s, along] of grid(0, Math.PI, panels)) {
    const x = middle - half * Math.cos(s);
    const dx = half * Math.sin(s) * along;
    for (const [y, across] of grid(region.floor(x), region.roof(x), 1))
      points.push([x, y, dx * across]);
  }
  return points;
}

/** Revolved about z: the region is in (z, radius); the mean over a turn is exact with eight directions. */
export function revolvedMoments(regions: readonly Region[]): Moments {
  const points: CloudPoint[] = [];
  for (const [z, r, area] of regions.flatMap((region) => regionGrid(region))) {
    for (let k = 0; k < 8; k++) {
      const turn = (Math.PI * (k + 0.3)) / 4;
      points.push([(area * r * 2 * Math.PI) / 8, r * Math.cos(turn), r * Math.sin(turn), z]);
    }
  }
  return cloudMoments(points);
}

/** Pushed along z: each region in (x, y) counts `sign` times. */
export function extrudedMoments(
  regions: readonly { readonly region: Region; readonly sign: 1 | -1 }[],
  from: number,
  to: number,
): Moments {
  const points: CloudPoint[] = [];
  for (const { region, sign } of regions) {
    for (const [x, y, area] of regionGrid(region)) {
      for (const [z, dz] of grid(from, to, 1)) points.push([sign * area * dz, x, y, z]);
    }
  }
  return cloudMoments(points);
}

/** The interval from `low` to `high` along a curve of constant or linear height. */
export function between(
  low: number,
  high: number,
  floor: (x: number) => number,
  roof: (x: number) => number,
): Region {
  return { low, high, floor, roof };
}

/** The table has fifteen digits and the sums some 1e4 terms; the issue asks for 1e-10. */
export const QUADRATURE = 1e-12;

export function circle(cx: number, cy: number, radius: number): Region {
  const reach = (x: number) => Math.sqrt(Math.max(0, radius * radius - (x - cx) ** 2));
  return between(
    cx - radius,
    cx + radius,
    (x) => cy - reach(x),
    (x) => cy + reach(x),
  );
}

/** A full circle of two half arcs. */
export function circleOutline(cx: number, cy: number, radius: number, sense: 1 | -1 = 1): Outline {
  return [
    [cx + radius, cy, sense],
    [cx - radius, cy, sense],
  ];
}

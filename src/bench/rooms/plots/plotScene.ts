import { place } from '../../../ui/drawn/plotScale';

/** A reading in a plot: `kind` gives its shape, `state` whether it is filled in, ringed or crossed out. */
export interface PlotPoint {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Half of its 95 % interval; left out: none is drawn. */
  readonly half?: number;
  readonly kind: 'pull' | 'push' | 'held';
  readonly state: 'counts' | 'doubted' | 'aside';
  /** What it is, in words. */
  readonly text: string;
}

export interface PlotCurve {
  /** `bench-line-<look>`. */
  readonly look: 'model' | 'fit';
  readonly y: readonly number[];
}

/** Edges over the plot's `x`, NaN where there is none. */
export interface PlotBand {
  readonly look: 'friction' | 'fit' | 'two';
  readonly low: readonly number[];
  readonly high: readonly number[];
}

export interface PlotContent {
  readonly x: readonly number[];
  readonly curves: readonly PlotCurve[];
  readonly bands: readonly PlotBand[];
  readonly points: readonly PlotPoint[];
  /** What of y is always in view beside zero. */
  readonly least?: readonly number[];
}

export const PLOT_HEIGHT = 200;
export const PLOT_EDGES = { left: 46, right: 12, top: 18, foot: 32 } as const;

/** How values map to pixels in a plot of a width. */
export interface PlotScene {
  readonly xRange: readonly [number, number];
  readonly yRange: readonly [number, number];
  readonly right: number;
  readonly bottom: number;
  x(value: number): number;
  /** Kept inside the plot for points: what lies beyond is drawn at the edge and said so. */
  y(value: number): number;
}

export interface PlacedPoint {
  readonly point: PlotPoint;
  readonly x: number;
  readonly y: number;
  /** It lies above (-1) or below (1) what the plot shows; 0: inside. */
  readonly beyond: -1 | 0 | 1;
}

/** Points that take no part may not squash the picture: the range grows for them by this share at most. */
const ROOM_FOR_OTHERS = 0.75;

export function plotScene(content: PlotContent, width: number): PlotScene {
  const { x, curves, bands, points, least = [] } = content;
  const { left, right: edge, top, foot } = PLOT_EDGES;
  const [right, bottom] = [width - edge, PLOT_HEIGHT - foot];
  const xRange = padded([...x, ...points.map((point) => point.x)], 0.02);
  const [low, high] = extremes([
    0,
    ...least,
    ...curves.flatMap(({ y }) => y),
    ...bands.flatMap((band) => [...band.low, ...band.high]),
    ...points.filter(({ state }) => state === 'counts').flatMap(ends),
  ]);
  const room = ROOM_FOR_OTHERS * (high - low);
  const others = points
    .filter(({ state }) => state !== 'counts')
    .map(({ y }) => Math.max(low - room, Math.min(high + room, y)));
  const yRange = padded([low, high, ...others], 0.06);
  return {
    xRange,
    yRange,
    right,
    bottom,
    x: (value) => place(value, ...xRange, left, right),
    y: (value) => place(value, ...yRange, bottom, top),
  };
}

function ends({ y, half = 0 }: PlotPoint): number[] {
  return [y - half, y + half];
}

/** Where the points are drawn, from left to right: the order in which keys step through them. */
export function placedPoints(points: readonly PlotPoint[], scene: PlotScene): PlacedPoint[] {
  const { top } = PLOT_EDGES;
  return points
    .map((point): PlacedPoint => {
      const y = scene.y(point.y);
      const beyond = y < top ? -1 : y > scene.bottom ? 1 : 0;
      return {
        point,
        x: scene.x(point.x),
        y: Math.max(top + 5, Math.min(scene.bottom - 5, y)),
        beyond,
      };
    })
    .toSorted((a, b) => a.x - b.x || a.y - b.y);
}

/** A pointer so near to a point, px, means it. */
const REACH = 22;

/** The point nearest to a place in the plot; null: none is near. */
export function nearestPoint(placed: readonly PlacedPoint[], x: number, y: number) {
  let best: PlacedPoint | null = null;
  let least = REACH;
  for (const one of placed) {
    const far = Math.hypot(one.x - x, one.y - y);
    if (far < least) [best, least] = [one, far];
  }
  return best;
}

/** Triangle up for pull, down for push, round for held. */
export function shape(kind: PlotPoint['kind'], x: number, y: number): string {
  const at = `${x.toFixed(1)} ${y.toFixed(1)}`;
  if (kind === 'pull') return `M${at}m-4.5 3.5l4.5 -8l4.5 8z`;
  if (kind === 'push') return `M${at}m-4.5 -3.5l4.5 8l4.5 -8z`;
  return `M${at}m-3.5 0a3.5 3.5 0 1 0 7 0a3.5 3.5 0 1 0 -7 0z`;
}

/** Through a point that is set aside. */
export function cross(x: number, y: number): string {
  return `M${x.toFixed(1)} ${y.toFixed(1)}m-6 -6l12 12m0 -12l-12 12`;
}

/** Round a point that is doubted or picked. */
export function ring(x: number, y: number, radius: number): string {
  const r = radius;
  return `M${x.toFixed(1)} ${y.toFixed(1)}m${-r} 0a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
}

function padded(values: readonly number[], share: number): readonly [number, number] {
  const [low, high] = extremes(values);
  if (low === high) return [low - 1, high + 1];
  const room = share * (high - low);
  return [low - room, high + room];
}

function extremes(values: readonly number[]): readonly [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return low <= high ? [low, high] : [0, 0];
}

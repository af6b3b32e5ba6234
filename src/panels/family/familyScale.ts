import type { FamilyCurve, FamilyPoint } from '../../neutralise/family';
import { place } from '../../ui/drawn/plotScale';

/** The plane of the chart: diameters along, lengths up, in mm and in pixels. */
export interface FamilyScale {
  readonly diametersMm: readonly [number, number];
  readonly lengthsMm: readonly [number, number];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export function xOf({ diametersMm, left, right }: FamilyScale, diameterMm: number): number {
  return place(diameterMm, diametersMm[0], diametersMm[1], left, right);
}
export function yOf({ lengthsMm, top, bottom }: FamilyScale, lengthMm: number): number {
  return place(lengthMm, lengthsMm[0], lengthsMm[1], bottom, top);
}

export interface Nearest {
  readonly curve: number;
  readonly diameterMm: number;
  readonly lengthMm: number;
  /** Pixels from the place that was asked for. */
  readonly away: number;
}

/** The nearest place on any of the curves to a place in pixels; null where there is no curve. `only` looks at one. */
export function nearestOnCurves(
  curves: readonly FamilyCurve[],
  scale: FamilyScale,
  px: number,
  py: number,
  only: number | null = null,
): Nearest | null {
  let best: Nearest | null = null;
  curves.forEach(({ points }, curve) => {
    if (only !== null && curve !== only) return;
    for (let i = 0; i < points.length; i++) {
      const a = points[i];
      if (!a) continue;
      const b = points[i + 1] ?? a;
      const [ax, ay] = [xOf(scale, a.diameterMm), yOf(scale, a.lengthMm)];
      const [bx, by] = [xOf(scale, b.diameterMm), yOf(scale, b.lengthMm)];
      const square = (bx - ax) ** 2 + (by - ay) ** 2;
      const along = square > 0 ? ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / square : 0;
      const share = Math.min(1, Math.max(0, along));
      const away = Math.hypot(px - ax - share * (bx - ax), py - ay - share * (by - ay));
      if (best && away >= best.away) continue;
      best = {
        curve,
        diameterMm: a.diameterMm + share * (b.diameterMm - a.diameterMm),
        lengthMm: a.lengthMm + share * (b.lengthMm - a.lengthMm),
        away,
      };
    }
  });
  return best;
}

/**
 * The length on a curve at a diameter, by a cubic through the four neighbours (straight near an end or a gap): within
 * 0.002 mm of a solution for the demo head. Null off the curve.
 */
export function lengthAt({ points }: FamilyCurve, diameterMm: number): number | null {
  const i = points.findIndex((point, k) => {
    const next = points[k + 1];
    return point && next && point.diameterMm <= diameterMm && diameterMm <= next.diameterMm;
  });
  if (i < 0) return null;
  const near = [points[i - 1], points[i], points[i + 1], points[i + 2]].filter(
    (point): point is FamilyPoint => Boolean(point),
  );
  return near.reduce((sum, one) => {
    const weight = near.reduce(
      (product, other) =>
        other === one
          ? product
          : (product * (diameterMm - other.diameterMm)) / (one.diameterMm - other.diameterMm),
      1,
    );
    return sum + weight * one.lengthMm;
  }, 0);
}

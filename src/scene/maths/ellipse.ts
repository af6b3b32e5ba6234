import type { SpreadEllipse } from '../../engine/mass/inertia';
import { JYY, JZZ, type Moments } from '../../engine/mass/moments';

/** How the head's mass is spread about the feathering axis: along the chord, along the thickness, or evenly. */
export type SpreadKind = 'centres' | 'flees' | 'round';

/** Axes that differ by less than this share are drawn and named round. */
const ROUND_WITHIN = 0.02;

export function spreadKind(ellipse: SpreadEllipse, moments: Moments): SpreadKind {
  if (ellipse.long - ellipse.short <= ROUND_WITHIN * ellipse.long) return 'round';
  return moments[JYY] > moments[JZZ] ? 'centres' : 'flees';
}

/** Drawn at twice the root-mean-square distances: about as large as the parts that make it. */
export const ELLIPSE_SCALE = 2;

/** Fills a closed polyline of the ellipse in the y-z plane (x = 0), `count` points of three numbers, mm. */
export function fillEllipse(out: Float32Array, count: number, ellipse: SpreadEllipse): void {
  const long = ELLIPSE_SCALE * ellipse.long * 1000;
  const short = ELLIPSE_SCALE * ellipse.short * 1000;
  const c = Math.cos(ellipse.angle);
  const s = Math.sin(ellipse.angle);
  for (let i = 0; i < count; i++) {
    const t = (2 * Math.PI * i) / count;
    const along = long * Math.cos(t);
    const across = short * Math.sin(t);
    out[3 * i] = 0;
    out[3 * i + 1] = along * c - across * s;
    out[3 * i + 2] = along * s + across * c;
  }
}

import { type SpreadEllipse, spreadEllipse } from '../engine/mass/inertia';
import { JYY, JZZ } from '../engine/mass/moments';
import type { HeadReading } from './reading';

/** Which way the spread of mass works: along the chord it centres, along the thickness it flees, round it is neutral. */
export type SpreadSide = 'centres' | 'flees' | 'round';

/** Axes that differ by less than this share look round, and are called so. */
const ROUND_WITHIN = 0.02;

/** The ellipse is drawn at twice the root-mean-square distances: about as large as the parts that make it. */
export const ELLIPSE_REACH = 2;

export function spreadSide(
  reading: HeadReading,
  ellipse = spreadEllipse(reading.totals),
): SpreadSide {
  if (!ellipse || isRound(ellipse)) return 'round';
  return reading.totals[JYY] > reading.totals[JZZ] ? 'centres' : 'flees';
}

function isRound(ellipse: SpreadEllipse): boolean {
  return ellipse.long - ellipse.short <= ROUND_WITHIN * ellipse.long;
}

import { surfaceDeviation } from '../../parts/tessellation/deviation';
import type { FileBody } from './fileBodies';

/** How finely round walls are cut into flats, as steps in a full turn. */
export const FINENESSES = { coarse: 24, standard: 48, fine: 96, veryFine: 240 } as const;
export type Fineness = keyof typeof FINENESSES;

/**
 * How far the triangles of a file lie from the true surfaces at most, m. All of their corners lie on them, so outer
 * diameters along the corners are exact and round walls lie inside (holes outside) of what they should be by this much.
 */
export function fileDeviation(bodies: readonly FileBody[], segmentsPerTurn: number): number {
  return bodies.reduce(
    (most, { solids }) =>
      solids.reduce((far, solid) => Math.max(far, surfaceDeviation(solid, segmentsPerTurn)), most),
    0,
  );
}

/** Share of a full circle's area that is lost when it is cut into this many steps: 1 - sin(a) / a with a = 2 pi / n. */
export function lostShare(segmentsPerTurn: number): number {
  const step = (2 * Math.PI) / segmentsPerTurn;
  return 1 - Math.sin(step) / step;
}

import { JYY, JZZ, type Moments } from '../mass/moments';

/**
 * Frequency of small free oscillation about a rest angle, rad/s: w^2 = stiffness / (J_yy + J_zz), the grip's
 * inertia about the feathering axis. Null where the stiffness is not positive or nothing turns.
 * For a thin plate at flat pitch w equals the spin speed exactly ("Pitch-Link Loads", R. Prouty).
 */
export function freeFeatheringFrequency(moments_G: Moments, stiffness: number): number | null {
  const inertia = moments_G[JYY] + moments_G[JZZ];
  if (!(stiffness > 0) || !(inertia > 0)) return null;
  return Math.sqrt(stiffness / inertia);
}

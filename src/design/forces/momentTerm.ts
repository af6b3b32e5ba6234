import type { Radians } from '../../engine/units';

/** Shares of the feathering moment that no part's own mass makes on the grip. */
export type TermId = 'rod' | 'air' | 'lag';

/**
 * One share of the feathering moment of one grip. Moment N m, positive toward raising the leading edge; slope dM/dt,
 * N m/rad; energy J with M = -dV/dt, zero at flat pitch. NaN at a pitch where the share is not known (the rod does not
 * reach, the air has no solution): the total has a gap there.
 */
export interface MomentTerm {
  readonly id: TermId;
  moment(pitch: Radians): number;
  slope(pitch: Radians): number;
  energy(pitch: Radians): number;
}

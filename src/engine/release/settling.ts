import { radians } from '../units';
import type { ReleaseSystem } from './releaseSystem';
import { PITCH, RATE } from './sliding';

/**
 * Whether damping alone keeps the motion from here on within `within` rad of a rest angle: distance from it and rate
 * together are a swing no wider than that, with the stiffness across `within` taken as constant. With no moment there at all:
 * what the rate will still coast is no longer than that. Never without damping, nor where friction has the last word.
 */
export function settlesByDamping(
  system: ReleaseSystem,
  y: Float64Array,
  hand: number,
  within: number,
): boolean {
  const pitch = radians(y[PITCH]);
  const rate = y[RATE];
  if (system.damping === 0 || system.friction(pitch) > 0) return false;
  const moment = system.moment(pitch) + hand;
  const above = system.moment(radians(pitch + within));
  const below = system.moment(radians(pitch - within));
  const stiffness = (below - above) / (2 * within);
  const inertia = system.inertia.value(pitch);
  if (stiffness === 0 && moment === 0) return inertia * Math.abs(rate) <= within * system.damping;
  const distance = moment / stiffness;
  const swing = (inertia * rate * rate) / stiffness;
  return stiffness > 0 && distance * distance + swing <= within * within;
}

import type { ReleaseSystem } from '../../engine/release/releaseSystem';
import { type Radians, radians, radiansFromDegrees } from '../../engine/units';

/** What a hand does to a grip that has been let go. */
export type Hand =
  | { readonly kind: 'off' }
  /** Draws it by a soft spring toward a pitch. */
  | { readonly kind: 'spring'; readonly target: Radians }
  /** Pushes with a moment, N m. */
  | { readonly kind: 'moment'; readonly moment: number };

/** How soft a hand is. */
export interface Softness {
  /** N m/rad. */
  readonly stiffness: number;
  /** N m s/rad. */
  readonly damping: number;
  /** What the head needs at most within the range looked at, moment and friction, N m. */
  readonly need: number;
}

/** From so far away a spring draws as hard as the head needs at most. */
const FULL_AT = radiansFromDegrees(10);
const LOOKS = 40;
/** Rate that a hand gives a head that needs no moment at all (it stands still, nothing rubs), rad/s. */
const IDLE_RATE = 10;

/**
 * A spring for this head: ten degrees away it draws as hard as the head needs at most within [low, high], so that it can
 * bring the grip anywhere and is soft against the head's own stiffness; damped by half of what keeps it from swinging on it.
 */
export function softHand(system: ReleaseSystem, low: Radians, high: Radians): Softness {
  let need = 0;
  for (let i = 0; i <= LOOKS; i++) {
    const pitch = radians(low + ((high - low) * i) / LOOKS);
    const size = Math.abs(system.moment(pitch)) + system.friction(pitch);
    // A gap is NaN, which no comparison takes.
    if (size > need) need = size;
  }
  const inertia = system.inertia.value(radians((low + high) / 2));
  if (need === 0) need = inertia * IDLE_RATE * IDLE_RATE * FULL_AT;
  const stiffness = need / FULL_AT;
  return { stiffness, damping: Math.sqrt(stiffness * inertia), need };
}

/** Moment of the hand on the grip, N m. */
export function handMoment(hand: Hand, soft: Softness, pitch: Radians, rate: number): number {
  switch (hand.kind) {
    case 'off':
      return 0;
    case 'moment':
      return hand.moment;
    default:
      return soft.stiffness * (hand.target - pitch) - soft.damping * rate;
  }
}

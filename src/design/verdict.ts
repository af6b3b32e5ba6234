import type { Equilibria } from '../engine/feathering/equilibria';
import { JYY, JYZ, JZZ, M, type Moments } from '../engine/mass/moments';
import { degreesFromRadians } from '../engine/units';
import type { TravelEnds } from './forces/travel';

/**
 * What the verdict is made from: a head as it stands now. Angles in degrees, everything else SI; a force is null
 * without an arm or where the arm is over centre.
 */
export interface VerdictSource {
  readonly partCount: number;
  readonly hiddenCount: number;
  readonly spins: boolean;
  readonly hasArm: boolean;
  /** The arm's ball lies on the feathering axis. */
  readonly noLever: boolean;
  /** About the grip origin, grip frame. */
  readonly totals: Moments;
  readonly angularSpeed: number;
  readonly equilibria: Equilibria;
  readonly overCentreDeg: readonly number[];
  /** How far pitch can go from flat; null without an arm and where flat pitch is out of the rod's reach. */
  readonly ends: TravelEnds | null;
  readonly usedPitchDeg: number;
  /** Amplitude of the once-per-turn part of the moment, N m. */
  readonly offAxisMoment: number;
  /** Something is known of the friction, and the design counts it. */
  readonly frictionKnown: boolean;
  /** N m; zero where nothing is known. */
  frictionAt(pitchDeg: number): number;
  momentAt(pitchDeg: number): number;
  /** Push-rod force that a moment makes at a pitch; null over centre, out of reach and without an arm. */
  forceOf(moment: number, pitchDeg: number): number | null;
}

/** What has to be held: a push-rod force (N) or, without an arm, a moment (N m); the size, never its sign. */
export interface Hold {
  readonly kind: 'force' | 'moment';
  readonly size: number;
}

export type Verdict =
  | { readonly kind: 'noParts' }
  /** Parts there are, but nothing with mass is in the sum. */
  | { readonly kind: 'noMass'; readonly hiddenCount: number }
  | ({ readonly kind: 'standsStill' } & Judged)
  /** An arm whose ball lies on the feathering axis: no push rod can hold it. */
  | ({ readonly kind: 'noLever' } & Judged)
  /** Flat pitch itself is out of the rod's reach. */
  | ({ readonly kind: 'noReach' } & Judged)
  /** `by`: nothing turns it; friction that is known holds it; or the drag that a small linkage usually has would. */
  | ({ readonly kind: 'stays'; readonly by: 'balance' | 'friction' | 'usualDrag' } & Judged)
  | ({ readonly kind: 'centres'; readonly hard: boolean; readonly restDeg: number } & Judged)
  | ({ readonly kind: 'tilted'; readonly hard: boolean; readonly restDeg: number } & Judged)
  | ({
      readonly kind: 'flees';
      readonly fleeDeg: number;
      /** The flee angle is near enough to flat to be called so. */
      readonly flat: boolean;
      /** Where it runs to below and above the flee angle; null where that lies beyond -90 or 90 degrees. */
      readonly below: number | null;
      readonly above: number | null;
    } & Judged)
  /** Driven one way at every pitch in use, to a rest angle beyond it or (null) to none within -90 to 90. */
  | ({ readonly kind: 'driven'; readonly sign: 1 | -1; readonly toDeg: number | null } & Judged);

interface Judged {
  /** Largest of both ways at the pitch in use; null where the arm is over centre there. */
  readonly hold: Hold | null;
  /** Largest anywhere within the pitch in use. */
  readonly worst: Hold | null;
  readonly usedPitchDeg: number;
  readonly overCentreDeg: readonly number[];
  /** The arm goes over centre within the pitch in use. */
  readonly overCentreInUse: boolean;
  /** What ends the pitch within the pitch in use, or before the rest angle it runs to. */
  readonly ends: TravelEnds | null;
  /** The greatest friction within the pitch in use as a hold, where it is known. */
  readonly friction: Hold | null;
  /** J_yy - J_zz, kg m^2: positive where weight along the bolt is missing, negative where there is too much. */
  readonly shortOfNeutral: number;
  /**
   * Largest share of the moment, N m, that torque offset and precone add: the spread of mass alone does not tell.
   * Zero without either.
   */
  readonly offAxisMoment: number;
  /** J_yz, kg m^2: what lies off the chord plane and tilts the rest angle. */
  readonly product: number;
  readonly hiddenCount: number;
}

/**
 * Up to this at every pitch in use the drag of a small linkage, 0.3 to 0.6 N at rest (common practice), holds the grip;
 * the sentence names that assumption. Only where the design does not say what friction there is.
 */
export const NEUTRAL_FORCE_N = 0.6;
/** From this at the pitch in use, the control is called heavy: ten times the drag of a small linkage. */
export const HARD_FORCE_N = 5;
/**
 * Without an arm there is no force; the moment is then judged against W^2 (J_yy + J_zz) / 2, the largest moment that
 * the same spread of mass could make if it all lay in the chord plane. The two shares are about what the two forces
 * above come to for a 10 g blade of 30 mm chord at 10,000 rpm (0.41 N m) on an arm of 17 mm: 0.025 and 0.21.
 */
export const NEUTRAL_SHARE = 0.025;
export const HARD_SHARE = 0.2;
/** A rest or flee angle this near to flat is called flat, degrees. */
const FLAT_DEG = 3;

/** Pitches at which "stays where it is put" is judged: eighths of the range in use, both ends and flat among them. */
const SAMPLES = 8;

/** The head in one judgement. Pure; a few dozen evaluations of the moment, cheap enough for every frame of a drag. */
export function judgeHead(head: VerdictSource): Verdict {
  if (head.partCount === 0) return { kind: 'noParts' };
  if (!(head.totals[M] > 0)) return { kind: 'noMass', hiddenCount: head.hiddenCount };
  const judged = measure(head);
  if (!head.spins) return { kind: 'standsStill', ...judged };
  if (head.noLever) return { kind: 'noLever', ...judged };
  if (head.hasArm && head.ends === null) return { kind: 'noReach', ...judged };
  if (head.equilibria.kind === 'neutral') return { kind: 'stays', by: 'balance', ...judged };
  if (heldByFriction(head)) return { kind: 'stays', by: 'friction', ...judged };
  const light = judged.worst && timesLimit(judged.worst, head, NEUTRAL_FORCE_N, NEUTRAL_SHARE) < 1;
  if (!head.frictionKnown && light) return { kind: 'stays', by: 'usualDrag', ...judged };
  const hard = judged.hold !== null && timesLimit(judged.hold, head, HARD_FORCE_N, HARD_SHARE) >= 1;
  const rests = anglesOf(head.equilibria, 'stable');
  const flees = anglesOf(head.equilibria, 'unstable');
  const restDeg = nearestFlat(rests);
  const fleeDeg = nearestFlat(flees);
  if (restDeg !== null && (fleeDeg === null || Math.abs(restDeg) <= Math.abs(fleeDeg))) {
    const kind = Math.abs(restDeg) <= FLAT_DEG ? 'centres' : 'tilted';
    return { kind, hard, restDeg, ...judged };
  }
  // A flee angle beyond the pitch in use is none that the pilot meets.
  const driven = oneWay(head);
  if (fleeDeg !== null && !driven) {
    const below = rests.filter((angle) => angle < fleeDeg).at(-1) ?? null;
    const above = rests.find((angle) => angle > fleeDeg) ?? null;
    const flat = Math.abs(fleeDeg) <= FLAT_DEG;
    return { kind: 'flees', fleeDeg, flat, below, above, ...judged };
  }
  const sign = head.momentAt(0) < 0 ? -1 : 1;
  const ahead = sign > 0 ? rests.find((angle) => angle > 0) : rests.findLast((angle) => angle < 0);
  return { kind: 'driven', sign, toDeg: ahead ?? null, ...judged };
}

/** Friction that is known is at least the moment at every pitch in use. */
function heldByFriction(head: VerdictSource): boolean {
  if (!head.frictionKnown) return false;
  for (let i = -SAMPLES; i <= SAMPLES; i++) {
    const pitch = (head.usedPitchDeg * i) / SAMPLES;
    if (!(Math.abs(head.momentAt(pitch)) <= head.frictionAt(pitch))) return false;
  }
  return true;
}

/** The moment has one sign at every pitch in use. */
function oneWay(head: VerdictSource): boolean {
  const sign = Math.sign(head.momentAt(0));
  for (let i = -SAMPLES; i <= SAMPLES; i++) {
    if (Math.sign(head.momentAt((head.usedPitchDeg * i) / SAMPLES)) !== sign) return false;
  }
  return sign !== 0;
}

/** Rest or flee angles in degrees, ascending. */
export function anglesOf(equilibria: Equilibria, kind: 'stable' | 'unstable'): number[] {
  if (equilibria.kind === 'neutral') return [];
  return equilibria.roots
    .filter((root) => root.kind === kind)
    .map((root) => degreesFromRadians(root.pitch));
}

export function nearestFlat(angles: readonly number[]): number | null {
  let nearest: number | null = null;
  for (const angle of angles) {
    if (nearest === null || Math.abs(angle) < Math.abs(nearest)) nearest = angle;
  }
  return nearest;
}

function measure(head: VerdictSource): Judged {
  const { usedPitchDeg, overCentreDeg, hiddenCount, totals } = head;
  let worst: Hold | null = null;
  let friction: Hold | null = null;
  for (let i = -SAMPLES; i <= SAMPLES; i++) {
    const pitch = (usedPitchDeg * i) / SAMPLES;
    worst = larger(worst, holdAt(head, pitch, head.momentAt(pitch)));
    if (head.frictionKnown)
      friction = larger(friction, holdAt(head, pitch, head.frictionAt(pitch)));
  }
  const atEnds = larger(
    holdAt(head, usedPitchDeg, head.momentAt(usedPitchDeg)),
    holdAt(head, -usedPitchDeg, head.momentAt(-usedPitchDeg)),
  );
  const overCentreInUse = overCentreDeg.some((angle) => Math.abs(angle) <= usedPitchDeg);
  return {
    // Beyond over-centre the force at the ends says nothing of what has to be held before it.
    hold: overCentreInUse ? worst : atEnds,
    worst,
    friction,
    usedPitchDeg,
    overCentreDeg,
    overCentreInUse,
    ends: head.ends,
    shortOfNeutral: totals[JYY] - totals[JZZ],
    offAxisMoment: head.offAxisMoment,
    product: totals[JYZ],
    hiddenCount,
  };
}

function holdAt(head: VerdictSource, pitchDeg: number, moment: number): Hold | null {
  if (!head.hasArm) return Number.isNaN(moment) ? null : { kind: 'moment', size: Math.abs(moment) };
  const force = head.forceOf(moment, pitchDeg);
  return force === null ? null : { kind: 'force', size: Math.abs(force) };
}

function larger(a: Hold | null, b: Hold | null): Hold | null {
  if (a === null || b === null) return a ?? b;
  return a.size >= b.size ? a : b;
}

/** How many times the limit the hold is: a force, or a share of the largest moment for a moment. */
function timesLimit(hold: Hold, head: VerdictSource, force: number, share: number): number {
  if (hold.kind === 'force') return hold.size / force;
  const spread = head.totals[JYY] + head.totals[JZZ];
  const whole = (head.angularSpeed * head.angularSpeed * spread) / 2;
  return whole > 0 ? hold.size / (share * whole) : 0;
}

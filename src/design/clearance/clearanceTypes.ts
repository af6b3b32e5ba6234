import type { Meeting } from '../../engine/clearance/nearestGap';
import type { Vec3 } from '../../engine/math/vector';

/** One turning part against one keep-out. Lengths m, angles degrees, places in the rotor frame at that pitch. */
export interface ClearancePair {
  readonly part: string;
  readonly keepOut: string;
  readonly meeting: Meeting;
  /** Least gap through the whole travel; negative: the depth of the overlap. */
  readonly gap: number;
  /** The true gap is within this of it: what the search leaves open, and how far triangles lie from true round walls. */
  readonly error: number;
  /** One of the two is a mesh drawn with fewer triangles than it has: beyond the error. */
  readonly reduced: boolean;
  readonly pitchDeg: number;
  /** How far the shaft has turned from where the feathering axis points along X; 0 of what is fixed to the hub. */
  readonly azimuthDeg: number;
  /** The azimuth makes no difference: fixed to the hub, or the same all round the shaft. */
  readonly anyAzimuth: boolean;
  readonly onPart: Vec3;
  readonly onKeepOut: Vec3;
}

/** The pitches that were looked through, and where they come from. */
export interface ClearanceRange {
  readonly lowDeg: number;
  readonly highDeg: number;
  /** 'linkage': as far as stops, over-centre and the rod's reach let it go; else a quarter turn each way. */
  readonly from: 'linkage' | 'noLinkage' | 'noReach';
}

export interface HeadClearance {
  /** The least gap first. */
  readonly pairs: readonly ClearancePair[];
  readonly range: ClearanceRange;
  /** The gap that the design wants, m. */
  readonly wanted: number;
}

import type { KeepOutShape } from '../engine/clearance/keepOut';
import type { Pose } from '../engine/math/pose';
import type { Vec3 } from '../engine/math/vector';

/**
 * What a part is in the head beside its mass, told by its type so that nobody has to compare kinds. SI, in the part's
 * own frame unless said otherwise.
 */

/** A push rod: its frame has the origin on the arm's ball and runs along z toward the slider, +z or -z by `side`. */
export interface RodFacts {
  /** +1: the slider lies on the +Z side of the arm's ball, -1: on the -Z side. */
  readonly side: -1 | 1;
  /** Between the centres of the two balls, m. */
  readonly length: number;
}

/**
 * A section of a lifting surface, root to tip; linear between neighbours. Part frame, with the blade's lag in it (as
 * `solids` have it): nothing is left to turn. A chord line from leading to trailing edge.
 */
export interface LiftingStation {
  readonly leadingEdge: Vec3;
  readonly trailingEdge: Vec3;
  /** Thickness and largest camber as shares of the chord. */
  readonly thicknessRatio: number;
  readonly camberRatio: number;
}

/** How a blade's root sits in the fork. Its middle lies on the seat, faces at right angles to the bolt. */
export interface BladeRootFacts {
  /** Between the faces that the cheeks hold, m. */
  readonly thickness: number;
  /** Outer diameter of a bushing round the bolt, m; null: the bolt itself bears on the root. */
  readonly bushing: number | null;
}

/** A bolt, its axis the part's z: the head's underside lies at z = 0, the shank runs toward -z. Metres. */
export interface FastenerFacts {
  readonly nominalDiameter: number;
  /** From crest to crest, also of an inch thread. */
  readonly threadPitch: number;
  /** Stress area of the thread (ISO 898-1; ASME B1.1 where size and pitch are a Unified thread's), m^2. */
  readonly stressArea: number;
  /** At the bottom of the thread, d3 of ISO 724; for a Unified thread too, where it is on the small side. */
  readonly rootDiameter: number;
  /**
   * Distances from the head's underside along the shank: plain, of the nominal diameter, from 0 to `threadFrom`, then
   * thread to `end`. A run-out counts as thread, which is cautious. Without plain shank `threadFrom` is 0.
   */
  readonly threadFrom: number;
  readonly end: number;
  /** Head with its extension; 0 without a head. */
  readonly headHeight: number;
  /** What is above z = 0 (head, extension), key socket taken out: kg as drawn, and the height of its centre. 0 without. */
  readonly headMass: number;
  readonly headCentre: number;
  /** Property class as ISO 898-1 or ISO 3506-1 names it; null where it is not known. */
  readonly strengthClass: StrengthClass | null;
}

/** ISO 898-1 (8.8, 10.9, 12.9) and ISO 3506-1 (A2, A4). */
export type StrengthClass = '8.8' | '10.9' | '12.9' | 'A2-50' | 'A2-70' | 'A4-80';

/** Whether what is screwed on holds itself against turning (a locking ring) or only by being tight. */
export type Retention = 'prevailing' | 'plain';

/** The thread of what is screwed on, from its clamped face, m. */
export interface InnerThread {
  /** Where what locks ends: the bolt has to reach that far; null: it does not lock. */
  readonly lockEnd: number | null;
  readonly diameter: number;
}

/** How a fork holds blade and bolt; metres, in the grip frame. The slot is even about z = 0. */
export interface ForkFacts {
  readonly boltStation: number;
  /** Of each of the two cheeks. */
  readonly cheekThickness: number;
  readonly slotHeight: number;
  /** Of a cheek across the feathering axis, along y, and round about the bolt outboard of it. */
  readonly width: number;
  readonly holeDiameter: number;
}

export type BearingKind = 'deepGroove' | 'thrustBall' | 'needle' | 'plain';

/** A bearing on the feathering axis; its own axis is the part's z, its middle the part's origin. Lengths m. */
export interface BearingFacts {
  /** What it is there for: across its axis, or along it. */
  readonly carries: 'radial' | 'thrust';
  readonly kind: BearingKind;
  readonly boreDiameter: number;
  readonly outerDiameter: number;
  /** Of the circle on which it rolls (half way between bore and rim) or slides (the bore of a plain one). */
  readonly meanDiameter: number;
  readonly width: number;
  /**
   * Running friction moment: coefficient x load x `frictionDiameter` / 2. The usual coefficients are printed for the bore
   * (published tables of the friction of rolling bearings), which is also where a plain bearing slides.
   */
  readonly frictionCoefficient: number;
  readonly frictionDiameter: number;
  /** Basic ratings C and C0 (ISO 281, ISO 76), N; null where they are not known. */
  readonly dynamicLoad: number | null;
  readonly staticLoad: number | null;
}

/** A space that must stay free. */
export interface KeepOutFacts {
  readonly shape: KeepOutShape;
  /** The shape's own frame in the part frame; null where they are one. */
  readonly pose: Pose | null;
}

/** What the loads of one grip are told as. Everything SI; signs in the rotor frame. */

/** A load held against what it may be. */
export type Margin =
  | {
      readonly kind: 'known';
      /** What is there, what it may be (same unit), and the share used: 1 is the limit. */
      readonly value: number;
      readonly limit: number;
      readonly use: number;
      /** Where the limit is from: standard and class, short. */
      readonly source: string;
      /** The rule is used outside what it was written for, cautiously. */
      readonly outside: boolean;
    }
  | { readonly kind: 'unknown'; readonly value: number; readonly why: UnknownWhy };

/** Why there is no limit to hold a load against. */
export type UnknownWhy =
  | 'noClass'
  | 'noRating'
  | 'noStrength'
  | 'noRootStrength'
  | 'noShank'
  /** One bearing alone carries no moment. */
  | 'oneBearing';

export interface PartPull {
  readonly id: string;
  /** Centrifugal pull W^2 m (X, Y), N. */
  readonly pull: number;
}

export interface BearingLoad {
  readonly id: string;
  readonly carries: 'radial' | 'thrust';
  /** Station of its middle from the shaft, m. */
  readonly station: number;
  readonly radial: number;
  readonly axial: number;
  /** Static safety by ISO 76: C0 / P0 as a use of P0 / C0. */
  readonly rating: Margin;
}

/** Flapwise moment at the middle of the bearings, N m, positive bends the tip up. */
export interface FlapMoment {
  /** Station about which it is taken, m. */
  readonly station: number;
  readonly fromMass: number;
  /** Null where air is not counted. */
  readonly fromThrust: number | null;
  /**
   * First product of mass int x z dm (kg m^2) that would have to be added for the two to cancel at this pitch: negative
   * means weight below the plane. Null where there is no thrust.
   */
  readonly balancingProduct: number | null;
}

export type BoltCheckName =
  | 'shear'
  | 'bending'
  | 'shearAndBending'
  | 'cheekPressure'
  | 'rootPressure'
  | 'headPull'
  | 'thread';

export interface BoltLoads {
  readonly id: string;
  /** Pull of blade and what it carries on the bolt, N. */
  readonly pull: number;
  /** What lies in the two shear planes. */
  readonly planes: readonly ['shank' | 'thread', 'shank' | 'thread'];
  readonly checks: readonly { readonly name: BoltCheckName; readonly margin: Margin }[];
  /**
   * How the nut is kept: a locking nut, a plain one, or no nut found; or the bolt ends in it before enough thread holds, or
   * before what locks.
   */
  readonly retention: 'prevailing' | 'plain' | 'none' | 'shallow' | 'unlocked';
}

export interface HeadLoads {
  readonly speedRpm: number;
  readonly pitchDeg: number;
  /** Visible parts that turn with the grip, in list order. */
  readonly pulls: readonly PartPull[];
  /** Along the feathering axis, outward: what the thrust bearing carries, N. */
  readonly axialPull: number;
  /** Thrust of one blade and the radius where it acts; null where air is not counted. */
  readonly thrust: { readonly force: number; readonly radius: number } | null;
  readonly flap: FlapMoment;
  readonly bearings: readonly BearingLoad[];
  /** Nothing is drawn as a bearing of that kind: its load has nobody to carry it. */
  readonly missing: readonly ('radial' | 'thrust')[];
  readonly bolts: readonly BoltLoads[];
  /** The margin that is used up first at this pitch; null where nothing is loaded or no limit is known. */
  readonly first: FirstLimit | null;
}

/** A margin with the speed at which it would be used up whole, rpm. */
export interface FirstLimit {
  readonly what: 'bearing' | BoltCheckName;
  readonly id: string;
  readonly use: number;
  readonly limitRpm: number;
}

/** The margin that is used up first anywhere within the pitch in use. */
export interface LimitInUse extends FirstLimit {
  readonly pitchDeg: number;
}

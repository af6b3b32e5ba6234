import type { CatalogueReference } from '../parts/catalogue';
import type { OwnMaterial } from '../parts/materials/material';
import type { PartKind, ValuesByKind } from '../parts/registry';
import type { Measured } from './measured';
import type { AIR_SECTION, PolarFile } from './sections/air';
import type { BenchRecord } from './sections/bench';
import type { BLADE_BOLT_SECTION } from './sections/bladeBolt';
import type { CLEARANCE_SECTION } from './sections/clearance';
import type { CONTROL_SECTION } from './sections/control';
import type { COUNTED_SECTION } from './sections/counted';
import type { DragRow, FRICTION_SECTION } from './sections/friction';
import type { OtherGrip } from './sections/grips';
import type { ROTOR_SECTION } from './sections/rotor';
import type { SectionOf } from './sections/section';
import type { OwnTolerance, TOLERANCE_SECTION } from './sections/tolerance';

/** The design document as it is held, undone and saved: immutable, numbers as the person typed them. */
export const DESIGN_FORMAT = 'stillgrip-design';
export const DESIGN_VERSION = 1;

/** Free placement in the grip frame: turned about the fixed x, then y, then z, then moved. */
export interface FreePose {
  readonly positionMm: readonly [number, number, number];
  readonly rotationDeg: readonly [number, number, number];
}

/** Mounted on a socket of another part: moved along the socket's z by `offsetMm`, turned about it by `turnDeg`. */
export interface Mount {
  readonly part: string;
  readonly name: string;
  readonly offsetMm?: number;
  readonly turnDeg?: number;
}

interface PartBase {
  readonly id: string;
  readonly name: string;
  /** Left out of every sum and drawn as a ghost. */
  readonly hidden?: boolean;
  readonly pose?: FreePose;
  readonly socket?: Mount;
  /** The row of a standard that gives the dimensions not written here; for types that have a catalogue. */
  readonly catalogue?: CatalogueReference;
  readonly measured?: Measured;
}

/**
 * One part: base, kind and the kind's own parameters side by side, as written: what a catalogue row, a material or a
 * default gives may be left out, and `resolveValues` fills it in. A density's `materialKey` may name a material beside
 * them. Exactly one of `pose` and `socket` is there.
 */
export type PartOf<K extends PartKind> = PartBase & { readonly kind: K } & Partial<ValuesByKind[K]>;
export type Part = { [K in PartKind]: PartOf<K> }[PartKind];

export type Rotor = SectionOf<typeof ROTOR_SECTION>;
export type Counted = SectionOf<typeof COUNTED_SECTION>;
export type Control = SectionOf<typeof CONTROL_SECTION>;
export type Friction = SectionOf<typeof FRICTION_SECTION> & {
  /** Drag of the linkage measured at rest, travel ascending. */
  readonly drag?: readonly DragRow[];
};
export type Air = SectionOf<typeof AIR_SECTION> & {
  /** Coefficients of the blade's section, as the file had them. */
  readonly polar?: PolarFile;
};
export type BladeBolt = SectionOf<typeof BLADE_BOLT_SECTION>;
export type Clearance = SectionOf<typeof CLEARANCE_SECTION>;
export type Tolerance = SectionOf<typeof TOLERANCE_SECTION> & {
  /** Numbers that have a tolerance of their own; none twice. */
  readonly own?: readonly OwnTolerance[];
};

/** The sections of a document that belong to no part; all but the rotor may be left out. */
export interface DesignSections {
  readonly rotor: Rotor;
  readonly counted?: Counted;
  readonly control?: Control;
  readonly friction?: Friction;
  readonly air?: Air;
  readonly bladeBolt?: BladeBolt;
  readonly clearance?: Clearance;
  readonly tolerance?: Tolerance;
}

export interface Design extends DesignSections {
  readonly format: typeof DESIGN_FORMAT;
  readonly version: typeof DESIGN_VERSION;
  readonly name: string;
  /** Free text shown with the design (for the demo: that its numbers are invented). */
  readonly note?: string;
  /** Materials that the tables do not have. */
  readonly materials?: readonly OwnMaterial[];
  /** The whole grip on the scale, to hold against the sum. */
  readonly weighedTotal?: WeighedTotal;
  /** The other grips of the rotor, for the balance. */
  readonly otherGrips?: readonly OtherGrip[];
  /** Variants of the head to compare; exactly one of them is on the stage (see `TryOut`). */
  readonly tryOuts?: readonly TryOut[];
  /** What the measuring bench keeps; nothing of it enters the model. */
  readonly bench?: BenchRecord;
  readonly parts: readonly Part[];
}

/**
 * A variant of the head within one design: a list of parts of its own. Rotor, air, own materials and all else is common
 * to all variants.
 */
export interface TryOut {
  readonly id: string;
  readonly name: string;
  readonly note?: string;
  /** The one that was chosen to be made; at most one. */
  readonly adopted?: true;
  /** Left out for the one on the stage: its parts are the design's own. */
  readonly parts?: readonly Part[];
}

export interface WeighedTotal {
  readonly massGrams: number;
  readonly massStepGrams?: number;
}

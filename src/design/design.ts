import type { CatalogueReference } from '../parts/catalogue';
import type { OwnMaterial } from '../parts/materials/material';
import type { PartKind, ValuesByKind } from '../parts/registry';
import type { Measured } from './measured';

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

export interface Rotor {
  readonly speedRpm: number;
  readonly bladeCount: number;
  readonly torqueOffsetMm: number;
  readonly preconeDeg: number;
  /** Pitch in use both ways of flat; the verdict and the set pitches refer to it. */
  readonly usedPitchDeg?: number;
}

export interface Design {
  readonly format: typeof DESIGN_FORMAT;
  readonly version: typeof DESIGN_VERSION;
  readonly name: string;
  /** Free text shown with the design (for the demo: that its numbers are invented). */
  readonly note?: string;
  readonly rotor: Rotor;
  /** Materials that the tables do not have. */
  readonly materials?: readonly OwnMaterial[];
  /** The whole grip on the scale, to hold against the sum. */
  readonly weighedTotal?: WeighedTotal;
  readonly parts: readonly Part[];
}

export interface WeighedTotal {
  readonly massGrams: number;
  readonly massStepGrams?: number;
}

export const DEFAULT_USED_PITCH_DEG = 20;

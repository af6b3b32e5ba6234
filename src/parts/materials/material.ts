/** What a picker lists a material under. 'heavy': metals and carbides chosen for their weight. */
export type MaterialGroup = 'metal' | 'heavy' | 'plastic' | 'laminate' | 'wood' | 'foam';

/** A material as the tables and a design's own list have it. Numbers at room temperature. */
export interface Material {
  /** What a part's `material` says: small letters, digits and dashes. */
  readonly id: string;
  readonly name: string;
  readonly group: MaterialGroup;
  readonly densityKgM3: number;
  /** Range in which bought material lies; an end is absent where it is not known. */
  readonly densityLowKgM3?: number;
  readonly densityHighKgM3?: number;
  readonly youngsModulusGPa?: number;
  readonly tensileStrengthMPa?: number;
  /** Yield stress, or the stress at 0.2 % lasting strain. */
  readonly yieldStrengthMPa?: number;
  /** Where the figures were read. */
  readonly source: string;
  /** True where the density was recalled and not read. What else was recalled is in `note`. */
  readonly fromMemory: boolean;
  readonly note?: string;
}

/** A material of the design's own: the maker's word is its source. */
export type OwnMaterial = Omit<Material, 'source' | 'fromMemory' | 'group'> & {
  readonly source?: string;
};

/** Limits of a design document that belong to no part type; the schema, the checks and the fields share them. */
export const MAX_PARTS = 10_000;
/** Length of a file's text, UTF-16 units: ten thousand parts with room to spare. */
export const MAX_TEXT = 32_000_000;
/** Nesting of a file; a sound one needs five. */
export const MAX_DEPTH = 32;
export const MAX_ID = 64;
export const MAX_NAME = 200;
export const MAX_NOTE = 4000;

/** Limits of one number, both allowed, in the unit that its key names. */
export interface NumberLimits {
  readonly min: number;
  readonly max: number;
  readonly unit: LimitUnit;
  readonly whole?: boolean;
}
export type LimitUnit =
  | 'mm'
  | 'm'
  | 'g'
  | 'deg'
  | 'kg/m3'
  | 'rpm'
  | 's'
  | 'g mm2'
  | 'MPa'
  | 'GPa'
  | 'N'
  | 'N mm'
  | 'degC'
  | '%'
  | '1';

export const MAX_TRY_OUTS = 50;
/** Parts of all try-outs together, the one on the stage too: a file with them must stay below `MAX_TEXT`. */
export const MAX_TRY_OUT_PARTS = 2 * MAX_PARTS;

export const MAX_OWN_MATERIALS = 200;
/** Numbers of a design's own material; the density's are those of every part. */
export const MATERIAL_LIMITS = {
  densityKgM3: { min: 1, max: 25_000, unit: 'kg/m3' },
  densityLowKgM3: { min: 1, max: 25_000, unit: 'kg/m3' },
  densityHighKgM3: { min: 1, max: 25_000, unit: 'kg/m3' },
  youngsModulusGPa: { min: 0.001, max: 1500, unit: 'GPa' },
  tensileStrengthMPa: { min: 0.01, max: 10_000, unit: 'MPa' },
  yieldStrengthMPa: { min: 0.01, max: 10_000, unit: 'MPa' },
} as const satisfies Readonly<Record<string, NumberLimits>>;

/** Ten metres from the shaft is far beyond any grip: more is a slip of the unit. */
export const POSITION_LIMITS: NumberLimits = { min: -10_000, max: 10_000, unit: 'mm' };
/** A full turn either way. */
export const TURN_LIMITS: NumberLimits = { min: -360, max: 360, unit: 'deg' };

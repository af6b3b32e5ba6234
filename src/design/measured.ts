import type { NumberLimits } from './limits';

/**
 * What a maker measured of a part, as typed. It wins over what the dimensions give: see `weighPart`. Centres and axes
 * are the body's own (the part frame; a blade's at zero lag). Steps are the reading's smallest division.
 */
export interface Measured {
  readonly massGrams?: number;
  readonly massStepGrams?: number;
  readonly centreXMm?: number;
  readonly centreYMm?: number;
  readonly centreZMm?: number;
  readonly centreStepMm?: number;
  readonly swings?: readonly Swing[];
}

/** One timing on the two-string pendulum: hung so that `about` stands upright, through the centre of mass. */
export interface Swing {
  readonly about: SwingAxis;
  /** Distance between the strings. */
  readonly spacingMm: number;
  readonly stringLengthMm: number;
  /** Full swings counted (there and back) in `seconds`. */
  readonly swings: number;
  readonly seconds: number;
  readonly spacingStepMm?: number;
  readonly timeStepSeconds?: number;
  /** Mean of the first and the last swing to one side. */
  readonly amplitudeDeg?: number;
  /** A cradle that hangs with the part: its mass, and its own moment about the same axis. */
  readonly cradleGrams?: number;
  readonly cradleMomentGMm2?: number;
}

export const SWING_AXES = ['span', 'chord', 'thickness'] as const;
export type SwingAxis = (typeof SWING_AXES)[number];

/** A limit and what holds where nothing was typed. */
export interface MeasuredLimits extends NumberLimits {
  readonly standard?: number;
}

/** Steps that hold where none is given: a pocket scale, a ruler, a hand-held stopwatch (common practice). */
export const MEASURED_LIMITS = {
  massGrams: { min: 0.001, max: 100_000, unit: 'g' },
  massStepGrams: { min: 0.0001, max: 100, unit: 'g', standard: 0.01 },
  centreXMm: { min: -10_000, max: 10_000, unit: 'mm' },
  centreYMm: { min: -10_000, max: 10_000, unit: 'mm' },
  centreZMm: { min: -10_000, max: 10_000, unit: 'mm' },
  centreStepMm: { min: 0.01, max: 100, unit: 'mm', standard: 0.5 },
} as const satisfies Readonly<Record<Exclude<keyof Measured, 'swings'>, MeasuredLimits>>;

export const SWING_LIMITS = {
  spacingMm: { min: 1, max: 5000, unit: 'mm' },
  stringLengthMm: { min: 10, max: 20_000, unit: 'mm' },
  swings: { min: 1, max: 10_000, unit: '1', whole: true },
  seconds: { min: 0.1, max: 100_000, unit: 's' },
  spacingStepMm: { min: 0.01, max: 100, unit: 'mm', standard: 0.5 },
  timeStepSeconds: { min: 0.001, max: 10, unit: 's', standard: 0.3 },
  amplitudeDeg: { min: 0, max: 30, unit: 'deg', standard: 0 },
  cradleGrams: { min: 0, max: 100_000, unit: 'g', standard: 0 },
  cradleMomentGMm2: { min: 0, max: 1e12, unit: 'g mm2', standard: 0 },
} as const satisfies Readonly<Record<Exclude<keyof Swing, 'about'>, MeasuredLimits>>;

/** Fields of a swing that have to be there. */
export const SWING_REQUIRED = ['spacingMm', 'stringLengthMm', 'swings', 'seconds'] as const;

/** One timing about each axis. */
export const MAX_SWINGS = SWING_AXES.length;

/** Of the whole grip on the scale. */
export const WEIGHED_TOTAL_LIMITS = {
  massGrams: MEASURED_LIMITS.massGrams,
  massStepGrams: MEASURED_LIMITS.massStepGrams,
} as const;

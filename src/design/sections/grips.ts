import type { Part } from '../design';
import type { NumberLimits } from '../limits';

/**
 * One of the other grips of the rotor, for the balance: like the one that is drawn, unless it says otherwise. What is
 * weighed as a whole wins over its parts; a part's own mass wins over what its dimensions give.
 */
export interface OtherGrip {
  readonly name: string;
  /** Its own list of parts, from another design. */
  readonly parts?: readonly Part[];
  /** Masses of single parts where they were weighed, grams, by the part's id. */
  readonly partMassesGrams?: Readonly<Record<string, number>>;
  /** The whole grip on the scale. */
  readonly massGrams?: number;
  /** Its centre of mass from the shaft, along the feathering axis; without it, as the parts give it. */
  readonly stationMm?: number;
}

/** Numbers of another grip, each optional. */
export const OTHER_GRIP_LIMITS = {
  massGrams: { min: 0.001, max: 1e6, unit: 'g' },
  stationMm: { min: 0, max: 10_000, unit: 'mm' },
} as const satisfies Readonly<Record<string, NumberLimits>>;

export const PART_MASS_LIMITS: NumberLimits = { min: 0, max: 1e6, unit: 'g' };
/** One less than the most blades. */
export const MAX_OTHER_GRIPS = 15;

import type { NumberLimits } from '../limits';
import { defineSection } from './section';

/** How closely the head is made, and what is asked of it then; tolerances of single numbers stand beside these. */
export const TOLERANCE_SECTION = defineSection({
  generalClass: {
    type: 'choice',
    label: 'General class',
    help: 'Class of ISO 2768-1 for every length from 0.5 mm and every angle that has no tolerance of its own. Rows of a catalogue and threads are taken as they are.',
    options: ['fine', 'medium', 'coarse', 'none'],
    optionLabels: {
      fine: 'ISO 2768-1 f',
      medium: 'ISO 2768-1 m',
      coarse: 'ISO 2768-1 c',
      none: 'None',
    },
    default: 'medium',
  },
  densityPercent: {
    type: 'number',
    label: 'Density',
    help: 'How far the density of each material may lie from its value, either way.',
    unit: '%',
    min: 0,
    max: 50,
    step: 0.5,
    default: 1,
  },
  distribution: {
    type: 'choice',
    label: 'Distribution',
    help: 'Uniform: anywhere between the limits alike. Normal: about the middle, the limits at three standard deviations.',
    options: ['uniform', 'normal'],
    optionLabels: { uniform: 'Uniform', normal: 'Normal, limits at 3 \u03c3' },
    default: 'uniform',
  },
  targetForceN: {
    type: 'number',
    label: 'Target force',
    help: 'The push-rod force should stay within this, either way, over the pitch in use.',
    unit: 'N',
    min: 0.001,
    max: 1e6,
    step: 0.1,
    default: 2,
  },
  samples: {
    type: 'number',
    label: 'Samples',
    help: 'How many heads are made up at random.',
    unit: '1',
    min: 100,
    max: 1_000_000,
    step: 1000,
    whole: true,
    default: 20_000,
  },
  seed: {
    type: 'number',
    label: 'Seed',
    help: 'Start of the random numbers: the same seed gives the same heads, bit for bit.',
    unit: '1',
    min: 0,
    max: 4_294_967_295,
    step: 1,
    whole: true,
    default: 1,
  },
  balanceGrade: {
    type: 'number',
    label: 'Balance G',
    help: 'Grade of ISO 21940-11 that the rotor should keep as made, mm/s; empty: not asked.',
    unit: '1',
    min: 0.1,
    max: 4000,
    step: 0.1,
    default: null,
  },
});

/** A tolerance of one number of a part: it lies within `plusMinus` of its value, in the number's own unit. */
export interface OwnTolerance {
  /** Id of the part; a row whose part or number is gone counts for nothing. */
  readonly part: string;
  readonly field: string;
  /** Of a number that is one of three. */
  readonly component?: 0 | 1 | 2;
  readonly plusMinus: number;
}

export const PLUS_MINUS_LIMITS: NumberLimits = { min: 0, max: 10_000, unit: '1' };
export const MAX_OWN_TOLERANCES = 500;
/** Length of a field's name. */
export const MAX_FIELD_NAME = 64;

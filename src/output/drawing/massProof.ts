import { fixed } from '../../state/quantities';
import type { MassWindow } from './massWindow';
import { t } from './roomText';

/** The readings of a scale that prove a part, g; null where the scale is too coarse for that. */
export interface MassProof {
  readonly step: number;
  readonly readings: { readonly least: number; readonly most: number } | null;
}

/**
 * A reading stands for every mass within half a step of it. It proves the part where all of these lie in the window: the
 * window less half a step at both ends (the rule of ISO 14253-1 for proving conformity, with half a step for the
 * uncertainty; a scale that is out by more is not allowed for).
 */
export function massProof({ least, most }: MassWindow, step: number): MassProof {
  // In whole steps; what is a millionth of a step short of one is rounding.
  const first = Math.ceil(least / step + 0.5 - 1e-6);
  const last = Math.floor(most / step - 0.5 + 1e-6);
  return { step, readings: first <= last ? { least: first * step, most: last * step } : null };
}

/** How a weighed mass lies to the window; `by`: how far beyond its nearer end the reading is, g. */
export type WeighedVerdict =
  | { readonly kind: 'inside' }
  /** Within half a step of an end: part and scale may disagree either way. */
  | { readonly kind: 'undecided' }
  | { readonly kind: 'light' | 'heavy'; readonly by: number };

export function judgeWeighed(window: MassWindow, step: number, grams: number): WeighedVerdict {
  const half = step / 2 - step * 1e-6;
  if (grams - window.least >= half && window.most - grams >= half) return { kind: 'inside' };
  if (window.least - grams > half) return { kind: 'light', by: window.least - grams };
  if (grams - window.most > half) return { kind: 'heavy', by: grams - window.most };
  return { kind: 'undecided' };
}

/** Scales that are to be had, the coarsest first; steps in g. */
export const SCALE_STEPS = [1, 0.1, 0.01, 0.001] as const;

/** The coarsest of these that proves a part of this window; null where none does. */
export function stepThatProves(window: MassWindow): number | null {
  return SCALE_STEPS.find((step) => massProof(window, step).readings !== null) ?? null;
}

/**
 * The scale to begin with: the coarsest whose step goes ten times into the window (the rule of ten of measuring, common
 * practice), else one that proves the part at all, else the finest.
 */
export function usualStep(window: MassWindow): number {
  const fine = SCALE_STEPS.find((step) => window.most - window.least >= 10 * step);
  return fine ?? stepThatProves(window) ?? SCALE_STEPS[SCALE_STEPS.length - 1];
}

/** Grams as a scale of this step shows them. */
export function asScaleShows(grams: number, step: number): string {
  const decimals = Math.max(0, Math.min(6, Math.ceil(-Math.log10(step) - 1e-9)));
  // A step of 0.25 or 0.5 of a decade has one decimal more.
  const enough = Math.abs(Number(step.toFixed(decimals)) - step) < step * 1e-9 ? 0 : 1;
  return fixed(grams, Math.min(6, decimals + enough));
}

/** The proof on the scale as a note of the drawing. */
export function proofNote(window: MassWindow, step: number): string {
  const { readings } = massProof(window, step);
  if (!readings) return t('drawing.noteMassCoarse', { step });
  const { least, most } = readings;
  return t('drawing.noteMass', {
    least: asScaleShows(least, step),
    most: asScaleShows(most, step),
    step,
  });
}

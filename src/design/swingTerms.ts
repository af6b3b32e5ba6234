import { kilogramsFromGrams } from '../engine/units';
import { SWING_LIMITS, type Swing } from './measured';
import { readingUncertainty } from './weighPart';

export const SWING_SOURCES = ['mass', 'spacing', 'length', 'time'] as const;
export type SwingSource = (typeof SWING_SOURCES)[number];

/**
 * How much each reading of a timing adds to the relative standard uncertainty of all that hangs: u_m / m, 2 u_s / s,
 * u_L / L, 2 u_t / t. Their root sum of squares is that of `bifilarMoment`, less what a cradle is uncertain by. `mass`
 * and `uncertainty` of the part alone, kg.
 */
export function swingTerms(
  swing: Swing,
  mass: number,
  uncertainty: number,
): Readonly<Record<SwingSource, number>> {
  const length = readingUncertainty(swing.spacingStepMm ?? SWING_LIMITS.spacingStepMm.standard);
  const time = readingUncertainty(swing.timeStepSeconds ?? SWING_LIMITS.timeStepSeconds.standard);
  const hung = mass + kilogramsFromGrams(swing.cradleGrams ?? 0);
  return {
    mass: uncertainty / hung,
    spacing: (2 * length) / swing.spacingMm,
    length: length / swing.stringLengthMm,
    time: (2 * time) / swing.seconds,
  };
}

/** What to measure better first. */
export function largestTerm(terms: Readonly<Record<SwingSource, number>>): SwingSource {
  return SWING_SOURCES.reduce((most, one) => (terms[one] > terms[most] ? one : most));
}

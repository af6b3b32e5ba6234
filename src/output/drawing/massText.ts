import { kilogramsFromGrams } from '../../engine/units';
import { displayMass, fixed } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { asScaleShows } from './massProof';

/** A mass with its unit, to the last place that a scale of this step (g) shows: "3.46 g", "0.1220 oz". */
export function massText(grams: number, step: number, units: DisplayUnits): string {
  const { value, unit } = displayMass(kilogramsFromGrams(grams), units);
  if (unit === 'g') return `${asScaleShows(grams, step)}\u00a0g`;
  // An ounce is 28 g: one place more than the grams have, and one for what lies between.
  const decimals = Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)) + 2;
  return `${fixed(value, decimals)}\u00a0${unit}`;
}

import type { Part } from '../../../design/design';
import type { KnobRef } from '../../../neutralise/knobs';

/** What a lathe and a scale can tell apart, as written into a try-out (common practice): 0.01 mm, 0.001 g. */
const LENGTH_DECIMALS = 2;
const MASS_DECIMALS = 3;

/** A length as it is turned. */
export function turnedLength(lengthMm: number): number {
  return Number(lengthMm.toFixed(LENGTH_DECIMALS));
}

/** The parts with one number rounded to what can be turned; what comes with it (a diameter that is new) stays. */
export function withTurned(parts: readonly Part[], { part, field }: KnobRef): readonly Part[] {
  return parts.map((one) => {
    const value: unknown = (one as unknown as Readonly<Record<string, unknown>>)[field];
    return one.id === part && typeof value === 'number'
      ? ({ ...one, [field]: turnedLength(value) } as Part)
      : one;
  });
}

/** The parts with what was weighed rounded to what a scale tells. */
export function withWeighed(parts: readonly Part[], part: string): readonly Part[] {
  return parts.map((one) => {
    const grams = one.measured?.massGrams;
    if (one.id !== part || grams === undefined) return one;
    const massGrams = Number(grams.toFixed(MASS_DECIMALS));
    return massGrams > 0 ? { ...one, measured: { ...one.measured, massGrams } } : one;
  });
}

/** The parts with a lump's mass and place rounded; a lump so light that nothing would be left stays as it is. */
export function withLumpRounded(parts: readonly Part[], id: string): readonly Part[] {
  return parts.map((one) => {
    if (one.id !== id || !('massGrams' in one) || !('pose' in one) || !one.pose) return one;
    const massGrams = Number(Number(one.massGrams).toFixed(MASS_DECIMALS));
    const [x, y, z] = one.pose.positionMm.map(turnedLength);
    const pose = { ...one.pose, positionMm: [x, y, z] as const };
    return massGrams > 0 ? ({ ...one, massGrams, pose } as Part) : one;
  });
}

/** A bearing under load: running coefficient, load N, and the diameter that the coefficient is for, m. */
export interface LoadedBearing {
  readonly coefficient: number;
  readonly load: number;
  readonly diameter: number;
}

/**
 * Friction moment of a bearing, N m: coefficient x load x diameter / 2, times `startingFactor` for one that stands still
 * (up to twice the running friction, common practice in handbooks). Source of the form: bearing makers' catalogues.
 */
export function bearingFriction(
  { coefficient, load, diameter }: LoadedBearing,
  startingFactor = 1,
): number {
  return (startingFactor * coefficient * Math.abs(load) * diameter) / 2;
}

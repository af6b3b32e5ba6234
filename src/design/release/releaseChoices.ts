/** What a release needs beside the design, as the person typed it. */
export interface ReleaseChoices {
  /**
   * Viscous damping c as a share of 2 I W, which would just keep a thin blade from swinging (it swings once a turn, W);
   * I is the grip's own inertia J_yy + J_zz.
   */
  readonly dampingPercent: number;
  /** Share of the speed that comes back from a stop of the slider. */
  readonly restitution: number;
  /** Slider and what moves with it, for the whole head; shared by the grips, which move together. */
  readonly sliderMassGrams: number;
}

/** The air alone damps a blade by some per cent (thin aerofoil, quasi-steady: pi rho V b^3 a metre of span, b half the chord). */
export const FIRST_RELEASE_CHOICES: ReleaseChoices = {
  dampingPercent: 3,
  restitution: 0.3,
  sliderMassGrams: 0,
};

interface ChoiceLimit {
  readonly min: number;
  readonly max: number;
  readonly unit: '%' | '1' | 'g';
}

export const RELEASE_LIMITS: Readonly<Record<keyof ReleaseChoices, ChoiceLimit>> = {
  dampingPercent: { min: 0, max: 200, unit: '%' },
  restitution: { min: 0, max: 1, unit: '1' },
  sliderMassGrams: { min: 0, max: 100_000, unit: 'g' },
};

/** The first choice that is no number within its limits; null where all are. */
export function wrongChoice(choices: ReleaseChoices): keyof ReleaseChoices | null {
  for (const field of Object.keys(RELEASE_LIMITS) as (keyof ReleaseChoices)[]) {
    const { min, max } = RELEASE_LIMITS[field];
    if (!(choices[field] >= min && choices[field] <= max)) return field;
  }
  return null;
}

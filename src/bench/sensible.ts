import type { Design, Part } from '../design/design';
import { HeadModel } from '../design/headModel';
import { MEASURED_LIMITS } from '../design/measured';
import { createMoments, M } from '../engine/mass/moments';
import { gramsFromKilograms } from '../engine/units';

/** What a correction may ask at most (our assumptions): more is some other error, and is refused with its numbers. */
export const SENSIBLE = {
  /** A part's mass against the model, and the other way round. */
  massFactor: 1.5,
  /** A weighed part: its scale's steps, and a share of it for a scale that was not checked. */
  weighedSteps: 5,
  weighedShare: 0.03,
  /** A lump against all that turns with the grip. */
  lumpShare: 0.25,
} as const;

/** Why a mass that would explain the readings is not offered. */
export type NotSensible =
  /** Beyond `SENSIBLE`. */
  | {
      readonly kind: 'notSensible';
      readonly what: 'mass' | 'lump';
      readonly massGrams: number;
      readonly limitGrams: number;
    }
  /** The scale says otherwise: it was weighed to `stepGrams`, and cannot be so far out. */
  | { readonly kind: 'weighed'; readonly massGrams: number; readonly stepGrams: number };

/** Whether a part that weighs `mass` in the model can weigh `massGrams`; null where it can. */
export function absurdMass(part: Part, mass: number, massGrams: number): NotSensible | null {
  const { massFactor, weighedSteps, weighedShare } = SENSIBLE;
  const { measured } = part;
  if (measured?.massGrams !== undefined) {
    const stepGrams = measured.massStepGrams ?? MEASURED_LIMITS.massStepGrams.standard;
    const most = Math.max(weighedSteps * stepGrams, weighedShare * mass);
    return Math.abs(massGrams - mass) > most ? { kind: 'weighed', massGrams, stepGrams } : null;
  }
  const limitGrams = massGrams > mass ? mass * massFactor : mass / massFactor;
  const isBeyond = massGrams > mass * massFactor || massGrams < mass / massFactor;
  return isBeyond ? { kind: 'notSensible', what: 'mass', massGrams, limitGrams } : null;
}

/** Whether a lump is too heavy to be one; null where it is not. */
export function absurdLump(design: Design, massGrams: number): NotSensible | null {
  const limitGrams = SENSIBLE.lumpShare * turningGrams(design);
  return massGrams > limitGrams
    ? { kind: 'notSensible', what: 'lump', massGrams, limitGrams }
    : null;
}

/** Mass of all that turns with the grip, g. */
function turningGrams(design: Design): number {
  const model = new HeadModel();
  if (!model.load(design).ok) return Number.NaN;
  return gramsFromKilograms(model.totals(createMoments())[M]);
}

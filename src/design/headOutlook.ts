import type { Equilibria } from '../engine/feathering/equilibria';
import { createMoments, type Moments } from '../engine/mass/moments';
import { type Result, succeed } from '../engine/result';
import { type Radians, radiansFromDegrees } from '../engine/units';
import type { Design } from './design';
import type { DesignFault } from './fault';
import { HeadForces } from './forces/headForces';
import { HeadModel } from './headModel';
import { headVerdict } from './headVerdict';
import { ROTOR_SECTION } from './sections/rotor';
import { anglesOf, type Verdict } from './verdict';

/** What a head does, to hold against another. */
export interface HeadOutlook {
  readonly totals: Moments;
  /** -used, half of it, flat, half, used. */
  readonly pitchesDeg: readonly number[];
  /** Feathering moment at each, N m. */
  readonly moments: readonly number[];
  /** Push-rod force at each, N, tension positive; null over centre. Null as a whole without an arm. */
  readonly forces: readonly (number | null)[] | null;
  readonly verdict: Verdict;
  /** Rest angles within the range, degrees. */
  readonly restsDeg: readonly number[];
}

/** Shares of the pitch in use at which a head is looked at. */
export const OUTLOOK_SHARES = [-1, -0.5, 0, 0.5, 1];

/** As far as rest and flee angles are looked for, degrees: the whole of what a grip can turn. */
const RANGE_DEG = 90;

/** The forces of a design that is looked at by itself, with its rest and flee angles; all from a model of its own. */
export interface LookedAt {
  readonly forces: HeadForces;
  readonly equilibria: Equilibria;
  readonly from: Radians;
  readonly to: Radians;
}

export function lookAt(design: Design): Result<LookedAt, DesignFault> {
  const model = new HeadModel();
  const outcome = model.load(design);
  return outcome.ok ? succeed(lookWith(new HeadForces(model))) : outcome;
}

/** The same of a head that stands in a model already. */
export function lookWith(forces: HeadForces): LookedAt {
  const [from, to] = [radiansFromDegrees(-RANGE_DEG), radiansFromDegrees(RANGE_DEG)];
  return { forces, equilibria: forces.equilibria(from, to), from, to };
}

/** The outlook of a design, from a model of its own; the same numbers that opening the design shows. */
export function headOutlook(design: Design): Result<HeadOutlook, DesignFault> {
  const looked = lookAt(design);
  return looked.ok ? succeed(outlookOf(looked.value)) : looked;
}

export function outlookOf({ forces, equilibria, from, to }: LookedAt): HeadOutlook {
  const { rotor } = forces.model.sections;
  const usedPitchDeg = rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const totals = forces.model.totals(createMoments());
  const momentAt = (pitchDeg: number) => forces.moment(radiansFromDegrees(pitchDeg));
  const forceAt = (pitchDeg: number) =>
    forces.forceOf(momentAt(pitchDeg), radiansFromDegrees(pitchDeg));
  const pitchesDeg = OUTLOOK_SHARES.map((share) => share * usedPitchDeg + 0);
  return {
    totals,
    pitchesDeg,
    moments: pitchesDeg.map(momentAt),
    forces: forces.linkage && pitchesDeg.map(forceAt),
    verdict: headVerdict(forces, { totals, equilibria, from, to }),
    restsDeg: anglesOf(equilibria, 'stable'),
  };
}

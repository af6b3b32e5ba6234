import { createMoments, type Moments } from '../engine/mass/moments';
import { type Result, succeed } from '../engine/result';
import { radiansFromDegrees } from '../engine/units';
import type { Design, Part } from './design';
import type { DesignFault } from './fault';
import { HeadForces } from './forces/headForces';
import { HeadModel } from './headModel';
import { headVerdict } from './headVerdict';
import { adoptPart, type CarriedPart } from './ownMaterials';
import { materialsOf } from './resolve';
import { ROTOR_SECTION } from './sections/rotor';
import { anglesOf, type Verdict } from './verdict';

/**
 * `design` with the part `id` replaced by a carried one of the same kind: id, place in the list, seat or pose, and
 * whether it is hidden stay; name, dimensions, catalogue row, material and measurements are the carried part's. How far
 * along its seat it may sit is its parent's business, so the offset stays too. The fault where the head does not take
 * it, such as a part mounted on it that would lose its seat. Throws where there is no such part or the kinds differ: a
 * programmer's fault.
 */
export function swapPart(
  design: Design,
  id: string,
  carried: CarriedPart,
): Result<Design, DesignFault> {
  const index = design.parts.findIndex((part) => part.id === id);
  const old = design.parts[index];
  if (old?.kind !== carried.part.kind) {
    throw new RangeError(`swapPart(): ${id} is no ${carried.part.kind}`);
  }
  const { part, materials } = adoptPart(carried, materialsOf(design));
  const next: Design = {
    ...design,
    ...(materials.length > 0 ? { materials } : {}),
    parts: design.parts.with(index, inPlaceOf(old, part)),
  };
  const outcome = new HeadModel().load(next);
  return outcome.ok ? succeed(next) : outcome;
}

function inPlaceOf(old: Part, part: Part): Part {
  const { id: _id, pose: _pose, socket: _socket, hidden: _hidden, ...own } = part;
  const { id, pose, socket, hidden } = old;
  return {
    id,
    ...own,
    ...(hidden ? { hidden } : {}),
    ...(pose ? { pose } : {}),
    ...(socket ? { socket } : {}),
  } as Part;
}

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

/** As far as rest and flee angles are looked for, degrees: the whole of what a grip can turn. */
const RANGE_DEG = 90;

/** The outlook of a design, from a model of its own; the same numbers that opening the design shows. */
export function headOutlook(design: Design): Result<HeadOutlook, DesignFault> {
  const model = new HeadModel();
  const outcome = model.load(design);
  if (!outcome.ok) return outcome;
  const forces = new HeadForces(model);
  const usedPitchDeg = design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const [from, to] = [radiansFromDegrees(-RANGE_DEG), radiansFromDegrees(RANGE_DEG)];
  const totals = model.totals(createMoments());
  const equilibria = forces.equilibria(from, to);
  const momentAt = (pitchDeg: number) => forces.moment(radiansFromDegrees(pitchDeg));
  const forceAt = (pitchDeg: number) =>
    forces.forceOf(momentAt(pitchDeg), radiansFromDegrees(pitchDeg));
  const verdict = headVerdict(forces, { totals, equilibria, from, to });
  const pitchesDeg = [-1, -0.5, 0, 0.5, 1].map((share) => share * usedPitchDeg + 0);
  return succeed({
    totals,
    pitchesDeg,
    moments: pitchesDeg.map(momentAt),
    forces: forces.linkage && pitchesDeg.map(forceAt),
    verdict,
    restsDeg: anglesOf(equilibria, 'stable'),
  });
}

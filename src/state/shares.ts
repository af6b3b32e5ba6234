import { partHarmonics } from '../design/curve';
import type { HeadForces } from '../design/forces/headForces';
import type { MomentTerm } from '../design/forces/momentTerm';
import {
  createHarmonics,
  featheringBound,
  featheringEnergy,
  featheringMoment,
  type Harmonics,
} from '../engine/feathering/harmonics';
import type { PitchGrid } from '../engine/feathering/pitchGrid';
import type { RotorConditions } from '../engine/feathering/rotor';
import { radiansFromDegrees } from '../engine/units';
import type { PartReading, TermReading } from './reading';

type PartBase = Pick<PartReading, 'part' | 'values' | 'pose_G' | 'moments_G'>;

interface Shares {
  part(id: string): PartReading | undefined;
  terms(): readonly TermReading[];
}

/** The shares of the moment, one by one: each part's, and those of air and lag. */
export function createShares(forces: HeadForces, grid: PitchGrid): Shares {
  const { model } = forces;
  const held = new Map<string, Harmonics>();
  /** What has been asked since the model last changed: rail, chart, dial and stage ask for the same. */
  const known = new Map<string, PartReading | undefined>();
  /** Readings of parts that turn with the grip, which stay while part, place and rotor do. */
  const turning = new Map<string, PartReading>();
  let rotor: RotorConditions | null = null;
  let revision = -1;

  function harmonicsOf(id: string): Harmonics {
    let own = held.get(id);
    if (!own) {
      own = createHarmonics();
      held.set(id, own);
    }
    return own;
  }

  function part(id: string): PartReading | undefined {
    if (revision !== model.revision) {
      revision = model.revision;
      known.clear();
      if (rotor !== model.rotor) turning.clear();
      rotor = model.rotor;
    }
    if (!known.has(id)) known.set(id, readPart(id));
    return known.get(id);
  }

  function readPart(id: string): PartReading | undefined {
    const placed = model.placed(id);
    if (!placed) return undefined;
    const base = {
      part: placed.part,
      values: placed.values,
      pose_G: placed.pose,
      moments_G: placed.moments_G,
    };
    if (placed.carriedBy === 'grip') return turningPart(id, base);
    turning.delete(id);
    const { linkage } = forces;
    if (placed.carriedBy === 'rod') {
      const term = linkage?.rod === placed ? termOf('rod') : undefined;
      return { ...base, carriedBy: 'rod', ...ofTerm(term) };
    }
    return { ...base, carriedBy: placed.carriedBy, ...ofTerm(undefined) };
  }

  function turningPart(id: string, base: PartBase): PartReading {
    const before = turning.get(id);
    if (
      before?.part === base.part &&
      before.values === base.values &&
      before.pose_G === base.pose_G &&
      before.moments_G === base.moments_G
    ) {
      return before;
    }
    const harmonics = partHarmonics({ ...base, carriedBy: 'grip' }, model.rotor, harmonicsOf(id));
    const reading: PartReading = {
      ...base,
      carriedBy: 'grip',
      harmonics,
      momentAt: (pitchDeg) => featheringMoment(harmonics, radiansFromDegrees(pitchDeg)),
      energyAt: (pitchDeg) => featheringEnergy(harmonics, radiansFromDegrees(pitchDeg)),
      bound: featheringBound(harmonics),
    };
    turning.set(id, reading);
    return reading;
  }

  function ofTerm(term: MomentTerm | undefined) {
    const curveMoments = term && forces.shareOn(grid, term);
    return { ...shareOf(term), ...(curveMoments && { curveMoments }) };
  }

  function termOf(id: MomentTerm['id']): MomentTerm | undefined {
    return forces.terms.find((term) => term.id === id);
  }

  return {
    part,
    terms: () =>
      forces.terms.flatMap((term): TermReading[] =>
        term.id === 'rod' ? [] : [{ id: term.id, ...ofTerm(term) }],
      ),
  };
}

/** Pitches at which a term's size is looked at, degrees. */
const LOOK_DEG = [-60, -45, -30, -20, -10, 0, 10, 20, 30, 45, 60];

function shareOf(term: MomentTerm | undefined) {
  return {
    momentAt: (pitchDeg: number) => term?.moment(radiansFromDegrees(pitchDeg)) ?? 0,
    energyAt: (pitchDeg: number) => term?.energy(radiansFromDegrees(pitchDeg)) ?? 0,
    bound: term ? boundOf(term) : 0,
  };
}

/** A term does not change: while it is the same object, it is as large as it was. */
const bounds = new WeakMap<MomentTerm, number>();

function boundOf(term: MomentTerm): number {
  const known = bounds.get(term);
  if (known !== undefined) return known;
  const bound = LOOK_DEG.reduce((largest, deg) => {
    const size = Math.abs(term.moment(radiansFromDegrees(deg)));
    return size > largest ? size : largest;
  }, 0);
  bounds.set(term, bound);
  return bound;
}

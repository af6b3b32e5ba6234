import type { RotorConditions } from '../../engine/feathering/rotor';
import type { Linkage } from '../../engine/linkage/linkage';
import { rodEnergy, rodMoment, rodMomentSlope } from '../../engine/linkage/rodMass';
import type { Radians } from '../../engine/units';
import type { HeadLinkage } from './headLinkage';
import type { MomentTerm } from './momentTerm';

/** Pitches that are remembered: those of tables and roots, some times over. */
const REMEMBERED = 10_000;

/**
 * What the push rod's own mass does to the grip, as a term of its moment. While rod, ball and rotor stay as they are (a
 * dragged bolt leaves them alone; `LinkageDesk` gives the same object then) what was worked out for a pitch is remembered, to the bit.
 */
export class RodDesk {
  private linkage: Linkage | null = null;
  private rotor: RotorConditions | null = null;
  private held: MomentTerm | null = null;

  /** Null without a rod that weighs something. */
  term(found: HeadLinkage | null, rotor: RotorConditions): MomentTerm | null {
    if (!found?.linkage.rod) return null;
    const { linkage } = found;
    const same = this.rotor === rotor && this.linkage === linkage;
    if (same && this.held) return this.held;
    this.linkage = linkage;
    this.rotor = rotor;
    const plain = termOf(linkage, rotor);
    // What is asked once only, as by a search over rods, is not worth remembering.
    this.held = same ? remembering(plain) : null;
    return this.held ?? plain;
  }
}

function termOf(linkage: Linkage, rotor: RotorConditions): MomentTerm {
  return {
    id: 'rod',
    moment: (pitch) => rodMoment(linkage, rotor, pitch),
    slope: (pitch) => rodMomentSlope(linkage, rotor, pitch),
    energy: (pitch) => rodEnergy(linkage, rotor, pitch),
  };
}

function remembering({ id, moment, slope, energy }: MomentTerm): MomentTerm {
  return {
    id,
    moment: remembered(moment),
    slope: remembered(slope),
    energy: remembered(energy),
  };
}

function remembered(work: (pitch: Radians) => number): (pitch: Radians) => number {
  const known = new Map<number, number>();
  return (pitch) => {
    const before = known.get(pitch);
    if (before !== undefined) return before;
    const value = work(pitch);
    if (known.size >= REMEMBERED) known.clear();
    known.set(pitch, value);
    return value;
  };
}

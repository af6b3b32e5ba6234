import type { RotorConditions } from '../../engine/feathering/rotor';
import type { Linkage } from '../../engine/linkage/linkage';
import { overCentreAngles, reachableIntervals } from '../../engine/linkage/reach';
import type { Radians } from '../../engine/units';
import type { HeadModel } from '../headModel';
import { type HeadLinkage, headLinkage } from './headLinkage';
import { type TravelEnds, travelEnds } from './travel';

/** How far a linkage goes within a range of pitches. */
export interface Travel {
  readonly overCentre: readonly Radians[];
  readonly reachable: readonly (readonly [Radians, Radians])[];
  /** Null: flat pitch itself is out of reach. */
  readonly ends: TravelEnds | null;
}

/**
 * The head's push rod and how far it goes. While ball, rod, slider and rotor keep their numbers, `linkage` is the same object
 * and its travel is worked out once: a dragged bolt changes none of them.
 */
export class LinkageDesk {
  private held: HeadLinkage | null = null;
  private rotor: RotorConditions | null = null;
  private control: unknown = null;
  private travels: { readonly from: number; readonly to: number; readonly travel: Travel }[] = [];

  linkage(model: HeadModel): HeadLinkage | null {
    const found = headLinkage(model);
    const { held } = this;
    const same = found !== null && held !== null && sameLinkage(held.linkage, found.linkage);
    const { control } = model.sections;
    if (!same || this.rotor !== model.rotor || this.control !== control) this.travels = [];
    this.rotor = model.rotor;
    this.control = control;
    this.held = same ? { ...found, linkage: held.linkage } : found;
    return this.held;
  }

  /** Of the linkage that `linkage` has given. */
  travel(model: HeadModel, from: Radians, to: Radians): Travel | null {
    const { held } = this;
    if (!held) return null;
    const known = this.travels.find((one) => one.from === from && one.to === to);
    if (known) return known.travel;
    const travel = {
      overCentre: overCentreAngles(held.linkage, model.rotor, from, to),
      reachable: reachableIntervals(held.linkage, model.rotor, from, to),
      ends: travelEnds(held, model, from, to),
    };
    this.travels.push({ from, to, travel });
    return travel;
  }
}

function sameLinkage(a: Linkage, b: Linkage): boolean {
  if (a.side !== b.side || a.length !== b.length) return false;
  if (a.sliderX !== b.sliderX || a.sliderY !== b.sliderY) return false;
  if (a.ball_G.some((value, i) => value !== b.ball_G[i])) return false;
  const [first, second] = [a.rod, b.rod];
  if (!first || !second) return first === second;
  return (
    first.mass === second.mass &&
    first.first === second.first &&
    first.second === second.second &&
    first.transverse === second.transverse
  );
}

import { bearingFriction } from '../../engine/friction/bearingFriction';
import {
  createAxisLoad,
  spinLoadTurned,
  type Turned,
  turnedGrip,
} from '../../engine/loads/axisLoad';
import { createMoments } from '../../engine/mass/moments';
import { degreesFromRadians, type Radians, radiansFromDegrees } from '../../engine/units';
import type { HeadModel } from '../headModel';
import { airLoadAt } from './airLoad';
import type { HeadAir } from './headAir';
import { type AirLoad, addAir, headBearings, sharedLoads } from './headBearings';

/** Friction of the bearings of one grip, N m. */
export interface BearingMoment {
  /** There is a bearing. */
  readonly any: boolean;
  /** At the speed whose loads are `loadFactor` times the design's. */
  momentAt(pitch: Radians, loadFactor: number): number;
  /** Adds it to numbers given at some pitches, at the design's speed. */
  addAt(pitches: Float64Array, out: Float64Array): void;
}

/** Bearing friction is computed at whole degrees this far either way, and is straight between them: within 5e-3 of it in the demo heads, the
 * worst where a bearing's radial load passes near zero between two of them. */
const NODES = 90;

/**
 * The bearings' running friction under the loads of the moment, times the starting factor; the push rod's own load on them is
 * left out. What the air does to them is remembered while the air is the same: a dragged bolt changes the spin's pull alone.
 */
export class BearingDesk {
  private air: HeadAir | null = null;
  private bladeCount = 0;
  private readonly airLoads: (AirLoad | null)[] = new Array<null>(2 * NODES + 1).fill(null);
  private readonly turns: (Turned | null)[] = new Array<null>(2 * NODES + 1).fill(null);

  friction(model: HeadModel, air: HeadAir, startingFactor: number): BearingMoment {
    const { bladeCount } = model.sections.rotor;
    if (air !== this.air || bladeCount !== this.bladeCount) this.airLoads.fill(null);
    this.air = air;
    this.bladeCount = bladeCount;
    const bearings = headBearings(model);
    const totals = model.totals(createMoments());
    const load = createAxisLoad();
    const shared = sharedLoads(bearings);
    const { airLoads, turns } = this;

    /** At the design's speed; every load goes with the same factor. */
    function bearingsAt(turned: Turned, blown: AirLoad): number {
      spinLoadTurned(totals, model.rotor, turned, load);
      addAir(load, blown, model.rotor);
      let sum = 0;
      for (let i = 0; i < bearings.length; i++) {
        const { frictionCoefficient: coefficient, frictionDiameter: diameter } = bearings[i].facts;
        const radial = shared.radial(i, load);
        const axial = shared.axial(i, load);
        const size = Math.sqrt(radial * radial + axial * axial);
        sum += bearingFriction({ coefficient, load: size, diameter }, startingFactor);
      }
      return sum;
    }

    const nodes = new Float64Array(2 * NODES + 1).fill(Number.NaN);

    function nodeAt(k: number): number {
      if (Number.isNaN(nodes[k])) {
        const pitch = radiansFromDegrees(k - NODES);
        airLoads[k] ??= airLoadAt(air, pitch, bladeCount);
        turns[k] ??= turnedGrip(pitch);
        nodes[k] = bearingsAt(turns[k] as Turned, airLoads[k] as AirLoad);
      }
      return nodes[k];
    }

    return {
      any: bearings.length > 0,
      momentAt(pitch, loadFactor) {
        if (bearings.length === 0) return 0;
        const place = degreesFromRadians(pitch) + NODES;
        const k = Math.floor(place);
        if (!(k >= 0 && k < 2 * NODES)) {
          return loadFactor * bearingsAt(turnedGrip(pitch), airLoadAt(air, pitch, bladeCount));
        }
        return loadFactor * (nodeAt(k) + (place - k) * (nodeAt(k + 1) - nodeAt(k)));
      },
      addAt(pitches, out) {
        if (bearings.length === 0) return;
        for (let i = 0; i < pitches.length; i++) {
          const place = degreesFromRadians(pitches[i] as Radians) + NODES;
          const k = Math.floor(place);
          if (!(k >= 0 && k < 2 * NODES)) {
            const pitch = pitches[i] as Radians;
            out[i] += bearingsAt(turnedGrip(pitch), airLoadAt(air, pitch, bladeCount));
            continue;
          }
          if (Number.isNaN(nodes[k])) nodeAt(k);
          if (Number.isNaN(nodes[k + 1])) nodeAt(k + 1);
          out[i] += nodes[k] + (place - k) * (nodes[k + 1] - nodes[k]);
        }
      },
    };
  }
}

import { bearingFriction } from '../../engine/friction/bearingFriction';
import { beyondTable, type DragTable, dragAt } from '../../engine/friction/dragTable';
import type { LinkState } from '../../engine/linkage/linkage';
import { createAxisLoad, spinAxisLoad } from '../../engine/loads/axisLoad';
import { createMoments } from '../../engine/mass/moments';
import {
  degreesFromRadians,
  metresFromMm,
  type Radians,
  radiansFromDegrees,
} from '../../engine/units';
import { FRICTION_SECTION } from '../sections/friction';
import { sectionValues } from '../sections/section';
import { airLoadAt } from './airLoad';
import type { HeadAir } from './headAir';
import { addAir, headBearings, loadsOnBearings } from './headBearings';
import type { HeadForces } from './headForces';

/** What resists the turning of one grip, N m, where the design counts friction. */
export interface HeadFriction {
  /** There is a table of drag or a bearing. */
  readonly known: boolean;
  /** From the linkage, and from the bearings at the speed whose loads are `loadFactor` times the design's. */
  momentAt(pitch: Radians, link: LinkState | null, loadFactor: number): number;
  /** Slider travel within this pitch, either way, leaves the table of drag. */
  beyondTable(pitchDeg: number): boolean;
}

/** Bearing friction is computed at whole degrees this far either way, and is straight between them: the error is below 1e-4 of it. */
const NODES = 90;

/**
 * Friction of the head. The drag measured at rest is a force at the slider for all grips: each grip feels its share times
 * slider travel per radian, so it vanishes over centre. Bearings resist with their running friction under the loads of
 * the moment, times the starting factor; the push rod's own load on them is left out, being what friction decides. Null
 * where the design does not count friction.
 */
export function headFriction(forces: HeadForces, air: HeadAir): HeadFriction | null {
  const { model } = forces;
  const { friction, counted, rotor } = model.sections;
  if (!counted?.friction) return null;
  const table = dragTable(friction?.drag ?? []);
  const { startingFactor } = sectionValues(FRICTION_SECTION, friction);
  const bearings = headBearings(model);
  const totals = model.totals(createMoments());
  const load = createAxisLoad();

  function dragMoment(link: LinkState | null): number {
    if (table.travel.length === 0 || link === null) return 0;
    const force = dragAt(table, forces.travelOf(link));
    return (force * Math.abs(link.ratio)) / rotor.bladeCount;
  }

  /** Of the bearings at the design's speed; every load goes with the same factor. */
  function bearingsAt(pitch: Radians): number {
    spinAxisLoad(totals, model.rotor, pitch, load);
    addAir(load, airLoadAt(air, pitch, rotor.bladeCount), model.rotor);
    const each = loadsOnBearings(bearings, load);
    let sum = 0;
    bearings.forEach(({ facts }, i) => {
      const { frictionCoefficient: coefficient, frictionDiameter: diameter } = facts;
      const size = Math.hypot(each[i].radial, each[i].axial);
      sum += bearingFriction({ coefficient, load: size, diameter }, startingFactor);
    });
    return sum;
  }

  const nodes = new Float64Array(2 * NODES + 1).fill(Number.NaN);

  function nodeAt(k: number): number {
    if (Number.isNaN(nodes[k])) nodes[k] = bearingsAt(radiansFromDegrees(k - NODES));
    return nodes[k];
  }

  function bearingMoment(pitch: Radians, loadFactor: number): number {
    if (bearings.length === 0) return 0;
    const place = degreesFromRadians(pitch) + NODES;
    const k = Math.floor(place);
    if (!(k >= 0 && k < 2 * NODES)) return loadFactor * bearingsAt(pitch);
    return loadFactor * (nodeAt(k) + (place - k) * (nodeAt(k + 1) - nodeAt(k)));
  }

  return {
    known: table.travel.length > 0 || bearings.length > 0,
    momentAt: (pitch, link, loadFactor) => dragMoment(link) + bearingMoment(pitch, loadFactor),
    beyondTable: (pitchDeg) =>
      [-pitchDeg, pitchDeg].some((deg) =>
        beyondTable(table, forces.travelAt(radiansFromDegrees(deg))),
      ),
  };
}

function dragTable(
  rows: readonly { readonly travelMm: number; readonly forceN: number }[],
): DragTable {
  return {
    travel: rows.map(({ travelMm }) => metresFromMm(travelMm)),
    force: rows.map(({ forceN }) => forceN),
  };
}

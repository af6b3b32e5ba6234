import { bearingFriction } from '../../engine/friction/bearingFriction';
import { beyondTable, type DragTable, dragAt } from '../../engine/friction/dragTable';
import type { LinkState } from '../../engine/linkage/linkage';
import { createAxisLoad, spinAxisLoad } from '../../engine/loads/axisLoad';
import { createMoments } from '../../engine/mass/moments';
import { metresFromMm, type Radians, radiansFromDegrees } from '../../engine/units';
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
  dragMoment(pitch: Radians, link: LinkState | null): number;
  bearingMoment(pitch: Radians, link: LinkState | null, loadFactor: number): number;
  momentAt(pitch: Radians, link: LinkState | null, loadFactor: number): number;
  /** Slider travel within this pitch, either way, leaves the table of drag. */
  beyondTable(pitchDeg: number): boolean;
}

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

  function dragMoment(pitch: Radians, link: LinkState | null): number {
    if (table.travel.length === 0 || link === null) return 0;
    const force = dragAt(table, forces.travelAt(pitch));
    return (force * Math.abs(link.ratio)) / rotor.bladeCount;
  }

  function bearingMoment(pitch: Radians, _link: LinkState | null, loadFactor: number): number {
    if (bearings.length === 0) return 0;
    spinAxisLoad(totals, model.rotor, pitch, load);
    addAir(load, airLoadAt(air, pitch, rotor.bladeCount), model.rotor);
    const each = loadsOnBearings(bearings, load);
    let sum = 0;
    bearings.forEach(({ facts }, i) => {
      const { frictionCoefficient: coefficient, frictionDiameter: diameter } = facts;
      const size = loadFactor * Math.hypot(each[i].radial, each[i].axial);
      sum += bearingFriction({ coefficient, load: size, diameter }, startingFactor);
    });
    return sum;
  }

  return {
    known: table.travel.length > 0 || bearings.length > 0,
    dragMoment,
    bearingMoment,
    momentAt: (pitch, link, loadFactor) => {
      const drag = dragMoment(pitch, link);
      return drag + bearingMoment(pitch, link, loadFactor);
    },
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

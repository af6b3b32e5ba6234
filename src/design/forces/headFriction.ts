import type { PitchGrid } from '../../engine/feathering/pitchGrid';
import { beyondTable, type DragTable, dragAt } from '../../engine/friction/dragTable';
import type { LinkState } from '../../engine/linkage/linkage';
import { metresFromMm, type Radians, radiansFromDegrees } from '../../engine/units';
import { FRICTION_SECTION } from '../sections/friction';
import { sectionValues } from '../sections/section';
import type { BearingDesk } from './bearingDesk';
import type { HeadAir } from './headAir';
import type { HeadForces } from './headForces';
import type { LinkColumns } from './linkColumns';

/** What resists the turning of one grip, N m, where the design counts friction. */
export interface HeadFriction {
  /** There is a table of drag or a bearing. */
  readonly known: boolean;
  /** From the linkage, and from the bearings at the speed whose loads are `loadFactor` times the design's. */
  momentAt(pitch: Radians, link: LinkState | null, loadFactor: number): number;
  /** The first at every pitch of a grid, at the design's speed. */
  fill(grid: PitchGrid, links: LinkColumns | null, out: Float64Array): void;
  /** Slider travel within this pitch, either way, leaves the table of drag. */
  beyondTable(pitchDeg: number): boolean;
}

/**
 * Friction of the head. The drag measured at rest is a force at the slider for all grips: each grip feels its share times
 * slider travel per radian, so it vanishes over centre. Bearings resist with their running friction under the loads of
 * the moment, times the starting factor; the push rod's own load on them is left out, being what friction decides. Null
 * where the design does not count friction.
 */
export function headFriction(
  forces: HeadForces,
  air: HeadAir,
  desk: BearingDesk,
): HeadFriction | null {
  const { model } = forces;
  const { friction, counted, rotor } = model.sections;
  if (!counted?.friction) return null;
  const table = dragTable(friction?.drag ?? []);
  const { startingFactor } = sectionValues(FRICTION_SECTION, friction);
  const bearings = desk.friction(model, air, startingFactor);

  function dragMoment(travel: number, ratio: number): number {
    return (dragAt(table, travel) * Math.abs(ratio)) / rotor.bladeCount;
  }

  const dragOf = (link: LinkState | null) =>
    table.travel.length === 0 || link === null ? 0 : dragMoment(forces.travelOf(link), link.ratio);

  return {
    known: table.travel.length > 0 || bearings.any,
    momentAt: (pitch, link, loadFactor) => dragOf(link) + bearings.momentAt(pitch, loadFactor),
    fill(grid, links, out) {
      const { pitches } = grid;
      const drags = table.travel.length > 0;
      for (let i = 0; i < out.length; i++) {
        out[i] = drags && links ? dragMoment(links.travel[i], links.ratio[i]) : 0;
      }
      bearings.addAt(pitches, out);
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

import type { RotorConditions } from '../../engine/feathering/rotor';
import type { AxisLoad } from '../../engine/loads/axisLoad';
import { bearingReactions } from '../../engine/loads/bearings';
import type { BearingFacts } from '../../parts/facts';
import { partType } from '../../parts/registry';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';

/** A bearing where it stands on the feathering axis. */
export interface PlacedBearing {
  readonly placed: PlacedPart;
  readonly facts: BearingFacts;
  /** Its middle from the shaft, m. */
  readonly station: number;
}

/** Visible bearings, in list order. */
export function headBearings(model: HeadModel): readonly PlacedBearing[] {
  return model.parts.flatMap((placed) => {
    const facts = placed.part.hidden ? null : partType(placed.part.kind).bearing?.(placed.values);
    return facts ? [{ placed, facts, station: placed.pose.translation[0] }] : [];
  });
}

/** One blade's air: thrust N, int r dT (N m), drag N and its moment about the shaft (N m). Zeros without air. */
export interface AirLoad {
  readonly thrust: number;
  readonly flapMoment: number;
  readonly drag: number;
  readonly dragTorque: number;
}

export const NO_AIR: AirLoad = { thrust: 0, flapMoment: 0, drag: 0, dragTorque: 0 };

/** Adds one blade's air to a load: thrust along the shaft and drag against the travel, each at its radius. */
export function addAir(load: AxisLoad, air: AirLoad, rotor: RotorConditions): void {
  const c = Math.cos(rotor.precone);
  load.along += air.thrust * Math.sin(rotor.precone);
  load.up += air.thrust * c;
  load.bendUp += air.flapMoment;
  load.forward -= air.drag;
  load.swingForward -= air.dragTorque / c;
}

/**
 * Radial and axial load of each bearing, N, in the order given. Thrust bearings share the pull along the axis evenly; where
 * there is none the radial ones do.
 */
export function loadsOnBearings(
  bearings: readonly PlacedBearing[],
  load: AxisLoad,
): readonly { readonly radial: number; readonly axial: number }[] {
  const radial = bearings.filter(({ facts }) => facts.carries === 'radial');
  const thrust = bearings.filter(({ facts }) => facts.carries === 'thrust');
  const stations = radial.map(({ station }) => station);
  const up = bearingReactions(stations, { force: load.up, moment: load.bendUp });
  const forward = bearingReactions(stations, { force: load.forward, moment: load.swingForward });
  const carriers = thrust.length > 0 ? thrust : radial;
  const axial = load.along / Math.max(1, carriers.length);
  return bearings.map((bearing) => {
    const k = radial.indexOf(bearing);
    return {
      radial: k < 0 ? 0 : Math.hypot(up[k], forward[k]),
      axial: carriers.includes(bearing) ? axial : 0,
    };
  });
}

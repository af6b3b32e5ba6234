import type { RotorConditions } from '../../engine/feathering/rotor';
import type { AxisLoad } from '../../engine/loads/axisLoad';
import { bearingReaction } from '../../engine/loads/bearings';
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

/** What each bearing takes of a load, N, by its place in the list. */
export interface SharedLoads {
  radial(i: number, load: AxisLoad): number;
  axial(i: number, load: AxisLoad): number;
}

/**
 * How the bearings share a load. Thrust bearings share the pull along the axis evenly; where there is none the radial ones
 * do.
 */
export function sharedLoads(bearings: readonly PlacedBearing[]): SharedLoads {
  const radial = bearings.filter(({ facts }) => facts.carries === 'radial');
  const thrust = bearings.filter(({ facts }) => facts.carries === 'thrust');
  const reaction = bearingReaction(radial.map(({ station }) => station));
  const place = bearings.map((bearing) => radial.indexOf(bearing));
  const carriers = thrust.length > 0 ? thrust : radial;
  const carries = bearings.map((bearing) => carriers.includes(bearing));
  const sharers = Math.max(1, carriers.length);
  return {
    radial(i, load) {
      const k = place[i];
      if (k < 0) return 0;
      const up = reaction(k, load.up, load.bendUp);
      const forward = reaction(k, load.forward, load.swingForward);
      // Math.hypot makes garbage, and newtons need none of its care.
      return Math.sqrt(up * up + forward * forward);
    },
    axial: (i, load) => (carries[i] ? load.along / sharers : 0),
  };
}

/** Radial and axial load of each bearing, N, in the order given. */
export function loadsOnBearings(
  bearings: readonly PlacedBearing[],
  load: AxisLoad,
): readonly { readonly radial: number; readonly axial: number }[] {
  const shared = sharedLoads(bearings);
  return bearings.map((_, i) => ({ radial: shared.radial(i, load), axial: shared.axial(i, load) }));
}

import type { Radians } from '../../engine/units';
import type { HeadAir } from './headAir';
import { type AirLoad, NO_AIR } from './headBearings';

/** One blade's air at a pitch; zeros where air is not counted. */
export function airLoadAt(air: HeadAir, pitch: Radians, bladeCount: number): AirLoad {
  if (air.kind !== 'estimated') return NO_AIR;
  const { table } = air;
  return {
    thrust: table.thrust(pitch) / bladeCount,
    flapMoment: table.flapMoment(pitch),
    drag: table.dragForce(pitch),
    dragTorque: table.dragTorque(pitch),
  };
}

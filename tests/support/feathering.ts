import { freeFeatheringFrequency } from '../../src/engine/feathering/freeFeathering';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
  featheringSlope,
  type Harmonics,
} from '../../src/engine/feathering/harmonics';
import type { RotorConditions } from '../../src/engine/feathering/rotor';
import type { Moments } from '../../src/engine/mass/moments';
import { radians, radiansFromDegrees } from '../../src/engine/units';

/** A rotor without torque offset and precone, unless they are given. */
export function rotor(angularSpeed: number, torqueOffset = 0, precone = 0): RotorConditions {
  return { angularSpeed, torqueOffset, precone: radians(precone) };
}

export function harmonicsOf(moments: Moments, conditions: RotorConditions): Harmonics {
  return featheringHarmonics(moments, conditions, createHarmonics());
}

/** The inertial moment of a straight rotor at a pitch in degrees, N m. */
export function momentAt(moments: Moments, angularSpeed: number, degrees: number): number {
  return featheringMoment(harmonicsOf(moments, rotor(angularSpeed)), radiansFromDegrees(degrees));
}

/** Frequency about flat pitch on a straight rotor, rad/s. */
export function featheringFrequencyOf(moments: Moments, angularSpeed: number): number | null {
  const h = harmonicsOf(moments, rotor(angularSpeed));
  return freeFeatheringFrequency(moments, -featheringSlope(h, radians(0)));
}

import { fail, type Result, succeed } from '../result';
import { type Radians, radians } from '../units';

/** Arms between slider and servo, m, and the slider travel at which everything stands square. */
export interface ServoGeometry {
  /** Of the bell crank: at the slider, and at the servo's link. */
  readonly outputArm: number;
  readonly inputArm: number;
  readonly servoArm: number;
  readonly midTravel: number;
}

export interface ServoState {
  readonly servoAngle: Radians;
  /** N m, positive toward the way the servo turns when the slider goes up. */
  readonly torque: number;
}

/** How far the slider can go from the middle, m, and where it was asked to be. */
export interface ServoOutOfReach {
  readonly limit: number;
  readonly travel: number;
}

/**
 * Servo angle and torque for a slider travel (m) and the force that the control puts on the slider (N along +Z).
 *
 * Links are taken as long against the arms and square to them at mid travel, so that only the arms' sines count:
 * z - z_mid = r_out sin p at the bell crank, r_in sin p = r_servo sin q at the servo. By virtual work the torque is
 * F dz/dq = F (r_out / r_in) r_servo cos q. A real link of five arm lengths changes dz/dq by up to a tenth at 30
 * degrees (tested against the exact four-bar).
 */
export function servoState(
  { outputArm, inputArm, servoArm, midTravel }: ServoGeometry,
  travel: number,
  sliderForce: number,
): Result<ServoState, ServoOutOfReach> {
  const ratio = outputArm / inputArm;
  const limit = Math.min(outputArm, ratio * servoArm);
  const way = travel - midTravel;
  if (!(Math.abs(way) < limit)) return fail({ limit, travel: way });
  const servoAngle = Math.asin(way / (ratio * servoArm));
  const torque = sliderForce * ratio * servoArm * Math.cos(servoAngle);
  return succeed({ servoAngle: radians(servoAngle), torque });
}

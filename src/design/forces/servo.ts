import { type ServoGeometry, servoState } from '../../engine/linkage/servo';
import { degreesFromRadians, metresFromMm, type Radians, radians } from '../../engine/units';
import type { Control } from '../design';
import { CONTROL_SECTION } from '../sections/control';
import { sectionValues } from '../sections/section';
import type { HeadForces } from './headForces';

/** What the servo holds. Torque N m, all grips. */
export type Servo =
  /** No arms are given, or there is no linkage or no force at this pitch. */
  | { readonly kind: 'unknown' }
  /** Bell crank or servo arm cannot swing so far. */
  | { readonly kind: 'outOfReach' }
  | {
      readonly kind: 'holds';
      readonly torque: number;
      readonly angleDeg: number;
      /** Rated torque, N m, and how many times the torque it is; null where no rating is given. */
      readonly rated: number | null;
      readonly margin: number | null;
      /** The margin that is wanted. */
      readonly wanted: number;
    };

/** The arms between slider and servo, m; null unless all three are given. */
export function servoGeometry(control: Control | undefined): ServoGeometry | null {
  const { crankOutputMm, crankInputMm, servoArmMm, servoMidTravelMm } = sectionValues(
    CONTROL_SECTION,
    control,
  );
  if (crankOutputMm === null || crankInputMm === null || servoArmMm === null) return null;
  return {
    outputArm: metresFromMm(crankOutputMm),
    inputArm: metresFromMm(crankInputMm),
    servoArm: metresFromMm(servoArmMm),
    midTravel: metresFromMm(servoMidTravelMm),
  };
}

/** Servo torque for one newton at the slider at a travel, m; NaN where there is none. */
export function servoTorquePerForce(geometry: ServoGeometry | null, travel: number): number {
  if (!geometry) return Number.NaN;
  const state = servoState(geometry, travel, 1);
  return state.ok ? state.value.torque : Number.NaN;
}

/** The servo against a force on the slider (N along +Z). */
export function servoHolding(
  forces: HeadForces,
  pitch: Radians,
  sliderForce: number | null,
): Servo {
  const { control } = forces.model.sections;
  const geometry = servoGeometry(control);
  const travel = forces.travelAt(pitch);
  if (!geometry || sliderForce === null || Number.isNaN(travel)) return { kind: 'unknown' };
  const state = servoState(geometry, travel, sliderForce);
  if (!state.ok) return { kind: 'outOfReach' };
  const { servoTorqueNmm, servoMargin } = sectionValues(CONTROL_SECTION, control);
  const { torque, servoAngle } = state.value;
  const rated = servoTorqueNmm === null ? null : servoTorqueNmm / 1000;
  return {
    kind: 'holds',
    torque,
    angleDeg: degreesFromRadians(radians(servoAngle)),
    rated,
    margin: rated === null ? null : rated / Math.abs(torque),
    wanted: servoMargin,
  };
}

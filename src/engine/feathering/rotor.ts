import type { Radians } from '../units';

/** What the feathering moment needs to know of the rotor. */
export interface RotorConditions {
  /** Spin speed W, rad/s. The inertial moment does not depend on its sign. */
  readonly angularSpeed: number;
  /** Feathering axis displaced along rotor Y, toward the blade's travel, metres. */
  readonly torqueOffset: number;
  /** Feathering axis tilted up toward +Z, radians. */
  readonly precone: Radians;
}

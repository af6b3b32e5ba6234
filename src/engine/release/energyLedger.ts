import { radians } from '../units';
import type { ReleaseSystem } from './releaseSystem';
import { PITCH, RATE, TAKEN } from './sliding';

/** Where the energy of a released grip is, J. */
export interface Ledger {
  readonly kinetic: number;
  readonly potential: number;
  /** Taken by friction, damping and the stops. */
  readonly taken: number;
  /** Work of the hand. */
  readonly given: number;
  /**
   * Kinetic + potential + taken - given, less what it was at release: zero but for the error of the integration (and of a
   * potential that does not quite belong to the moment).
   */
  readonly error: number;
  /** The greatest kinetic energy so far: what `error` is small against. */
  readonly scale: number;
  give(work: number): void;
  /** Brings all of it up to date with the state. */
  check(system: ReleaseSystem, y: Float64Array): void;
}

export function openLedger(system: ReleaseSystem, y: Float64Array): Ledger {
  const ledger = new EnergyLedger();
  ledger.check(system, y);
  ledger.open();
  return ledger;
}

class EnergyLedger implements Ledger {
  kinetic = 0;
  potential = 0;
  taken = 0;
  given = 0;
  error = 0;
  scale = 0;
  private start = 0;

  open(): void {
    this.start = this.kinetic + this.potential;
    this.error = 0;
  }

  give(work: number): void {
    this.given += work;
  }

  check(system: ReleaseSystem, y: Float64Array): void {
    const pitch = radians(y[PITCH]);
    this.kinetic = (system.inertia.value(pitch) * y[RATE] * y[RATE]) / 2;
    this.potential = system.energy(pitch);
    this.taken = y[TAKEN];
    this.error = this.kinetic + this.potential - this.start + this.taken - this.given;
    this.scale = Math.max(this.scale, this.kinetic);
  }
}

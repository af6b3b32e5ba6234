import type { Design } from '../../design/design';
import { permissibleUnbalance } from '../../engine/balance/unbalance';
import { M, type Moments, SX, SY, SZ } from '../../engine/mass/moments';
import {
  angularSpeedFromRpm,
  kilogramsFromGrams,
  metresFromMm,
  radiansFromDegrees,
} from '../../engine/units';
import { chanceOf } from './chance';
import type { Matching } from './toleranceTypes';

/**
 * Collects heads as they are drawn into rotors of as many grips as the design has blades, evenly spaced, at flat pitch: the
 * difference of the push-rod forces of a rotor's first two grips, and the rotor's static unbalance U = sum m r in the rotor
 * plane (what the rods weigh is left out: they are alike). Every grip is taken as made to the drawing.
 */
export class MatchingTally {
  private readonly bladeCount: number;
  private readonly differences: number[] = [];
  private readonly unbalances: number[] = [];
  private held = 0;
  private firstForce = 0;
  private x = 0;
  private y = 0;
  private mass = 0;
  private kept = 0;

  constructor(
    private readonly design: Design,
    private readonly grade: number | null,
  ) {
    this.bladeCount = design.rotor.bladeCount;
  }

  /** One head: its totals (grip frame, about the shaft) and its force at the worst pitch, N. */
  add(totals: Moments, force: number): void {
    if (this.bladeCount < 2) return;
    const { preconeDeg, torqueOffsetMm } = this.design.rotor;
    const precone = radiansFromDegrees(preconeDeg);
    const out = totals[SX] * Math.cos(precone) - totals[SZ] * Math.sin(precone);
    const ahead = totals[M] * metresFromMm(torqueOffsetMm) + totals[SY];
    const angle = (2 * Math.PI * this.held) / this.bladeCount;
    const [s, c] = [Math.sin(angle), Math.cos(angle)];
    this.x += out * c - ahead * s;
    this.y += out * s + ahead * c;
    this.mass += totals[M];
    if (this.held === 0) this.firstForce = force;
    if (this.held === 1) this.differences.push(force - this.firstForce);
    this.held++;
    if (this.held === this.bladeCount) this.endRotor();
  }

  private endRotor(): void {
    const unbalance = Math.hypot(this.x, this.y);
    this.unbalances.push(unbalance);
    const { hubMassGrams, speedRpm } = this.design.rotor;
    if (this.grade !== null && hubMassGrams !== undefined && speedRpm > 0) {
      const rotorMass = this.mass + kilogramsFromGrams(hubMassGrams);
      const grade = metresFromMm(this.grade);
      const limit = permissibleUnbalance(grade, rotorMass, angularSpeedFromRpm(speedRpm));
      if (unbalance <= limit) this.kept++;
    }
    this.held = 0;
    this.x = 0;
    this.y = 0;
    this.mass = 0;
  }

  result(): Matching | null {
    const rotors = this.unbalances.length;
    if (rotors < 2) return null;
    const { hubMassGrams, speedRpm } = this.design.rotor;
    const graded = this.grade !== null && hubMassGrams !== undefined && speedRpm > 0;
    const unbalances = Float64Array.from(this.unbalances).toSorted();
    const sizes = Float64Array.from(this.differences, Math.abs).toSorted();
    const square = this.differences.reduce((sum, one) => sum + one * one, 0);
    return {
      rotors,
      // The two are drawn alike: the mean of the difference is zero.
      forceSigma: Math.sqrt(square / this.differences.length),
      forceWithin: atShare(sizes, 0.95),
      unbalanceMedian: atShare(unbalances, 0.5),
      unbalanceWithin: atShare(unbalances, 0.95),
      grade: graded ? chanceOf(this.kept, rotors) : null,
    };
  }
}

function atShare(ascending: Float64Array, share: number): number {
  return ascending[Math.min(ascending.length - 1, Math.floor(share * ascending.length))];
}

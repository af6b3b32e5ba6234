import {
  createHarmonics,
  featheringBound,
  featheringEnergy,
  featheringMoment,
  type Harmonics,
} from '../../engine/feathering/harmonics';
import { rodLever } from '../../engine/linkage/parallelRod';
import { radiansFromDegrees } from '../../engine/units';
import type { CurveSamples, HeadReading } from '../../state/reading';
import type { PlottedQuantity } from './quantity';
import { planSlots, SHARE_SLOTS } from './shareSlots';

/** A share line: one part, or the sum of the small ones (`id` null). */
export interface ShareLine {
  readonly id: string | null;
  readonly name: string;
}

/**
 * The chart's columns in display units, filled in place: pitch, total, and up to six shares. Push-rod shares are
 * -M_part / lever; a rod counts as a lump at its ball, in the shares as in the total.
 */
export class ChartData {
  readonly total: Float64Array;
  readonly shareValues: readonly Float64Array[];
  /** What each share column holds at present, or null. */
  shares: readonly (ShareLine | null)[] = new Array<null>(SHARE_SLOTS).fill(null);
  private slots: readonly (string | null)[] = [];
  private readonly levers: Float64Array;
  private readonly sum = createHarmonics();

  constructor(readonly pitchDeg: Float64Array) {
    this.total = new Float64Array(pitchDeg.length);
    this.levers = new Float64Array(pitchDeg.length);
    this.shareValues = Array.from({ length: SHARE_SLOTS }, () => new Float64Array(pitchDeg.length));
  }

  /** Columns as uPlot takes them. */
  get columns(): [Float64Array, Float64Array, ...Float64Array[]] {
    return [this.pitchDeg, this.total, ...this.shareValues];
  }

  update(
    reading: HeadReading,
    quantity: PlottedQuantity,
    withShares: boolean,
    others: string,
  ): void {
    const source = curveOf(reading.curve, quantity);
    for (let i = 0; i < source.length; i++) this.total[i] = source[i] * quantity.factor;
    if (!withShares) {
      this.shares = new Array<null>(SHARE_SLOTS).fill(null);
      return;
    }
    if (quantity.kind === 'force') this.fillLevers(reading);
    this.fillShares(reading, quantity, others);
  }

  private fillLevers(reading: HeadReading): void {
    const { rod, rotor } = reading;
    if (!rod) return;
    for (let i = 0; i < this.levers.length; i++) {
      this.levers[i] = rodLever(rod, radiansFromDegrees(this.pitchDeg[i]), rotor.precone);
    }
  }

  private fillShares(reading: HeadReading, quantity: PlottedQuantity, others: string): void {
    const candidates = reading.order.flatMap((id) => {
      const part = reading.part(id);
      if (!part) return [];
      return [{ id, size: featheringBound(part.harmonics) }];
    });
    const plan = planSlots(this.slots, candidates);
    this.slots = plan.parts;
    this.shares = plan.parts.map((id, k) => {
      const part = id === null ? undefined : reading.part(id);
      if (part) {
        this.fillShare(k, part.harmonics, reading, quantity);
        return { id, name: part.part.name };
      }
      if (k !== SHARE_SLOTS - 1 || plan.others.length === 0) return null;
      this.fillShare(k, this.sumOf(reading, plan.others), reading, quantity);
      return { id: null, name: others };
    });
  }

  private sumOf(reading: HeadReading, ids: readonly string[]): Harmonics {
    this.sum.fill(0);
    for (const id of ids) {
      const part = reading.part(id);
      if (part) for (let k = 0; k < this.sum.length; k++) this.sum[k] += part.harmonics[k];
    }
    return this.sum;
  }

  private fillShare(
    slot: number,
    harmonics: Harmonics,
    reading: HeadReading,
    quantity: PlottedQuantity,
  ): void {
    const out = this.shareValues[slot];
    const { factor, kind } = quantity;
    for (let i = 0; i < out.length; i++) {
      const pitch = radiansFromDegrees(this.pitchDeg[i]);
      if (kind === 'energy') out[i] = factor * featheringEnergy(harmonics, pitch);
      else if (kind === 'moment') out[i] = factor * featheringMoment(harmonics, pitch);
      else if (Number.isNaN(reading.curve.force[i])) out[i] = Number.NaN;
      else out[i] = (-factor * featheringMoment(harmonics, pitch)) / this.levers[i];
    }
  }
}

function curveOf(curve: CurveSamples, quantity: PlottedQuantity): Float64Array {
  if (quantity.kind === 'force') return curve.force;
  return quantity.kind === 'moment' ? curve.moment : curve.energy;
}

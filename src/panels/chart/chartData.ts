import {
  createHarmonics,
  featheringEnergy,
  featheringMoment,
} from '../../engine/feathering/harmonics';
import { radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import type { CurveSamples, HeadReading, ShareReading } from '../../state/reading';
import { PitchTurns } from './pitchTurns';
import { type PlottedQuantity, perMoment } from './quantity';
import { planSlots, SHARE_SLOTS } from './shareSlots';

/** A share line: one part, or the sum of the small ones (`id` null). */
export interface ShareLine {
  readonly id: string | null;
  readonly name: string;
}

/**
 * The chart's columns in display units, filled in place: pitch, total, and up to six shares. Forces are moments times
 * what one N m makes there, for the shares as for the total.
 */
export class ChartData {
  readonly total: Float64Array;
  /** Half the width of the friction band; NaN where there is none. */
  readonly friction: Float64Array;
  /** Edges of the friction band: filled by who draws them. */
  readonly bandEdges: readonly [upper: Float64Array, lower: Float64Array];
  readonly shareValues: readonly Float64Array[];
  /** What each share column holds at present, or null. */
  shares: readonly (ShareLine | null)[] = new Array<null>(SHARE_SLOTS).fill(null);
  private slots: readonly (string | null)[] = [];
  private readonly turns: PitchTurns;

  constructor(readonly pitchDeg: Float64Array) {
    this.total = new Float64Array(pitchDeg.length);
    this.friction = new Float64Array(pitchDeg.length);
    this.bandEdges = [new Float64Array(pitchDeg.length), new Float64Array(pitchDeg.length)];
    this.turns = new PitchTurns(pitchDeg);
    this.shareValues = Array.from({ length: SHARE_SLOTS }, () => new Float64Array(pitchDeg.length));
  }

  update(
    reading: HeadReading,
    quantity: PlottedQuantity,
    withShares: boolean,
    others: string,
  ): void {
    const { curve } = reading;
    const source = quantity.kind === 'energy' ? curve.energy : curve.moment;
    const per = perMoment(curve, quantity.kind);
    for (let i = 0; i < source.length; i++) {
      this.total[i] = source[i] * (per?.[i] ?? 1) * quantity.factor;
    }
    this.fillFriction(reading, quantity, per);
    if (!withShares) {
      this.shares = new Array<null>(SHARE_SLOTS).fill(null);
      return;
    }
    this.fillShares(reading, quantity, others);
  }

  private fillFriction(
    { curve, friction }: HeadReading,
    { kind, factor }: PlottedQuantity,
    per: Float64Array | null,
  ): void {
    if (kind === 'energy' || !friction.counted || !friction.known) {
      this.friction.fill(Number.NaN);
      return;
    }
    for (let i = 0; i < this.friction.length; i++) {
      this.friction[i] = Math.abs(curve.friction[i] * (per?.[i] ?? 1) * factor);
    }
  }

  private fillShares(reading: HeadReading, quantity: PlottedQuantity, others: string): void {
    const shares = sharesOf(reading);
    const candidates = Array.from(shares, ([id, share]) => ({ id, size: share.bound }));
    const plan = planSlots(this.slots, candidates);
    this.slots = plan.parts;
    this.shares = plan.parts.map((id, k) => {
      const share = id === null ? undefined : shares.get(id);
      const out = this.shareValues[k].fill(0);
      if (share && id !== null) {
        this.addShare(out, share, reading.curve, quantity);
        return { id, name: share.name };
      }
      if (k !== SHARE_SLOTS - 1 || plan.others.length === 0) return null;
      const rest = plan.others.map((other) => shares.get(other) as NamedShare);
      this.addShare(out, together(rest), reading.curve, quantity);
      // What is no rigid body's is worked out by itself.
      for (const other of rest) {
        if (!other.harmonics) this.addShare(out, other, reading.curve, quantity);
      }
      return { id: null, name: others };
    });
  }

  private addShare(
    out: Float64Array,
    share: ShareReading,
    curve: CurveSamples,
    quantity: PlottedQuantity,
  ): void {
    const { factor, kind } = quantity;
    const per = perMoment(curve, kind);
    const { harmonics, curveMoments } = share;
    if (kind === 'energy') {
      for (let i = 0; i < out.length; i++) out[i] += factor * share.energyAt(this.pitchDeg[i]);
    } else if (harmonics) this.turns.addMoments(out, harmonics, per, factor);
    else {
      for (let i = 0; i < out.length; i++) {
        const moment = curveMoments?.[i] ?? share.momentAt(this.pitchDeg[i]);
        out[i] += factor * (moment * (per ? per[i] : 1));
      }
    }
  }
}

/** All that are rigid bodies as one: their coefficients add. */
function together(shares: readonly ShareReading[]): ShareReading {
  const sum = createHarmonics();
  let bound = 0;
  for (const share of shares) {
    share.harmonics?.forEach((value, k) => {
      sum[k] += value;
    });
    bound += share.bound;
  }
  return {
    harmonics: sum,
    bound,
    momentAt: (pitchDeg) => featheringMoment(sum, radiansFromDegrees(pitchDeg)),
    energyAt: (pitchDeg) => featheringEnergy(sum, radiansFromDegrees(pitchDeg)),
  };
}

interface NamedShare extends ShareReading {
  readonly name: string;
}

/** Every share of the moment by the id that selects it: the parts', the air's and the lag's. */
function sharesOf(reading: HeadReading): Map<string, NamedShare> {
  const shares = new Map<string, NamedShare>();
  for (const id of reading.order) {
    const part = reading.part(id);
    if (!part) continue;
    shares.set(id, namedShare(part, part.part.name));
  }
  for (const term of reading.terms) {
    shares.set(`term ${term.id}`, namedShare(term, t(`chart.term.${term.id}`)));
  }
  return shares;
}

function namedShare(share: ShareReading, name: string): NamedShare {
  const { momentAt, energyAt, bound, harmonics, curveMoments } = share;
  return {
    momentAt,
    energyAt,
    bound,
    name,
    ...(harmonics && { harmonics }),
    ...(curveMoments && { curveMoments }),
  };
}

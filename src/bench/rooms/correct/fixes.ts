import type { Design } from '../../../design/design';
import type { Result } from '../../../engine/result';
import type { KnobRef } from '../../../neutralise/knobs';
import {
  type CorrectionFault,
  type Lump,
  lumpAtRadius,
  type ScaledMass,
  scaleMass,
} from '../../correction';
import type { Estimated } from '../../fitRung';
import { agreementOf } from '../../ladder';
import {
  type NeutralBy,
  type NeutralFault,
  neutralBy,
  neutralLump,
  turnedLengths,
} from '../../neutralBy';
import type { NotSensible } from '../../sensible';

/** What could be wrong in the model, and what could be turned, for a deficit. */
export interface Fixes {
  /** Parts whose mass alone would explain it, those that do best first. */
  readonly masses: readonly ScaledMass[];
  /** The readings agree with the model: nothing of it is to be corrected, and neither masses nor lump are offered. */
  readonly agrees: boolean;
  /** What would do it by numbers that make no sense, with the reason. */
  readonly refused: readonly Refused[];
  readonly lump: Result<Lump, CorrectionFault>;
  /** Lengths that bring the measured head to neutral. */
  readonly lengths: readonly NeutralBy[];
  /** Grams at the stated distance that do it: above the axis where the head centres, ahead of it where it flees. */
  readonly added: Result<Lump, CorrectionFault>;
}

export type Refused =
  | {
      readonly kind: 'mass';
      readonly part: string;
      readonly fault: NotSensible;
    }
  | {
      readonly kind: 'length';
      readonly ref: KnobRef;
      readonly fault: Extract<NeutralFault, { readonly kind: 'tooFar' }>;
    };

export interface LumpPlace {
  readonly stationMm: number;
  readonly radiusMm: number;
}

/** All offers for a design whose measured head has `deficit` more than the model's `modelSpread` (J_yy - J_zz, kg m^2). */
export function fixesFor(
  design: Design,
  deficit: Estimated,
  place: LumpPlace,
  names: { readonly lump: string; readonly added: string },
  modelSpread: number,
): Fixes {
  const { stationMm, radiusMm } = place;
  const isCentring = modelSpread + deficit.spread > 0;
  const spot = [stationMm, isCentring ? 0 : radiusMm, isCentring ? radiusMm : 0] as const;
  const { agrees } = agreementOf(deficit);
  const masses: ScaledMass[] = [];
  const lengths: NeutralBy[] = [];
  const refused: Refused[] = [];
  for (const { id } of agrees ? [] : design.parts) {
    const scaled = scaleMass(design, id, deficit);
    if (scaled.ok) masses.push(scaled.value);
    else if (scaled.error.kind === 'notSensible' || scaled.error.kind === 'weighed')
      refused.push({ kind: 'mass', part: id, fault: scaled.error });
  }
  for (const ref of turnedLengths(design)) {
    const found = neutralBy(design, ref, deficit);
    if (found.ok) lengths.push(found.value);
    else if (found.error.kind === 'tooFar')
      refused.push({ kind: 'length', ref, fault: found.error });
  }
  return {
    agrees,
    refused,
    masses: masses
      .filter(({ explains }) => explains)
      .toSorted((a, b) => Math.abs(Math.log(a.factor)) - Math.abs(Math.log(b.factor))),
    lump: lumpAtRadius(design, place, deficit, names.lump),
    lengths,
    added: neutralLump(design, spot, deficit, names.added),
  };
}

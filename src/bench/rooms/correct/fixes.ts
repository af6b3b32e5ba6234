import type { Design } from '../../../design/design';
import type { Result } from '../../../engine/result';
import {
  type CorrectionFault,
  type Lump,
  lumpAtRadius,
  type ScaledMass,
  scaleMass,
} from '../../correction';
import type { Estimated } from '../../fitRung';
import { type NeutralBy, neutralBy, neutralLump, turnedLengths } from '../../neutralBy';

/** What could be wrong in the model, and what could be turned, for a deficit. */
export interface Fixes {
  /** Parts whose mass alone would explain it, those that do best first. */
  readonly masses: readonly ScaledMass[];
  readonly lump: Result<Lump, CorrectionFault>;
  /** Lengths that bring the measured head to neutral. */
  readonly lengths: readonly NeutralBy[];
  /** Grams at the stated distance that do it: above the axis where the head centres, ahead of it where it flees. */
  readonly added: Result<Lump, CorrectionFault>;
}

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
  const masses = design.parts.flatMap((part) => {
    const scaled = scaleMass(design, part.id, deficit);
    return scaled.ok ? [scaled.value] : [];
  });
  return {
    masses: masses
      .filter(({ explains }) => explains)
      .toSorted((a, b) => Math.abs(Math.log(a.factor)) - Math.abs(Math.log(b.factor))),
    lump: lumpAtRadius(design, place, deficit, names.lump),
    lengths: turnedLengths(design).flatMap((ref) => {
      const found = neutralBy(design, ref, deficit);
      return found.ok ? [found.value] : [];
    }),
    added: neutralLump(design, spot, deficit, names.added),
  };
}

/** Where a length stands among those of a standard, mm. */
export interface LengthPlace {
  /** The listed length that it is, exactly; undefined where it is none. */
  readonly listed: number | undefined;
  /** Next shorter and next longer listed one. */
  readonly below: number | undefined;
  readonly above: number | undefined;
}

/** Lengths closer than this are the same: far below any tolerance, far above the rounding of 3/8 in to 9.525 mm. */
const SAME_MM = 1e-6;

/** `lengths` ascending. */
export function placeOfLength(lengths: readonly number[], lengthMm: number): LengthPlace {
  return {
    listed: lengths.find((one) => Math.abs(one - lengthMm) < SAME_MM),
    below: lengths.findLast((one) => one <= lengthMm - SAME_MM),
    above: lengths.find((one) => one >= lengthMm + SAME_MM),
  };
}

/** The length of a size for a part that is `lengthMm` long now: the same or the next longer, so that a nut keeps its thread. */
export function fittingLength(lengths: readonly number[], lengthMm: number): number | undefined {
  const { listed, above } = placeOfLength(lengths, lengthMm);
  return listed ?? above ?? lengths.at(-1);
}

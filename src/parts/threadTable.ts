/**
 * Threads that the catalogues use, nominal diameter and pitch in mm: ISO metric coarse (ISO 261, ISO 262), Unified coarse
 * up to #8-32 and fine from #10-32 (ASME B1.1; pitch 25.4 mm over threads per inch, diameter exact from the inch).
 */
export interface Thread {
  readonly diameterMm: number;
  readonly pitchMm: number;
}

const COARSE: Readonly<Record<string, number>> = {
  'M1.6': 0.35,
  M2: 0.4,
  'M2.5': 0.45,
  M3: 0.5,
  M4: 0.7,
  M5: 0.8,
  M6: 1,
  M8: 1.25,
};

/** Nominal diameter mm, threads per inch. */
const UNIFIED: Readonly<Record<string, readonly [number, number]>> = {
  '#2-56': [2.1844, 56],
  '#4-40': [2.8448, 40],
  '#6-32': [3.5052, 32],
  '#8-32': [4.1656, 32],
  '#10-32': [4.826, 32],
  '1/4-28': [6.35, 28],
};

/** The thread of a size as a standard writes it: "M3", "#4-40". Throws on a size that is not listed. */
export function threadOf(size: string): Thread {
  if (COARSE[size] !== undefined) {
    return { diameterMm: Number(size.slice(1)), pitchMm: COARSE[size] };
  }
  const unified = UNIFIED[size];
  if (!unified) throw new RangeError(`threadOf(): no such thread: ${size}`);
  return { diameterMm: unified[0], pitchMm: 25.4 / unified[1] };
}

/** Typed or shown to a ten-thousandth of a millimetre; no listed metric thread is as near to a Unified one. */
const SAME_MM = 1e-3;

/** Whether diameter and pitch, mm, are those of a listed Unified thread. */
export function isUnified(diameterMm: number, pitchMm: number): boolean {
  return Object.values(UNIFIED).some(
    ([diameter, perInch]) =>
      Math.abs(diameter - diameterMm) < SAME_MM && Math.abs(25.4 / perInch - pitchMm) < SAME_MM,
  );
}

/** Nominal lengths of bolts, screws and studs in mm, without those in brackets (ISO 888). */
const LENGTHS_MM = [
  2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80,
];

/** The listed nominal lengths from `shortest` to `longest`, mm. */
export function standardLengthsMm(shortest: number, longest: number): readonly number[] {
  return LENGTHS_MM.filter((length) => length >= shortest && length <= longest);
}

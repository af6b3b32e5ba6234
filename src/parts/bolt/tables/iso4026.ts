/**
 * ISO 4026 (DIN 913) hexagon socket set screws with flat point, M1.6 to M8, mm. Across flats is nominal, socket depth t
 * the least allowed for short and for long screws, point diameter dp the greatest.
 */
export const ISO_4026_SOURCE =
  'ISO 4026: three online tables (DIN 913, DIN 915, ISO 4028 for both depths); which lengths are short, and the longest, from memory';

interface SetScrewRow {
  readonly size: string;
  readonly across: number;
  readonly shortDepth: number;
  readonly longDepth: number;
  readonly point: number;
  readonly shortest: number;
  /** Up to this length the short depth holds: from memory. */
  readonly shortTo: number;
  /** From memory. */
  readonly longest: number;
}

function row(size: string, ...figures: readonly number[]): SetScrewRow {
  const [across, shortDepth, longDepth, point, shortest, shortTo, longest] = figures;
  return { size, across, shortDepth, longDepth, point, shortest, shortTo, longest };
}

/** s, t min short, t min long, dp max, l from, short up to l, l to. */
export const ISO_4026: readonly SetScrewRow[] = [
  row('M1.6', 0.7, 0.7, 1.5, 0.8, 2, 2, 8),
  row('M2', 0.9, 0.8, 1.7, 1, 2, 2.5, 10),
  row('M2.5', 1.3, 1.2, 2, 1.5, 2.5, 3, 12),
  row('M3', 1.5, 1.2, 2, 2, 3, 3, 16),
  row('M4', 2, 1.5, 2.5, 2.5, 4, 4, 20),
  row('M5', 2.5, 2, 3, 3.5, 5, 5, 25),
  row('M6', 3, 2, 3.5, 4, 6, 6, 30),
  row('M8', 4, 3, 5, 5.5, 8, 8, 40),
];

/**
 * ISO 286-1: standard tolerance grade IT13, mm, for nominal sizes above the row before up to `to` (from memory; the least
 * shank diameters of ISO 4762, 2.86 for M3 and 9.78 for M10, agree).
 */
const IT13: readonly { readonly to: number; readonly width: number }[] = [
  { to: 3, width: 0.14 },
  { to: 6, width: 0.18 },
  { to: 10, width: 0.22 },
  { to: 18, width: 0.27 },
  { to: 30, width: 0.33 },
  { to: 50, width: 0.39 },
  { to: 80, width: 0.46 },
  { to: 120, width: 0.54 },
  { to: 180, width: 0.63 },
];

/** How far a shaft of the tolerance class h13 may be below its nominal size, mm (above it never); null beyond the table. */
export function underSizeH13(diameterMm: number): number | null {
  return IT13.find(({ to }) => diameterMm <= to)?.width ?? null;
}

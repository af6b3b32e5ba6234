import type { Tolerance } from '../../design/design';

export type GeneralClass = NonNullable<Tolerance['generalClass']>;

/**
 * ISO 2768-1:1989, table 1: permissible deviations from linear dimensions, mm, for nominal sizes above `from` (the first
 * row from 0.5 itself) up to `to`. The standard gives none below 0.5 mm, where the deviation is to be written beside the
 * size. From memory, confirmed by other programs' transcriptions.
 */
const LENGTHS: readonly {
  readonly to: number;
  readonly fine: number | null;
  readonly medium: number;
  readonly coarse: number;
}[] = [
  { to: 3, fine: 0.05, medium: 0.1, coarse: 0.2 },
  { to: 6, fine: 0.05, medium: 0.1, coarse: 0.3 },
  { to: 30, fine: 0.1, medium: 0.2, coarse: 0.5 },
  { to: 120, fine: 0.15, medium: 0.3, coarse: 0.8 },
  { to: 400, fine: 0.2, medium: 0.5, coarse: 1.2 },
  { to: 1000, fine: 0.3, medium: 0.8, coarse: 2 },
  { to: 2000, fine: 0.5, medium: 1.2, coarse: 3 },
  { to: 4000, fine: null, medium: 2, coarse: 4 },
];
const SMALLEST = 0.5;

/** Permissible deviation of a length, mm, either way; null where the class has none. */
export function lengthDeviation(lengthMm: number, general: GeneralClass): number | null {
  const size = Math.abs(lengthMm);
  if (general === 'none' || size < SMALLEST) return null;
  const row = LENGTHS.find(({ to }) => size <= to);
  return row?.[general] ?? null;
}

/** The rows that sizes up to `largestMm` fall in, equal ones as one: the deviation holds up to and including `to`, mm. */
export function lengthRows(
  largestMm: number,
  general: Exclude<GeneralClass, 'none'>,
): readonly { readonly to: number; readonly deviation: number }[] {
  const last = LENGTHS.findIndex(({ to }) => largestMm <= to);
  const rows: { to: number; deviation: number }[] = [];
  for (const row of last < 0 ? LENGTHS : LENGTHS.slice(0, last + 1)) {
    const deviation = row[general];
    if (deviation === null) continue;
    if (rows.at(-1)?.deviation === deviation) rows[rows.length - 1].to = row.to;
    else rows.push({ to: row.to, deviation });
  }
  return rows;
}

/**
 * ISO 2768-1:1989, table 3: permissible deviations of an angle, degrees, where its shorter side is up to 10 mm: the widest
 * row, since a design does not say how long the side is. From memory.
 */
const ANGLES = { fine: 1, medium: 1, coarse: 1.5 } as const;

export function angleDeviation(general: GeneralClass): number | null {
  return general === 'none' ? null : ANGLES[general];
}

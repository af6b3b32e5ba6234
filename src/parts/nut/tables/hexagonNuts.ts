/**
 * ISO 4032 regular and ISO 4035 thin hexagon nuts, M1.6 to M8, mm: across flats s is nominal, the greatest allowed, and
 * so is the height m. The two standards share s.
 */
export const ISO_4032_SOURCE =
  'ISO 4032: an online table of the standard and three open hardware data tables that agree';
export const ISO_4035_SOURCE = 'ISO 4035: three open hardware data tables that agree';

interface NutRow {
  readonly size: string;
  readonly across: number;
  readonly regular: number;
  readonly thin: number;
}

function row(size: string, across: number, regular: number, thin: number): NutRow {
  return { size, across, regular, thin };
}

/** s max, m max of ISO 4032, m max of ISO 4035. */
export const HEXAGON_NUTS: readonly NutRow[] = [
  row('M1.6', 3.2, 1.3, 1),
  row('M2', 4, 1.6, 1.2),
  row('M2.5', 5, 2, 1.6),
  row('M3', 5.5, 2.4, 1.8),
  row('M4', 7, 3.2, 2.2),
  row('M5', 8, 4.7, 2.7),
  row('M6', 10, 5.2, 3.2),
  row('M8', 13, 6.8, 4),
];

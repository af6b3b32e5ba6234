/**
 * ISO 7380-1 hexagon socket button head screws, M3 to M8, mm (the standard begins at M3). Head diameter, head height and
 * dome radius are the greatest allowed, the flat on top is the standard's reference value, across flats is nominal and
 * the depth of the socket the least. The height of the rim under the dome follows from the dome lying on a sphere about
 * the axis: k - sqrt(rf^2 - (dL / 2)^2) + sqrt(rf^2 - (dk / 2)^2).
 */
export const ISO_7380_SOURCE =
  'ISO 7380-1: an online table of the standard and two open hardware data tables that agree; lengths from memory';

interface ButtonRow {
  readonly size: string;
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly across: number;
  readonly depth: number;
  readonly flat: number;
  readonly domeRadius: number;
  /** Listed lengths from, to: from memory. */
  readonly shortest: number;
  readonly longest: number;
}

function row(size: string, ...figures: readonly number[]): ButtonRow {
  const [headDiameter, headHeight, across, depth, flat, domeRadius, shortest, longest] = figures;
  return { size, headDiameter, headHeight, across, depth, flat, domeRadius, shortest, longest };
}

/** dk max, k max, s, t min, dL, rf max, l from, l to. */
export const ISO_7380: readonly ButtonRow[] = [
  row('M3', 5.7, 1.65, 2, 1.04, 2.6, 3.7, 6, 30),
  row('M4', 7.6, 2.2, 2.5, 1.3, 3.8, 4.6, 8, 40),
  row('M5', 9.5, 2.75, 3, 1.56, 5, 5.75, 10, 50),
  row('M6', 10.5, 3.3, 4, 2.08, 6, 6.15, 10, 50),
  row('M8', 14, 4.4, 5, 2.6, 7.7, 7.95, 12, 60),
];

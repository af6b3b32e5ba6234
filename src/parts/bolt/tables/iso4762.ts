/**
 * ISO 4762 (DIN 912) hexagon socket head cap screws, M1.6 to M8, mm. Head diameter (plain head), head height and head
 * chamfer v are the greatest that the standard allows, as it prints them; socket across flats is nominal, depth t and
 * wall w under the socket are the least. Thread length b holds beyond `fullThreadTo`; up to it the thread reaches the head.
 */
export const ISO_4762_SOURCE =
  'ISO 4762: two online tables of the standard and three open hardware data tables that agree';

interface CapScrewRow {
  readonly size: string;
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly across: number;
  readonly depth: number;
  readonly thread: number;
  readonly fullThreadTo: number;
  readonly shortest: number;
  readonly longest: number;
  readonly chamfer: number;
  readonly wall: number;
}

function row(size: string, ...figures: readonly number[]): CapScrewRow {
  const [headDiameter, headHeight, across, depth, thread, fullThreadTo] = figures;
  const [shortest, longest, chamfer, wall] = figures.slice(6);
  return {
    size,
    headDiameter,
    headHeight,
    across,
    depth,
    thread,
    fullThreadTo,
    shortest,
    longest,
    chamfer,
    wall,
  };
}

/** dk max, k max, s, t min, b, full thread up to l, l from, l to, v max, w min. */
export const ISO_4762: readonly CapScrewRow[] = [
  row('M1.6', 3, 1.6, 1.5, 0.7, 15, 16, 2.5, 16, 0.16, 0.55),
  row('M2', 3.8, 2, 1.5, 1, 16, 20, 3, 20, 0.2, 0.55),
  row('M2.5', 4.5, 2.5, 2, 1.1, 17, 25, 4, 25, 0.25, 0.85),
  row('M3', 5.5, 3, 2.5, 1.3, 18, 20, 5, 30, 0.3, 1.15),
  row('M4', 7, 4, 3, 2, 20, 25, 6, 40, 0.4, 1.4),
  row('M5', 8.5, 5, 4, 2.5, 22, 25, 8, 50, 0.5, 1.9),
  row('M6', 10, 6, 5, 3, 24, 30, 8, 60, 0.6, 2.3),
  row('M8', 13, 8, 6, 4, 28, 35, 10, 80, 0.8, 3.3),
];

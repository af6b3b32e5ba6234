/**
 * ISO 4014 hexagon head bolts (plain shank) and ISO 4017 hexagon head screws (threaded to the head), M1.6 to M8, mm.
 * Across flats is nominal, which is the greatest allowed; head height k is nominal, the middle of its tolerance. Thread
 * length b is that of ISO 4014 for lengths up to 125 mm.
 */
export const ISO_4014_SOURCE =
  'ISO 4014 and ISO 4017: an online table of the standard and three open hardware data tables that agree; lengths from memory';

interface HexagonRow {
  readonly size: string;
  readonly across: number;
  readonly headHeight: number;
  readonly thread: number;
  /** Listed lengths from, to, of ISO 4014 and of ISO 4017: from memory. */
  readonly boltLengths: readonly [number, number];
  readonly screwLengths: readonly [number, number];
}

function row(
  size: string,
  [across, headHeight, thread]: readonly [number, number, number],
  boltLengths: readonly [number, number],
  screwLengths: readonly [number, number],
): HexagonRow {
  return { size, across, headHeight, thread, boltLengths, screwLengths };
}

/** s, k nominal, b. */
export const ISO_4014: readonly HexagonRow[] = [
  row('M1.6', [3.2, 1.1, 9], [12, 16], [2, 16]),
  row('M2', [4, 1.4, 10], [16, 20], [4, 20]),
  row('M2.5', [5, 1.7, 11], [16, 25], [5, 25]),
  row('M3', [5.5, 2, 12], [20, 30], [6, 30]),
  row('M4', [7, 2.8, 14], [25, 40], [8, 40]),
  row('M5', [8, 3.5, 16], [25, 50], [10, 50]),
  row('M6', [10, 4, 18], [30, 60], [12, 60]),
  row('M8', [13, 5.3, 22], [40, 80], [16, 80]),
];

/**
 * ISO 7040 regular and ISO 10511 thin prevailing torque hexagon nuts with nonmetallic insert, M3 to M8, mm: across flats
 * s and overall height h are the greatest allowed, thread height m the least. The standards say that h is m plus the
 * prevailing torque feature (scope of ISO 7040:2025); so m is taken as the height of the body and the
 * rest as that of collar and ring.
 *
 * The sizes of collar and ring are not in the tables read. They are estimates, chosen so that DIN 985 nuts come out near
 * their printed masses (tests/parts/publishedMasses.test.ts: M3, M4, M6 and M8 within 6 %, M5 13 % light): collar 0.92 s
 * wide, ring two thirds of its height, half of the wall that the thread leaves, bored to the pitch diameter.
 */
export const ISO_7040_SOURCE =
  'ISO 7040: one open hardware data table; widths of collar and ring estimated (memory)';
export const ISO_10511_SOURCE =
  'ISO 10511: one open hardware data table; widths of collar and ring estimated (memory)';

interface LockingNutRow {
  readonly size: string;
  readonly across: number;
  readonly height: number;
  readonly thread: number;
}

function row(size: string, across: number, height: number, thread: number): LockingNutRow {
  return { size, across, height, thread };
}

/** s max, h max, m min. */
export const ISO_7040: readonly LockingNutRow[] = [
  row('M3', 5.5, 4.5, 2.15),
  row('M4', 7, 6, 2.9),
  row('M5', 8, 6.8, 4.4),
  row('M6', 10, 8, 4.9),
  row('M8', 13, 9.5, 6.44),
];

export const ISO_10511: readonly LockingNutRow[] = [
  row('M3', 5.5, 3.9, 1.55),
  row('M4', 7, 5, 1.95),
  row('M5', 8, 5, 2.45),
  row('M6', 10, 6, 2.9),
  row('M8', 13, 6.76, 3.7),
];

/**
 * ASME B18.3 hexagon socket head cap screws, 1960 series, #2-56 to 1/4-28, mm (exact from the inch). Head diameter and
 * height are the greatest allowed, across flats is nominal, key engagement and thread length LT are the least. A head
 * chamfer is not in the tables read: none is assumed.
 */
export const ASME_B18_3_SOURCE =
  'ASME B18.3: an online table (1960 series: key engagement and thread length) and two open hardware data tables; lengths from memory';

interface InchRow {
  readonly size: string;
  readonly headDiameter: number;
  readonly headHeight: number;
  readonly across: number;
  readonly depth: number;
  readonly thread: number;
  /** Longest listed length, inch: from memory. */
  readonly longestInch: number;
}

function row(size: string, ...figures: readonly number[]): InchRow {
  const [headDiameter, headHeight, across, depth, thread, longestInch] = figures;
  return { size, headDiameter, headHeight, across, depth, thread, longestInch };
}

/** Head diameter, head height, across flats, key engagement, LT; longest length in inches. */
export const ASME_B18_3: readonly InchRow[] = [
  row('#2-56', 3.556, 2.1844, 1.9844, 0.9652, 15.748, 1),
  row('#4-40', 4.6482, 2.8448, 2.3812, 1.2954, 19.05, 1.5),
  row('#6-32', 5.7404, 3.5052, 2.7781, 1.6256, 19.05, 2),
  row('#8-32', 6.858, 4.1656, 3.5719, 1.9558, 22.352, 2.5),
  row('#10-32', 7.9248, 4.826, 3.9688, 2.286, 22.352, 2.5),
  row('1/4-28', 9.525, 6.35, 4.7625, 3.048, 25.4, 3),
];

const LENGTHS_INCH = [
  0.125, 0.1875, 0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 1.75, 2, 2.25,
  2.5, 2.75, 3,
];

/** Listed lengths in mm, exact from the inch: from about the thread diameter on. */
export function inchLengthsMm(shortestMm: number, longestInch: number): readonly number[] {
  return LENGTHS_INCH.filter((inch) => inch <= longestInch)
    .map((inch) => Number((inch * 25.4).toFixed(5)))
    .filter((mm) => mm >= shortestMm);
}

import type { Box, Scale, SheetFormat } from './sheetTypes';

/** Trimmed sizes (ISO 216), mm. */
export const FORMATS: readonly SheetFormat[] = [
  { name: 'A5 landscape', width: 210, height: 148 },
  { name: 'A4 landscape', width: 297, height: 210 },
  { name: 'A4 portrait', width: 210, height: 297 },
  { name: 'A5 portrait', width: 148, height: 210 },
];

/** Enlargements, full size and reductions (ISO 5455), the largest first. */
export const SCALES: readonly Scale[] = [
  ...[20, 10, 5, 2, 1].map((n) => ({ name: `${n}:1`, factor: n })),
  ...[2, 5, 10, 20].map((n) => ({ name: `1:${n}`, factor: 1 / n })),
];

/** Filing margin at the left, the other margins (ISO 5457), mm. */
const FILING = 20;
const MARGIN = 10;

export function frameOf({ width, height }: SheetFormat): Box {
  return { x0: FILING, y0: MARGIN, x1: width - MARGIN, y1: height - MARGIN };
}

/** Widest title block (ISO 7200), mm. */
export const BLOCK_WIDTH = 180;

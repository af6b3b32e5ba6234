import type { SheetFormat } from './sheetTypes';

/** Where one looks at a sheet: the middle of the picture in mm on paper, y down, and how much larger than the whole. */
export interface PaperView {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

export type PaperSize = Pick<SheetFormat, 'width' | 'height'>;

/** Air round the whole sheet, mm on paper. */
const AROUND = 4;
const MOST_ZOOM = 16;

export function wholeSheet({ width, height }: PaperSize): PaperView {
  return { x: width / 2, y: height / 2, zoom: 1 };
}

/** The picture's view box. */
export function viewBoxOf({ x, y, zoom }: PaperView, { width, height }: PaperSize): string {
  const [w, h] = [(width + 2 * AROUND) / zoom, (height + 2 * AROUND) / zoom];
  return [x - w / 2, y - h / 2, w, h].map((value) => Number(value.toFixed(4))).join(' ');
}

/** Larger by `factor` (or smaller), with the point (px, py) of the paper staying where it is. */
export function zoomedAt(
  view: PaperView,
  size: PaperSize,
  factor: number,
  [px, py]: readonly [number, number],
): PaperView {
  const zoom = Math.min(MOST_ZOOM, Math.max(1, view.zoom * factor));
  if (zoom === 1) return wholeSheet(size);
  const share = view.zoom / zoom;
  return onPaper({ x: px + (view.x - px) * share, y: py + (view.y - py) * share, zoom }, size);
}

/** Moved over the paper by so many mm. */
export function moved(view: PaperView, size: PaperSize, dx: number, dy: number): PaperView {
  if (view.zoom === 1) return view;
  return onPaper({ ...view, x: view.x + dx, y: view.y + dy }, size);
}

/** The middle of the picture never leaves the paper. */
function onPaper({ x, y, zoom }: PaperView, { width, height }: PaperSize): PaperView {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)), zoom };
}

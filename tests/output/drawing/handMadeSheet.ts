import type { Entity, Sheet } from '../../../src/output/drawing/sheetTypes';

/** Half of 25.4 mm, at 2:1 on paper. */
const R = 25.4;
/** Where the axis's left end lies on the paper. */
export const ORIGIN = [40, 100] as const;

/**
 * A drawing made by hand: a disc of 25.4 mm diameter and 6.35 mm width at 2:1, with a check bar of 50 mm, an arc, an arrow,
 * and texts of every sort. What it must come out as is known without the code that draws parts.
 */
export function handMadeSheet(change: Partial<Sheet> = {}): Sheet {
  const [x, y] = ORIGIN;
  const entities: Entity[] = [
    ...rectangle(x, y - R, x + 2 * 6.35, y + R),
    { shape: 'line', layer: 'centre', x1: x - 5, y1: y, x2: x + 20, y2: y },
    { shape: 'circle', layer: 'visible', x: x + 80, y, r: R },
    { shape: 'arc', layer: 'thread', x: x + 80, y, r: 10, from: 100, to: 370 },
    { shape: 'arrow', layer: 'dimension', x: x - 10, y: y + R, angle: 90 },
    text('\u00d825.4 \u00b10.1', x - 11, y, { turned: true, layer: 'dimension' }),
    text('Ra 3.2 \u00b5m, 30\u00b0, \u03a9 \u03b1 \u2212 \u00d7 \u2026', x, 40, {
      anchor: 'start',
    }),
    text('100 %%c ^I\nend', 150, 20, { anchor: 'end' }),
    { shape: 'line', layer: 'check', x1: 20, y1: 12, x2: 70, y2: 12 },
    ...rectangle(20, 10, 200, 138, 'frame'),
  ];
  return {
    format: { name: 'A5 landscape', width: 210, height: 148 },
    scale: { name: '2:1', factor: 2 },
    unit: 'mm',
    projection: 'first',
    title: 'Disc of the test',
    origin: ORIGIN,
    frame: { x0: 20, y0: 10, x1: 200, y1: 138 },
    entities,
    dimensions: [],
    ...change,
  };
}

function rectangle(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  layer: 'visible' | 'frame' = 'visible',
): Entity[] {
  const line = (ax: number, ay: number, bx: number, by: number): Entity => {
    return { shape: 'line', layer, x1: ax, y1: ay, x2: bx, y2: by };
  };
  return [line(x0, y0, x1, y0), line(x1, y0, x1, y1), line(x1, y1, x0, y1), line(x0, y1, x0, y0)];
}

function text(
  words: string,
  x: number,
  y: number,
  change: Partial<Extract<Entity, { shape: 'text' }>>,
): Entity {
  return {
    shape: 'text',
    layer: 'text',
    x,
    y,
    height: 2.5,
    text: words,
    anchor: 'middle',
    ...change,
  };
}

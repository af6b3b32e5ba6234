import type Drawing from 'dxf-writer';
import { t } from './roomText';
import { arrowCorners } from './sheetSvg';
import {
  type ArcEntity,
  type CircleEntity,
  type Entity,
  LAYERS,
  type Layer,
  LINE_STYLES,
  type LineEntity,
  type Sheet,
  type TextEntity,
} from './sheetTypes';

/** Types of line by their numbers in ISO 128-2: continuous, and long dash with dots. */
const CONTINUOUS = 'ISO_01_CONTINUOUS';
const LONG_DASH_DOT = 'ISO_04_LONG_DASH_DOT';

/** Name and colour number of each layer. */
const DXF_LAYERS: Readonly<Record<Layer, readonly [string, number]>> = {
  visible: ['VISIBLE', 7],
  thread: ['THREAD', 3],
  hatch: ['HATCHING', 8],
  centre: ['CENTRE', 1],
  dimension: ['DIMENSIONS', 5],
  text: ['TEXT', 7],
  frame: ['FRAME', 7],
  check: ['CHECK', 7],
};

/**
 * The drawing as DXF (R2007, whose texts are UTF-8): lines, circles, arcs and texts on named layers. Always in mm and in
 * the part's own size whatever unit the dimensions are written in, with the left end of its axis at (0, 0) of the main
 * view: what is on VISIBLE can be turned or milled from as it stands, and the header says mm to a program that counts in
 * inches. Sheet, notes and dimensions are on layers of their own and as much larger or smaller as the part is shown
 * smaller or larger on paper: they can be switched off, and printed at the drawing's scale they have their own size.
 */
export async function sheetDxf(sheet: Sheet): Promise<string> {
  const { default: Writer } = await import('dxf-writer');
  const drawing = new Writer();
  const factor = 1 / sheet.scale.factor;
  drawing.setUnits('Millimeters');
  drawing.header('MEASUREMENT', [[70, 1]]);
  drawing.addLineType(CONTINUOUS, 'Continuous', []);
  drawing.addLineType(LONG_DASH_DOT, 'Long dash, dot', dashesOf('centre', factor));
  for (const layer of LAYERS) addLayer(drawing, layer);
  const place = placed(sheet);
  for (const one of sheet.entities) {
    // A bar of 50 mm of paper would measure something else in the part's own size.
    if (one.layer === 'check') continue;
    drawing.setActiveLayer(DXF_LAYERS[one.layer][0]);
    draw(drawing, place(one));
  }
  drawing.setActiveLayer(DXF_LAYERS.text[0]);
  draw(drawing, place(scaleNote(sheet)));
  return `${drawing.toDxfString()}\n`;
}

/** In place of the check bar: what size the file has, and how it comes onto paper. */
function scaleNote(sheet: Sheet): Entity {
  const bar = sheet.entities.find((one) => one.shape === 'line' && one.layer === 'check');
  const at = bar?.shape === 'line' ? { x: bar.x1, y: bar.y1 } : { x: sheet.frame.x0, y: 0 };
  const figures = t(sheet.unit === 'mm' ? 'drawing.mm' : 'drawing.in');
  const text = t('drawing.dxfScale', { figures, scale: sheet.scale.name });
  return { shape: 'text', layer: 'text', ...at, height: 2.1, text, anchor: 'start' };
}

/** Dashes positive and gaps negative, in turn. */
function dashesOf(layer: Layer, factor: number): number[] {
  return (LINE_STYLES[layer].dashes ?? []).map((d, i) => (i % 2 === 0 ? d : -d) * factor);
}

/** With its width of line, which the writer knows nothing of: group 370, hundredths of a millimetre. */
function addLayer(drawing: Drawing, layer: Layer): void {
  const [name, colour] = DXF_LAYERS[layer];
  const { width, dashes } = LINE_STYLES[layer];
  drawing.addLayer(name, colour, dashes ? LONG_DASH_DOT : CONTINUOUS);
  const written = drawing.layers[name];
  const plain = written.tags.bind(written);
  written.tags = (manager) => {
    plain(manager);
    manager.push(370, Math.round(width * 100));
  };
}

type Placed =
  | LineEntity
  | CircleEntity
  | ArcEntity
  | { readonly shape: 'outline'; readonly corners: [number, number][] }
  | TextEntity;

/** From the paper to the part: millimetres of the part from the left end of its axis. */
function placed(sheet: Sheet): (one: Entity) => Placed {
  const [x0, y0] = sheet.origin;
  const factor = 1 / sheet.scale.factor;
  const px = (value: number) => clean((value - x0) * factor);
  const py = (value: number) => clean((value - y0) * factor);
  return (one) => {
    if (one.shape === 'line') {
      return { ...one, x1: px(one.x1), y1: py(one.y1), x2: px(one.x2), y2: py(one.y2) };
    }
    if (one.shape === 'arrow') {
      return { shape: 'outline', corners: arrowCorners(one).map(([x, y]) => [px(x), py(y)]) };
    }
    const at = { x: px(one.x), y: py(one.y) };
    return one.shape === 'text'
      ? { ...one, ...at, height: clean(one.height * factor) }
      : { ...one, ...at, r: clean(one.r * factor) };
  };
}

/** To a millionth of a millimetre: without the noise of the moves over the paper, never with an exponent, no minus zero. */
function clean(value: number): number {
  return Number(value.toFixed(6)) + 0;
}

function draw(drawing: Drawing, one: Placed): void {
  if (one.shape === 'line') drawing.drawLine(one.x1, one.y1, one.x2, one.y2);
  else if (one.shape === 'circle') drawing.drawCircle(one.x, one.y, one.r);
  else if (one.shape === 'arc') drawing.drawArc(one.x, one.y, one.r, one.from, one.to);
  else if (one.shape === 'outline') drawing.drawPolyline(one.corners, true);
  else {
    const align = ({ start: 'left', middle: 'center', end: 'right' } as const)[one.anchor];
    const turn = one.turned ? 90 : 0;
    drawing.drawText(one.x, one.y, one.height, turn, dxfText(one.text), align, 'baseline');
  }
}

/**
 * What a TEXT entity reads as the very signs of `text`: it takes two per cent signs for the start of a code (%%c: diameter)
 * and three for one per cent sign, a caret for that of a control character, and ends at the line's end.
 */
export function dxfText(text: string): string {
  return text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/%{2,}/g, (run) => '%%%'.repeat(run.length))
    .replaceAll('^', '^ ');
}

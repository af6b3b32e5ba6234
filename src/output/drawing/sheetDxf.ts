import { INCH_MM } from '../../engine/units';
import { arrowCorners } from './sheetSvg';
import { type Entity, LAYERS, type Layer, type Sheet } from './sheetTypes';

/** Name, colour number and line type of each layer. */
const DXF_LAYERS: Readonly<Record<Layer, readonly [string, number, string]>> = {
  visible: ['VISIBLE', 7, 'CONTINUOUS'],
  thread: ['THREAD', 3, 'CONTINUOUS'],
  hatch: ['HATCHING', 8, 'CONTINUOUS'],
  centre: ['CENTRE', 1, 'CENTRE'],
  dimension: ['DIMENSIONS', 5, 'CONTINUOUS'],
  text: ['TEXT', 7, 'CONTINUOUS'],
  frame: ['FRAME', 7, 'CONTINUOUS'],
  check: ['CHECK', 7, 'CONTINUOUS'],
};

/**
 * The drawing as DXF: lines, circles, arcs and texts on named layers, in the part's own size with the left end of its axis
 * at (0, 0), in mm or inches as the header says. The sheet round the views is drawn as much larger or smaller as the part
 * is shown smaller or larger on paper; printed at the drawing's scale it has its own size.
 */
export async function sheetDxf(sheet: Sheet): Promise<string> {
  const { default: Drawing } = await import('dxf-writer');
  const drawing = new Drawing();
  const inches = sheet.unit === 'in';
  const factor = 1 / sheet.scale.factor / (inches ? INCH_MM : 1);
  drawing.setUnits(inches ? 'Inches' : 'Millimeters');
  drawing.header('MEASUREMENT', [[70, inches ? 0 : 1]]);
  drawing.addLineType(
    'CENTRE',
    'Long dash, dot',
    [6, -0.75, 0.125, -0.75].map((d) => d * factor),
  );
  for (const layer of LAYERS) drawing.addLayer(...DXF_LAYERS[layer]);
  const [x0, y0] = sheet.origin;
  for (const one of sheet.entities) {
    drawing.setActiveLayer(DXF_LAYERS[one.layer][0]);
    draw(
      drawing,
      one,
      (x) => (x - x0) * factor,
      (y) => (y - y0) * factor,
      factor,
    );
  }
  return drawing.toDxfString();
}

type Writer = InstanceType<typeof import('dxf-writer')['default']>;

function draw(
  drawing: Writer,
  one: Entity,
  x: (value: number) => number,
  y: (value: number) => number,
  factor: number,
): void {
  if (one.shape === 'line') drawing.drawLine(x(one.x1), y(one.y1), x(one.x2), y(one.y2));
  else if (one.shape === 'circle') drawing.drawCircle(x(one.x), y(one.y), one.r * factor);
  else if (one.shape === 'arc') {
    drawing.drawArc(x(one.x), y(one.y), one.r * factor, one.from, one.to);
  } else if (one.shape === 'arrow') {
    const corners = arrowCorners(one).map(([px, py]): [number, number] => [x(px), y(py)]);
    drawing.drawPolyline(corners, true);
  } else {
    const align = ({ start: 'left', middle: 'center', end: 'right' } as const)[one.anchor];
    const turn = one.turned ? 90 : 0;
    drawing.drawText(x(one.x), y(one.y), one.height * factor, turn, one.text, align, 'baseline');
  }
}

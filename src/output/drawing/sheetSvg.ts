import { ARROW_LENGTH, ARROW_WIDTH, type Entity, LINE_STYLES, type Sheet } from './sheetTypes';
import { CAPITAL, textLength } from './textSize';

/** One element of the picture, for a file and for the page alike. */
export interface SvgElement {
  readonly tag: 'line' | 'circle' | 'path' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  readonly text?: string;
}

export const SVG_FONT = "'Liberation Sans', Arial, Helvetica, 'Inter Variable', Inter, sans-serif";

/** To a millionth of a millimetre. */
function n(value: number): string {
  return String(Number(value.toFixed(6)));
}

/** The sheet's elements in drawing order; user units are mm, y down from the upper edge. */
export function svgElements(sheet: Sheet): SvgElement[] {
  return sheet.entities.map((one) => elementOf(one, sheet.format.height));
}

function elementOf(one: Entity, height: number): SvgElement {
  const flip = (y: number) => n(height - y);
  const common = { class: one.layer };
  if (one.shape === 'line') {
    const { x1, y1, x2, y2 } = one;
    const ends = { x1: n(x1), y1: flip(y1), x2: n(x2), y2: flip(y2) };
    return { tag: 'line', attributes: { ...common, ...ends } };
  }
  if (one.shape === 'circle') {
    const attributes = { ...common, cx: n(one.x), cy: flip(one.y), r: n(one.r) };
    return { tag: 'circle', attributes };
  }
  if (one.shape === 'arc') {
    const at = (angle: number) => {
      const radians = (angle * Math.PI) / 180;
      return `${n(one.x + one.r * Math.cos(radians))} ${flip(one.y + one.r * Math.sin(radians))}`;
    };
    const sweep = (((one.to - one.from) % 360) + 360) % 360;
    const d = `M${at(one.from)}A${n(one.r)} ${n(one.r)} 0 ${sweep > 180 ? 1 : 0} 0 ${at(one.to)}`;
    return { tag: 'path', attributes: { ...common, d } };
  }
  if (one.shape === 'arrow') {
    const [tip, left, right] = arrowCorners(one).map(([x, y]) => `${n(x)} ${flip(y)}`);
    return { tag: 'path', attributes: { class: 'arrow', d: `M${tip}L${left}L${right}Z` } };
  }
  const place: Record<string, string> = {
    class: `${one.layer}-text`,
    x: n(one.x),
    y: flip(one.y),
    'font-size': n(one.height / CAPITAL),
    'text-anchor': one.anchor,
    textLength: n(textLength(one.text, one.height)),
    lengthAdjust: 'spacingAndGlyphs',
  };
  if (one.turned) place.transform = `rotate(-90 ${n(one.x)} ${flip(one.y)})`;
  return { tag: 'text', attributes: place, text: one.text };
}

/** Tip and the two corners behind it. */
export function arrowCorners(one: {
  readonly x: number;
  readonly y: number;
  readonly angle: number;
}): readonly [number, number][] {
  const radians = (one.angle * Math.PI) / 180;
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  const [back, side] = [ARROW_LENGTH, ARROW_WIDTH / 2];
  return [
    [one.x, one.y],
    [one.x - back * c - side * s, one.y - back * s + side * c],
    [one.x - back * c + side * s, one.y - back * s - side * c],
  ];
}

/** Styles of a file that stands alone. */
export function svgStyle(): string {
  const layers = Object.entries(LINE_STYLES).map(([layer, { width, dashes }]) => {
    const dash = dashes ? `;stroke-dasharray:${dashes.join(' ')}` : '';
    return `.${layer}{fill:none;stroke:#000;stroke-width:${width};stroke-linecap:round${dash}}`;
  });
  return [...layers, '.arrow{fill:#000}', `text{fill:#000;font-family:${SVG_FONT}}`].join('\n');
}

/** The sheet as an SVG file: its size in mm, one user unit a millimetre, texts as text. */
export function sheetSvg(sheet: Sheet): string {
  const { width, height } = sheet.format;
  const body = svgElements(sheet).map(({ tag, attributes, text }) => {
    const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(value)}"`);
    return text === undefined
      ? `<${tag}${written.join('')}/>`
      : `<${tag}${written.join('')}>${escaped(text)}</${tag}>`;
  });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escaped(sheet.title)}</title>`,
    `<style>${svgStyle()}</style>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    ...body,
    '</svg>',
    '',
  ].join('\n');
}

/** Also without the control characters that no XML may hold. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ' ')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

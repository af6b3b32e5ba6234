import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import { sheetSvg } from '../../../src/output/drawing/sheetSvg';
import type { LengthUnit } from '../../../src/output/drawing/sheetTypes';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { handMadeSheet } from './handMadeSheet';

/** A plain bar of one inch, 25.4 mm by its definition (international yard and pound agreement, 1959). */
const INCH_BAR = {
  id: 'bar',
  kind: 'weight',
  name: 'Bar <of> "one" & inch \u0001',
  pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
  lengthMm: 25.4,
  diameterMm: 25.4,
  boreMm: 0,
  stalkDiameterMm: 3,
  stalkLengthMm: 0,
  densityKgM3: 7850,
} as unknown as Part;
const DESIGN: Design = { ...EMPTY_DESIGN, name: '\u03a9-head & co', parts: [INCH_BAR] };

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  text: string;
}

/** Read by `saxes`, a strict XML parser: what is not well formed throws. */
function parsed(svg: string): Element[] {
  const elements: Element[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    elements.push({ name, attributes: attributes as Record<string, string>, text: '' });
  });
  parser.on('text', (text) => {
    const last = elements.at(-1);
    if (last) last.text += text;
  });
  parser.write(svg).close();
  return elements;
}

function drawn(unit: LengthUnit) {
  const sheet = drawSheet(DESIGN, INCH_BAR, {
    format: 'A4 landscape',
    projection: 'first',
    unit,
    date: '2026-01-01',
  });
  if (!sheet.ok) throw new Error('it does not fit');
  return { sheet: sheet.value, elements: parsed(sheetSvg(sheet.value)) };
}

describe('the drawing as SVG', () => {
  it.each(['mm', 'in'] as const)(
    'shows 25.4 mm as 25.4 mm times the scale, %s asked for',
    (unit) => {
      const { sheet, elements } = drawn(unit);
      const svg = elements[0];
      expect(svg.attributes.width).toBe('297mm');
      expect(svg.attributes.height).toBe('210mm');
      expect(svg.attributes.viewBox).toBe('0 0 297 210');
      const outline = elements.filter(
        ({ name, attributes }) => name === 'line' && attributes.class === 'visible',
      );
      const ups = outline.flatMap(({ attributes: a }) =>
        a.y1 === a.y2 ? [Math.abs(Number(a.x2) - Number(a.x1))] : [],
      );
      expect(Math.max(...ups)).toBeCloseTo(25.4 * sheet.scale.factor, 5);
      const circles = elements.filter(
        ({ name, attributes }) => name === 'circle' && attributes.class === 'visible',
      );
      expect(2 * Number(circles[0].attributes.r)).toBeCloseTo(25.4 * sheet.scale.factor, 5);
      const words = elements.filter(({ name }) => name === 'text').map(({ text }) => text.trim());
      expect(words).toContain(unit === 'mm' ? '25.4' : '1.0000');
      expect(words).toContain(unit === 'mm' ? '\u00d825.4' : '\u00d81.0000');
    },
  );

  it('has a check bar of 50 mm', () => {
    const { elements } = drawn('mm');
    const bar = elements.filter(({ attributes }) => attributes.class === 'check');
    const lengths = bar.map(({ attributes: a }) => Number(a.x2) - Number(a.x1));
    expect(lengths.filter((length) => length > 0)).toEqual([expect.closeTo(50, 9)]);
  });

  it('holds names as text, never as markup, and no sign that XML forbids', () => {
    const { elements } = drawn('mm');
    const words = elements.filter(({ name }) => name === 'text').map(({ text }) => text.trim());
    expect(words).toContain('Bar <of> "one" & inch');
    expect(words).toContain('\u03a9-head & co');
    expect(elements.some(({ name }) => name === 'of')).toBe(false);
  });
});

describe('the paper of a drawing as SVG', () => {
  // A sheet counts up from its lower edge, SVG down from the upper one: 12 of 148 mm above the edge is 136 below the top.
  it('is the right way up', () => {
    const elements = parsed(sheetSvg(handMadeSheet()));
    const bar = elements.find(({ attributes }) => attributes.class === 'check');
    expect([bar?.attributes.y1, bar?.attributes.y2]).toEqual(['136', '136']);
    const circle = elements.find(({ name }) => name === 'circle');
    expect(Number(circle?.attributes.cy)).toBeCloseTo(48, 6);
    const text = elements.find((one) => one.text.startsWith('Ra'));
    expect(Number(text?.attributes.y)).toBeCloseTo(108, 6);
  });
});

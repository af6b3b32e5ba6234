import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { type Paper, paintFigure } from '../../../src/output/data/figurePaint';
import { figureSheet } from '../../../src/output/data/figureSheet';
import { figureSvg, pictureSvg } from '../../../src/output/data/figureSvg';
import { withDensity } from '../../../src/output/data/pngSize';
import { chartFigure } from '../../../src/output/report/figures/chartFigure';
import { dialFigure } from '../../../src/output/report/figures/dialFigure';
import { type Figure, line, polygon, text } from '../../../src/output/report/figures/figure';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';
import { chunksOf, pixelPng } from '../../support/png';
import { DEMOS, demo } from '../solids/heads';

interface Tag {
  readonly name: string;
  readonly attributes: Record<string, string>;
  text: string;
}

/** All elements of an XML text, by an independent parser; throws where it is not well formed. */
function tagsOf(xml: string): Tag[] {
  const tags: Tag[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) =>
    tags.push({ name, attributes: attributes as Record<string, string>, text: '' }),
  );
  parser.on('text', (piece) => {
    const last = tags[tags.length - 1];
    if (last) last.text += piece;
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(xml).close();
  return tags;
}

/** A drawing of 100 x 60 with a bar from (10, 30) to (60, 30). */
const BAR: Figure = {
  width: 100,
  height: 60,
  alt: 'A bar',
  shapes: [
    line(10, 30, 60, 30, { stroke: '#000000', dash: [3, 2] }),
    polygon(
      [
        [0, 0],
        [4, 0],
        [4, 4],
      ],
      { fill: '#123456' },
    ),
    text(10, 20, '\u00d8 5 \u00b1 0.1 < "x" & y', { anchor: 'end', bold: true }),
  ],
};

describe('an SVG of a drawing', () => {
  it('has its size in millimetres: a bar of half the width of a 100 mm picture is 50 mm', () => {
    const [svg, ...tags] = tagsOf(figureSvg(BAR, 'Bar', 100));
    expect(svg.attributes).toMatchObject({
      width: '100mm',
      height: '60mm',
      viewBox: '0 0 100 60',
      xmlns: 'http://www.w3.org/2000/svg',
    });
    const bar = tags.find(({ attributes }) => attributes['stroke-dasharray'] === '3 2');
    expect(bar?.attributes.d).toBe('M10 30L60 30');
  });

  it('keeps texts as text, whatever their letters', () => {
    const tags = tagsOf(figureSvg(BAR, 'a & <b>', 100));
    expect(tags.find(({ name }) => name === 'title')?.text).toContain('a & <b>');
    const words = tags.find(({ name }) => name === 'text');
    expect(words?.text.trim()).toBe('\u00d8 5 \u00b1 0.1 < "x" & y');
    expect(words?.attributes).toMatchObject({ 'text-anchor': 'end', 'font-weight': '600' });
  });

  it('refers to nothing outside itself and runs nothing', () => {
    const { reading } = createSession(demo(DEMOS[2]), () => {}).live;
    for (const figure of [dialFigure(reading, 7), chartFigure(reading, METRIC_UNITS, null)]) {
      const sheet = figureSheet(figure, { title: 'T', lines: ['l'] });
      const tags = tagsOf(figureSvg(sheet, 'T', 160));
      expect(tags.length).toBeGreaterThan(20);
      expect(new Set(tags.map(({ name }) => name))).toEqual(
        new Set(['svg', 'title', 'desc', 'path', 'text']),
      );
      for (const { attributes } of tags) {
        expect(Object.keys(attributes).filter((name) => /href|^on|style/.test(name))).toEqual([]);
      }
    }
  });

  it('of pixels holds them whole, at their size on paper', () => {
    const picture = { dataUrl: 'data:image/png;base64,AAAA', width: 1600, height: 1000 };
    const [svg, , image] = tagsOf(pictureSvg(picture, 'Stage', 160));
    expect(svg.attributes).toMatchObject({ width: '160mm', height: '100mm' });
    expect(image.attributes).toEqual({ width: '1600', height: '1000', href: picture.dataUrl });
  });
});

describe('the sheet round a drawing', () => {
  it('moves every shape by the same way and gives it a white ground', () => {
    const sheet = figureSheet(BAR, { title: 'Title', lines: ['one', 'two'] });
    expect(sheet.shapes[0]).toMatchObject({ fill: '#ffffff' });
    const texts = sheet.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
    expect(texts.slice(0, 3).map((shape) => shape.text)).toEqual(['Title', 'one', 'two']);
    const words = texts[3];
    const dy = words.y - 20;
    expect(words.x - 10).toBe(12);
    const bar = sheet.shapes.find((shape) => shape.kind === 'path' && shape.dash);
    expect(bar).toMatchObject({
      commands: [
        ['M', 22, 30 + dy],
        ['L', 72, 30 + dy],
      ],
    });
    expect(sheet.height).toBe(dy + 60 + 12);
    // No line of words reaches into the drawing.
    for (const shape of texts.slice(0, 3)) expect(shape.y).toBeLessThanOrEqual(dy);
  });

  it('breaks long lines between words and loses none', () => {
    const long = 'pitch in use and rotor speed said at some length for a narrow picture';
    const { shapes } = figureSheet(BAR, { title: 'T', lines: [long] });
    const lines = shapes
      .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
      .slice(1, -1);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(long);
  });
});

describe('a drawing on a canvas', () => {
  it('is drawn stroke by stroke as its commands say', () => {
    const calls: string[] = [];
    const record =
      (name: string) =>
      (...values: unknown[]) =>
        void calls.push(`${name} ${values.map(String).join(' ')}`.trim());
    const paper = Object.fromEntries(
      ['scale', 'beginPath', 'moveTo', 'lineTo', 'bezierCurveTo', 'closePath', 'fill', 'stroke']
        .concat('fillText', 'setLineDash')
        .map((name) => [name, record(name)]),
    ) as unknown as Paper;
    paintFigure(paper, BAR, 2.5, 'Inter');
    expect(calls).toEqual([
      'scale 2.5 2.5',
      'beginPath',
      'moveTo 10 30',
      'lineTo 60 30',
      'setLineDash 3,2',
      'stroke',
      'beginPath',
      'moveTo 0 0',
      'lineTo 4 0',
      'lineTo 4 4',
      'closePath',
      'fill',
      'fillText \u00d8 5 \u00b1 0.1 < "x" & y 10 20',
    ]);
    expect(paper).toMatchObject({ textAlign: 'right', font: '600 10.5px Inter' });
  });
});

describe('a PNG', () => {
  it('states its pixels a metre in pHYs before the pixels, every check sum right by zlib', () => {
    const chunks = chunksOf(withDensity(pixelPng(), 300 / 0.0254));
    expect(chunks.map(([type]) => type)).toEqual(['IHDR', 'pHYs', 'IDAT', 'IEND']);
    const density = Buffer.from(chunks[1][1]);
    // 300 an inch are 11811.02 a metre.
    expect([density.readUInt32BE(0), density.readUInt32BE(4), density[8]]).toEqual([
      11811, 11811, 1,
    ]);
  });

  it('that is none comes back as it was', () => {
    const bytes = new Uint8Array(100);
    expect(withDensity(bytes, 1)).toBe(bytes);
  });
});

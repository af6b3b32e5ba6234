import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { sheetPdf } from '../../../src/output/drawing/sheetPdf';
import type { LengthUnit, Sheet } from '../../../src/output/drawing/sheetTypes';
import { handMadeSheet, ORIGIN } from './handMadeSheet';
import { inchWasherSheet } from './inchWasher';
import { readSheetPdf } from './readSheetPdf';

const face = new Uint8Array(
  readFileSync(new URL('../../../src/output/fonts/LiberationSans-Regular.ttf', import.meta.url)),
);

async function written(sheet: Sheet) {
  return readSheetPdf(await sheetPdf(sheet, face, new Date('2026-01-01T00:00:00Z')));
}

/** The writer rounds to hundredths of a point and better; the reader keeps 32-bit numbers. */
const WRITTEN = 0.006;

function widthOf(points: readonly (readonly [number, number])[]): number {
  const xs = points.map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
}

describe('a drawing as PDF, read by another program', () => {
  it('is one sheet in its own size: ISO 216 A5 lying is 210 by 148 mm', async () => {
    const { pages } = await written(handMadeSheet());
    expect(pages).toHaveLength(1);
    expect(Math.abs(pages[0].widthMm - 210)).toBeLessThan(WRITTEN);
    expect(Math.abs(pages[0].heightMm - 148)).toBeLessThan(WRITTEN);
    const upright = await written(
      handMadeSheet({ format: { name: 'A4 portrait', width: 210, height: 297 } }),
    );
    expect(Math.abs(upright.pages[0].heightMm - 297)).toBeLessThan(WRITTEN);
  });

  it('has the check bar 50 mm long, and 50.8 mm for the 25.4 mm that are shown at 2:1', async () => {
    const { lines } = await written(handMadeSheet());
    const bar = lines.find(({ y1, y2 }) => Math.abs(y1 - 12) < 0.01 && Math.abs(y2 - 12) < 0.01);
    expect(Math.abs((bar?.length ?? 0) - 50)).toBeLessThan(WRITTEN);
    const sides = lines.filter(
      ({ x1, x2 }) => Math.abs(x1 - x2) < 0.01 && Math.abs(x1 - ORIGIN[0]) < 0.01,
    );
    expect(sides.some(({ length }) => Math.abs(length - 50.8) < WRITTEN)).toBe(true);
  });

  it('draws a circle and an arc as wide as they are', async () => {
    const { curves } = await written(handMadeSheet());
    const centre = [ORIGIN[0] + 80, ORIGIN[1]] as const;
    const distances = curves.map((points) =>
      points.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1])),
    );
    const onCircle = (radius: number) =>
      curves.filter((_, i) => distances[i].every((one) => Math.abs(one - radius) < WRITTEN));
    expect(onCircle(25.4)).toHaveLength(1);
    expect(widthOf(onCircle(25.4)[0])).toBeCloseTo(50.8, 2);
    // From 100 degrees on over zero to 10.
    const [arc] = onCircle(10);
    const angles = [arc[0], arc[arc.length - 1]].map(
      ([x, y]) => (Math.atan2(y - centre[1], x - centre[0]) * 180) / Math.PI,
    );
    expect(angles).toEqual([expect.closeTo(100, 1), expect.closeTo(10, 1)]);
    expect(arc.some(([x, y]) => x < centre[0] && y < centre[1])).toBe(true);
  });

  it('keeps diameter, plus-minus, degree, micro and Greek signs as text that can be found and copied', async () => {
    const { texts, fonts } = await written(handMadeSheet());
    // The face has one glyph for the micro sign and Greek mu, which Unicode calls compatible.
    const found = texts.map(({ text }) => text.replace('\u03bc', '\u00b5'));
    expect(found).toContain('\u00d825.4 \u00b10.1');
    expect(found).toContain('Ra 3.2 \u00b5m, 30\u00b0, \u03a9 \u03b1 \u2212 \u00d7 \u2026');
    expect(found).toContain('100 %%c ^I end');
    expect(fonts).toEqual(['LiberationSans']);
  });

  it('has a question mark for a sign that the face lacks, and the letter that looks like it for the diameter sign', async () => {
    const entities = handMadeSheet().entities.map((one) =>
      one.shape === 'text' ? { ...one, text: '\u23005 \u6771 M\u0075\u0308ller' } : one,
    );
    const { texts } = await written(handMadeSheet({ entities }));
    expect(texts.map(({ text }) => text)).toContain('\u00d85 ? M\u00fcller');
  });

  // Metrics that Helvetica and the faces of its width share (from memory): a digit 0.556 em wide, a capital 1409/2048 em
  // high. Letters of 2.5 mm are 3.634 mm to the em, ten digits 20.20 mm.
  it('has its letters as high, and so as wide, as the drawing asks', async () => {
    const entities = handMadeSheet().entities.map((one) =>
      one.shape === 'text' && one.anchor === 'end' ? { ...one, text: '0123456789' } : one,
    );
    const { texts } = await written(handMadeSheet({ entities }));
    const ten = texts.find(({ text }) => text === '0123456789');
    expect(ten?.width).toBeCloseTo((5.56 * 2.5 * 2048) / 1409, 1);
  });

  it('turns a text that is read from the right and sets its middle where the drawing has it', async () => {
    const { texts } = await written(handMadeSheet());
    const turned = texts.find(({ text }) => text.startsWith('\u00d825.4'));
    expect(turned?.turnDeg).toBeCloseTo(90, 6);
    expect(turned?.x).toBeCloseTo(ORIGIN[0] - 11, 2);
    expect((turned?.y ?? 0) + (turned?.width ?? 0) / 2).toBeCloseTo(ORIGIN[1], 1);
    const end = texts.find(({ text }) => text.startsWith('100'));
    expect((end?.x ?? 0) + (end?.width ?? 0)).toBeCloseTo(150, 1);
  });
});

describe('the PDF of a real part', () => {
  it('measures 25.4 mm at the scale that it names, and says 25.4 or 1 as asked', async () => {
    for (const unit of ['mm', 'in'] as LengthUnit[]) {
      const sheet = inchWasherSheet(unit);
      const { curves, lines, texts } = await written(sheet);
      const { factor, name } = sheet.scale;
      const widths = curves.map((points) => widthOf(points) / factor);
      expect(widths.some((width) => Math.abs(width - 25.4) < WRITTEN)).toBe(true);
      expect(widths.some((width) => Math.abs(width - 12.7) < WRITTEN)).toBe(true);
      expect(lines.some(({ length }) => Math.abs(length - 50) < WRITTEN)).toBe(true);
      const words = texts.map(({ text }) => text);
      expect(words).toContain(name);
      const outer = words.find(
        (text) => text.startsWith('\u00d8') && /^\u00d8(25\.4|1(\.0+)?)(\s|$)/.test(text),
      );
      expect(outer, words.join('; ')).toMatch(unit === 'mm' ? /^\u00d825\.4/ : /^\u00d81/);
    }
  });
});

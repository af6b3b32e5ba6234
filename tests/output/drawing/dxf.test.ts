import Parser, {
  type IArcEntity,
  type ICircleEntity,
  type IDxf,
  type IEntity,
  type ILineEntity,
  type ITextEntity,
} from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { sheetDxf } from '../../../src/output/drawing/sheetDxf';
import type { LengthUnit } from '../../../src/output/drawing/sheetTypes';
import { handMadeSheet } from './handMadeSheet';
import { inchWasherSheet } from './inchWasher';

/** Coordinates are written to a millionth of a millimetre; a length is the difference of two. */
const WRITTEN = 2e-6;

/** Through bytes, as a file goes, by a parser that has nothing to do with the writer. */
function read(text: string): IDxf {
  const bytes = new TextEncoder().encode(text);
  const parsed = new Parser().parseSync(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  if (!parsed) throw new Error('read(): the parser took nothing');
  return parsed;
}

async function written(change: Parameters<typeof handMadeSheet>[0] = {}): Promise<IDxf> {
  return read(await sheetDxf(handMadeSheet(change)));
}

function ofType<T extends IEntity>(dxf: IDxf, type: string, layer?: string): T[] {
  return dxf.entities.filter(
    (one) => one.type === type && (layer === undefined || one.layer === layer),
  ) as T[];
}

function extents(lines: readonly ILineEntity[]) {
  const points = lines.flatMap((line) => line.vertices);
  const across = (key: 'x' | 'y') => points.map((point) => point[key]);
  return {
    x: [Math.min(...across('x')), Math.max(...across('x'))],
    y: [Math.min(...across('y')), Math.max(...across('y'))],
  };
}

describe('a drawing as DXF, read by another program', () => {
  it('says in its header that it is in millimetres, also where the dimensions are in inches', async () => {
    for (const unit of ['mm', 'in'] as const) {
      const { header } = await written({ unit });
      // Published codes of the format: INSUNITS 4 is millimetres, MEASUREMENT 1 metric, AC1021 is R2007 (from memory).
      expect(header).toMatchObject({ $INSUNITS: 4, $MEASUREMENT: 1, $ACADVER: 'AC1021' });
    }
  });

  it('has the part in its own size whatever the scale: 25.4 mm by 6.35 mm, the left end of its axis at the zero point', async () => {
    for (const unit of ['mm', 'in'] as const) {
      const dxf = await written({ unit });
      const { x, y } = extents(ofType<ILineEntity>(dxf, 'LINE', 'VISIBLE'));
      expect(Math.abs(x[0])).toBeLessThan(WRITTEN);
      expect(Math.abs(x[1] - 6.35)).toBeLessThan(WRITTEN);
      expect(Math.abs(y[1] - y[0] - 25.4)).toBeLessThan(WRITTEN);
      expect(Math.abs(y[1] + y[0])).toBeLessThan(WRITTEN);
    }
  });

  it('has circles and arcs as such, an arc over the zero angle too', async () => {
    const dxf = await written();
    const [circle] = ofType<ICircleEntity>(dxf, 'CIRCLE', 'VISIBLE');
    expect(2 * circle.radius).toBeCloseTo(25.4, 6);
    expect(circle.center.x).toBeCloseTo(40, 6);
    const [arc] = ofType<IArcEntity>(dxf, 'ARC', 'THREAD');
    expect(arc.radius).toBeCloseTo(5, 6);
    // The parser gives radians; three quarters of a turn, on from 100 degrees.
    expect((arc.startAngle * 180) / Math.PI).toBeCloseTo(100, 6);
    const sweep = ((arc.endAngle - arc.startAngle) * 180) / Math.PI;
    expect(((sweep % 360) + 360) % 360).toBeCloseTo(270, 6);
  });

  it('has named layers, the centre line in long dashes and dots of 24 and half a line width, 3 widths apart', async () => {
    const { tables } = await written();
    const { layers } = tables.layer;
    expect(Object.keys(layers)).toEqual(
      expect.arrayContaining(['VISIBLE', 'CENTRE', 'THREAD', 'HATCHING', 'DIMENSIONS', 'TEXT']),
    );
    // ISO 128-2, type 04, for lines of 0.25 mm; the part is shown twice as large, so half of that here.
    const type = tables.lineType.lineTypes.ISO_04_LONG_DASH_DOT;
    const paper = [24 * 0.25, -3 * 0.25, 0.5 * 0.25, -3 * 0.25];
    expect(type.pattern.map(Number)).toEqual(paper.map((length) => length / 2));
  });

  it('gives the widths of the lines to the layers: wide to thin as 2 to 1 (ISO 128-2)', async () => {
    // The parser leaves group 370 (hundredths of a millimetre) out: read from the pairs of lines that the format is.
    const lines = (await sheetDxf(handMadeSheet())).split('\n');
    const records = lines
      .flatMap((code, i) => (i % 2 === 0 ? [`${code} ${lines[i + 1]}`] : []))
      .join('\n')
      .split(/^0 /m);
    const widthOf = (layer: string) => {
      const record = records.find(
        (one) => one.startsWith('LAYER\n') && one.includes(`\n2 ${layer}\n`),
      );
      return Number(/^370 (\d+)$/m.exec(record ?? '')?.[1]);
    };
    expect(widthOf('VISIBLE')).toBe(50);
    expect(widthOf('CENTRE')).toBe(25);
  });

  it('keeps diameter, plus-minus, degree, micro and Greek signs, and turns a text that is read from the right', async () => {
    const texts = ofType<ITextEntity>(await written(), 'TEXT');
    const size = texts.find(({ text }) => text === '\u00d825.4 \u00b10.1');
    expect(size).toMatchObject({ rotation: 90, layer: 'DIMENSIONS' });
    expect(size?.textHeight).toBeCloseTo(1.25, 6);
    expect(texts.map(({ text }) => text)).toContain(
      'Ra 3.2 \u00b5m, 30\u00b0, \u03a9 \u03b1 \u2212 \u00d7 \u2026',
    );
  });

  it('has no codes where a name has per cent signs, a caret or a line end', async () => {
    const texts = ofType<ITextEntity>(await written(), 'TEXT').map(({ text }) => text);
    // Three per cent signs are one, and a caret before a space is one (the format's description, from memory).
    expect(texts).toContain('100 %%%%%%c ^ I end');
  });

  it('has no bar that would measure something else than it says, and tells its scale in words', async () => {
    const text = await written();
    expect(ofType<ILineEntity>(text, 'LINE', 'CHECK')).toEqual([]);
    const texts = ofType<ITextEntity>(text, 'TEXT').map((one) => one.text);
    expect(texts.filter((one) => one.startsWith('Drawn 1:1 in mm'))).toHaveLength(1);
  });
});

describe('the DXF of a real part', () => {
  it('measures 25.4 mm, 12.7 mm and 3.175 mm, inches asked for and not', async () => {
    for (const unit of ['mm', 'in'] as LengthUnit[]) {
      const sheet = inchWasherSheet(unit);
      const dxf = read(await sheetDxf(sheet));
      const circles = ofType<ICircleEntity>(dxf, 'CIRCLE', 'VISIBLE').map(
        ({ radius }) => 2 * radius,
      );
      expect(circles.toSorted((a, b) => a - b)).toEqual([
        expect.closeTo(12.7, 5),
        expect.closeTo(25.4, 5),
      ]);
      const main = ofType<ILineEntity>(dxf, 'LINE', 'VISIBLE').filter(({ vertices }) =>
        vertices.every(({ x }) => x > -1e-5 && x < 3.175 + 1e-5),
      );
      const { x, y } = extents(main);
      expect(x[1] - x[0]).toBeCloseTo(3.175, 5);
      expect(y[1] - y[0]).toBeCloseTo(25.4, 5);
    }
  });
});

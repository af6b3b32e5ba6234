import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { keepAsTryOut } from '../../../src/design/tryOuts';
import type { ReportModel, TableBlock } from '../../../src/output/report/model';
import { MOST_PAGES, PAPERS, paginate } from '../../../src/output/report/pdf/reportPdf';
import { reportModel } from '../../../src/output/report/reportModel';
import { demoDesign, inputsOf, pdfOf } from './demoReport';
import { type FoundPdf, type FoundText, readPdf } from './pdfText';

const DEMOS = ['1-bare-grip', '2-long-bolt', '3-ordinary-bolt', '4-turned-nut', '5-both-sides'];

/** A grey pixel, as a picture of the stage. */
const PIXEL =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==';
const PICTURE = { dataUrl: PIXEL, width: 1600, height: 1000 };

/** The fullest report: every section, a picture, two try-outs. */
function full(design: Design): ReportModel {
  const kept = keepAsTryOut(demoDesign('3-ordinary-bolt'), 'Now');
  const both = { ...design, tryOuts: kept.tryOuts ?? [] };
  return reportModel(inputsOf(both, { picture: PICTURE }));
}

async function pdfOfReport(report: ReportModel, paper: keyof typeof PAPERS): Promise<FoundPdf> {
  return readPdf(pdfOf(report, PAPERS[paper]).bytes);
}

/** All text of a page in reading order, blanks of any kind as one. */
function said(found: FoundPdf, page?: number): string {
  return found.texts
    .filter((one) => page === undefined || one.page === page)
    .map(({ text }) => text)
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ');
}

function tablesOf(report: ReportModel): TableBlock[] {
  return report.sections
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) =>
      block.kind === 'table' ? [block] : block.kind === 'beside' ? [block.table] : [],
    );
}

/** How far two texts' boxes cover each other, as a share of the smaller; boxes reach from the baseline to the capitals. */
function overlap(a: FoundText, b: FoundText): number {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y, b.y) - Math.max(a.y - 0.7 * a.size, b.y - 0.7 * b.size);
  if (across <= 0 || down <= 0) return 0;
  const area = Math.min(a.width * a.size, b.width * b.size) * 0.7;
  return (across * down) / area;
}

describe.each(DEMOS)('the PDF of the fullest report on %s', (file) => {
  const report = full(demoDesign(file));

  it.each(['A4', 'Letter'] as const)(
    'has one to three sheets of %s, with a bar of 50 mm on each',
    async (paper) => {
      const found = await pdfOfReport(report, paper);
      const { widthMm, heightMm } = PAPERS[paper];
      expect(found.pages.length).toBeGreaterThanOrEqual(1);
      expect(found.pages.length).toBeLessThanOrEqual(MOST_PAGES);
      found.pages.forEach((page, i) => {
        // Points are written to a hundredth or so.
        expect(Math.abs(page.widthMm - widthMm)).toBeLessThan(0.01);
        expect(Math.abs(page.heightMm - heightMm)).toBeLessThan(0.01);
        const bars = found.lines.filter(
          (line) => line.page === i + 1 && line.y > heightMm - 10 && line.length > 20,
        );
        expect(bars).toHaveLength(1);
        expect(Math.abs(bars[0].length - 50)).toBeLessThan(0.01);
        expect(said(found, i + 1)).toContain(`Page ${i + 1} of ${found.pages.length}`);
      });
    },
  );

  it('keeps every text inside the margins and off every other text', async () => {
    const found = await pdfOfReport(report, 'A4');
    for (const { x, y, width } of found.texts) {
      expect(x).toBeGreaterThan(13.9);
      expect(x + width).toBeLessThan(210 - 13.9);
      expect(y).toBeGreaterThan(10);
      expect(y).toBeLessThan(297 - 6);
    }
    for (let page = 1; page <= found.pages.length; page++) {
      const texts = found.texts.filter((one) => one.page === page);
      const touching = texts.flatMap((a, i) =>
        texts
          .slice(i + 1)
          .filter((b) => overlap(a, b) > 0.1)
          .map((b) => `${a.text} | ${b.text}`),
      );
      expect(touching).toEqual([]);
    }
  });

  it('cuts no table: its rows stand on one sheet, under their heading', async () => {
    const found = await pdfOfReport(report, 'Letter');
    const texts = Array.from(found.pages, (_, i) => said(found, i + 1));
    const plain = (text: string) =>
      text.replace(/([A-Z])_([a-z]+)/g, '$1 $2').replace(/[\s\u00a0]+/g, ' ');
    for (const table of tablesOf(report)) {
      // A caption may be a part's name: with the first column's title it stands in one place only.
      const start = plain(`${table.caption} ${table.columns[0].title}`);
      const at = texts.findIndex((text) => text.includes(start));
      expect(at, table.caption).toBeGreaterThanOrEqual(0);
      for (const [first] of table.rows) {
        // A long cell is broken in the middle: its first words are enough.
        const begins = plain(first).split(' ').slice(0, 2).join(' ');
        expect(texts[at].includes(begins), `${table.caption}: ${first}`).toBe(true);
      }
    }
  });
});

describe('a head far larger than the demo', () => {
  it('is told in three sheets: the small parts in one line, which keeps the sum right', async () => {
    const demo = demoDesign('4-turned-nut');
    const washer = demo.parts.find(({ kind }) => kind === 'washer');
    if (!washer) throw new Error('the demo has no washer');
    const copies = Array.from({ length: 120 }, (_, i) => ({
      ...washer,
      id: `copy-${i}`,
      name: `A washer with rather a long name, number ${i}`,
      hidden: i % 3 === 0,
    }));
    const report = reportModel(
      inputsOf({ ...demo, parts: [...demo.parts, ...copies] }, { picture: PICTURE }),
    );
    const table = tablesOf(report).find(({ sum }) => sum === true);
    if (!table) throw new Error('no table of parts');
    expect(table.rows.length).toBeLessThan(40);
    const masses = table.rows
      .filter(([name]) => !/not in the sum|left out/.test(name))
      .map((row) => Number.parseFloat(row[2]));
    const added = masses.slice(0, -1).reduce((a, b) => a + b, 0);
    // Each line is rounded to 0.01 g.
    expect(Math.abs(added - masses[masses.length - 1])).toBeLessThan(0.005 * masses.length);
    const found = await pdfOfReport(report, 'Letter');
    expect(found.pages.length).toBeLessThanOrEqual(MOST_PAGES);
  });
});

describe('the text of the PDF', () => {
  it('comes out with its signs: plus-minus, minus, degree, squared, index, Greek and not-equal', async () => {
    const report = reportModel(
      inputsOf({
        ...demoDesign('4-turned-nut'),
        name: 'Nut \u00d88 \u00b10.1, \u03c3 \u03bc \u0394 \u2260 \u2264',
      }),
    );
    const found = await pdfOfReport(report, 'A4');
    const text = said(found);
    expect(text).toContain('Nut \u00d88 \u00b10.1, \u03c3 \u03bc \u0394 \u2260 \u2264');
    expect(text).toContain('\u00b120\u00b0');
    expect(text).toContain('\u221221.9 g mm\u00b2');
    expect(text).toMatch(/J yy \u2212 J zz/);
    const [lead] = report.sections[0].blocks;
    expect(text).toContain(lead.kind === 'text' ? lead.text.replace(/\u00a0/g, ' ') : '-');
  });

  it('breaks a value that is wider than its column before its unit, not in it', async () => {
    const report: ReportModel = {
      title: { design: 'A', kind: 'B', fields: [], note: null, foot: 'C' },
      sections: [
        {
          id: 'figures',
          title: 'D',
          blocks: [
            {
              kind: 'table',
              caption: 'E',
              columns: [
                { title: 'F', align: 'left', share: 9 },
                { title: 'G', align: 'right', share: 1 },
              ],
              rows: [['H', '\u22121234567\u00a0ozf\u00a0in']],
            },
          ],
        },
      ],
    };
    const found = await pdfOfReport(report, 'A4');
    const pieces = found.texts.map(({ text }) => text.replace(/\u00a0/g, ' '));
    // The column is 18 mm wide: the number with its unit is wider, each alone is not.
    expect(pieces).toContain('\u22121234567');
    expect(pieces.some((text) => text.endsWith('in'))).toBe(true);
    expect(pieces).not.toContain('n');
  });

  it('has the diameter sign of drawings as the letter that looks like it, and a question mark for what the font lacks', async () => {
    const report = reportModel(
      inputsOf({ ...demoDesign('1-bare-grip'), name: '\u2300 8 \u4e2d' }, { sections: new Set() }),
    );
    const found = await pdfOfReport(report, 'A4');
    expect(said(found)).toContain('\u00d8 8 ?');
    expect(found.pages).toHaveLength(1);
  });

  it('has the picture of the stage once, and no empty box where there is none', async () => {
    const design = demoDesign('4-turned-nut');
    const withOne = await pdfOfReport(reportModel(inputsOf(design, { picture: PICTURE })), 'A4');
    expect(withOne.images).toBe(1);
    const without = await pdfOfReport(reportModel(inputsOf(design)), 'A4');
    expect(without.images).toBe(0);
    expect(said(without)).not.toContain('The head on the stage');
    expect(said(withOne)).toContain('The head on the stage');
  });

  it('breaks a long link, loses no letter of it, and opens it where it is pressed', async () => {
    const address = `https://example.org/#d=${'aB3-_'.repeat(120)}`;
    const report = reportModel(
      inputsOf(demoDesign('1-bare-grip'), {
        link: { length: address.length, address },
        sections: new Set(['source']),
      }),
    );
    const found = await pdfOfReport(report, 'A4');
    expect(said(found).replace(/ /g, '')).toContain(address);
    expect(found.links).toEqual([address]);
  });

  it('says how long a link would be that is too long for paper', async () => {
    const address = `https://example.org/#d=${'a'.repeat(5000)}`;
    const report = reportModel(
      inputsOf(demoDesign('1-bare-grip'), {
        link: { length: address.length, address },
        sections: new Set(['source']),
      }),
    );
    const found = await pdfOfReport(report, 'A4');
    // 23 letters before 5000.
    expect(said(found)).toContain('it would have 5023 characters, and here it may have 4000');
    expect(found.links).toEqual([]);
  });
});

describe('pieces to sheets', () => {
  const piece = (height: number, keepWithNext = false) => ({ height, keepWithNext });

  it('takes a heading over with what follows it, and never cuts a piece', () => {
    const pieces = [piece(60), piece(10, true), piece(35), piece(40)];
    const pages = paginate(pieces, 100);
    expect(pages).toEqual([[pieces[0]], [pieces[1], pieces[2], pieces[3]]]);
  });

  it('fills a sheet to its last millimetre', () => {
    expect(paginate([piece(50), piece(50), piece(1)], 100).map((page) => page.length)).toEqual([
      2, 1,
    ]);
  });
});

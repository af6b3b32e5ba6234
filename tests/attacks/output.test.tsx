import { WebIO } from '@gltf-transform/core';
import DxfReader, { type ITextEntity } from 'dxf-parser';
import { unzipSync } from 'fflate';
import { renderToStaticMarkup } from 'react-dom/server';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { DESIGN_FORMAT, type Design, type Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { curveCsv } from '../../src/output/data/curveCsv';
import { figureSvg } from '../../src/output/data/figureSvg';
import { partsCsv } from '../../src/output/data/partsCsv';
import { drawSheet } from '../../src/output/drawing/drawSheet';
import { dxfText, sheetDxf } from '../../src/output/drawing/sheetDxf';
import { sheetSvg } from '../../src/output/drawing/sheetSvg';
import { FIRST_PICTURE, sheetOf } from '../../src/output/files/pictureChoice';
import { PAPERS } from '../../src/output/report/pdf/reportPdf';
import { ReportPages } from '../../src/output/report/ReportPages';
import { reportModel } from '../../src/output/report/reportModel';
import { glbFile } from '../../src/output/solids/glbFile';
import { describedStep, stepString } from '../../src/output/solids/stepText';
import { threeMfFile } from '../../src/output/solids/threeMfFile';
import { createSession } from '../../src/state/createSession';
import { METRIC_UNITS } from '../../src/state/settings';
import { EMPTY_DESIGN } from '../../src/state/store';
import { fileStem } from '../../src/ui/fileStem';
import { readCsv } from '../output/data/readCsv';
import { inputsOf, pdfOf } from '../output/report/demoReport';
import { readPdf } from '../output/report/pdfText';
import { bodyOf } from '../output/solids/heads';
import { PAYLOADS } from './payloads';

/** A head with one small weight for each name, called by all of them in its own name and note. */
function headNamed(names: readonly string[]): Design {
  const parts = names.map((name, k) => ({
    id: `bar${k}`,
    kind: 'weight',
    name,
    pose: { positionMm: [20 + k / 10, 0, 0], rotationDeg: [0, 0, 0] },
    lengthMm: 20,
    diameterMm: 10,
    boreMm: 0,
    stalkDiameterMm: 3,
    stalkLengthMm: 0,
    densityKgM3: 7850,
  })) as unknown as Part[];
  return { ...EMPTY_DESIGN, name: names[0], note: names.join(' ').slice(0, 4000), parts };
}

const HEAD = headNamed(PAYLOADS);
const { live } = createSession(HEAD, (callback) => callback());
live.flush();
const { reading } = live;

/** What an XML 1.0 file can hold of a text, with its blanks as one (they may be folded where it is shown). */
function xmlHolds(text: string): string {
  return text.replace(/[^\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '');
}

interface Xml {
  readonly kinds: ReadonlySet<string>;
  readonly attributes: Map<string, string[]>;
  /** One for each element that holds text, blanks left out. */
  readonly texts: readonly string[];
}

/** A strict XML reader: throws where it is not well formed. */
function readXml(xml: string): Xml {
  const kinds = new Set<string>();
  const attributes = new Map<string, string[]>();
  const texts: string[] = [];
  const open: string[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    kinds.add(`${tag.name}(${Object.keys(tag.attributes).join()})`);
    for (const [key, value] of Object.entries(tag.attributes)) {
      const at = `${tag.name}.${key}`;
      attributes.set(at, [...(attributes.get(at) ?? []), value as string]);
    }
    open.push('');
  });
  parser.on('text', (piece) => {
    if (open.length > 0) open.push(`${open.pop()}${piece}`);
  });
  parser.on('closetag', () => texts.push(open.pop() ?? ''));
  // As bytes of UTF-8, as a file goes.
  parser.write(new TextDecoder().decode(new TextEncoder().encode(xml))).close();
  return { kinds, attributes, texts };
}

const tight = (text: string) => xmlHolds(text).replace(/\s/g, '');

const CHOICE = {
  format: 'A4 landscape',
  projection: 'first',
  unit: 'mm',
  date: '2026-03-01',
} as const;

type Sheet = Extract<ReturnType<typeof drawSheet>, { ok: true }>['value'];
const drawnSheets = new Map<string, Sheet>();

/** Each is drawn once, for SVG and for DXF. */
function sheetNamed(name: string): Sheet {
  const known = drawnSheets.get(name);
  if (known) return known;
  const design = headNamed([name]);
  const drawn = drawSheet(design, design.parts[0], CHOICE);
  if (!drawn.ok) throw new Error(drawn.error);
  drawnSheets.set(name, drawn.value);
  return drawn.value;
}

describe('the hostile names', () => {
  it('are two hundred, each once, and every one of them is a name that a design may have', () => {
    expect(new Set(PAYLOADS).size).toBe(PAYLOADS.length);
    expect(PAYLOADS.length).toBeGreaterThanOrEqual(200);
    const again = parseDesign(serializeDesign(HEAD));
    expect(again).toEqual({ ok: true, value: HEAD });
    expect(HEAD.format).toBe(DESIGN_FORMAT);
  });
});

describe('two hundred hostile names', () => {
  it('are text in drawings as SVG, with not one element or attribute that a plain name does not have', () => {
    const plain = readXml(sheetSvg(sheetNamed('Bar'))).kinds;
    expect(plain.size).toBeGreaterThan(3);
    for (const name of PAYLOADS) {
      const { kinds, texts } = readXml(sheetSvg(sheetNamed(name)));
      for (const kind of kinds) expect(plain, name).toContain(kind);
      const whole = texts.map(tight).join('\n');
      // A long name is cut short in its field, never in the title.
      expect(whole, name).toContain(tight(name).slice(0, 8));
    }
  });

  it('are text in drawings as DXF: another program finds one end, only known entities, the name in its texts', async () => {
    const read = (text: string) => new DxfReader().parseSync(text);
    const known = new Set(
      read(await sheetDxf(sheetNamed('Bar')))?.entities.map(({ type }) => type),
    );
    for (const name of PAYLOADS) {
      const file = await sheetDxf(sheetNamed(name));
      const lines = file.split(/\r\n|[\n\r\u2028\u2029\u0085]/);
      expect(
        lines.filter((line, k) => k % 2 === 1 && line.trim() === 'EOF'),
        name,
      ).toHaveLength(1);
      const entities = read(file)?.entities ?? [];
      for (const { type } of entities) expect(known, name).toContain(type);
      const texts = entities.filter((one): one is ITextEntity => one.type === 'TEXT');
      const start = dxfText(name).trim().slice(0, 8).trim();
      expect(
        texts.some(({ text }) => text.includes(start)),
        name,
      ).toBe(true);
    }
  });

  it('are text in figures as SVG and in the report that is printed', () => {
    const head = { reading, design: HEAD, pitchDeg: 5 };
    for (const which of ['dial', 'chart'] as const) {
      const figure = sheetOf(head, METRIC_UNITS, { ...FIRST_PICTURE, which });
      if (!figure) throw new Error('no figure');
      const { kinds, texts } = readXml(figureSvg(figure, HEAD.name, 100));
      for (const kind of kinds) expect(kind).toMatch(/^(svg|title|desc|text|path)\(/);
      expect(texts).toContain(HEAD.name);
    }
    const allowed = (design: Design) =>
      // What XML cannot hold HTML can: left out, so that the strict reader may judge the rest.
      readXml(
        xmlHolds(
          renderToStaticMarkup(<ReportPages report={reportModel(inputsOf(design))} scale={1} />),
        ),
      );
    const plain = allowed(headNamed(PAYLOADS.map((_, k) => `Bar ${k}`))).kinds;
    const { kinds, texts } = allowed(HEAD);
    for (const kind of kinds) expect(plain).toContain(kind);
    const cells = new Set(texts.map(tight));
    // A long list of parts is cut short and the rest counted.
    const shown = PAYLOADS.filter((name) => tight(name) !== '' && cells.has(tight(name)));
    expect(shown.length).toBeGreaterThan(15);
  });

  it('are text in the report as PDF, read back by another program', async () => {
    const { bytes } = pdfOf(reportModel(inputsOf(HEAD)), PAPERS.A4);
    const found = await readPdf(bytes);
    expect(found.pages.length).toBeGreaterThan(1);
    const whole = found.texts
      .map(({ text }) => text)
      .join('')
      .replace(/\s/g, '');
    expect(whole).toContain('onerror=window.brokenInto=1');
    expect(found.links.filter((link) => /other\.example|javascript/i.test(link))).toEqual([]);
  });

  it('are one cell and no formula in tables, as a strict reader of RFC 4180 finds them', () => {
    const { above, rows } = readCsv(partsCsv(reading, HEAD));
    const names = rows.slice(0, -1).map(([name]) => name);
    expect(names.length).toBe(PAYLOADS.length);
    for (const name of names)
      expect(name).not.toMatch(/^[\s\p{Cc}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u);
    const order = reading.order.map((id) => reading.part(id)?.part.name ?? '');
    expect(names.map((name, k) => (name === order[k] ? name : name.slice(1)))).toEqual(order);
    for (const line of above) expect(line).not.toMatch(/[\r\n]/);
    const curve = readCsv(curveCsv(reading, HEAD, 5));
    for (const cell of curve.header) expect(cell).not.toMatch(/^[\s\p{Cc}]*[=+\-@]/u);
  });

  it('are the names of objects in 3MF and of nodes in GLB, by readers of XML and of glTF', async () => {
    const cube = bodyOf('block', { sizeMm: [1, 1, 1] });
    const bodies = PAYLOADS.map((name) => ({ ...cube, name, material: name }));
    const bytes = threeMfFile(bodies, {
      title: PAYLOADS[0],
      description: PAYLOADS.join(' '),
      unit: 'mm',
      segmentsPerTurn: 12,
      date: '2026-03-01',
      design: serializeDesign(HEAD),
    });
    const model = new TextDecoder().decode(unzipSync(bytes)['3D/3dmodel.model']);
    const { kinds, attributes } = readXml(model);
    expect([...kinds].filter((kind) => /script|svg|img|ENTITY/i.test(kind))).toEqual([]);
    const held = (name: string) => xmlHolds(name);
    expect(attributes.get('object.name')?.slice(0, PAYLOADS.length)).toEqual(PAYLOADS.map(held));
    expect(Object.keys(unzipSync(bytes))).toHaveLength(4);

    const document = await new WebIO().readBinary(glbFile(bodies, PAYLOADS[0], 12));
    const nodes = document
      .getRoot()
      .listNodes()
      .map((node) => node.getName());
    expect(nodes).toEqual(expect.arrayContaining([...PAYLOADS]));
  });

  it('are strings in STEP, read letter by letter after ISO 10303-21, 6.4.3', () => {
    for (const name of PAYLOADS) {
      const written = stepString(name);
      expect(written).toMatch(/^'[ -~]*'$/);
      expect(stepText(written), name).toBe(name);
      const file = describedStep(
        "FILE_DESCRIPTION(('x'),'2;1');\nFILE_NAME('x','',(''),(''),'','','');",
        name,
        name,
      );
      expect(file.split(/;\n/)).toHaveLength(2);
    }
  });

  it('are file names that stay in their folder and that no system keeps for itself', () => {
    for (const name of PAYLOADS) {
      const stem = fileStem(name, 'head');
      expect(stem, name).toMatch(/^[\p{L}\p{N}]+(-[\p{L}\p{N}]+)*$/u);
      expect(stem).not.toMatch(/^(con|prn|aux|nul|com\d|lpt\d)$/);
      expect(stem.length).toBeLessThanOrEqual(60);
    }
  });
});

/** A string of ISO 10303-21: the quotes off, doubled signs once, \X2\ ... \X0\ as code units. */
function stepText(written: string): string {
  const inside = written.slice(1, -1);
  let text = '';
  for (let at = 0; at < inside.length; ) {
    if (inside.startsWith("''", at) || inside.startsWith('\\\\', at)) {
      text += inside[at];
      at += 2;
    } else if (inside.startsWith('\\X2\\', at)) {
      const end = inside.indexOf('\\X0\\', at);
      for (let k = at + 4; k < end; k += 4) {
        text += String.fromCharCode(Number.parseInt(inside.slice(k, k + 4), 16));
      }
      at = end + 4;
    } else {
      if (/['\\]/.test(inside[at])) throw new Error(`a bare ${inside[at]} in ${written}`);
      text += inside[at++];
    }
  }
  return text;
}

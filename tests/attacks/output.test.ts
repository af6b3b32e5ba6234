import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { csvFile } from '../../src/output/data/csv';
import { drawSheet } from '../../src/output/drawing/drawSheet';
import { sheetDxf } from '../../src/output/drawing/sheetDxf';
import { sheetSvg } from '../../src/output/drawing/sheetSvg';
import { EMPTY_DESIGN } from '../../src/state/store';

/** What breaks out where text is taken for markup, for a command or for a formula (OWASP's lists, from memory). */
const PAYLOADS = [
  '<script>alert(1)</script>',
  '</text><script>alert(1)</script><text>',
  '"><img src=x onerror=alert(1)>',
  "' onload='alert(1)",
  ']]><svg onload=alert(1)>',
  '<!--<script>',
  '<?xml-stylesheet href="x"?>',
  '<!DOCTYPE a [<!ENTITY b "c">]>&b;',
  '&lt;script&gt;&#60;script&#62;',
  '<foreignObject><iframe src=javascript:alert(1)>',
  'javascript:alert(1)',
  '</style><script>alert(1)</script>',
  '=HYPERLINK("https://other.example","x")',
  '+1+cmd',
  '@SUM(A1:A9)',
  '\t=1+1',
  'a\r\n0\r\nEOF\r\n',
  '%%EOF ) Tj ET (',
  '{\\fArial;x}\\P%%d\\U+003C',
  '\u0000\u0001\u001f\u007f',
  '\ud800',
  '\udfff\ud800',
  '\u202e\u2066right to left',
  '__proto__',
  '${alert(1)}{{7*7}}',
];

function headNamed(name: string): Design {
  const bar = {
    id: 'bar',
    kind: 'weight',
    name,
    pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
    lengthMm: 20,
    diameterMm: 10,
    boreMm: 0,
    stalkDiameterMm: 3,
    stalkLengthMm: 0,
    densityKgM3: 7850,
  } as unknown as Part;
  return { ...EMPTY_DESIGN, name, note: name, parts: [bar] };
}

const CHOICE = {
  format: 'A4 landscape',
  projection: 'first',
  unit: 'mm',
  date: '2026-03-01',
} as const;

function sheetNamed(name: string) {
  const design = headNamed(name);
  const sheet = drawSheet(design, design.parts[0], CHOICE);
  if (!sheet.ok) throw new Error(sheet.error);
  return sheet.value;
}

/** Elements and attributes that a strict XML reader finds. */
function skeleton(svg: string): string[] {
  const found: string[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) =>
    found.push(`${name}(${Object.keys(attributes).join()})`),
  );
  parser.write(new TextDecoder().decode(new TextEncoder().encode(svg))).close();
  return found;
}

const KINDS = (svg: string) => [...new Set(skeleton(svg))].toSorted();

describe('a hostile name', () => {
  it.each(PAYLOADS.map((name) => [JSON.stringify(name), name]))(
    'is text and no more in a drawing: %s',
    async (_shown, name) => {
      const plain = KINDS(sheetSvg(sheetNamed('Bar')));
      expect(plain.length).toBeGreaterThan(3);
      for (const kind of KINDS(sheetSvg(sheetNamed(name)))) expect(plain).toContain(kind);
      // DXF: lines of code and value in turn (group codes of the DXF reference): none more or less.
      const lines = (await sheetDxf(sheetNamed(name))).split(/\r?\n/);
      const ends = lines.filter((line, k) => k % 2 === 1 && line.trim() === 'EOF');
      expect(ends).toHaveLength(1);
      for (let k = 0; k + 1 < lines.length; k += 2) expect(lines[k].trim()).toMatch(/^-?\d+$/);
    },
  );

  it.each(PAYLOADS.map((name) => [JSON.stringify(name), name]))(
    'is one cell and no formula in a table: %s',
    (_shown, name) => {
      const text = csvFile([name], ['a', 'b'], [[name, 1]]);
      const rows = text.slice(1).split('\r\n');
      expect(rows[0].startsWith('# ')).toBe(true);
      expect(rows[1]).toBe('a,b');
      expect(text.endsWith(',1\r\n')).toBe(true);
      expect(rows[2]).not.toMatch(/^"?\s*[=+@-]/);
    },
  );
});

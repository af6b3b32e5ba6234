import fc from 'fast-check';
import { zipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { figureSvg, pictureSvg } from '../../../src/output/data/figureSvg';
import { withDensity } from '../../../src/output/data/pngSize';
import { carriedDesign, carriesDesign } from '../../../src/state/carried/carriedDesign';
import { pngWithDesign } from '../../../src/state/carried/pngDesign';
import { svgWithDesign } from '../../../src/state/carried/svgWithDesign';
import { DESIGN_PART } from '../../../src/state/carried/threeMfDesign';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { DEMOS, demo } from '../../output/solids/heads';
import { chunksOf, pixelPng } from '../../support/png';

const design = demo(DEMOS[2]);
const bytes = (text: string) => new TextEncoder().encode(text);

const figure = { width: 10, height: 10, alt: 'A picture', shapes: [] };
const picture = { dataUrl: 'data:image/png;base64,AAAA', width: 4, height: 4 };
const CARRIERS: readonly (readonly [string, (text: string) => Uint8Array])[] = [
  ['PNG', (text) => pngWithDesign(withDensity(pixelPng(), 3780), text)],
  ['SVG', (text) => bytes(svgWithDesign(figureSvg(figure, 'A <b> & "c"', 100), text))],
  ['SVG of pixels', (text) => bytes(svgWithDesign(pictureSvg(picture, 'x', 100), text))],
  ['3MF', (text) => zipSync({ [DESIGN_PART]: bytes(text) })],
];

describe.each(CARRIERS)('a design that rides in a %s file', (_kind, carry) => {
  it('comes out as it went in, every demo and any name', () => {
    for (const one of DEMOS.map(demo)) {
      expect(carriedDesign(carry(serializeDesign(one)))).toEqual({ ok: true, value: one });
    }
    const name = fc.string({ unit: 'binary', minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(name, name, (first, second) => {
        const named: Design = { ...EMPTY_DESIGN, name: first, note: second };
        const read = carriedDesign(carry(serializeDesign(named)));
        // Names that no design may have are refused as in a design file, not bent.
        if (read.ok) expect(read.value).toEqual(named);
        else expect(read.error.kind).toBe('design');
        return true;
      }),
      { seed: 9, numRuns: 100 },
    );
    const odd = { ...EMPTY_DESIGN, name: 'a\ud800\uffff\u0000\r\n]]>&lt;<\u2028\\u0041' };
    expect(carriedDesign(carry(serializeDesign(odd)))).toEqual({ ok: true, value: odd });
  });

  it('is refused for what a design file is refused for', () => {
    for (const text of [
      '{"format":"stillgrip-design","version":999}',
      '{"format":"other"}',
      serializeDesign(design).replace('"version"', '"__proto__": {"a": 1}, "version"'),
      '['.repeat(1_000_000),
      serializeDesign(design).replace(/"speedRpm": [\d.]+/, '"speedRpm": 1e308'),
      '',
    ]) {
      const asFile = parseDesign(text);
      if (asFile.ok) throw new Error('a sound design');
      const error = { kind: 'design', fault: asFile.error };
      expect(carriedDesign(carry(text))).toEqual({ ok: false, error });
    }
  });

  it('is not torn by a cut: the file is refused or the design is whole', () => {
    const whole = carry(serializeDesign({ ...EMPTY_DESIGN, name: 'Cut' }));
    for (let end = 0; end < whole.length; end += 1 + (end % 7)) {
      const read = carriedDesign(whole.subarray(0, end));
      if (read.ok) expect(read.value.name).toBe('Cut');
    }
  });
});

describe('a PNG with a design in it', () => {
  const whole = pngWithDesign(withDensity(pixelPng(), 3780), serializeDesign(design));

  it('is a sound PNG whose text any reader finds under its keyword', () => {
    const chunks = chunksOf(whole);
    expect(chunks.map(([type]) => type)).toEqual(['IHDR', 'iTXt', 'pHYs', 'IDAT', 'IEND']);
    const [keyword, ...rest] = new TextDecoder().decode(chunks[1][1]).split('\0');
    expect(keyword).toBe('stillgrip-design');
    expect(JSON.parse(rest.at(-1) as string).name).toBe(design.name);
  });

  it('with one bit turned in the design is refused, and one without a design says so', () => {
    const bent = whole.slice();
    bent[200] ^= 1;
    expect(carriedDesign(bent)).toEqual({ ok: false, error: { kind: 'unreadable' } });
    expect(carriedDesign(pixelPng())).toEqual({ ok: false, error: { kind: 'noDesign' } });
    const lying = whole.slice();
    lying[33] = 0xff;
    expect(carriedDesign(lying)).toEqual({ ok: false, error: { kind: 'unreadable' } });
  });
});

describe('an SVG with a design in it', () => {
  it('is XML whose metadata alone holds the design', () => {
    const svg = svgWithDesign(figureSvg(figure, 'T', 100), serializeDesign(design));
    const open: string[] = [];
    let text = '';
    const parser = new SaxesParser({ xmlns: true });
    parser.on('error', (error) => {
      throw error;
    });
    parser.on('opentag', ({ name }) => open.push(name));
    parser.on('text', (piece) => {
      if (open.at(-1) === 'design') text += piece;
    });
    parser.on('closetag', () => open.pop());
    parser.write(svg).close();
    expect(JSON.parse(text).name).toBe(design.name);
    expect(svg.replace(/\n<metadata>[^]*<\/metadata>/, '')).toBe(figureSvg(figure, 'T', 100));
  });

  it('may have been written anew by another program, with a prefix, in CDATA, or with references', () => {
    const text = serializeDesign({ ...EMPTY_DESIGN, name: 'A & B' });
    const escaped = text.replaceAll('&', '&#38;').replaceAll('"', '&#x22;');
    for (const inner of [
      `<s:design xmlns:s="urn:stillgrip:design">${escaped}</s:design>`,
      `<design xmlns="urn:stillgrip:design"><![CDATA[${text}]]></design>`,
    ]) {
      const svg = `<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"><g><metadata>${inner}</metadata></g></svg>`;
      expect(carriedDesign(bytes(svg))).toMatchObject({ ok: true, value: { name: 'A & B' } });
    }
  });

  it.each([
    ['<svg xmlns="http://www.w3.org/2000/svg"/>', 'noDesign'],
    ['<svg><design>{}</design><!-- urn:stillgrip:design --></svg>', 'noDesign'],
    ['<svg><x a="urn:stillgrip:design"', 'unreadable'],
    ['plain text', 'unreadable'],
    // Entities are never put in: a billion of them are one unknown word.
    [
      '<!DOCTYPE a [<!ENTITY b "c"><!ENTITY d "&b;&b;">]><svg><design xmlns="urn:stillgrip:design">&d;</design></svg>',
      'unreadable',
    ],
  ])('that is none is told apart: %s', (svg, kind) => {
    expect(carriedDesign(bytes(svg))).toEqual({ ok: false, error: { kind } });
  });
});

describe('a 3MF package', () => {
  it('is a design where one is in it, sound or not, and a body where none is', () => {
    expect(carriesDesign(zipSync({ [DESIGN_PART]: bytes('nonsense') }))).toBe(true);
    expect(carriesDesign(zipSync({ [DESIGN_PART]: new Uint8Array([0xff]) }))).toBe(true);
    expect(carriesDesign(zipSync({ 'a.txt': bytes('x') }))).toBe(false);
    expect(carriesDesign(bytes('PK nothing'))).toBe(false);
  });
});

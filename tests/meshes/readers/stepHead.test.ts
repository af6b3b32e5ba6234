import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { stepHeadFault } from '../../../src/meshes/readers/stepHead';

/** Letters as bytes, one each. */
function bytesOf(text: string): Uint8Array {
  return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
}
const faultOf = (text: string) => stepHeadFault(bytesOf(text));
const refused = (detail: string) => ({ kind: 'malformed', format: 'step', detail });

const CUT = refused('does not come to END-ISO-10303-21, as if cut short');
const NO_START = refused('does not begin with the mark ISO-10303-21 alone');
const MISSING = refused('lacks its header or its data');

// ISO 10303-21 clause 5 (from memory): ISO-10303-21; HEADER; ... ENDSEC; DATA; ... ENDSEC; END-ISO-10303-21;
const HEADER = "HEADER;FILE_NAME('a');ENDSEC;";
const DATA = 'DATA;#1=POINT((0.,1.));ENDSEC;';
const whole = (header = HEADER, data = DATA) => `ISO-10303-21;${header}${data}END-ISO-10303-21;`;

describe('the frame of a STEP file', () => {
  it('is whole in the two files that a CAD kernel wrote', () => {
    for (const name of ['block.step', 'pin.step']) {
      const bytes = readFileSync(new URL(`../${name}`, import.meta.url));
      expect(stepHeadFault(bytes)).toBeNull();
      // Cut anywhere before its last mark is closed it is none.
      const end = bytes.lastIndexOf('END-ISO-10303-21;') + 'END-ISO-10303-21;'.length;
      for (const size of [0, 1, 20, 100, end >> 1, end - 1]) {
        expect(stepHeadFault(bytes.subarray(0, size))).not.toBeNull();
      }
      expect(stepHeadFault(bytes.subarray(0, end))).toBeNull();
    }
  });

  it('may be spaced, commented, marked as UTF-8, and followed by anything', () => {
    expect(faultOf(whole())).toBeNull();
    expect(faultOf(whole().replaceAll(';', ' ;\r\n\t'))).toBeNull();
    expect(faultOf(`\xef\xbb\xbf${whole()}`)).toBeNull();
    expect(faultOf(`\xef\xbb${whole()}`)).toEqual(NO_START);
    expect(faultOf(`\xef${whole()}`)).toEqual(NO_START);
    expect(faultOf(`xxx${whole()}`)).toEqual(NO_START);
    for (const mark of ['x\xbb\xbf', '\xefx\xbf', '\xef\xbbx', 'xx\xbf', '\xefxx', 'x\xbbx'])
      expect(faultOf(`${mark}${whole()}`)).toEqual(NO_START);
    expect(faultOf(whole().replaceAll(';', ';/* a; b ( * / ** */'))).toBeNull();
    expect(faultOf(`/**/${whole()}/* open`)).toBeNull();
    expect(faultOf(`${whole()}\0'(`)).toBeNull();
    // A data section may have parameters (edition 3).
    expect(faultOf(whole(HEADER, "DATA('a',('b'));#1=P();ENDSEC;"))).toBeNull();
    expect(faultOf(whole(HEADER, DATA + DATA))).toBeNull();
  });

  it('has texts in which nothing counts but the quote that ends them', () => {
    for (const text of ["'a;b'", "'(('", "'it''s; ('", "''", "'/* '", "'))'"]) {
      expect(faultOf(whole(`HEADER;F(${text});ENDSEC;`))).toBeNull();
    }
    expect(faultOf(whole("HEADER;F('a);ENDSEC;"))).toEqual(
      refused('ends inside a text, as if cut short'),
    );
  });

  it('begins with its mark and has it once', () => {
    expect(faultOf(`${HEADER}${DATA}END-ISO-10303-21;`)).toEqual(NO_START);
    expect(faultOf(`ISO-10303-21;${whole()}`)).toEqual(NO_START);
    expect(faultOf(`ISO-10303-22;${HEADER}`)).toEqual(NO_START);
    expect(faultOf('ISO-10303-21')).toEqual(CUT);
    expect(faultOf('')).toEqual(CUT);
  });

  it('has a header and data', () => {
    expect(faultOf(whole(''))).toEqual(MISSING);
    expect(faultOf(whole(HEADER, ''))).toEqual(MISSING);
    expect(faultOf(whole(HEADER, 'DATABASE;ENDSEC;'))).toEqual(MISSING);
    expect(faultOf(whole(HEADER, 'XDATA;ENDSEC;'))).toEqual(MISSING);
    expect(faultOf(whole('HEADERS;ENDSEC;'))).toEqual(MISSING);
  });

  it('does not end inside a comment, and a slash or a star alone is none', () => {
    const open = refused('ends inside a comment, as if cut short');
    expect(faultOf(`ISO-10303-21;/* ${HEADER}`)).toEqual(open);
    expect(faultOf('ISO-10303-21;/*/')).toEqual(open);
    expect(faultOf('ISO-10303-21;/**')).toEqual(open);
    expect(faultOf(whole(HEADER, 'DATA;#1=A(1/2,*,$);ENDSEC;'))).toBeNull();
  });

  it('closes what it opens, and opens no more than a hundred', () => {
    const nested = (depth: number) => `DATA;#1=A${'('.repeat(depth)}${')'.repeat(depth)};ENDSEC;`;
    expect(faultOf(whole(HEADER, nested(100)))).toBeNull();
    expect(faultOf(whole(HEADER, nested(101)))).toEqual(
      refused('has brackets nested more than 100 deep'),
    );
    expect(faultOf(whole(HEADER, 'DATA;#1=A());ENDSEC;'))).toEqual(
      refused('closes a bracket that is not open'),
    );
    // A semicolon inside brackets ends nothing: the file goes on to its end and finds none.
    expect(faultOf(whole(HEADER, 'DATA;#1=A((;ENDSEC;'))).toEqual(CUT);
    // Each record may go as deep again.
    expect(faultOf(whole(HEADER, nested(100) + nested(100).slice(5)))).toBeNull();
  });

  it('is text', () => {
    const binary = refused('holds bytes that are no text');
    expect(faultOf(`ISO-10303-21;\0${HEADER}`)).toEqual(binary);
    expect(faultOf(`\x01${whole()}`)).toBeNull();
  });

  it('is known by the first letters of a statement, however long it is', () => {
    expect(faultOf(whole(HEADER, `DATA;#1=${'A'.repeat(1000)}();ENDSEC;`))).toBeNull();
    expect(faultOf(`ISO-10303-21${'x'.repeat(20)};${HEADER}`)).toEqual(NO_START);
    expect(faultOf(whole().replace('END-ISO-10303-21', 'END-ISO-10303-21x'))).toEqual(CUT);
  });
});

import { describe, expect, it } from 'vitest';
import { decodeText } from '../../../src/bench/readings/decodeText';
import { derive, preview, refusals } from './support';

const TEXT = 'Winkel [°];Kraft [N];Bemerkung\r\n-10;3,5;Führung läuft schwer\r\n10;4,25;±0\r\n';

/** Bytes of a text in each encoding, by Node's own encoder or by hand: not by the decoder under test. */
function utf16(text: string, bigEndian: boolean, mark: boolean): Uint8Array {
  const bytes = Buffer.from((mark ? '\ufeff' : '') + text, 'utf16le');
  return new Uint8Array(bigEndian ? bytes.swap16() : bytes);
}
const utf8 = new Uint8Array(Buffer.from(TEXT, 'utf8'));
/** Every letter of the text lies in Latin-1, where Windows-1252 is the same. */
const latin = new Uint8Array(Buffer.from(TEXT, 'latin1'));

describe('the bytes of a file', () => {
  it.each([
    ['UTF-8', utf8, 'utf-8'],
    ['UTF-8 with a byte order mark', new Uint8Array([0xef, 0xbb, 0xbf, ...utf8]), 'utf-8'],
    ['UTF-16, low byte first, with a mark', utf16(TEXT, false, true), 'utf-16le'],
    ['UTF-16, high byte first, with a mark', utf16(TEXT, true, true), 'utf-16be'],
    ['UTF-16, low byte first, without a mark', utf16(TEXT, false, false), 'utf-16le'],
    ['UTF-16, high byte first, without a mark', utf16(TEXT, true, false), 'utf-16be'],
    ['Windows-1252', latin, 'windows-1252'],
  ] as const)('are read as %s', (_, bytes, encoding) => {
    const { source } = preview(bytes);
    expect(source.encoding).toBe(encoding);
    expect(source.text).toBe(TEXT);
    const { readings } = derive(bytes);
    expect(readings.map(({ force }) => force)).toEqual([3.5, 4.25]);
    expect(readings.map(({ note }) => note)).toEqual(['Führung läuft schwer', '±0']);
  });

  it('with a euro sign and a dash where Windows-1252 differs from Latin-1 are those letters', () => {
    // 0x80 is the euro sign, 0x96 the en dash (WHATWG Encoding, index windows-1252).
    const decoded = decodeText(new Uint8Array([0x80, 0x96, 0x31]));
    expect(decoded.ok && decoded.value.text).toBe('\u20ac\u20131');
  });

  it.each([false, true])(
    'are UTF-16 without a mark also where a letter has a zero low byte',
    (big) => {
      // A with a macron is U+0100: Latvian for speed and force.
      const text = '\u0100trums;Sp\u0113ks [N]\r\n1;2\r\n';
      const read = decodeText(utf16(text, big, false));
      expect(read).toEqual({ ok: true, value: { text, encoding: big ? 'utf-16be' : 'utf-16le' } });
    },
  );

  it.each([
    ['no bytes at all', [], '-:- empty'],
    ['a zip, in which workbooks come', [0x50, 0x4b, 3, 4, 20, 0, 0, 0], '-:- workbook'],
    ['an old workbook', [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1], '-:- workbook'],
    ['a picture', [0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10, 0, 0, 0, 13], '-:- notText'],
    ['UTF-16 that ends in half a character', [0xff, 0xfe, 0x31, 0, 0x32], '-:- cutOff'],
  ] as const)('are refused where they are %s', (_, bytes, place) => {
    expect(refusals(new Uint8Array(bytes))).toEqual([place]);
  });
});

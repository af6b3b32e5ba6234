import { fail, type Result, succeed } from '../../engine/result';
import { type ReadingsFault, readingsFault } from './fault';

export type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';

export interface DecodedText {
  readonly text: string;
  readonly encoding: Encoding;
}

/** Bytes looked at where only their pattern tells. */
const LOOKED_AT = 4096;

/**
 * A file's bytes as text. A byte order mark decides; without one, zero bytes in every other place mean UTF-16, text that
 * is sound UTF-8 is UTF-8, and anything else Windows-1252 (WHATWG Encoding: every byte means something in it). A
 * workbook, which is a zip or a compound file, and bytes that are no text are refused. The mark is not part of the text.
 */
export function decodeText(bytes: Uint8Array): Result<DecodedText, ReadingsFault> {
  if (bytes.length === 0) return fail(readingsFault({ code: 'empty' }));
  if (isWorkbook(bytes)) return fail(readingsFault({ code: 'workbook' }));
  const encoding = encodingOf(bytes);
  if (encoding.startsWith('utf-16') && bytes.length % 2 === 1)
    return fail(readingsFault({ code: 'cutOff' }));
  const decoded = new TextDecoder(encoding).decode(bytes);
  const text = encoding === 'windows-1252' ? mendControls(decoded) : decoded;
  if (hasControls(text)) return fail(readingsFault({ code: 'notText' }));
  return succeed({ text, encoding });
}

/** Letters of the bytes 0x80 to 0x9f (WHATWG Encoding, index windows-1252); five of them have none. */
const HIGH_LETTERS =
  '\u20ac\u0081\u201a\u0192\u201e\u2026\u2020\u2021\u02c6\u2030\u0160\u2039\u0152\u008d\u017d\u008f' +
  '\u0090\u2018\u2019\u201c\u201d\u2022\u2013\u2014\u02dc\u2122\u0161\u203a\u0153\u009d\u017e\u0178';

/** Some decoders take Windows-1252 for Latin-1, where these bytes are controls; the others leave nothing to mend. */
function mendControls(text: string): string {
  return text.replace(/[\u0080-\u009f]/g, (letter) => HIGH_LETTERS[letter.charCodeAt(0) - 0x80]);
}

function encodingOf(bytes: Uint8Array): Encoding {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'utf-16be';
  const looked = bytes.subarray(0, LOOKED_AT);
  const zeros = [0, 0];
  for (const [k, byte] of looked.entries()) if (byte === 0) zeros[k % 2]++;
  const half = looked.length / 2;
  // Digits, delimiters and line ends have a zero for their high byte; few letters have one for their low byte.
  if (zeros[1] > 0.4 * half && 2 * zeros[0] < zeros[1]) return 'utf-16le';
  if (zeros[0] > 0.4 * half && 2 * zeros[1] < zeros[0]) return 'utf-16be';
  return isUtf8(bytes) ? 'utf-8' : 'windows-1252';
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** The first bytes of a zip and of a compound file, in which workbooks come. */
function isWorkbook(bytes: Uint8Array): boolean {
  return [
    [0x50, 0x4b, 0x03, 0x04],
    [0xd0, 0xcf, 0x11, 0xe0],
  ].some((magic) => magic.every((byte, k) => bytes[k] === byte));
}

/** Control characters other than tab, line ends and form feed. */
function hasControls(text: string): boolean {
  return /[^\P{Cc}\t\n\f\r\u0080-\u009f]/u.test(text);
}

import { describe, expect, it } from 'vitest';
import { scanJson } from '../../src/design/jsonScan';

// Every short text there is of some pieces, against the platform's JSON.parse (RFC 8259).

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** All texts of one to `most` of the pieces. */
function textsOf(pieces: readonly string[], most: number): string[] {
  let last = [''];
  const all: string[] = [];
  for (let k = 0; k < most; k++) {
    last = last.flatMap((text) => pieces.map((piece) => text + piece));
    all.push(...last);
  }
  return all;
}

/** Texts of which the scan and the platform say different things; repeated keys are refused by the scan alone. */
function unlike(texts: readonly string[]): string[] {
  return texts.filter((text) => {
    const stop = scanJson(text, 9);
    return stop?.kind !== 'repeatedKey' && (stop === null) !== isJson(text);
  });
}

const characters = (from: number, to: number) =>
  Array.from({ length: to - from }, (_, k) => String.fromCharCode(from + k));

describe('the JSON scan says what JSON.parse says', () => {
  it('of lists and objects', () => {
    const pieces = ['{', '}', '[', ']', '"a":', '"b"', ':', ',', '1', ' '];
    expect(unlike(textsOf(pieces, 4))).toEqual([]);
    expect(unlike(textsOf(['{"a":', '}', '[', ']', ',', '1'], 5))).toEqual([]);
    // One character in the place of the colon.
    expect(unlike(characters(0x20, 0x7f).map((one) => `{"a"${one}1}`))).toEqual([]);
  });

  it('of numbers', () => {
    const texts = textsOf(['-', '0', '1', '9', '.', 'e', 'E', '+'], 4);
    expect(unlike([...texts, ...texts.map((text) => `1.5e${text}`)])).toEqual([]);
    // The characters before 0 and after 9 are no digits.
    expect(unlike(['/', ':', '1/', '1:', '1./', '1e:', '10', '-10', '0.09'])).toEqual([]);
  });

  it('of words', () => {
    const words = ['true', 'false', 'null'];
    const texts = words.flatMap((word) => [
      word,
      `${word} `,
      ...[...word].map((_, k) => word.slice(0, k)),
      ...[...word].map((_, k) => `${word.slice(0, k)}x${word.slice(k + 1)}`),
      ...[...word].map((_, k) => `${word.slice(0, k)}${word.slice(k + 1)}`),
    ]);
    expect(unlike([...texts, 'True', 'nullnull', 'undefined', 'NaN', 'Infinity'])).toEqual([]);
  });

  it('of every character in a text, alone, after a backslash and around a value', () => {
    for (const one of [...characters(0, 0x102), '\u2028', '\ufeff', '\ud800']) {
      const texts = [`"${one}"`, `"\\${one}"`, `"a${one}`, `${one}1`, `1${one}`, `[1${one}]`];
      expect(unlike([...texts, `{${one}"a"${one}:${one}1${one},${one}"b":2}`])).toEqual([]);
    }
  });

  it('of hexadecimal digits after a backslash', () => {
    for (const one of ['/', '0', '9', ':', '@', 'A', 'F', 'G', '`', 'a', 'f', 'g', '"', '']) {
      const places = ['0000', '0000', '0000', '0000'].map(
        (four, k) => four.slice(0, k) + one + four.slice(k + 1),
      );
      expect(unlike(places.map((four) => `"\\u${four}"`))).toEqual([]);
      expect(unlike(places.map((four) => `{"\\u${four}":1}`))).toEqual([]);
    }
  });
});

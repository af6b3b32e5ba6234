import { describe, expect, it } from 'vitest';
import { decimalOf, parseDecimal, shownWord } from '../../../src/meshes/readers/decimal';
import { Words } from '../../../src/meshes/readers/words';
import { seeded } from '../../support/seeded';

function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}
function parsed(text: string): number {
  const bytes = bytesOf(`xx${text}99`);
  return parseDecimal(bytes, 2, 2 + text.length);
}

describe('a decimal number in bytes', () => {
  // The language's own reading is correctly rounded (ECMA-262, 7.1.4.1); it shares nothing with the fast road.
  it('is what the language reads, to the last bit, for every length, point and exponent', () => {
    const random = seeded(5);
    const digits = (most: number) =>
      Array.from({ length: Math.floor(random.between(0, most + 1)) }, () =>
        Math.floor(random.between(0, 10)),
      ).join('');
    for (let i = 0; i < 5000; i++) {
      const sign = ['', '+', '-'][i % 3];
      const body = `${digits(18)}${i % 2 ? `.${digits(18)}` : ''}`;
      const exponent = i % 5 ? '' : `${i % 10 ? 'e' : 'E'}${['', '+', '-'][i % 4] ?? ''}${i % 30}`;
      const text = sign + body + exponent;
      const wanted = /\d/.test(body) ? Number(text) : Number.NaN;
      if (!Object.is(parsed(text), wanted)) expect([text, parsed(text)]).toEqual([text, wanted]);
    }
  });

  it.each(['1e22', '1e23', '123e22', '5e-22', '5e-23', '999999999999999', '9999999999999999'])(
    '%s stands at an edge of the fast road',
    (text) => {
      expect(parsed(text)).toBe(Number(text));
      expect(parsed(`-${text}`)).toBe(-Number(text));
    },
  );

  it.each([
    '',
    '+',
    '-',
    '.',
    '-.',
    'e5',
    '1e',
    '1e+',
    '1e-',
    '1x',
    '1e5x',
    '1,5',
    '0x10',
    'nan',
    'inf',
    '1..2',
    '--1',
    '1.2.3',
    '1e1.5',
    '1/2',
  ])('"%s" is none', (text) => {
    expect(parsed(text)).toBeNaN();
    expect(decimalOf(text)).toBeNaN();
  });

  it('"1e999999" is infinite, "1e-999999" zero, and what is longer than 400 letters is not read', () => {
    expect(parsed('1e9999999')).toBe(Infinity);
    expect(parsed('1e-9999999')).toBe(0);
    expect(parsed(`1${'0'.repeat(300)}`)).toBe(1e300);
    expect(parsed(`0.${'0'.repeat(398)}1`)).toBeNaN();
    expect(decimalOf(`0.${'0'.repeat(397)}1`)).toBe(0);
    expect(decimalOf(`0.${'0'.repeat(398)}1`)).toBeNaN();
    expect(decimalOf(undefined)).toBeNaN();
    expect([decimalOf('-1.5e2'), decimalOf('.5'), decimalOf('3.')]).toEqual([-150, 0.5, 3]);
  });
});

describe('a word of a file', () => {
  it('is shown short, without control characters', () => {
    expect(shownWord('a\tb\x7fc')).toBe('a?b?c');
    expect(shownWord('x'.repeat(40))).toBe('x'.repeat(40));
    expect(shownWord('x'.repeat(41))).toBe(`${'x'.repeat(40)}...`);
    expect(shownWord(' ~')).toBe(' ~');
  });
});

describe('the words of a text', () => {
  it('come one after another with the number of their line', () => {
    const words = new Words(bytesOf('\ufeffv 1\r\n\n  F\t2 '));
    const found: [string, number][] = [];
    while (words.next()) found.push([words.text(), words.line]);
    expect(found).toEqual([
      ['v', 1],
      ['1', 1],
      ['F', 3],
      ['2', 3],
    ]);
    expect(words.next()).toBe(false);
  });

  it('end with their line, unless a backslash joins the next', () => {
    const words = new Words(bytesOf('f 1 \\\n2 3\\\r\n 4\n5 a\\b'));
    expect(words.next()).toBe(true);
    const line: string[] = [];
    while (words.nextInLine()) line.push(words.text());
    expect([line, words.line]).toEqual([['1', '2', '3', '4'], 3]);
    expect(words.nextInLine()).toBe(false);
    expect([words.next(), words.number(), words.line]).toEqual([true, 5, 4]);
    expect([words.nextInLine(), words.text()]).toEqual([true, 'a\\b']);
    expect([words.nextInLine(), words.next()]).toEqual([false, false]);
  });

  it('are known by a keyword in any case, whole', () => {
    const words = new Words(bytesOf('EndSolid solid so'));
    words.next();
    expect([words.is('endsolid'), words.is('endsolidx'), words.is('endsoli')]).toEqual([
      true,
      false,
      false,
    ]);
    words.next();
    expect([words.is('solid'), words.is('salid')]).toEqual([true, false]);
  });

  it('of a line are passed over, also of the last one', () => {
    const words = new Words(bytesOf('a b c\nd e'));
    words.next();
    words.skipLine();
    expect([words.next(), words.text(), words.line]).toEqual([true, 'd', 2]);
    words.skipLine();
    expect(words.next()).toBe(false);
  });
});

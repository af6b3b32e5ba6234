import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { decimalOf, parseDecimal } from '../../../src/meshes/readers/decimal';
import { detectFormat } from '../../../src/meshes/readers/detect';
import { readObj } from '../../../src/meshes/readers/obj';
import { readStlBinary } from '../../../src/meshes/readers/stlBinary';
import { readStlText } from '../../../src/meshes/readers/stlText';
import { Words } from '../../../src/meshes/readers/words';
import { writeStl } from '../../../src/meshes/writeStl';
import { TONON } from '../files';

const quiet = () => {};
const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const obj = (text: string) => readObj(strToU8(text), quiet);
const stl = (text: string) => readStlText(strToU8(text), quiet);
const told = (format: string, detail: string) => ({
  ok: false,
  error: { kind: 'malformed', format, detail },
});

describe('a decimal number at the edges of its two ways of being read', () => {
  const parsed = (text: string, before = 2) => {
    const bytes = strToU8(`${'x'.repeat(before)}${text}99`);
    return parseDecimal(bytes, before, before + text.length);
  };

  // The language's own reading is correctly rounded (ECMA-262, 7.1.4.1).
  it('is the language\u2019s to the last bit where digits or powers pass what a double holds', () => {
    for (const text of [
      '100000000000000',
      '1000000000000000',
      '100000000000001',
      '1000000000000001',
      '9007199254740993',
      '0.1000000000000000055511151231257827',
      '123456789012345678e-5',
      '3e22',
      '3e-22',
      '7e23',
      '7e-23',
      '99999999999999e22',
      '123456789e-22',
      '000000000000000000001',
      '0.000000000000000000000001',
    ]) {
      expect([text, parsed(text)]).toEqual([text, Number(text)]);
      expect([text, decimalOf(text)]).toEqual([text, Number(text)]);
    }
  });

  it('has an exponent of digits alone', () => {
    for (const text of ['1e/', '1e:', '1e5/', '1e5:', '1e 5', '1e', '1ex', '1e+x', '1f5', '1d5']) {
      expect([text, parsed(text)]).toEqual([text, NaN]);
    }
    expect([parsed('1e05'), parsed('1E+05'), parsed('12e-1')]).toEqual([1e5, 1e5, 1.2]);
    // An exponent beyond a million counts as one: a small number with it is still nothing.
    expect(parsed('1e-2000000')).toBe(0);
    expect(parsed('0e2000000')).toBe(0);
  });

  it('of 400 letters is read wherever it stands, of one more it is not', () => {
    const long = `0.${'0'.repeat(397)}1`;
    expect([parsed(long), parsed(`${long}1`)]).toEqual([Number(long), NaN]);
    expect(parsed('12345678901234567890', 1000)).toBe(Number('12345678901234567890'));
  });

  it('as a text may have many digits on either side, and a signed exponent of many', () => {
    expect(['12.5', '.25', '-12.', '+1.5E+12', '1e-10', '12e12'].map(decimalOf)).toEqual([
      12.5, 0.25, -12, 1.5e12, 1e-10, 12e12,
    ]);
    expect(['1e*5', '1e=5', '12,5', ' 1', '1 ', '1e5 '].map(decimalOf)).toEqual(Array(6).fill(NaN));
  });
});

describe('the format of a file that could be several', () => {
  const of = (text: string, extension = '') => detectFormat(latin(text), extension);

  it('is told behind the mark of UTF-8, and that mark elsewhere is none', () => {
    expect(of('\xef\xbb\xbfISO-10303-21;')).toBe('step');
    expect(of('\xef\xbb\xbfsolid a')).toBe('stlText');
    expect(of('PK\xef\xbb\xbf\x03\x04')).toBeUndefined();
    expect(of(`${' '.repeat(20)}glTF`)).toBeUndefined();
    expect(of('/* a */\n\n  ISO-10303-21;')).toBe('step');
    expect(of('/* a */ISO-10303-21;')).toBe('step');
    expect(of('# solid')).toBeUndefined();
  });

  it('is a binary STL by its name where it is nothing else', () => {
    expect(of('v 1 2 3', 'stl')).toBe('stlBinary');
    expect(of('v 1 2 3', 'txt')).toBe('obj');
  });

  it('is OBJ by a line of it among the first 64 kB', () => {
    const early = `${'#\n'.repeat(30_000)}v 1 2 3\n`;
    const late = `${'#\n'.repeat(33_000)}v 1 2 3\n`;
    expect([of(early), of(late)]).toEqual(['obj', undefined]);
    expect([of('v    1 2 3'), of('f  \t 1 2 3'), of('\t v\t.5 1 2')]).toEqual([
      'obj',
      'obj',
      'obj',
    ]);
    expect(of('\nv 1 2 3\n')).toBe('obj');
    expect([of('#v 1 2 3'), of('a v 1'), of('vt 1 2'), of('#'), of('#\n'), of('')]).toEqual(
      Array(6).fill(undefined),
    );
  });
});

describe('words at the edges of lines and text', () => {
  const walk = (text: string) => {
    const words = new Words(latin(text));
    const found: string[] = [];
    while (words.next()) found.push(words.text());
    return { found, line: words.line };
  };

  it('begin behind the mark of UTF-8, whole', () => {
    expect(walk('\xef\xbb\xbfab c').found).toEqual(['ab', 'c']);
    for (const start of [
      '\xef\xbbab',
      '\xefab',
      'a\xbb\xbf',
      '\xef\xbbx',
      '\xefx\xbf',
      'x\xbb\xbf',
    ]) {
      expect(walk(`${start} c`).found[0]).toBe(start);
    }
  });

  it('end with the text, with a line that is counted', () => {
    expect(walk('a')).toEqual({ found: ['a'], line: 1 });
    expect(walk('a\n')).toEqual({ found: ['a'], line: 2 });
    expect(walk('\n\na \n b')).toEqual({ found: ['a', 'b'], line: 4 });
    expect(walk('')).toEqual({ found: [], line: 1 });
  });

  it('of a line stand before its end; at its end the place is kept', () => {
    const words = new Words(latin('a b\nc'));
    words.next();
    expect([words.nextInLine(), words.text()]).toEqual([true, 'b']);
    expect([words.nextInLine(), words.start, words.end]).toEqual([false, 3, 3]);
    expect([words.nextInLine(), words.line]).toEqual([false, 1]);
    expect([words.next(), words.text(), words.line]).toEqual([true, 'c', 2]);
    expect([words.nextInLine(), words.start, words.end]).toEqual([false, 5, 5]);
  });

  it('are joined by a backslash before a line\u2019s end and by no other', () => {
    const line = (text: string) => {
      const words = new Words(latin(text));
      const found: string[] = [];
      while (words.nextInLine()) found.push(words.text());
      return { found, line: words.line };
    };
    expect(line('a\\\nb')).toEqual({ found: ['a', 'b'], line: 2 });
    expect(line('a\\\r\nb\nc')).toEqual({ found: ['a', 'b'], line: 2 });
    expect(line('a\\\rb')).toEqual({ found: ['a\\', 'b'], line: 1 });
    expect(line('a\\xb')).toEqual({ found: ['a\\xb'], line: 1 });
    expect(line('a\\x\nb')).toEqual({ found: ['a\\x'], line: 1 });
    expect(line('a \\')).toEqual({ found: ['a', '\\'], line: 1 });
  });

  it('can be gone back over to the end of a line, with the count of lines', () => {
    const words = new Words(latin('a\nb\n\nc'));
    for (let k = 0; k < 3; k++) words.next();
    expect([words.text(), words.line]).toEqual(['c', 4]);
    words.toLineEnd(1);
    expect([words.line, words.start, words.end]).toEqual([1, 1, 1]);
    expect([words.next(), words.text(), words.line]).toEqual([true, 'b', 2]);
    words.skipLine();
    expect([words.next(), words.text(), words.line]).toEqual([true, 'c', 4]);
    words.skipLine();
    expect(words.end).toBe(6);
  });
});

describe('a text STL', () => {
  const facet =
    'facet normal 0 0 1 outer loop vertex 0 0 0 vertex 1 0 0 vertex 0 1 0 endloop endfacet';
  const count = (text: string) => {
    const result = stl(text);
    return result.ok ? result.value.triangles.length / 3 : result;
  };

  it('may stand in one line with any names', () => {
    expect(count(`solid ${facet} endsolid`)).toBe(1);
    expect(count(`solid a b ${facet} ${facet} endsolid a b`)).toBe(2);
    expect(count(`solid facet ${facet} endsolid`)).toBe(1);
    expect(count(`solid normal facet a ${facet} endsolid facet normal`)).toBe(1);
    expect(count(`solid a ${facet} endsolid a solid b ${facet} endsolid b`)).toBe(2);
    expect(count(`solid a ${facet} endsolid solid ${facet} endsolid solid`)).toBe(2);
    expect(count(`solid a ${facet} endsolid my solid solid b ${facet} endsolid`)).toBe(2);
  });

  it('in lines may have names of its own words', () => {
    expect(count(`solid solid\n${facet}\nendsolid solid x\nsolid b\n${facet}\nendsolid`)).toBe(2);
    expect(count(`solid\n\n${facet}\nendsolid`)).toBe(1);
    expect(count(`\n\nsolid a\n${facet}\nendsolid a\n\n`)).toBe(1);
    expect(count(`solid a${'\n'}${facet}\nendsolid`)).toBe(1);
  });

  it('says what stands where something else should, and in which line', () => {
    expect(stl('liquid a\nendsolid')).toEqual(
      told('stlText', 'has "liquid" where "solid" should stand, in line 1'),
    );
    expect(stl(`solid\n${facet}\nfaucet normal`)).toEqual(
      told('stlText', 'has "faucet" where "facet" should stand, in line 3'),
    );
    expect(stl(`solid\n${facet}`)).toEqual(told('stlText', 'ends in line 2 before endsolid'));
    expect(stl('solid\nfacet')).toEqual(told('stlText', 'ends in line 2 before normal'));
    expect(stl('solid\nfacet normal 0 0')).toEqual(
      told('stlText', 'ends in line 2 before the normal'),
    );
    expect(stl('solid\nfacet normal 0 0 1\nouter loop\nvertex 0 0')).toEqual(
      told('stlText', 'ends in line 4 before a coordinate'),
    );
    expect(stl(`solid\n${facet.replace('1 0 0', '1 0 2e9')}\nendsolid`)).toEqual(
      told('stlText', 'has a coordinate of 2000000000 in line 2, beyond 1000000000'),
    );
    expect(stl(`solid\n${facet.replace('1 0 0', '1 0 x')}\nendsolid`)).toEqual(
      told('stlText', 'has "x" for a coordinate in line 2'),
    );
  });
});

describe('a binary STL', () => {
  it('with bytes behind its last triangle is read, and that is noted', () => {
    const bytes = Uint8Array.from([...writeStl([TONON], 1, 'x'), 1, 2, 3]);
    expect(readStlBinary(bytes, quiet)).toMatchObject({
      ok: true,
      value: { notes: [{ kind: 'trailingBytes', bytes: 3 }] },
    });
  });

  it('names the format and the triangle, whichever coordinate is no place', () => {
    for (const axis of [0, 1, 2]) {
      const bytes = writeStl([TONON], 1, 'x').slice();
      new DataView(bytes.buffer).setFloat32(84 + 50 * 2 + 12 + 12 + 4 * axis, Infinity, true);
      expect(readStlBinary(bytes, quiet)).toEqual(
        told('stlBinary', 'has a coordinate that is not a number in triangle 3'),
      );
    }
  });
});

describe('an OBJ', () => {
  const square = 'v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\n';

  it('says what is wrong with a line', () => {
    const fault = (line: string) => obj(`${square}${line}`);
    expect(fault('v 1 2')).toEqual(
      told('obj', 'has a point of fewer than three coordinates in line 5'),
    );
    expect(fault('v 1 y 2')).toEqual(told('obj', 'has "y" for a coordinate in line 5'));
    expect(fault('v 1 2 -3e9')).toEqual(
      told('obj', 'has a coordinate of -3000000000 in line 5, beyond 1000000000'),
    );
    expect(fault('f 1 2')).toEqual(told('obj', 'has a face of fewer than three corners in line 5'));
    for (const word of ['/1', '-', '0', '-0', '5', '-5', '1:', '1;2', '1.', 'x', '2/-', '00']) {
      const answer = fault(`f 1 2 ${word}`);
      if (word === '2/-') expect(answer.ok).toBe(true);
      else expect(answer).toEqual(told('obj', `names the point "${word}" of 4 in line 5`));
    }
    const points = Array.from({ length: 19 }, (_, k) => `v ${k} 0 ${k * k}\n`).join('');
    expect(obj(`${points}f 1 10 19`)).toMatchObject({ ok: true });
    expect(obj(`${points}f 9 10 -19`)).toMatchObject({ ok: true });
  });

  it('with a face that crosses itself cuts it as a fan, and says so', () => {
    const points = [
      [0, 0],
      [4, 0],
      [0, 4],
      [4, 4],
      [2, 9],
    ];
    const text = points.map(([x, y]) => `v ${x} ${y} 0\n`).join('');
    const result = obj(`${text}f 1 2 3 4 5\nf 5 4 3 2 1`);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    expect([...result.value.triangles]).toEqual([
      0, 1, 2, 0, 2, 3, 0, 3, 4, 4, 3, 2, 4, 2, 1, 4, 1, 0,
    ]);
    expect(result.value.notes).toEqual([{ kind: 'concaveFaces', count: 2 }]);
  });

  it('of a face without area, or of more than ten thousand corners, cuts a fan', () => {
    const flat = obj('v 0 0 0\nv 1 0 0\nv 2 0 0\nv 3 0 0\nf 1 2 3 4');
    expect(flat.ok && [...flat.value.triangles]).toEqual([0, 1, 2, 0, 2, 3]);
    expect(flat.ok && flat.value.notes).toEqual([]);
    // A comb: a tooth up at every second corner, hollow between.
    const comb = (corners: number) => {
      const points = Array.from({ length: corners - 2 }, (_, k) => `v ${k} ${k % 2} 0\n`).join('');
      const all = Array.from({ length: corners }, (_, k) => k + 1).join(' ');
      return obj(`${points}v ${corners} 9 0\nv -1 9 0\nf ${all}`);
    };
    const wide = comb(10_001);
    expect(wide.ok && wide.value.notes).toEqual([{ kind: 'concaveFaces', count: 1 }]);
    expect(wide.ok && wide.value.triangles.length / 3).toBe(9999);
    const narrow = comb(12);
    expect(narrow.ok && narrow.value.notes).toEqual([]);
    expect(narrow.ok && narrow.value.triangles.length / 3).toBe(10);
  });

  it('counts its triangles by the corners of its faces', () => {
    expect(obj(square)).toEqual({ ok: false, error: { kind: 'noTriangles', format: 'obj' } });
    const two = obj(`${square}f 1 2 3 4\nf 1 2 3`);
    expect(two.ok && two.value.triangles.length / 3).toBe(3);
  });
});

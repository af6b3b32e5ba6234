/** One hostile text, and whether a door must refuse it or may also take it for what it is. */
export interface Attack {
  readonly name: string;
  readonly text: string;
  readonly must: 'refuse' | 'notThrow';
}

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };

/** A number that a JSON text may hold, as it is written there. */
const NUMBERS = ['1e308', '-1e308', '1e400', '-1e400', '-0', '5e-324', '9007199254740993'];
/** Lone surrogates, a NUL, marks that turn writing round, line separators, and markup. */
const TEXTS = [
  '"\\ud800"',
  '"\\udfff\\ud800"',
  '"\\u0000"',
  '"\\u202e\\u2066"',
  '"\\u2028\\u2029"',
  '"<img src=x onerror=alert(1)>"',
  '"]]><script>alert(1)</script>"',
];
/** Names that every object has from its prototype. */
const INHERITED = [
  'constructor',
  'hasOwnProperty',
  'toString',
  'valueOf',
  'toJSON',
  '__defineGetter__',
];

/** The named attacks on a door that takes JSON, made from a text that it takes. */
export function jsonAttacks(sound: string): Attack[] {
  const value = JSON.parse(sound) as Json;
  const inside = JSON.stringify(value).slice(1);
  const refuse = (name: string, text: string): Attack => ({ name, text, must: 'refuse' });
  return [
    refuse('__proto__ as a key', `{"__proto__":{"polluted":1},${inside}`),
    refuse('__proto__ written with an escape', `{"\\u005f_proto__":{"polluted":1},${inside}`),
    ...INHERITED.map((key) => refuse(`${key} as a key`, `{"${key}":{"polluted":1},${inside}`)),
    refuse('a million lists deep', '['.repeat(1_000_000)),
    refuse('a million lists deep, closed', `${'['.repeat(1_000_000)}${']'.repeat(1_000_000)}`),
    refuse('a million objects deep', '{"a":'.repeat(1_000_000)),
    refuse('a million deep inside a sound one', `{"x":${'['.repeat(1_000_000)},${inside}`),
    refuse('a key of a million characters', `{"${'k'.repeat(1_000_000)}":1,${inside}`),
    refuse('a hundred thousand keys', `{${manyKeys(100_000)},${inside}`),
    refuse('a list of a million', `[${'0,'.repeat(999_999)}0]`),
    refuse('a key given twice', `{"format":"x",${inside}`),
    refuse('text behind the end', `${sound}{}`),
    refuse('nothing', ''),
    refuse('null', 'null'),
    refuse('a number', '1e308'),
    refuse('a lone surrogate, not escaped', '\ud800'),
    ...leafAttacks(value),
  ];
}

function manyKeys(count: number): string {
  return Array.from({ length: count }, (_, k) => `"k${k}":1`).join(',');
}

/** Every number and every text of the document in the place of which something hostile is put. */
function leafAttacks(value: Json): Attack[] {
  const attacks: Attack[] = [];
  for (const path of leaves(value, [])) {
    const leaf = path.reduce<Json>((at, step) => (at as Record<string, Json>)[step], value);
    const at = path.join('.');
    if (typeof leaf === 'number') {
      for (const number of NUMBERS) {
        // Beyond what a double holds it is no number at all.
        const must = number.endsWith('e400') ? 'refuse' : 'notThrow';
        attacks.push({ name: `${number} at ${at}`, text: replaced(value, path, number), must });
      }
    }
    if (typeof leaf === 'string') {
      for (const text of TEXTS) {
        attacks.push({
          name: `${text} at ${at}`,
          text: replaced(value, path, text),
          must: 'notThrow',
        });
      }
      const huge = JSON.stringify('n'.repeat(100_000));
      attacks.push({
        name: `100,000 characters at ${at}`,
        text: replaced(value, path, huge),
        must: 'refuse',
      });
    }
    for (const other of ['[]', '{}', 'null']) {
      attacks.push({
        name: `${other} at ${at}`,
        text: replaced(value, path, other),
        must: 'refuse',
      });
    }
  }
  return attacks;
}

function leaves(value: Json, path: readonly string[]): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, item]) => leaves(item as Json, [...path, key]));
}

/** The document with a raw piece of text in one place. */
function replaced(value: Json, path: readonly string[], raw: string): string {
  const mark = '@@here@@';
  const copy = structuredClone(value) as Record<string, Json>;
  let at = copy;
  for (const step of path.slice(0, -1)) at = at[step] as Record<string, Json>;
  at[path.at(-1) ?? ''] = mark;
  return JSON.stringify(copy).replace(`"${mark}"`, () => raw);
}

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scanJson } from '../../src/design/jsonScan';
import { parseJson } from '../../src/design/jsonText';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

/** What the scan refuses beyond the grammar. */
const OWN_RULES = new Set(['repeatedKey', 'prototypeKey', 'depth']);

describe('the JSON scan', () => {
  test('accepts what JSON.parse accepts, for any value', () => {
    fc.assert(
      fc.property(fc.json(), fc.constantFrom(undefined, 1, '\t', '\r\n'), (text, indent) => {
        const spaced = JSON.stringify(JSON.parse(text), null, indent);
        const stop = scanJson(spaced, 100);
        if (stop) expect(OWN_RULES.has(stop.kind)).toBe(true);
      }),
      { seed: 30, numRuns: 2000 },
    );
  });

  test('accepts and refuses just what JSON.parse does, on texts of its own characters', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      '"a"',
      '"b"',
      ':',
      ',',
      '1',
      '0',
      '-',
      '.',
      'e',
      '+',
      'true',
      'fals',
      'null',
      ' ',
      '\n',
      '"',
      '\\',
      '\\u00e9',
      'E5',
      '\u00a0',
      '\u0001',
      'tru',
      '/',
      "'",
    );
    let sound = 0;
    fc.assert(
      fc.property(fc.array(pieces, { minLength: 1, maxLength: 7 }), (parts) => {
        const text = parts.join('');
        const stop = scanJson(text, 100);
        if (stop && OWN_RULES.has(stop.kind)) return;
        if (stop === null) sound++;
        expect(stop === null).toBe(isJson(text));
      }),
      { seed: 31, numRuns: 40_000 },
    );
    expect(sound).toBeGreaterThan(300);
  });

  test('calls a text cut off exactly where more characters could still complete it', () => {
    const text = '{"a": [1.5e+3, -0.25, true, null, "x\\u00e9\\n"], "b": {}, "c": false}';
    for (let length = 1; length < text.length; length++) {
      expect(scanJson(text.slice(0, length), 9)?.kind).toBe('end');
    }
    expect(scanJson(text, 9)).toBeNull();
  });

  test.each([
    ['[1,2 3]', 'syntax', '[1]', 5],
    ['{"a":{"b":[true,flase]}}', 'syntax', 'a.b[1]', 17],
    ['{"a":1,"a":2}', 'repeatedKey', '', 7],
    ['{"p":[{"\\u0061":1,"a":2}]}', 'repeatedKey', 'p[0]', 18],
    ['{"p":[{"__proto__":1}]}', 'prototypeKey', 'p[0]', 7],
    ['[[[[1]]]]', 'depth', '[0][0][0]', 3],
    ['01', 'syntax', '', 1],
    ['{"a":1,}', 'syntax', 'a', 7],
    ['[1,]', 'syntax', '[1]', 3],
  ] as const)('%s stops for %s at %j', (text, kind, path, at) => {
    expect(scanJson(text, 3)).toMatchObject({ kind, path, at });
  });

  test('passes a long string and a long list without trouble', () => {
    expect(scanJson(`"${'x\\n'.repeat(3_000_000)}"`, 3)).toBeNull();
    expect(scanJson(`[${'1,'.repeat(1_000_000)}1]`, 3)).toBeNull();
  });
});

test('line and column count from one, at the first character that cannot be', () => {
  const found = parseJson('{\n  "a": 1,\n  "b": oops\n}');
  expect(found.ok ? null : found.error).toEqual({
    path: 'b',
    reason: { code: 'notJson', line: 3, column: 8, found: 'oops\n}' },
  });
});

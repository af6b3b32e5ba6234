import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { scanJson } from '../../src/design/jsonScan';

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
      { seed: 30, numRuns: 1000 },
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
      { seed: 31, numRuns: 20_000 },
    );
    expect(sound).toBeGreaterThan(150);
  });

  test('passes a long string and a long list without trouble', () => {
    expect(scanJson(`"${'x\\n'.repeat(3_000_000)}"`, 3)).toBeNull();
    expect(scanJson(`[${'1,'.repeat(1_000_000)}1]`, 3)).toBeNull();
  });
});

import { describe, expect, test } from 'vitest';
import { scanJson } from '../../src/design/jsonScan';
import { parseJson } from '../../src/design/jsonText';

describe('the JSON scan', () => {
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
    ['{x', 'syntax', '', 1],
    ['{"a":[{1', 'syntax', 'a[0]', 7],
    ['{"a":{"b"11}}', 'syntax', 'a.b', 9],
    ['{"a":{"":x}}', 'syntax', 'a.', 9],
    ['{"a":1,}', 'syntax', 'a', 7],
    ['[1,]', 'syntax', '[1]', 3],
  ] as const)('%s stops for %s at %j', (text, kind, path, at) => {
    expect(scanJson(text, 3)).toMatchObject({ kind, path, at });
  });
});

test('line and column count from one, at the first character that cannot be', () => {
  const found = parseJson('{\n  "a": 1,\n  "b": oops\n}');
  expect(found.ok ? null : found.error).toEqual({
    path: 'b',
    reason: { code: 'notJson', line: 3, column: 8, found: 'oops\n}' },
  });
});

test('a place far along is shown by the next dozen characters', () => {
  const found = parseJson('[1, 2, sixteen letters and more]');
  expect(found.ok ? null : found.error).toEqual({
    path: '[2]',
    reason: { code: 'notJson', line: 1, column: 8, found: 'sixteen lett' },
  });
});

import { describe, expect, test } from 'vitest';
import { fail, requireFinite, succeed, unreachable } from '../../src/engine/result';

describe('outcomes', () => {
  test('what a person can reach is a value that says whether it went well', () => {
    expect(succeed(3)).toEqual({ ok: true, value: 3 });
    expect(fail('no root')).toEqual({ ok: false, error: 'no root' });
  });

  test("a programmer's fault throws and names the number", () => {
    expect(requireFinite(2.5, 'f(): x')).toBe(2.5);
    for (const bad of [NaN, Infinity, -Infinity]) {
      expect(() => requireFinite(bad, 'f(): x')).toThrow(`f(): x is not finite: ${bad}`);
    }
    expect(() => unreachable('cube' as never)).toThrow('cube');
  });
});

import { describe, expect, it } from 'vitest';
import { INCH_MM } from '../../src/engine/units';
import { METRIC_UNITS } from '../../src/state/settings';
import { limitText, shownUnit } from '../../src/state/shownUnits';

const plain = { name: '', perShown: 1, decimals: null } as const;

describe('a limit in a sentence', () => {
  it('is the whole number that it is, however long', () => {
    // 2^32 - 1, the greatest seed.
    expect(limitText(4_294_967_295, plain)).toBe('4294967295');
    expect(limitText(1_000_000, plain)).toBe('1000000');
  });

  it('loses the noise of computing where it is a fraction', () => {
    expect(limitText(0.1 + 0.2, shownUnit('mm', METRIC_UNITS))).toBe('0.3\u00a0mm');
    expect(limitText(INCH_MM / 3, shownUnit('mm', METRIC_UNITS))).toBe('8.46667\u00a0mm');
  });
});

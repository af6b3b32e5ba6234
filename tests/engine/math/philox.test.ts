import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../src/engine/math/normal';
import { openUnit, philox } from '../../../src/engine/math/philox';

/** Known answers of Philox4x32-10, published with Random123 (tests/kat_vectors): counter, key, output. */
const KNOWN = [
  [[0, 0, 0, 0], [0, 0], '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
  [
    [0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff],
    [0xffffffff, 0xffffffff],
    '408f276d 41c83b0e a20bc7c6 6d5451fd',
  ],
  [
    [0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344],
    [0xa4093822, 0x299f31d0],
    'd16cfe09 94fdcceb 5001e420 24126ea1',
  ],
] as const;

describe('the counter-based generator', () => {
  it.each(KNOWN)('gives the published words for counter %j and key %j', (counter, key, words) => {
    const out = philox(counter, key, new Uint32Array(4));
    expect([...out].map((word) => word.toString(16).padStart(8, '0')).join(' ')).toBe(words);
  });

  it('never gives either end of the unit interval', () => {
    expect(openUnit(0)).toBeGreaterThan(0);
    expect(openUnit(0xffffffff)).toBeLessThan(1);
    expect(openUnit(0x80000000) + openUnit(0x7fffffff)).toBe(1);
  });
});

describe('the normal deviate', () => {
  /** Abramowitz and Stegun, table 26.1: the share below a deviate (memory). */
  it.each([
    [1, 0.841344746068543],
    [1.96, 0.975002104851779],
    [3, 0.99865010196837],
    [-4, 3.167124183311992e-5],
    [0, 0.5],
  ])('is %d where the table has its share', (deviate, share) => {
    // The approximation is good to 1.15e-9 of the deviate; where it is zero it is odd about one half.
    expect(Math.abs(normalQuantile(share) - deviate)).toBeLessThanOrEqual(
      1.5e-9 * Math.abs(deviate),
    );
  });

  it('is refused for a share that no deviate has', () => {
    expect(() => normalQuantile(0)).toThrow(RangeError);
    expect(() => normalQuantile(1)).toThrow(RangeError);
  });
});

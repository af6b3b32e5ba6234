import { describe, expect, it } from 'vitest';
import { CENTRAL, DOWNWARD, type Stencil, UPWARD } from '../../../src/engine/math/stencil';

const STENCILS = [
  ['central', CENTRAL],
  ['upward', UPWARD],
  ['downward', DOWNWARD],
] as const;

/** The derivative of x^n at 1 by one of the two orders, step 1/16 (powers of two round little). */
function slopeOfPower(stencil: Stencil, order: 'order8' | 'order6', n: number): number {
  const step = 1 / 16;
  let sum = stencil[`${order}Centre`];
  stencil.offsets.forEach((offset, k) => {
    sum += stencil[order][k] * (1 + offset * step) ** n;
  });
  return sum / step;
}

describe.each(STENCILS)('the %s stencil', (_, stencil) => {
  // A power's derivative at 1 is its exponent. Weights up to 20, values up to 1.5^8 = 26, divided by the step: 1e-16 x 1e4.
  it('is exact for every polynomial up to degree 8 by order 8, up to 6 by order 6', () => {
    for (let n = 0; n <= 8; n++) {
      expect(slopeOfPower(stencil, 'order8', n)).toBeCloseTo(n, 11);
      if (n <= 6) expect(slopeOfPower(stencil, 'order6', n)).toBeCloseTo(n, 11);
    }
  });

  it('is not exact beyond, or the check above would see nothing', () => {
    expect(Math.abs(slopeOfPower(stencil, 'order8', 9) - 9)).toBeGreaterThan(1e-10);
    expect(Math.abs(slopeOfPower(stencil, 'order6', 7) - 7)).toBeGreaterThan(1e-8);
  });
});

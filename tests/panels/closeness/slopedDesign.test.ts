import { expect, it } from 'vitest';
import { slopedDesign } from '../../../src/panels/closeness/slopeRows';
import type { Slopes } from '../../../src/state/closeness';
import { EMPTY_DESIGN } from '../../../src/state/store';

it('in a drag the tolerances are those of now, beside slopes of a head that was worked out before they were written', () => {
  const part = { part: 'blade', field: 'turnDeg' };
  const design = { ...EMPTY_DESIGN, tolerance: { own: [{ ...part, plusMinus: 1 }] } };
  const slopes = { design } as unknown as Slopes;
  const now = { own: [{ ...part, plusMinus: 2 }] };
  expect(slopedDesign(slopes, now as never).tolerance).toEqual(now);
  expect(slopedDesign(slopes, undefined)).toEqual(EMPTY_DESIGN);
});

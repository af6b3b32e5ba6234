import { expect, test } from 'vitest';
import { scanOverCentre } from '../../support/overCentreScan';
import { seeded } from '../../support/seeded';

// Slow, apart from the others so that `npm run mutants` can leave it out.
test('over-centre and reach are where a fine scan finds a change of sign, none missed and none twice, in 2,000 seeded linkages', () => {
  const { crossings, wrong, nearest, worst } = scanOverCentre(seeded(21), 2000);
  expect(wrong).toBe(0);
  expect(crossings).toBeGreaterThan(1500);
  expect(nearest).toBeGreaterThan(1e-9);
  // At the very edge of reach the rod's slant grows without end, and with it the rounding of the lever.
  expect(worst).toBeLessThan(1e-7);
});

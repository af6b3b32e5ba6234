import { expect, test } from 'vitest';
import { MassLedger } from '../../../src/engine/mass/ledger';
import { createMoments, MOMENT_COUNT } from '../../../src/engine/mass/moments';
import { seeded } from '../../support/seeded';
import { exactSum, randomPart } from './ledgerParts';

test('the ledger after a million random changes holds the correctly rounded sum of what is on', () => {
  const random = seeded(1_000_000);
  const stock = Array.from({ length: 40 }, () => randomPart(random));
  const on = new Set<number>();
  const ledger = new MassLedger();
  const plain = createMoments();
  for (let change = 0; change < 1e6; change++) {
    const part = random.whole(0, stock.length - 1);
    const sign = on.has(part) ? -1 : 1;
    if (sign > 0) ledger.add(stock[part]);
    else ledger.remove(stock[part]);
    for (let i = 0; i < MOMENT_COUNT; i++) plain[i] += sign * stock[part][i];
    if (sign > 0) on.add(part);
    else on.delete(part);
  }
  const expected = exactSum([...on].map((part) => stock[part]));
  expect(on.size).toBeGreaterThan(5);
  expect(ledger.total(createMoments())).toEqual(expected);
  expect(ledger.operations).toBe(1e6);
  // The test would see drift: plain sums of the same changes have it.
  expect(plain).not.toEqual(expected);
});

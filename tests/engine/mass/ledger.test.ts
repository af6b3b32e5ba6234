import { describe, expect, test } from 'vitest';
import { MassLedger } from '../../../src/engine/mass/ledger';
import { createMoments } from '../../../src/engine/mass/moments';
import { seeded } from '../../support/seeded';
import { exactSum, randomPart } from './ledgerParts';

describe('the ledger of parts', () => {
  test('emptied one by one in another order it holds nothing above 1e-28 of its largest part', () => {
    const random = seeded(12);
    const parts = Array.from({ length: 500 }, () => randomPart(random));
    const ledger = new MassLedger();
    for (const part of parts) ledger.add(part);
    for (const part of parts.toReversed()) ledger.remove(part);
    // 1000 changes of at most 2^-104 of a sum below 500.
    for (const left of ledger.total(createMoments())) expect(Math.abs(left)).toBeLessThan(1e-26);
  });

  test('A - B + B is A to the last bit, with B a trillion times as large', () => {
    const random = seeded(8);
    for (let i = 0; i < 1000; i++) {
      const small = randomPart(random);
      const large = randomPart(random).map((v) => v * 1e12);
      const ledger = new MassLedger();
      ledger.add(small);
      ledger.remove(large);
      ledger.add(large);
      expect(ledger.total(createMoments())).toEqual(small);
    }
  });

  test('replacing one part costs two operations, however many parts are on', () => {
    const random = seeded(2);
    for (const count of [1, 10, 1000]) {
      const ledger = new MassLedger();
      const parts = Array.from({ length: count }, () => randomPart(random));
      for (const part of parts) ledger.add(part);
      const before = ledger.operations;
      const other = randomPart(random);
      ledger.remove(parts[0]);
      ledger.add(other);
      expect(ledger.operations - before).toBe(2);
      expect(ledger.total(createMoments())).toEqual(exactSum([other, ...parts.slice(1)]));
    }
  });

  test('cleared, it holds nothing', () => {
    const ledger = new MassLedger();
    ledger.add(randomPart(seeded(1)));
    ledger.add(randomPart(seeded(2)).map((v) => v * 1e-17));
    ledger.clear();
    expect(ledger.total(createMoments())).toEqual(createMoments());
  });
});

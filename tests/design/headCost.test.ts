import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { designOf, fullHead, partOf } from './designs';

/** The full head of twelve parts among lumps, up to `count` parts. */
function headOf(count: number): Part[] {
  const lumps = Array.from({ length: Math.max(0, count - 12) }, (_, i) =>
    partOf('pointMass', `lump ${i}`, { massGrams: 0.1 + (i % 7) / 10 }),
  );
  return [...lumps, ...fullHead()];
}

/** Weighings, poses and ledger entries that `change` costs. */
function costOf(model: HeadModel, change: () => unknown) {
  const weighed = model.counters.weighed;
  const posed = model.counters.posed;
  const entries = model.ledgerOperations;
  change();
  return {
    weighed: model.counters.weighed - weighed,
    posed: model.counters.posed - posed,
    entries: model.ledgerOperations - entries,
  };
}

const find = (parts: readonly Part[], id: string) => parts.find((part) => part.id === id) as Part;

// One short of the limit, so that a part can be added.
describe.each([12, 1000, 9999])('in a head of %i parts', (count) => {
  const parts = headOf(count);
  const model = new HeadModel();
  const load = costOf(model, () => expect(model.load(designOf(parts)).ok).toBe(true));
  const set = (id: string, more: Record<string, unknown>) =>
    costOf(model, () => {
      expect(model.setPart({ ...find(parts, id), ...more } as Part).ok).toBe(true);
    });

  test('loading weighs and poses each part once', () => {
    // The rod is not in the grip's sums.
    expect(load).toEqual({ weighed: count, posed: count, entries: count - 1 });
  });

  test('a longer bolt head costs one weighing and the poses of the bolt and what sits on it', () => {
    // Washers, nut and weight keep their seats: looked at, not moved, so the washer on the nut is left alone.
    expect(set('bolt', { extensionLengthMm: 9, extensionDiameterMm: 5 })).toEqual({
      weighed: 1,
      posed: 6,
      entries: 12,
    });
  });

  test('a heavier lump costs one weighing, one pose, one entry out and one in', () => {
    expect(set('lump', { massGrams: 1.23 })).toEqual({ weighed: 1, posed: 1, entries: 2 });
  });

  test('a part moved is not weighed again', () => {
    const pose = { positionMm: [1, 2, 3], rotationDeg: [0, 0, 0] };
    expect(set('lump', { massGrams: 1.23, pose })).toEqual({ weighed: 0, posed: 1, entries: 2 });
  });

  test('a part renamed or hidden is not weighed again', () => {
    const before = model.placed('nut')?.pose;
    expect(set('nut', { name: 'other' }).weighed).toBe(0);
    expect(set('nut', { hidden: true })).toEqual({ weighed: 0, posed: 1, entries: 1 });
    expect(set('nut', {})).toEqual({ weighed: 0, posed: 1, entries: 1 });
    expect(model.placed('nut')?.pose).toBe(before);
  });

  test('a thicker washer raises the bolt and all that sits on it, weighed once', () => {
    // Washer, bolt, two other washers, nut with its washer, weight.
    expect(set('w1', { thicknessMm: 0.75 })).toEqual({ weighed: 1, posed: 7, entries: 14 });
  });

  test('the same part again costs nothing', () => {
    const { part } = model.parts[0];
    expect(costOf(model, () => model.setPart(part))).toEqual({ weighed: 0, posed: 0, entries: 0 });
  });

  test('a whole design that differs in one part costs what that part costs', () => {
    const now = model.parts.map(({ part }) => part);
    const next = now.map((part) => (part.id === 'lump' ? find(parts, 'lump') : part));
    const cost = costOf(model, () => expect(model.sync(designOf(next)).ok).toBe(true));
    expect(cost).toEqual({ weighed: 1, posed: 1, entries: 2 });
  });

  test('one part added or taken out costs that part', () => {
    const more = partOf('pointMass', 'more');
    expect(costOf(model, () => model.addPart(more, 3))).toEqual({
      weighed: 1,
      posed: 1,
      entries: 1,
    });
    expect(costOf(model, () => model.removePart('more'))).toEqual({
      weighed: 0,
      posed: 0,
      entries: 1,
    });
  });

  test('a new speed weighs and poses nothing', () => {
    const rotor = { speedRpm: 9000, bladeCount: 2, torqueOffsetMm: 1, preconeDeg: 2 };
    expect(costOf(model, () => model.setSections({ rotor }))).toEqual({
      weighed: 0,
      posed: 0,
      entries: 0,
    });
  });
});

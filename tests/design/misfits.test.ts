import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/design/design';
import { HeadForces } from '../../src/design/forces/headForces';
import { HeadModel } from '../../src/design/headModel';
import { misfits } from '../../src/design/misfits';
import { findWarnings } from '../../src/design/warnings';
import { warningMessage } from '../../src/design/warningText';
import { radians } from '../../src/engine/units';
import { designOf, fullHead } from './designs';

function headWith(changes: Readonly<Record<string, object>>): HeadModel {
  const parts = fullHead().map((part) => ({ ...part, ...changes[part.id] }) as Part);
  const model = new HeadModel();
  const loaded = model.load(designOf(parts));
  if (!loaded.ok) throw new Error(loaded.error.path);
  return model;
}

describe('parts that go together', () => {
  test('are said nothing of: M3 bolt, nut and washers in a hole of 3.1 mm', () => {
    expect(misfits(headWith({}))).toEqual([]);
  });
});

describe('parts that do not go together', () => {
  test('are told: an M4 bolt in that hole, its M3 nut and its M3 washers of 3.2 mm', () => {
    const model = headWith({ bolt: { shankDiameterMm: 4, threadPitchMm: 0.7 } });
    const told = misfits(model).map(({ own, seat }) => `${own.kind} on ${seat.kind}`);
    expect(told.toSorted()).toEqual([
      'hole on shank',
      'hole on shank',
      'hole on shank',
      'shank on hole',
      'thread on thread',
    ]);
    const words = findWarnings(new HeadForces(model), radians(-1), radians(1)).map(warningMessage);
    expect(words.some((line) => line.includes('(shank 4 mm) does not fit'))).toBe(true);
  });

  test('are told of a nut of the same diameter and a finer pitch', () => {
    const [found, ...more] = misfits(headWith({ nut: { threadPitchMm: 0.35 } }));
    expect(more).toEqual([]);
    expect(found.own).toEqual({ kind: 'thread', diameterMm: 3, pitchMm: 0.35 });
    expect(found.seat).toEqual({ kind: 'thread', diameterMm: 3, pitchMm: 0.5 });
  });
});

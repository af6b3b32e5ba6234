import { describe, expect, it } from 'vitest';
import { planSlots } from '../../../src/panels/chart/shareSlots';

function parts(sizes: Readonly<Record<string, number>>) {
  return Object.entries(sizes).map(([id, size]) => ({ id, size }));
}

describe('the slots of the share lines', () => {
  it('give every part its own while there are six or fewer', () => {
    const plan = planSlots([], parts({ a: 1, b: 6, c: 2, d: 5, e: 3, f: 4 }));
    expect(plan.parts).toEqual(['b', 'd', 'f', 'e', 'c', 'a']);
    expect(plan.others).toEqual([]);
  });

  it('keep the five largest of more, and add up the rest', () => {
    const plan = planSlots([], parts({ a: 7, b: 6, c: 5, d: 4, e: 3, f: 2, g: 1 }));
    expect(plan.parts).toEqual(['a', 'b', 'c', 'd', 'e', null]);
    expect(plan.others).toEqual(['f', 'g']);
  });

  it('do not swap when the order of size does', () => {
    const before = planSlots([], parts({ a: 3, b: 2, c: 1 })).parts;
    expect(planSlots(before, parts({ a: 1, b: 2, c: 3 })).parts).toEqual(before);
  });

  it('pass a freed slot to the newcomer', () => {
    const before = ['a', 'b', 'c', 'd', 'e', null];
    const plan = planSlots(before, parts({ a: 9, b: 1, c: 8, d: 7, e: 6, f: 5, g: 2 }));
    expect(plan.parts).toEqual(['a', 'f', 'c', 'd', 'e', null]);
    expect(plan.others).toEqual(['g', 'b']);
  });

  it('leave out what weighs nothing', () => {
    expect(planSlots([], parts({ a: 1, hidden: 0 })).parts).toEqual([
      'a',
      null,
      null,
      null,
      null,
      null,
    ]);
    expect(planSlots([], parts({ hidden: 0 })).parts.every((id) => id === null)).toBe(true);
  });
});

import { describe, expect, it, vi } from 'vitest';
import { createKeeping } from '../../../src/state/keep/keeping';
import type { KeepPorts, Work } from '../../../src/state/keep/ports';
import { ask } from '../../../src/state/keep/rights';

// A design that is new in this tab may be written before the browser has granted the right. Another tab can open it in between
// and be granted it first: found by the interleavings of losses.test.ts, seed 12915, with writes 16 ms later than they are now.

/** A keeper of a design that is new here, asking for the right; `line` is told how that goes. */
function asking() {
  const told: string[] = [];
  const state = { design: { name: 'made here' }, opening: 0 };
  const work = { state: () => state, textOf: () => 'made here' } as unknown as Work;
  const take = vi.fn<KeepPorts['locks']['take']>(() => () => undefined);
  const ports = {
    locks: { real: true, take },
    now: () => 1000,
    newId: () => 'id',
    tell: ({ kind }) => told.push(kind),
  } as Partial<KeepPorts> as KeepPorts;
  const flush = vi.fn(async () => undefined);
  const keeping = createKeeping(work, ports, { origin: null, latest: 0 }, flush);
  ask(keeping, keeping.slot);
  return { keeping, told, flush, line: take.mock.calls[0][1] };
}

describe('the right to write a design that is new here', () => {
  it('is another tab’s where that was granted it after the first write, which is said', () => {
    const { keeping, told, flush, line } = asking();
    keeping.slot.revision = 1;
    line.waiting();
    expect(keeping.slot.right).toBe('elsewhere');
    expect(keeping.status.getState().state).toBe('otherTab');
    expect(told).toEqual(['otherTab']);
    expect(flush).toHaveBeenCalledOnce();
  });

  it('is this tab’s as long as it is stored nowhere, however long the browser takes', () => {
    const { keeping, told, line } = asking();
    line.waiting();
    expect(keeping.slot.right).toBe('mine');
    expect(told).toEqual([]);
  });
});

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keepTallest } from '../../../src/panels/dial/keepTallest';
import { type AppStore, createAppStore } from '../../../src/state/store';

describe('the height of what is written below the dial', () => {
  let store: AppStore;
  let root: { offsetHeight: number; style: { minHeight: string } };
  let stop: () => void;
  let seen: () => void;

  /** The page lays it out: as high as its lines are, or as it is kept. */
  function lines(height: number): number {
    root.offsetHeight = Math.max(height, Number.parseFloat(root.style.minHeight) || 0);
    seen();
    return root.offsetHeight;
  }

  beforeEach(() => {
    vi.stubGlobal(
      'ResizeObserver',
      class {
        constructor(observed: () => void) {
          seen = observed;
        }
        observe() {}
        disconnect() {}
      },
    );
    store = createAppStore();
    root = { offsetHeight: 0, style: { minHeight: '' } };
    stop = keepTallest(root as unknown as HTMLElement, store);
  });

  afterEach(() => {
    stop();
    vi.unstubAllGlobals();
  });

  it('is that of its lines while nothing is dragged', () => {
    expect([118, 142, 118].map(lines)).toEqual([118, 142, 118]);
  });

  it('is not given back in a drag, neither what there was at the beginning nor what was taken', () => {
    lines(142);
    store.setState({ gesture: true });
    expect([118, 142, 166, 94, 118].map(lines)).toEqual([142, 142, 166, 166, 166]);
    store.setState({ gesture: false });
    expect(lines(118)).toBe(118);
  });

  it('begins anew with each drag', () => {
    lines(166);
    store.setState({ gesture: true });
    lines(118);
    store.setState({ gesture: false });
    lines(94);
    store.setState({ gesture: true });
    expect(lines(70)).toBe(94);
  });
});

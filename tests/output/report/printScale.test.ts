import { describe, expect, it } from 'vitest';
import { pagesNeeded, type StripBlock } from '../../../src/output/report/printScale';

/** Blocks one under the other, by their heights; letters say what each is. */
function strip(
  ...pieces: readonly (readonly [number, 'whole' | 'cut' | 'heading'])[]
): StripBlock[] {
  let top = 0;
  return pieces.map(([height, kind]) => {
    const block = { top, bottom: top + height, cut: kind === 'cut', heading: kind === 'heading' };
    top += height;
    return block;
  });
}

describe('the pages that a strip of blocks needs (counted by hand)', () => {
  it('fills a page to its end', () => {
    expect(pagesNeeded(strip([60, 'whole'], [40, 'whole']), 100)).toBe(1);
    expect(pagesNeeded(strip([60, 'whole'], [41, 'whole']), 100)).toBe(2);
  });

  it('takes a heading over with the block that does not fit: 35 and 60 go to the second, 30 to the third', () => {
    const blocks = strip(
      [70, 'whole'],
      [10, 'heading'],
      [35, 'whole'],
      [55, 'whole'],
      [30, 'whole'],
    );
    // Second page: heading 10, 35 and 55 are just 100; without the heading 30 more would still not fit.
    expect(pagesNeeded(blocks, 100)).toBe(3);
    expect(pagesNeeded(blocks.slice(0, 4), 100)).toBe(2);
    expect(pagesNeeded(blocks.slice(0, 4), 99)).toBe(3);
  });

  it('lets what may be cut run on over as many pages as it takes', () => {
    expect(pagesNeeded(strip([50, 'whole'], [250, 'cut']), 100)).toBe(3);
    expect(pagesNeeded(strip([50, 'whole'], [251, 'cut']), 100)).toBe(4);
  });

  it('is one page for nothing', () => {
    expect(pagesNeeded([], 100)).toBe(1);
  });
});

import { describe, expect, it } from 'vitest';
import {
  including,
  moved,
  usualWindow,
  WHOLE_WINDOW,
  zoomed,
} from '../../../src/panels/chart/pitchWindow';

describe('the pitches in view', () => {
  it('zoom about a pitch that stays where it is', () => {
    expect(zoomed({ from: -60, to: 60 }, 0.5, 20)).toEqual({ from: -20, to: 40 });
  });

  it('never leave the range, never get narrower than two degrees', () => {
    expect(zoomed({ from: -60, to: 60 }, 10, 0)).toEqual(WHOLE_WINDOW);
    expect(zoomed({ from: 80, to: 90 }, 2, 80)).toEqual({ from: 70, to: 90 });
    const narrow = zoomed({ from: -2, to: 2 }, 0.01, 0);
    expect(narrow.to - narrow.from).toBeCloseTo(2, 12);
    expect(moved({ from: -60, to: 60 }, 50)).toEqual({ from: -30, to: 90 });
  });

  it('go along with a pitch pointer that would leave them', () => {
    expect(including({ from: -10, to: 10 }, 12)).toEqual({ from: -8, to: 12 });
    expect(including({ from: -10, to: 10 }, 3)).toEqual({ from: -10, to: 10 });
    expect(usualWindow(0)).toEqual({ from: -60, to: 60 });
    expect(usualWindow(-75)).toEqual({ from: -75, to: 60 });
  });
});

import { describe, expect, it } from 'vitest';
import { firstFold, followedFold } from '../../../src/panels/fields/foldState';

describe('a group of fields that folds', () => {
  it('is open at first where it has values of its own, unless a person closed it', () => {
    expect(firstFold(undefined, 2).open).toBe(true);
    expect(firstFold(undefined, 0).open).toBe(false);
    expect(firstFold(false, 2).open).toBe(false);
    expect(firstFold(true, 0).open).toBe(true);
  });

  it('never closes by itself when its last value goes back to the usual one', () => {
    const open = firstFold(undefined, 1);
    expect(followedFold(open, 0).open).toBe(true);
  });

  it('opens by itself when a value is set in it, and then stays open', () => {
    const opened = followedFold(firstFold(undefined, 0), 1);
    expect(opened.open).toBe(true);
    expect(followedFold(opened, 0).open).toBe(true);
  });

  it('stays closed where a person closed it', () => {
    const closed = { open: false, pressed: true };
    expect(followedFold(closed, 3)).toBe(closed);
  });
});

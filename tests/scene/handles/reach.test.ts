import { describe, expect, it } from 'vitest';
import { reach } from '../../../src/scene/handles/reach';

interface Refused {
  readonly limit?: number;
  readonly why: string;
}

/** Takes values up to `most`, and names the limit or keeps it to itself. */
function upTo(most: number, named: boolean, strict = false) {
  const taken: number[] = [];
  const write = (value: number): Refused | null => {
    if (strict ? value < most : value <= most) {
      taken.push(value);
      return null;
    }
    return named ? { limit: most, why: 'most' } : { why: 'other' };
  };
  return { write, taken, limitOf: ({ limit }: Refused) => limit ?? null };
}

describe('a drag past a limit', () => {
  it('takes what is allowed as it is', () => {
    const { write, limitOf } = upTo(40, true);
    expect(reach(10, 12.3, 0.1, write, limitOf)).toEqual({ value: 12.3, refused: null });
  });
  it('stops at the limit that is named, and says why', () => {
    const { write, limitOf } = upTo(40.25, true);
    const reached = reach(39.9, 55, 0.1, write, limitOf);
    expect(reached.value).toBe(40.25);
    expect(reached.refused?.why).toBe('most');
  });
  it('stops at the last step before a limit that is itself not allowed', () => {
    const { write, limitOf, taken } = upTo(40, true, true);
    expect(reach(38, 55, 0.1, write, limitOf).value).toBe(39.9);
    expect(taken.at(-1)).toBe(39.9);
  });
  it('finds the last step where another rule is in the way', () => {
    const { write, limitOf, taken } = upTo(12.34, false);
    expect(reach(3, 90, 0.1, write, limitOf).value).toBe(12.3);
    expect(taken.at(-1)).toBe(12.3);
  });
  it('stays where it stands when the next step is refused, and writes nothing', () => {
    const { write, limitOf, taken } = upTo(40, true);
    expect(reach(40, 55, 0.1, write, limitOf).value).toBe(40);
    expect(taken.filter((value) => value !== 40)).toHaveLength(0);
  });
  it('goes down as well as up', () => {
    const write = (value: number) => (value >= -2.05 ? null : { why: 'least' });
    expect(reach<Refused>(1, -9, 0.1, write, () => null).value).toBe(-2);
  });
});

import type { Chance } from './toleranceTypes';

export function chanceOf(kept: number, count: number): Chance {
  const share = count > 0 ? kept / count : Number.NaN;
  return { share, standardError: Math.sqrt((share * (1 - share)) / count) };
}

import type { LimitProblem } from './contract';

/** Rules whose limit has to be worked out first; `below` and `atMost` of the contract compare two parameters. */

const holds: Readonly<Record<LimitProblem['rule'], (value: number, limit: number) => boolean>> = {
  below: (value, limit) => value < limit,
  above: (value, limit) => value > limit,
  atMost: (value, limit) => value <= limit,
  atLeast: (value, limit) => value >= limit,
};

/** The problem in a list when `value` breaks the rule, else an empty list. Everything in the field's unit. */
export function demand(
  field: string,
  value: number,
  rule: LimitProblem['rule'],
  limit: number,
  against: string,
): LimitProblem[] {
  return holds[rule](value, limit) ? [] : [{ field, rule, limit, against }];
}

/** Coarsest pitch that is still taken for a thread, as a share of the diameter (ISO 261 stays below 0.26). */
export const COARSEST_PITCH = 0.4;

/** A pitch must leave a core: at most `COARSEST_PITCH` of the thread diameter. */
export function requirePitch(pitchMm: number, diameterMm: number): LimitProblem[] {
  const limit = COARSEST_PITCH * diameterMm;
  return demand('threadPitchMm', pitchMm, 'atMost', limit, 'four tenths of the thread diameter');
}

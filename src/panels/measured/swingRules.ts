import type { MessageKey } from '../../messages';

/** How a balance point is found, and how the pendulum is swung: on screen and on paper. */
export const BALANCE_RULES = [
  'measured.balance1',
  'measured.balance2',
  'measured.balance3',
] as const satisfies readonly MessageKey[];

export const SWING_RULES = [
  'measured.rule1',
  'measured.rule2',
  'measured.rule3',
  'measured.rule4',
  'measured.rule5',
] as const satisfies readonly MessageKey[];

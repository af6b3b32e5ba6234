import { checkNumber, wrongType } from './checkNumber';
import { type DesignFault, fault } from './fault';
import type { NumberLimits } from './limits';
import {
  MAX_SWINGS,
  MEASURED_LIMITS,
  type Measured,
  SWING_AXES,
  SWING_LIMITS,
  SWING_REQUIRED,
  type Swing,
} from './measured';

/** The first fault of what was measured, each number by itself, or null. `path` leads to it (`parts[2].measured`). */
export function checkMeasured(measured: Measured, path: string): DesignFault | null {
  const { swings, ...numbers } = measured;
  const found = checkNumbers(numbers, MEASURED_LIMITS, path);
  if (found || swings === undefined) return found;
  if (!Array.isArray(swings)) return fault(`${path}.swings`, wrongType('list', swings));
  if (swings.length > MAX_SWINGS) {
    return fault(`${path}.swings`, { code: 'tooMany', count: swings.length, limit: MAX_SWINGS });
  }
  return checkSwings(swings, `${path}.swings`);
}

function checkSwings(swings: readonly Swing[], path: string): DesignFault | null {
  const seen = new Set<string>();
  for (let i = 0; i < swings.length; i++) {
    const { about, ...numbers } = swings[i];
    const here = `${path}[${i}]`;
    if (!SWING_AXES.includes(about)) {
      return fault(`${here}.about`, {
        code: 'notAChoice',
        found: String(about),
        options: SWING_AXES,
      });
    }
    if (seen.has(about)) return fault(`${here}.about`, { code: 'repeatedAxis', axis: about });
    seen.add(about);
    for (const name of SWING_REQUIRED) {
      if (numbers[name] === undefined) return fault(`${here}.${name}`, { code: 'missing' });
    }
    const found = checkNumbers(numbers, SWING_LIMITS, here);
    if (found) return found;
  }
  return null;
}

export function checkNumbers(
  numbers: object,
  limits: Readonly<Record<string, NumberLimits>>,
  path: string,
): DesignFault | null {
  const held = numbers as Readonly<Record<string, unknown>>;
  for (const name in limits) {
    if (held[name] === undefined) continue;
    const found = checkNumber(held[name], limits[name], `${path}.${name}`);
    if (found) return found;
  }
  return null;
}

import { type DesignFault, fault } from './fault';
import type { NumberLimits } from './limits';

/** The fault of one number against its limits (both allowed), or null. */
export function checkNumber(
  value: unknown,
  limits: NumberLimits,
  path: string,
): DesignFault | null {
  if (typeof value !== 'number') return fault(path, wrongType('number', value));
  if (!Number.isFinite(value)) return fault(path, { code: 'notFinite' });
  if (limits.whole && !Number.isInteger(value)) return fault(path, { code: 'notWhole', value });
  const { min, max, unit } = limits;
  if (value < min) return fault(path, { code: 'tooSmall', value, limit: min, unit });
  if (value > max) return fault(path, { code: 'tooLarge', value, limit: max, unit });
  return null;
}

export function wrongType(expected: string, value: unknown) {
  return { code: 'wrongType', expected, found: typeName(value) } as const;
}

/** What a JSON value is, in a person's words. */
export function typeName(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'list';
  return typeof value === 'string' ? 'text' : typeof value;
}

import { checkNumber, wrongType } from './checkNumber';
import type { Tolerance } from './design';
import { type DesignFault, fault } from './fault';
import { MAX_ID } from './limits';
import {
  MAX_FIELD_NAME,
  MAX_OWN_TOLERANCES,
  type OwnTolerance,
  PLUS_MINUS_LIMITS,
} from './sections/tolerance';

/**
 * The first fault in the list of own tolerances, or null. Whether the part and its number are there is not asked: a part
 * that is deleted leaves its row behind, which then counts for nothing.
 */
export function checkOwnTolerances({ own = [] }: Tolerance): DesignFault | null {
  const path = 'tolerance.own';
  if (!Array.isArray(own)) return fault(path, wrongType('list', own));
  if (own.length > MAX_OWN_TOLERANCES) {
    return fault(path, { code: 'tooMany', count: own.length, limit: MAX_OWN_TOLERANCES });
  }
  const rows: readonly OwnTolerance[] = own;
  const seen = new Map<string, number>();
  for (let i = 0; i < rows.length; i++) {
    const found = checkRow(rows[i], `${path}[${i}]`);
    if (found) return found;
    const { part, field, component } = rows[i];
    const key = JSON.stringify([part, field, component]);
    const first = seen.get(key);
    if (first !== undefined) {
      const detail = `tolerance.own[${first}] gives the same number a tolerance already`;
      return fault(`${path}[${i}]`, { code: 'unsound', detail });
    }
    seen.set(key, i);
  }
  return null;
}

function checkRow(row: OwnTolerance, path: string): DesignFault | null {
  return (
    checkText(row.part, MAX_ID, `${path}.part`) ??
    checkText(row.field, MAX_FIELD_NAME, `${path}.field`) ??
    (row.component === undefined
      ? null
      : checkNumber(
          row.component,
          { min: 0, max: 2, unit: '1', whole: true },
          `${path}.component`,
        )) ??
    checkNumber(row.plusMinus, PLUS_MINUS_LIMITS, `${path}.plusMinus`)
  );
}

function checkText(text: unknown, limit: number, path: string): DesignFault | null {
  if (typeof text !== 'string') return fault(path, wrongType('text', text));
  if (text === '') return fault(path, { code: 'emptyText' });
  return text.length > limit
    ? fault(path, { code: 'textTooLong', length: text.length, limit })
    : null;
}

import { fail, type Result, succeed } from '../engine/result';
import type { ListLimits } from './planLimits';

export type ListFault =
  | { readonly kind: 'empty' }
  | { readonly kind: 'notANumber'; readonly text: string }
  /** One comma between digits, and nothing beside it that tells: a decimal comma or two numbers. */
  | { readonly kind: 'unclear'; readonly text: string }
  | { readonly kind: 'outOfRange'; readonly value: number }
  | { readonly kind: 'tooMany'; readonly count: number };

/** Letters. */
const LONGEST = 4000;
const NUMBER = /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;

/**
 * Numbers typed in a row, ascending and each once. Blanks and semicolons part them, and commas where they can be nothing else;
 * a comma between digits is a decimal comma where blanks or semicolons part the numbers. What could be read both ways
 * ("10,20", "2,5, 5") is refused.
 */
export function readNumberList(
  text: string,
  { min, max, most }: ListLimits,
): Result<readonly number[], ListFault> {
  // Longer than any list that is typed: not gone through.
  if (text.length > LONGEST) return fail({ kind: 'notANumber', text: `${text.slice(0, 40)}...` });
  const plain = text
    .replace(/[\u2212\u2010-\u2015]/g, '-')
    .replaceAll('\u00b0', ' ')
    .replace(/\s*;\s*/g, ';')
    .trim();
  const comma = commaOf(plain);
  if (comma === null) return fail({ kind: 'unclear', text: plain });
  const tokens = plain.split(comma === 'parts' ? /[\s;,]+/ : /,?[\s;]+|,$/);
  const values = new Set<number>();
  for (const token of tokens.filter((one) => one !== '')) {
    const value = NUMBER.test(token) ? Number(token.replace(',', '.')) + 0 : Number.NaN;
    if (!Number.isFinite(value)) return fail({ kind: 'notANumber', text: token });
    if (value < min || value > max) return fail({ kind: 'outOfRange', value });
    values.add(value);
  }
  if (values.size === 0) return fail({ kind: 'empty' });
  if (values.size > most) return fail({ kind: 'tooMany', count: values.size });
  return succeed([...values].toSorted((a, b) => a - b));
}

/** What commas do in a text: part numbers, or stand for the decimal point; null where it could be either. */
function commaOf(text: string): 'parts' | 'decimal' | null {
  const inner = text.match(/\d,(?=\d)/g)?.length ?? 0;
  const parting = text.match(/,(?=[\s;]|[-+])/g)?.length ?? 0;
  if (inner === 0 || text.includes('.')) return 'parts';
  // Nothing else parts the numbers: more than one comma, or one before a sign, must.
  if (!/[\s;]/.test(text)) return inner + parting > 1 ? 'parts' : null;
  return parting > 0 || /\d,\d+,\d/.test(text) ? null : 'decimal';
}

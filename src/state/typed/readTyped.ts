import { checkNumber } from '../../design/checkNumber';
import type { DesignFault } from '../../design/fault';
import { faultMessage } from '../../design/faultText';
import type { NumberLimits } from '../../design/limits';
import { t } from '../../messages';
import { limitText, type ShownUnit } from '../shownUnits';
import { parseQuantity, type QuantityFault } from './parseQuantity';

export type TypedNumber =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly reason: string };

/** A typed text as a number of the document's unit, or why it is none. `kept` is what the field falls back to, in words. */
export function readTyped(
  text: string,
  field: { readonly label: string; readonly unit: Parameters<typeof parseQuantity>[1] },
  unit: ShownUnit,
  kept: string | null,
): TypedNumber {
  // Where one unit is shown only, its typed name is the document's own.
  const name = field.unit === 'g mm2' ? field.unit : unit.name;
  const parsed = parseQuantity(text, field.unit, name);
  return parsed.ok ? parsed : { ok: false, reason: typedFault(parsed.error, field.label, kept) };
}

/** Why typed text was not read, in words; `kept` null where there is nothing to fall back to. */
function typedFault(fault: QuantityFault, field: string, kept: string | null): string {
  const text = 'text' in fault ? fault.text.slice(0, 40) : '';
  switch (fault.code) {
    case 'empty':
    case 'notANumber':
      if (kept === null) return t('measured.typedNotANumber', { field, text });
      return fault.code === 'empty'
        ? t('fields.typedEmpty', { field, kept })
        : t('fields.typedNotANumber', { field, text, kept });
    case 'ambiguousComma':
      return t('fields.typedAmbiguousComma', { field, text });
    case 'ambiguousPoint':
      return t('fields.typedAmbiguousPoint', { field, text });
    case 'unknownUnit':
      return t('fields.typedUnknownUnit', { field, text });
    case 'wrongUnit':
      return t('fields.typedWrongUnit', { field, text });
    case 'divideByZero':
      return t('fields.typedDivideByZero', { field });
  }
}

/** Why a value lies outside the field's own limits, in the units on screen; null where it does not. */
export function outOfLimits(
  { label, limits }: { readonly label: string; readonly limits: NumberLimits },
  value: number | undefined,
  unit: ShownUnit,
): string | null {
  const found: DesignFault | null = value === undefined ? null : checkNumber(value, limits, '');
  if (!found) return null;
  const { reason } = found;
  const limit = (bound: number) => limitText(bound, unit);
  switch (reason.code) {
    case 'tooSmall':
      return t('fields.atLeast', { field: label, limit: limit(reason.limit) });
    case 'tooLarge':
      return t('fields.atMost', { field: label, limit: limit(reason.limit) });
    case 'notWhole':
      return t('fields.notWhole', { field: label });
    default:
      return t('fields.notAllowed', { field: label, reason: faultMessage(reason) });
  }
}

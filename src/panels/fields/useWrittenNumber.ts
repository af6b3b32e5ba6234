import { type RefObject, useEffect, useRef } from 'react';
import { type ShownUnit, shownNumber, shownText } from '../../state/shownUnits';
import { useLive } from '../../ui/useLive';
import type { NumberField } from './fieldModel';

/**
 * Writes what a drag elsewhere makes of a field's number straight into its input, as it goes and outside React,
 * unless something is being typed there. React puts the same there when the drag is over.
 */
export function useWrittenNumber(
  field: NumberField,
  unit: ShownUnit,
  typing: boolean,
): RefObject<HTMLInputElement | null> {
  const input = useRef<HTMLInputElement>(null);
  const written = useRef(Number.NaN);
  // After React has written, what stands there is its own.
  useEffect(() => {
    written.current = Number.NaN;
  });
  useLive((_, changes) => {
    const element = input.current;
    if (!element || typing || !changes.design) return;
    const value = field.read();
    if (value === written.current) return;
    written.current = value;
    const text = shownNumber(value, unit);
    if (element.value !== text) element.value = text;
    element.setAttribute('aria-valuenow', String(value));
    element.setAttribute('aria-valuetext', shownText(value, unit));
  }, 'lists');
  return input;
}

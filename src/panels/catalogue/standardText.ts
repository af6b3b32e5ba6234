import type { Part } from '../../design/design';
import { partText, t } from '../../messages';
import { inSentence } from '../../messages/inSentence';
import { localNumber } from '../../messages/numbers';
import type { ParameterValue } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { fieldLabel } from '../../state/refusalText';
import type { DisplayUnits } from '../../state/settings';
import { shownText, shownUnit } from '../../state/shownUnits';
import { lengthText, referenceText } from '../../state/words/catalogueText';
import { leftStandard, type OddLength, oddLength } from './leftStandard';

/** A parameter's value with its unit, or a choice in words. */
export function valueText(
  part: Part,
  field: string,
  value: ParameterValue,
  units: DisplayUnits,
): string {
  const parameter = partType(part.kind).parameters[field];
  if (parameter.type === 'choice') {
    const option = String(value);
    const label = parameter.optionLabels[option];
    return inSentence(partText(`part.${part.kind}.${field}.${option}`, label));
  }
  if (typeof value !== 'number' || !('unit' in parameter)) return localNumber(String(value));
  return shownText(value, shownUnit(parameter.unit, units));
}

/** "22 mm is not a standard length of ISO 4762 M3; next are 20 mm and 25 mm." */
export function oddLengthText({ standard, size, lengthMm, next }: OddLength): string {
  const name = referenceText({ standard, size });
  const length = lengthText(size, lengthMm);
  const [below, above] = [next.below, next.above].map((one) =>
    one === undefined ? undefined : lengthText(size, one),
  );
  if (below !== undefined && above !== undefined) {
    return t('catalogue.oddLength', { length, name, below, above });
  }
  return t('catalogue.oddLengthOne', { length, name, next: below ?? above ?? '' });
}

/** One line for each thing in which a part has left its row: "Head height 3.2 mm, standard 3 mm". */
export function leftStandardLines(part: Part, units: DisplayUnits): string[] {
  const lines = leftStandard(part).map(({ field, value, standard }) =>
    t('catalogue.differs', {
      field: fieldLabel(part, field),
      value: valueText(part, field, value, units),
      standard: valueText(part, field, standard, units),
    }),
  );
  const odd = oddLength(part);
  return odd ? [...lines, oddLengthText(odd)] : lines;
}

import { t } from '../../messages';
import type { DifferenceRow } from '../../state/words/differences';
import type { VariantColumn } from './columns';

/** The table as text to copy, tabs between: names first, then parts, then what the heads do, the signs last. */
export function tableText(
  design: string,
  columns: readonly VariantColumn[],
  parts: readonly DifferenceRow[],
  head: readonly DifferenceRow[],
): string {
  const names = columns.map(({ entry }) =>
    oneCell(entry.adopted ? t('tryOuts.optionAdopted', { name: entry.name }) : entry.name),
  );
  const line = ({ label, cells }: DifferenceRow) =>
    [label, ...cells.map(({ text }) => text)].map(oneCell).join('\t');
  return [
    oneCell(design),
    [t('tryOuts.what'), ...names].join('\t'),
    ...parts.map(line),
    ...head.map(line),
    t('tryOuts.signsCopied'),
  ].join('\n');
}

/** What a person typed must not break the table. */
function oneCell(text: string): string {
  return text.replace(/\s*[\t\r\n]+\s*/g, ' ');
}

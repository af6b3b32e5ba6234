import { localNumber } from '../../messages/numbers';
import { plotColumns } from '../drawn/plotColumns';
import type { PlotData } from '../drawn/plotLayout';

/** Digits of a copied number: more than any gauge tells. */
const DIGITS = 6;

/**
 * A plot in numbers, tab between columns, for the clipboard: a line that says what holds, the axes' titles and units, then
 * a row for every place of x and every point. Decimal sign of the page's language; empty where a line has no value.
 */
export function plotText(data: PlotData, conditions: string): string {
  const columns = plotColumns(data);
  const rows = Array.from(columns[0].values, (_, i) =>
    columns.map(({ values }) => plainNumber(values[i])).join('\t'),
  );
  const head = columns.map(({ title }) => title).join('\t');
  return [conditions, head, ...rows].join('\n');
}

/** Of a table that is shown: its rows as they read, with the minus sign that other programs take for one. */
export function shownText(table: HTMLTableElement): string {
  const rows = Array.from(table.rows, (row) =>
    Array.from(row.cells, (cell) => cell.textContent.replaceAll('\u2212', '-')).join('\t'),
  );
  return [table.caption?.textContent ?? '', ...rows].join('\n');
}

function plainNumber(value: number | string): string {
  if (typeof value === 'string') return value;
  return Number.isFinite(value) ? localNumber(String(Number(value.toPrecision(DIGITS)))) : '';
}

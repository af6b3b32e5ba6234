import { localNumber } from '../../messages/numbers';
import type { SvgPlotData } from './svgPlot';

/** Digits of a copied number: more than any gauge tells. */
const DIGITS = 6;

/**
 * A plot in numbers, tab between columns, for the clipboard: a line that says what holds, the axes' titles and units, then
 * a row for every place of x. Decimal sign of the page's language; empty where a line has no value.
 */
export function plotText(data: SvgPlotData, conditions: string): string {
  const { x, lines, band, bandEdges } = data;
  const columns = lines.map(({ name, values }) => ({
    title: lines.length > 1 ? `${name}, ${data.yTitle}` : data.yTitle,
    values,
  }));
  if (band) columns.push({ title: `\u00b1, ${data.yTitle}`, values: band });
  if (bandEdges) {
    columns.push({ title: `\u2265, ${data.yTitle}`, values: bandEdges.low });
    columns.push({ title: `\u2264, ${data.yTitle}`, values: bandEdges.high });
  }
  const rows = Array.from(x, (at, i) =>
    [at, ...columns.map(({ values }) => values[i])].map(plainNumber).join('\t'),
  );
  const head = [data.xTitle, ...columns.map(({ title }) => title)].join('\t');
  return [conditions, head, ...rows].join('\n');
}

/** Of a table that is shown: its rows as they read, with the minus sign that other programs take for one. */
export function shownText(table: HTMLTableElement): string {
  const rows = Array.from(table.rows, (row) =>
    Array.from(row.cells, (cell) => cell.textContent.replaceAll('\u2212', '-')).join('\t'),
  );
  return [table.caption?.textContent ?? '', ...rows].join('\n');
}

function plainNumber(value: number): string {
  return Number.isFinite(value) ? localNumber(String(Number(value.toPrecision(DIGITS)))) : '';
}

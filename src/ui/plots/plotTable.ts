import { significant } from '../../state/quantities';
import { plotColumns, plotRowsToShow } from '../drawn/plotColumns';
import type { PlotData } from '../drawn/plotLayout';
import { setText } from '../drawn/svg';

/** Rows of a table of lines, at most: what one reads through. All places of x leave the page in a copy or a file. */
const MOST_ROWS = 25;

/**
 * Writes a plot's numbers into a table that has a head row, a body and a caption with its name (`PlotTable`): what they are
 * of is said in the caption once, and again in every column only where a second quantity stands beside it.
 */
export function writePlotTable(table: HTMLTableElement, data: PlotData): void {
  const columns = plotColumns(data);
  const places = plotRowsToShow(data, MOST_ROWS);
  const [head] = table.tHead?.rows ?? [];
  const body = table.tBodies[0];
  if (!head || !body) return;
  const { caption } = table;
  if (caption) {
    const { name = '' } = caption.dataset;
    setText(caption, data.below ? name : `${name}. ${data.yTitle}`);
  }
  writeRow(
    head,
    columns.map(({ title, name }) => (data.below ? title : name)),
    'col',
  );
  while (body.rows.length > places.length) body.deleteRow(-1);
  places.forEach((place, i) => {
    const row = body.rows[i] ?? body.insertRow();
    writeRow(
      row,
      columns.map(({ values }) => numberText(values[place])),
      'row',
    );
  });
}

/** Cells that are there already are written anew. In the head every cell is one of a heading, in a row the first. */
function writeRow(row: HTMLTableRowElement, texts: readonly string[], scope: 'col' | 'row'): void {
  while (row.cells.length > texts.length) row.deleteCell(-1);
  texts.forEach((text, i) => {
    setText(row.cells[i] ?? addCell(row, i === 0 || scope === 'col' ? scope : null), text);
  });
}

function addCell(row: HTMLTableRowElement, scope: 'col' | 'row' | null): HTMLTableCellElement {
  if (scope === null) return row.insertCell();
  const cell = document.createElement('th');
  cell.scope = scope;
  row.append(cell);
  return cell;
}

function numberText(value: number | string): string {
  if (typeof value === 'string') return value;
  return Number.isFinite(value) ? significant(value) : '\u2013';
}

import { type ClipboardEvent, type KeyboardEvent, useRef, useState } from 'react';
import { useAppState } from '../../../ui/session';
import type { Travel } from '../../readings/types';
import { say } from '../../say';
import {
  EMPTY_ROW,
  type GridFault,
  type GridRow,
  gridFromPaste,
  rowsOfGrid,
} from '../../typedRows';
import { useDesk } from '../useDesk';

const FIRST_ROWS = 8;
const TRAVELS: readonly Travel[] = ['push', 'pull', 'up', 'down', 'held'];

/** Readings typed by hand. Enter goes down and makes a row at the end; cells from a spreadsheet can be pasted. */
export function TypedGrid({ onDone }: { readonly onDone: () => void }) {
  const desk = useDesk();
  const unit = useAppState((state) => state.settings.units.force);
  const [grid, setGrid] = useState<readonly GridRow[]>(() =>
    Array.from({ length: FIRST_ROWS }, () => EMPTY_ROW),
  );
  const [faults, setFaults] = useState<readonly GridFault[]>([]);
  const body = useRef<HTMLTableSectionElement>(null);

  function change(row: number, next: Partial<GridRow>): void {
    setGrid(grid.map((one, k) => (k === row ? { ...one, ...next } : one)));
  }
  function paste(event: ClipboardEvent, row: number): void {
    const text = event.clipboardData.getData('text/plain');
    if (!/[\t;\n]/.test(text.trim())) return;
    event.preventDefault();
    const added = gridFromPaste(text);
    setGrid([...grid.slice(0, row), ...added, ...grid.slice(row + added.length)]);
  }
  function down(event: KeyboardEvent, row: number, column: number): void {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    if (row === grid.length - 1) setGrid([...grid, EMPTY_ROW]);
    requestAnimationFrame(() =>
      body.current?.rows[row + 1]?.querySelectorAll('input')[column]?.focus(),
    );
  }
  function take(): void {
    const rows = rowsOfGrid(grid, unit);
    if (!rows.ok) return setFaults(rows.error);
    if (rows.value.length === 0) return;
    desk.addRun({ name: say('benchRoom.typed'), rows: rows.value });
    onDone();
  }
  const isWrong = (row: number, field: 'pitch' | 'force') =>
    faults.some((fault) => fault.row === row + 1 && fault.field === field);

  return (
    <div className="bench-stack" data-testid="bench-grid">
      <p className="lower-quiet">{say('benchRoom.gridHelp')}</p>
      <table className="bench-grid">
        <thead>
          <tr>
            <th scope="col">{say('benchRoom.row')}</th>
            <th scope="col">{say('benchRoom.gridPitch')}</th>
            <th scope="col">{say('benchRoom.gridForce', { unit })}</th>
            <th scope="col">{say('benchRoom.head.travel')}</th>
            <th scope="col">{say('benchRoom.meta.note')}</th>
          </tr>
        </thead>
        <tbody ref={body}>
          {grid.map((row, k) => (
            <tr key={k}>
              <th scope="row">{k + 1}</th>
              {(['pitch', 'force'] as const).map((field, column) => (
                <td key={field}>
                  <input
                    className="bench-input bench-number"
                    inputMode="decimal"
                    aria-label={say('benchRoom.gridCell', {
                      row: k + 1,
                      field: say(`benchRoom.grid.${field}`),
                    })}
                    aria-invalid={isWrong(k, field)}
                    value={row[field]}
                    onChange={({ target }) => change(k, { [field]: target.value })}
                    onPaste={(event) => paste(event, k)}
                    onKeyDown={(event) => down(event, k, column)}
                  />
                </td>
              ))}
              <td>
                <select
                  className="ui-select"
                  aria-label={say('benchRoom.gridCell', {
                    row: k + 1,
                    field: say('benchRoom.head.travel'),
                  })}
                  value={row.travel}
                  onChange={({ target }) => change(k, { travel: target.value as Travel | '' })}
                >
                  <option value="">{say('benchRoom.notSaid')}</option>
                  {TRAVELS.map((travel) => (
                    <option key={travel} value={travel}>
                      {say(`benchRoom.travel.${travel}`)}
                    </option>
                  ))}
                </select>
              </td>
              <td>
                <input
                  className="bench-input"
                  aria-label={say('benchRoom.gridCell', {
                    row: k + 1,
                    field: say('benchRoom.meta.note'),
                  })}
                  value={row.note}
                  onChange={({ target }) => change(k, { note: target.value })}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {faults.length > 0 && (
        <ul className="bench-words bench-fault" role="alert">
          {faults.map(({ row, field, why, min, max, unit: limitUnit }) => (
            <li key={`${row} ${field}`}>
              {say(`benchRoom.gridFault.${why}`, {
                row,
                field: say(`benchRoom.grid.${field}`),
                min: Number(min.toPrecision(4)),
                max: Number(max.toPrecision(4)),
                unit: limitUnit,
              })}
            </li>
          ))}
        </ul>
      )}
      <div className="bench-buttons">
        <button
          type="button"
          className="ui-button ui-button-main"
          data-testid="bench-grid-take"
          onClick={take}
        >
          {say('benchRoom.gridTake')}
        </button>
        <button type="button" className="ui-button" onClick={onDone}>
          {say('benchRoom.cancel')}
        </button>
      </div>
    </div>
  );
}

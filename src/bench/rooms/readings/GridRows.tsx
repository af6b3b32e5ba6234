import { type ClipboardEvent, type KeyboardEvent, useRef } from 'react';
import { BENCH_TRAVELS } from '../../../design/sections/bench';
import type { Travel } from '../../readings/types';
import { say } from '../../say';
import {
  EMPTY_ROW,
  type GridDraft,
  type GridFault,
  type GridRow,
  gridFromPaste,
} from '../../typedRows';

/** The cells. Enter and the arrows go up and down, Enter makes a row at the end; cells from a spreadsheet can be pasted. */
export function GridRows(props: {
  readonly draft: GridDraft;
  readonly faults: readonly GridFault[];
  readonly onRows: (rows: readonly GridRow[]) => void;
}) {
  const { draft, faults } = props;
  const { rows, place, unit } = draft;
  const body = useRef<HTMLTableSectionElement>(null);
  function change(row: number, next: Partial<GridRow>): void {
    props.onRows(rows.map((one, k) => (k === row ? { ...one, ...next } : one)));
  }
  function paste(event: ClipboardEvent, row: number): void {
    const text = event.clipboardData.getData('text/plain');
    if (!/[\t;\n]/.test(text.trim())) return;
    event.preventDefault();
    const added = gridFromPaste(text);
    props.onRows([...rows.slice(0, row), ...added, ...rows.slice(row + added.length)]);
  }
  function move(event: KeyboardEvent, row: number, field: string): void {
    const step = { Enter: 1, ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step === undefined || event.nativeEvent.isComposing) return;
    event.preventDefault();
    if (event.key === 'Enter' && row === rows.length - 1) props.onRows([...rows, EMPTY_ROW]);
    requestAnimationFrame(() =>
      body.current?.rows[row + step]
        ?.querySelector<HTMLInputElement>(`[data-field="${field}"]`)
        ?.focus(),
    );
  }
  const isWrong = (row: number, field: GridFault['field']) =>
    faults.some((fault) => fault.row === row + 1 && fault.field === field);
  const input = (row: number, field: 'pitch' | 'force' | 'note') => {
    const shown = field === 'pitch' ? place : field;
    return (
      <input
        className={field === 'note' ? 'bench-input' : 'bench-input bench-number'}
        inputMode={field === 'note' ? undefined : 'text'}
        autoComplete="off"
        aria-label={say('benchRoom.gridCell', {
          row: row + 1,
          field: shown === 'note' ? say('benchRoom.meta.note') : say(`benchRoom.grid.${shown}`),
        })}
        aria-invalid={isWrong(row, shown)}
        data-field={field}
        value={rows[row][field]}
        onChange={({ target }) => change(row, { [field]: target.value })}
        onPaste={(event) => field !== 'note' && paste(event, row)}
        onKeyDown={(event) => move(event, row, field)}
      />
    );
  };
  return (
    <table className="bench-grid">
      <thead>
        <tr>
          <th scope="col">{say('benchRoom.row')}</th>
          <th scope="col">
            {say(place === 'pitch' ? 'benchRoom.gridPitch' : 'benchRoom.gridScale')}
          </th>
          <th scope="col">{say('benchRoom.gridForce', { unit })}</th>
          <th scope="col">{say('benchRoom.head.travel')}</th>
          <th scope="col">{say('benchRoom.meta.note')}</th>
        </tr>
      </thead>
      <tbody ref={body}>
        {rows.map((row, k) => (
          <tr key={k}>
            <th scope="row">{k + 1}</th>
            <td>{input(k, 'pitch')}</td>
            <td>{input(k, 'force')}</td>
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
                {BENCH_TRAVELS.map((travel) => (
                  <option key={travel} value={travel}>
                    {say(`benchRoom.travel.${travel}`)}
                  </option>
                ))}
              </select>
            </td>
            <td>{input(k, 'note')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

import { useState } from 'react';
import { useAppState } from '../../../ui/session';
import { previewRows, type ReadingsPreview } from '../../readings/preview';
import { say } from '../../say';
import { ColumnHead } from './ColumnHead';
import { readingText } from './runText';

const ROWS = 40;

/** Rows of the text beside what was understood of each. */
export function PreviewTable({ preview }: { readonly preview: ReadingsPreview }) {
  const units = useAppState((state) => state.settings.units);
  const [count, setCount] = useState(ROWS);
  const { table, mapping } = preview;
  return (
    <>
      <div className="bench-preview-box">
        <table className="lower-table bench-preview">
          <thead>
            <tr>
              <th scope="col" className="lower-number">
                {say('benchRoom.row')}
              </th>
              {mapping.map((column, k) => (
                <ColumnHead key={k} preview={preview} column={column} place={k} />
              ))}
              <th scope="col">{say('benchRoom.understood')}</th>
            </tr>
          </thead>
          <tbody>
            {previewRows(preview, 0, count).map(({ row, cells, readings, faults }) => (
              <tr key={row} data-refused={faults.length > 0 || undefined}>
                <th scope="row" className="lower-number">
                  {row}
                </th>
                {mapping.map((_, k) => (
                  <td key={k}>{cells[k] ?? ''}</td>
                ))}
                <td>
                  {faults.length > 0
                    ? say('benchRoom.notTaken')
                    : readings
                        .map((one) => {
                          const { pitch, scale, time, load, travel } = readingText(one, units);
                          return [pitch || scale || time, load, travel].filter(Boolean).join(', ');
                        })
                        .join('; ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {count < table.rows.length && (
        <button type="button" className="bench-link" onClick={() => setCount(count + 10 * ROWS)}>
          {say('benchRoom.moreRows', { shown: count, count: table.rows.length })}
        </button>
      )}
    </>
  );
}

import { BadgeCheck } from 'lucide-react';
import { t } from '../../messages';
import type { DifferenceRow } from '../../state/words/differences';
import { MathText } from '../../ui/MathText';
import type { VariantColumn } from './columns';

/** No column is narrower. */
const COLUMN_PX = 102;

/** A column for each variant, the one on the stage first; rows of parts that differ, then of what the heads do. */
export function DifferenceTable(props: {
  readonly columns: readonly VariantColumn[];
  readonly parts: readonly DifferenceRow[];
  readonly head: readonly DifferenceRow[];
  readonly onSelect: (part: string) => void;
}) {
  const { columns, parts, head, onSelect } = props;
  return (
    <table
      className="lower-table try-table"
      style={{ minWidth: 124 + COLUMN_PX * columns.length }}
      data-testid="try-out-table"
    >
      <thead>
        <tr>
          <th scope="col">{t('tryOuts.what')}</th>
          {columns.map(({ entry }) => (
            <th scope="col" key={entry.id}>
              <span className="try-table-name" title={entry.name}>
                <span
                  className="try-out-mark"
                  data-shown={entry.parts === undefined}
                  aria-hidden="true"
                />
                <span>{entry.name}</span>
                {entry.adopted && <BadgeCheck aria-label={t('tryOuts.adopted')} />}
              </span>
              {entry.parts === undefined && <span className="ui-unseen">{t('tryOuts.shown')}</span>}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        <Group title={t('tryOuts.partRows')} span={columns.length + 1} />
        {parts.length === 0 && (
          <tr>
            <td colSpan={columns.length + 1}>{t('tryOuts.sameParts')}</td>
          </tr>
        )}
        {parts.map((row) => (
          <Row key={row.key} row={row} columns={columns} onSelect={onSelect} />
        ))}
        <Group title={t('tryOuts.headRows')} span={columns.length + 1} />
        {head.map((row) => (
          <Row key={row.key} row={row} columns={columns} onSelect={onSelect} />
        ))}
      </tbody>
    </table>
  );
}

function Group(props: { readonly title: string; readonly span: number }) {
  return (
    <tr className="try-table-group">
      <th scope="rowgroup" colSpan={props.span}>
        {props.title}
      </th>
    </tr>
  );
}

function Row(props: {
  readonly row: DifferenceRow;
  readonly columns: readonly VariantColumn[];
  readonly onSelect: (part: string) => void;
}) {
  const { key, label, part, cells } = props.row;
  return (
    <tr data-testid={`try-row-${key.replaceAll(' ', '-')}`}>
      <th scope="row">
        {part === null ? (
          <MathText text={label} />
        ) : (
          <button type="button" className="try-table-part" onClick={() => props.onSelect(part)}>
            {label}
          </button>
        )}
      </th>
      {cells.map(({ text, differs }, i) => (
        <td key={props.columns[i].entry.id} data-differs={differs}>
          {differs && <span aria-hidden="true">{'\u2260 '}</span>}
          {text}
        </td>
      ))}
    </tr>
  );
}

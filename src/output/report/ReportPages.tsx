import type { CSSProperties } from 'react';
import { MathText } from '../../ui/MathText';
import { FigureSvg } from './FigureSvg';
import type { Block, FactsBlock, FigureItem, ReportModel, ReportTitle, TableBlock } from './model';
import { t } from './roomText';

/**
 * The report as a document: always dark on light, sizes in millimetres and points. Tables, pictures and paragraphs are not
 * cut when it is printed; its foot, with the bar to check the scale by, comes on every sheet (a table's foot does that).
 */
export function ReportPages(props: {
  readonly report: ReportModel;
  /** Of all type, 1 as in the stylesheet. */
  readonly scale: number;
}) {
  const { report, scale } = props;
  const style = { '--k': scale } as CSSProperties;
  return (
    <table className="report-paper" role="presentation" style={style}>
      <tfoot>
        <tr>
          <td>
            <Foot title={report.title} />
          </td>
        </tr>
      </tfoot>
      <tbody>
        <tr>
          <td>
            <Title title={report.title} />
            {report.sections.map(({ id, title, blocks }) => (
              <section key={id} className="report-section" data-section={id}>
                <h2>{title}</h2>
                {grouped(blocks).map((group, at) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: blocks have no identity and hold no state
                  <Group key={at} group={group} />
                ))}
              </section>
            ))}
          </td>
        </tr>
      </tbody>
    </table>
  );
}

function Title({ title }: { readonly title: ReportTitle }) {
  const { kind, design, fields, note } = title;
  return (
    <header className="report-title">
      <p className="report-kind">{kind}</p>
      <h1>{design}</h1>
      <dl>
        {fields.map(({ label, value }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {note !== null && <p className="report-note">{note}</p>}
    </header>
  );
}

function Foot({ title }: { readonly title: ReportTitle }) {
  return (
    <div className="report-foot">
      <span className="report-bar">{t('report.bar')}</span>
      <span>
        {title.design} {'\u00b7'} {title.foot}
      </span>
    </div>
  );
}

/** Neighbouring groups of facts share their columns. */
function grouped(blocks: readonly Block[]): (Exclude<Block, FactsBlock> | readonly FactsBlock[])[] {
  const groups: (Exclude<Block, FactsBlock> | FactsBlock[])[] = [];
  for (const block of blocks) {
    const last = groups.at(-1);
    if (block.kind !== 'facts') groups.push(block);
    else if (Array.isArray(last)) last.push(block);
    else groups.push([block]);
  }
  return groups;
}

function Group(props: { readonly group: Exclude<Block, FactsBlock> | readonly FactsBlock[] }) {
  const { group } = props;
  if (!('kind' in group)) return <Facts blocks={group} />;
  switch (group.kind) {
    case 'text':
      return (
        <p className={`report-${group.look}`}>
          <MathText text={group.text} />
        </p>
      );
    case 'link':
      return (
        <p className="report-link">
          <a href={group.address} target="_blank" rel="noreferrer">
            {group.address}
          </a>
        </p>
      );
    case 'list':
      return (
        <ul className={group.columns === 2 ? 'report-two' : undefined}>
          {group.items.map((item) => (
            <li key={item}>
              <MathText text={item} />
            </li>
          ))}
        </ul>
      );
    case 'table':
      return <Table table={group} />;
    case 'beside':
      return (
        <div className="report-beside">
          <FigureBox item={group.figure} />
          <Table table={group.table} />
        </div>
      );
    default:
      return (
        <div className="report-figures">
          {group.figures.map((item) => (
            <FigureBox key={item.caption} item={item} />
          ))}
        </div>
      );
  }
}

function Facts({ blocks }: { readonly blocks: readonly FactsBlock[] }) {
  return (
    <div className="report-facts" data-single={blocks.length === 1}>
      {blocks.map(({ title, facts }, at) => (
        <div key={title ?? at} className="report-group">
          {title !== null && <h3>{title}</h3>}
          <dl>
            {facts.map(({ label, value }) => (
              <div key={label}>
                <dt>
                  <MathText text={label} />
                </dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        </div>
      ))}
    </div>
  );
}

function Table({ table }: { readonly table: TableBlock }) {
  const { caption, columns, rows, sum = false } = table;
  const whole = columns.reduce((total, { share }) => total + share, 0);
  return (
    <table className="report-table">
      <caption>
        <MathText text={caption} />
      </caption>
      <thead>
        <tr>
          {columns.map(({ title, align, share }) => (
            <th
              key={title}
              scope="col"
              data-align={align}
              style={{ width: `${(100 * share) / whole}%` }}
            >
              <MathText text={title} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((cells, row) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: rows may read alike and hold no state
          <tr key={row} data-sum={sum && row === rows.length - 1 ? true : undefined}>
            {cells.map((cell, at) => (
              <td key={columns[at].title} data-align={columns[at].align}>
                <MathText text={cell} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function FigureBox({ item }: { readonly item: FigureItem }) {
  return (
    <figure data-kind={item.kind}>
      {item.kind === 'drawn' && <FigureSvg figure={item.figure} />}
      {item.kind === 'picture' && (
        <img
          src={item.picture.dataUrl}
          width={item.picture.width}
          height={item.picture.height}
          alt={item.caption}
        />
      )}
      <figcaption>{item.caption}</figcaption>
    </figure>
  );
}

import { type ReactNode, useMemo } from 'react';
import type { Design } from '../../design/design';
import { JYY, JZZ } from '../../engine/mass/moments';
import { t } from '../../messages';
import { displayForce, displayMass, displayMoment, fixed, show } from '../../state/quantities';
import { refusalOf } from '../../state/refusal';
import { refusalText } from '../../state/refusalText';
import type { DisplayUnits } from '../../state/settings';
import type { ShelfItem } from '../../state/shelfItem';
import { displayPosition, secondMomentText } from '../../state/shownUnits';
import { verdictText } from '../../state/words/verdictText';
import { MathText } from '../../ui/MathText';
import { useAppState } from '../../ui/session';
import { type Column, compareItems } from './comparison';

/** One part or two beside the head as it is: what they come to, and what the head does with each. */
export function SideBySide(props: { readonly items: readonly ShelfItem[] }) {
  const design = useAppState((state) => state.design);
  const selection = useAppState((state) => state.selection);
  const units = useAppState((state) => state.settings.units);
  const { items } = props;
  const columns = useMemo(
    () => (items.length > 0 ? compareItems(design, selection, items) : []),
    [design, selection, items],
  );
  return (
    <section className="shelf-compare" aria-label={t('shelf.sideBySide')}>
      <h3>{t('shelf.sideBySide')}</h3>
      {columns.length === 0 ? (
        <p className="shelf-note">{t('shelf.sideBySideNote')}</p>
      ) : (
        <>
          <div className="shelf-scroll">
            <table className="shelf-columns" data-testid="shelf-columns">
              <thead>
                <tr>
                  <td />
                  {columns.map((column) => (
                    <th scope="col" key={column.item?.id ?? 'head'}>
                      <ColumnHead column={column} />
                    </th>
                  ))}
                </tr>
              </thead>
              <OwnRows columns={columns} units={units} />
              <HeadRows columns={columns} design={design} units={units} />
            </table>
          </div>
          <p className="shelf-note">{t('shelf.forceNote')}</p>
        </>
      )}
    </section>
  );
}

function ColumnHead({ column: { item, old } }: { readonly column: Column }) {
  if (!item) {
    return (
      <>
        {t('shelf.columnHead')}
        <span className="shelf-kind">{old?.name}</span>
      </>
    );
  }
  return (
    <>
      {item.name}
      <span className="shelf-kind">
        {old ? t('shelf.inPlaceOf', { name: old.name }) : t('shelf.noPlace')}
      </span>
    </>
  );
}

interface Rows {
  readonly columns: readonly Column[];
  readonly units: DisplayUnits;
}

function Row(props: {
  readonly label: string;
  readonly columns: readonly Column[];
  readonly words?: boolean;
  readonly cell: (column: Column) => ReactNode;
}) {
  return (
    <tr data-words={props.words || undefined}>
      <th scope="row">
        <MathText text={props.label} />
      </th>
      {props.columns.map((column) => (
        <td key={column.item?.id ?? 'head'}>{props.cell(column) ?? t('shelf.nothing')}</td>
      ))}
    </tr>
  );
}

function GroupHead(props: { readonly text: string; readonly count: number }) {
  return (
    <tr className="shelf-group">
      <th scope="rowgroup" colSpan={props.count + 1}>
        {props.text}
      </th>
    </tr>
  );
}

function OwnRows({ columns, units }: Rows) {
  const moment = (value: number | undefined) =>
    value === undefined ? undefined : secondMomentText(value, units);
  return (
    <tbody>
      <GroupHead text={t('shelf.partRows')} count={columns.length} />
      <Row
        label={t('shelf.rowMass')}
        columns={columns}
        cell={({ figures }) => figures && show(displayMass(figures.mass, units))}
      />
      <Row
        label={t('shelf.rowCentre')}
        columns={columns}
        cell={({ figures }) =>
          figures?.centre &&
          `${figures.centre.map((one) => displayPosition(one, units)).join(', ')}\u00a0${units.length}`
        }
      />
      <Row
        label={t('shelf.rowJyy')}
        columns={columns}
        cell={({ figures }) => moment(figures?.jyy)}
      />
      <Row
        label={t('shelf.rowJzz')}
        columns={columns}
        cell={({ figures }) => moment(figures?.jzz)}
      />
      <Row
        label={t('shelf.rowShare')}
        columns={columns}
        cell={({ figures }) => figures && moment(figures.jyy - figures.jzz)}
      />
    </tbody>
  );
}

function HeadRows({ columns, design, units }: Rows & { readonly design: Design }) {
  const outlooks = columns.flatMap(({ outlook }) => outlook ?? []);
  const asForce = outlooks.every(({ forces }) => forces !== null);
  const [{ pitchesDeg = [] } = {}] = outlooks;
  return (
    <tbody>
      <GroupHead text={t('shelf.headRows')} count={columns.length} />
      <Row
        label={t('shelf.rowHeadShare')}
        columns={columns}
        cell={({ outlook }) =>
          outlook && secondMomentText(outlook.totals[JYY] - outlook.totals[JZZ], units)
        }
      />
      {pitchesDeg.map((pitchDeg, i) => (
        <Row
          key={pitchDeg}
          label={t(asForce ? 'shelf.rowForce' : 'shelf.rowMoment', { pitch: signed(pitchDeg) })}
          columns={columns}
          cell={({ outlook }) => outlook && heldText(outlook, i, asForce, units)}
        />
      ))}
      <Row
        label={t('shelf.rowVerdict')}
        columns={columns}
        words
        cell={(column) => verdictCell(column, design, units)}
      />
    </tbody>
  );
}

function heldText(
  { moments, forces }: NonNullable<Column['outlook']>,
  at: number,
  asForce: boolean,
  units: DisplayUnits,
): string {
  if (!asForce || !forces) return show(displayMoment(moments[at], units));
  const force = forces[at];
  return force === null ? t('shelf.overCentre') : show(displayForce(force, units));
}

function verdictCell(column: Column, design: Design, units: DisplayUnits): ReactNode {
  const { outlook, fault, old } = column;
  if (fault) {
    const ids = design.parts.map((part) => part.id);
    const refusal = refusalOf(fault, ids, old?.id);
    const reason = refusalText(refusal, design, old?.id ?? null, units);
    return <span className="shelf-warning">{t('shelf.refused', { reason })}</span>;
  }
  if (!outlook) return null;
  return verdictText(outlook.verdict, outlook.restsDeg, units).line;
}

function signed(pitchDeg: number): string {
  const text = fixed(pitchDeg, Number.isInteger(pitchDeg) ? 0 : 1);
  return `${pitchDeg > 0 ? '+' : ''}${text}\u00b0`;
}

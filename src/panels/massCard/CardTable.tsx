import type { CardFigures, CardRow, MassCard } from '../../design/massCard';
import { mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { displayMass, fixed, show, significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition, displaySecondMoment, grouped } from '../../state/shownUnits';
import { MathText } from '../../ui/MathText';
import { kindLabel } from './cardSheet';

/** The card on screen, in the display units. */
export function CardTable(props: {
  readonly card: MassCard;
  readonly name: string;
  readonly units: DisplayUnits;
}) {
  const { card, units } = props;
  const { absolute, total } = card;
  const share = absolute > 0 ? (100 * total.difference) / absolute : null;
  return (
    <div className="card-scroll" tabIndex={0} role="region" aria-label={t('massCard.title')}>
      <table className="card-table" data-testid="mass-card">
        <caption className="ui-unseen">{t('massCard.caption', { name: props.name })}</caption>
        <Heads units={units} />
        <tbody>
          {card.rows.map((row) => (
            <PartRow key={row.id} row={row} units={units} />
          ))}
        </tbody>
        <ApartRows title={t('massCard.rods')} rows={card.rods} units={units} />
        <ApartRows title={t('massCard.hidden')} rows={card.hidden} units={units} />
        <tfoot>
          <tr data-testid="mass-card-sum">
            <th scope="row">{t('massCard.sum')}</th>
            <FigureCells figures={total} units={units} share={share} />
            <td />
          </tr>
        </tfoot>
      </table>
    </div>
  );
}

/** Parts that are not in the sum, under why. */
function ApartRows(props: {
  readonly title: string;
  readonly rows: readonly CardRow[];
  readonly units: DisplayUnits;
}) {
  if (props.rows.length === 0) return null;
  return (
    <tbody className="card-hidden">
      <tr>
        <th scope="rowgroup" colSpan={10}>
          {props.title}
        </th>
      </tr>
      {props.rows.map((row) => (
        <PartRow key={row.id} row={row} units={props.units} />
      ))}
    </tbody>
  );
}

function Heads({ units }: { readonly units: DisplayUnits }) {
  const moment = displaySecondMoment(0, units).unit;
  const mass = displayMass(0, units).unit;
  const head = (text: string, unit: string) => (
    <th scope="col">
      <MathText text={text} />
      <span className="card-unit">{unit}</span>
    </th>
  );
  return (
    <thead>
      <tr>
        <th scope="col">{t('massCard.part')}</th>
        {head(t('massCard.mass'), mass)}
        {(['x', 'y', 'z'] as const).map((axis) => (
          <th scope="col" key={axis}>
            <span className="ui-unseen">{t('massCard.centre')} </span>
            {axis}
            <span className="card-unit">{units.length}</span>
          </th>
        ))}
        {head(t('massCard.inertia'), moment)}
        {head(t('massCard.difference'), moment)}
        {head(t('massCard.share'), '%')}
        {head(t('massCard.product'), moment)}
        <th scope="col" className="card-from">
          {t('massCard.from')}
        </th>
      </tr>
    </thead>
  );
}

function PartRow({ row, units }: { readonly row: CardRow; readonly units: DisplayUnits }) {
  const origins = row.origins.map((origin) => t(`massCard.${origin}`)).join(', ');
  return (
    <tr>
      <th scope="row">
        {row.name}
        <span className="card-kind">{kindLabel(row.kind)}</span>
      </th>
      <FigureCells figures={row} units={units} share={row.share} bar />
      <td className="card-from">{origins === '' ? t('massCard.none') : origins}</td>
    </tr>
  );
}

function FigureCells(props: {
  readonly figures: CardFigures;
  readonly units: DisplayUnits;
  readonly share: number | null;
  readonly bar?: boolean;
}) {
  const { figures, units, share } = props;
  const { mass, centre, inertia, difference, product } = figures;
  const none = t('massCard.none');
  const moment = (value: number) => {
    const shown = displaySecondMoment(value, units).value;
    return grouped(Math.abs(shown) >= 100 ? fixed(shown, 0) : significant(shown));
  };
  return (
    <>
      <td>{significantMass(mass, units)}</td>
      {[0, 1, 2].map((axis) => (
        <td
          key={axis}
          title={centre ? `${fixed(mmFromMetres(centre[axis]), 4)}\u00a0mm` : undefined}
        >
          {centre ? displayPosition(centre[axis], units) : none}
        </td>
      ))}
      <td>{moment(inertia)}</td>
      <td>{moment(difference)}</td>
      <td className="card-share">
        {share === null ? none : fixed(share, 1)}
        {props.bar && share !== null && <ShareBar share={share} />}
      </td>
      <td>{moment(product)}</td>
    </>
  );
}

function significantMass(mass: number, units: DisplayUnits): string {
  return show({ ...displayMass(mass, units), unit: '' }, 4).trim();
}

/** To the left what centres, to the right what flees, as on the rail; half the bar is 100 %. */
function ShareBar({ share }: { readonly share: number }) {
  const half = Math.min(100, Math.abs(share)) / 2;
  const leans = share > 0 ? 'centres' : 'flees';
  const left = share > 0 ? 50 - half : 50;
  return (
    <span
      className="rail-track card-track"
      data-leans={half < 0.05 ? 'even' : leans}
      aria-hidden="true"
    >
      <span className="rail-bar" style={{ width: `${half}%`, left: `${left}%` }} />
    </span>
  );
}

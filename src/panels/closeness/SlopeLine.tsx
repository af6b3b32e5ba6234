import type { Design } from '../../design/design';
import { knobPart } from '../../neutralise/knobs';
import type { ClosenessView } from '../../state/closeness';
import { displayForce, displayMoment, show } from '../../state/quantities';
import { refusalOf } from '../../state/refusal';
import { refusalText } from '../../state/refusalText';
import type { DisplayUnits } from '../../state/settings';
import { displaySecondMoment } from '../../state/shownUnits';
import { t } from '../../state/words/closenessText';
import { knobFieldText } from '../../state/words/planText';
import { useSession } from '../../ui/session';
import type { SlopeRow, SlopeTable } from './slopeRows';
import { ToleranceField } from './ToleranceField';

const SHOWN = {
  force: displayForce,
  moment: displayMoment,
  secondMoment: displaySecondMoment,
} as const;

/** One number: who it is of, its bar, what a step changes, its tolerance, what that changes. */
export function SlopeLine(props: {
  readonly row: SlopeRow;
  readonly table: SlopeTable;
  readonly design: Design;
  readonly rank: ClosenessView['rank'];
  readonly units: DisplayUnits;
}) {
  const { row, table, design, units } = props;
  const { actions } = useSession();
  const part = knobPart(design, row.ref);
  const text = (value: number) => show(SHOWN[table.quantity](value, units));
  const reason = reasonOf(row, design, units);
  return (
    <tr data-testid={`slope-${row.key}`}>
      <th scope="row">
        <button
          type="button"
          className="lower-name closeness-name"
          onClick={() => actions.select(row.ref.part)}
        >
          <span className="closeness-part">{part?.name || row.ref.part}</span>{' '}
          <span>{knobFieldText(design, row.ref)}</span>
        </button>
      </th>
      {row.change === null ? (
        <td colSpan={2} className="closeness-reason">
          {reason ?? t('closely.noForce')}
        </td>
      ) : (
        <>
          <td className="closeness-bars" aria-hidden="true">
            <Bar row={row} largest={table.largest} rank={props.rank} />
          </td>
          <td className="closeness-change">
            {props.rank === 'step' ? (
              <>
                {row.change > 0 ? '+' : ''}
                {text(row.change)} <span className="closeness-per">{perText(row)}</span>
              </>
            ) : (
              row.effect > 0 && `\u00b1${text(row.effect)}`
            )}
          </td>
        </>
      )}
      <td>
        <ToleranceField row={row} design={design} />
      </td>
    </tr>
  );
}

/** "per 0.1 mm"; where the number can only grow or only fall, that too. */
function perText({ stepText, outcome }: SlopeRow): string {
  const per = t('closely.perStep', { step: stepText });
  const side = outcome.kind === 'found' ? outcome.side : 'both';
  return side === 'both' ? per : `${per}, ${t(`closely.oneSide.${side}`)}`;
}

function reasonOf(row: SlopeRow, design: Design, units: DisplayUnits): string | null {
  if (row.outcome.kind === 'corner') return t('closely.corner');
  if (row.outcome.kind !== 'refused') return null;
  const { part } = row.ref;
  const ids = design.parts.map(({ id }) => id);
  const refusal = refusalOf(row.outcome.fault, ids, part);
  return t('closely.refused', { reason: refusalText(refusal, design, part, units) });
}

/** From the middle: to the right where the force grows (filled), to the left where it falls (hatched). */
function Bar(props: {
  readonly row: SlopeRow;
  readonly largest: number;
  readonly rank: ClosenessView['rank'];
}) {
  const { row, largest, rank } = props;
  const change = row.change ?? 0;
  const size = rank === 'step' ? Math.abs(change) : row.effect;
  const share = largest > 0 ? (50 * size) / largest : 0;
  const grows = change > 0;
  return (
    <span className="closeness-bar">
      <span
        data-way={grows ? 'grows' : 'falls'}
        style={{ left: `${grows ? 50 : 50 - share}%`, width: `${share}%` }}
      />
    </span>
  );
}

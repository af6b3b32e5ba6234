import { useState } from 'react';
import type { Balance, GripMass } from '../../design/forces/balanceTypes';
import { ROTOR_SECTION } from '../../design/sections/rotor';
import { partText, t } from '../../messages';
import { displayMass, show } from '../../state/quantities';
import { refusalText } from '../../state/refusalText';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition } from '../../state/shownUnits';
import { balanceLines, gripName } from '../../state/words/balanceText';
import { HelpRow } from '../../ui/help/HelpRow';
import { useAppState, useSession } from '../../ui/session';
import { useFollowing } from '../fields/useFollowed';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';
import { GripEditor } from './GripEditor';
import '../plots/plots.css';
import './balance.css';

/** The rotor's balance: every grip's mass and centre, what they leave, and what corrects it. */
export function BalanceRoom() {
  const { live } = useSession();
  const units = useAppState((state) => state.settings.units);
  const opening = useAppState((state) => state.opening);
  const [, setSeen] = useState(0);
  const [edited, setEdited] = useState<number | null>(null);
  useFollowing(() => setSeen((count) => count + 1));
  const balance = live.reading.balance();
  const open = edited !== null && edited < balance.grips.length ? edited : null;

  return (
    <section className="lower-room" aria-label={t('lower.balance')} data-testid="balance-room">
      <div className="lower-head">
        <p className="lower-quiet">{t('balance.about')}</p>
        <HelpRow ids={['unbalance', 'shaftForce', 'balanceGrade']} />
      </div>
      <div className="lower-scroll" tabIndex={0} role="group" aria-label={t('lower.balance')}>
        <div className="balance-body">
          <div>
            <table className="lower-table" data-testid="balance-table">
              <thead>
                <tr>
                  <th scope="col">{t('balance.grip')}</th>
                  <th scope="col" className="lower-number">
                    {t('balance.mass')}
                  </th>
                  <th scope="col" className="lower-number">
                    {t('balance.station')}
                  </th>
                  <th scope="col">{t('balance.from')}</th>
                  <th scope="col">
                    <span className="ui-unseen">{t('balance.change')}</span>
                  </th>
                </tr>
              </thead>
              <tbody>
                {balance.grips.map((grip) => (
                  <GripRow
                    key={grip.index}
                    grip={grip}
                    units={units}
                    open={open === grip.index}
                    onToggle={() => setEdited(open === grip.index ? null : grip.index)}
                  />
                ))}
              </tbody>
            </table>
            {open !== null && <GripEditor key={`${open} ${opening}`} index={open} />}
          </div>
          <Picture balance={balance} />
          <div>
            <HubMass />
            <ul className="lower-list" tabIndex={0} data-testid="balance-lines">
              {balanceLines(balance, units).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        </div>
      </div>
    </section>
  );
}

function GripRow(props: {
  readonly grip: GripMass;
  readonly units: DisplayUnits;
  readonly open: boolean;
  readonly onToggle: () => void;
}) {
  const { grip, units } = props;
  return (
    <tr>
      <th scope="row">{gripName(grip)}</th>
      <td className="lower-number">{show(displayMass(grip.mass, units), 6)}</td>
      <td className="lower-number">
        {displayPosition(grip.station, units)} {units.length}
      </td>
      <td>{t(`balance.from.${grip.from}`)}</td>
      <td>
        {grip.index > 0 && (
          <button
            type="button"
            className="ui-button"
            aria-expanded={props.open}
            data-testid={`grip-edit-${grip.index}`}
            onClick={props.onToggle}
          >
            {t('balance.change')}
          </button>
        )}
      </td>
    </tr>
  );
}

/** The hub's mass: the grade is of the whole rotor. */
function HubMass() {
  const { actions, store } = useSession();
  const value = useAppState((state) => state.design.rotor.hubMassGrams);
  const field = ROTOR_SECTION.hubMassGrams;
  return (
    <OptionalNumberRow
      value={value}
      placeholder={t('conditions.none')}
      field={{
        key: 'balanceHubMass',
        label: partText('rotor.hubMassGrams.label', field.label),
        help: partText('rotor.hubMassGrams.help', field.help),
        limits: field,
        step: field.step,
        commit(hubMassGrams) {
          const outcome = actions.setSection('rotor', { hubMassGrams });
          const { design, settings } = store.getState();
          return outcome.ok ? null : refusalText(outcome.error, design, null, settings.units);
        },
      }}
    />
  );
}

const SIZE = 128;
const REACH = 48;

/** The rotor from above: the grips' axes with their centres of mass, and the unbalance as an arrow. */
function Picture({ balance }: { readonly balance: Balance }) {
  const { grips, unbalance, angle } = balance;
  const furthest = Math.max(...grips.map(({ station }) => Math.abs(station)), 1e-6);
  const point = (at: number, radius: number) =>
    [SIZE / 2 + radius * Math.cos(at), SIZE / 2 - radius * Math.sin(at)] as const;
  return (
    <svg className="balance-picture" viewBox={`0 0 ${SIZE} ${SIZE}`} aria-hidden="true">
      <circle className="balance-ring" cx={SIZE / 2} cy={SIZE / 2} r={REACH} />
      {grips.map((grip) => {
        const [x2, y2] = point(grip.angle, REACH + 8);
        const [cx, cy] = point(grip.angle, (REACH * grip.station) / furthest);
        return (
          <g key={grip.index}>
            <line className="balance-axis" x1={SIZE / 2} y1={SIZE / 2} x2={x2} y2={y2} />
            <circle className="balance-mass" cx={cx} cy={cy} r={5} />
            <text className="plot-tick" x={x2} y={y2 - 4} textAnchor="middle">
              {grip.index + 1}
            </text>
          </g>
        );
      })}
      {unbalance > 0 && <Arrow from={[SIZE / 2, SIZE / 2]} to={point(angle, REACH * 0.8)} />}
    </svg>
  );
}

function Arrow(props: {
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}) {
  const [x1, y1] = props.from;
  const [x2, y2] = props.to;
  const way = Math.atan2(y2 - y1, x2 - x1);
  const side = (turn: number) =>
    `${(x2 - 9 * Math.cos(way + turn)).toFixed(1)} ${(y2 - 9 * Math.sin(way + turn)).toFixed(1)}`;
  return (
    <path
      className="balance-arrow"
      d={`M${x1} ${y1}L${x2} ${y2}M${side(0.45)}L${x2} ${y2}L${side(-0.45)}`}
    />
  );
}

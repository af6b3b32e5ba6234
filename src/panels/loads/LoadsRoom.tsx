import { useState } from 'react';
import type { HeadLoads } from '../../design/forces/loadTypes';
import { speedRange } from '../../design/forces/speedSweep';
import { t } from '../../messages';
import type { TopicId } from '../../state/help/topics';
import { displayForce, fixed, show } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { firstLimitText } from '../../state/words/firstLimit';
import { type LoadRow, loadRows, loadText } from '../../state/words/loadRows';
import { signedDegrees } from '../../state/words/pitchText';
import { HelpName } from '../../ui/help/HelpName';
import { HelpRow } from '../../ui/help/HelpRow';
import { useAppState, useSession } from '../../ui/session';
import { useFollowing } from '../fields/useFollowed';
import './loads.css';

const SPEEDS = ['design', 'highest', 'overspeed'] as const;
type SpeedChoice = (typeof SPEEDS)[number];

/** What every part pulls, what bearings and bolt carry, and how near that is to what they may. */
export function LoadsRoom() {
  const { live, actions, store } = useSession();
  const [speed, setSpeed] = useState<SpeedChoice>('overspeed');
  const [said, setSaid] = useState('');
  const units = useAppState((state) => state.settings.units);
  const rotor = useAppState((state) => state.design.rotor);
  const [, setSeen] = useState(0);
  // A table, not a curve: it follows a drag ten times a second.
  useFollowing(() => setSeen((count) => count + 1), true);
  const { pitchDeg } = store.getState();
  const range = speedRange(rotor);
  const rpm = { design: rotor.speedRpm, highest: range.highestRpm, overspeed: range.overspeedRpm }[
    speed
  ];
  const loads = live.reading.loadsAt(pitchDeg, rpm);
  const nameOf = (id: string) => live.reading.part(id)?.part.name || id;
  const rows = loadRows(loads, nameOf, units);
  const where = t('loads.at', { rpm: fixed(rpm, 0), pitch: signedDegrees(pitchDeg) });
  const headline = firstLimitText(live.reading.limitInUse(rpm), loads, nameOf);

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(loadText(`${where} ${headline}`, rows));
      setSaid(t('loads.copied'));
    } catch {
      setSaid(t('loads.copyFailed'));
    }
  }

  return (
    <section className="lower-room" aria-label={t('lower.loads')} data-testid="loads-room">
      <div className="lower-head">
        <select
          className="chart-quantity"
          aria-label={t('loads.speed')}
          data-testid="loads-speed"
          value={speed}
          onChange={(event) => setSpeed(event.target.value as SpeedChoice)}
        >
          {SPEEDS.map((name) => (
            <option key={name} value={name}>
              {t(`loads.speed.${name}`)}
            </option>
          ))}
        </select>
        <button type="button" className="ui-button" onClick={() => void copy()}>
          {t('loads.copy')}
        </button>
        <span>
          {where} <strong data-testid="loads-first">{headline}</strong>
        </span>
        <span role="status">{said}</span>
      </div>
      <div className="lower-scroll" tabIndex={0} role="region" aria-label={t('loads.table')}>
        <table className="lower-table loads-table" data-testid="loads-table">
          <thead>
            <tr>
              <th scope="col">{t('loads.what')}</th>
              <th scope="col" className="lower-number">
                {t('loads.value')}
              </th>
              <th scope="col">{t('loads.limit')}</th>
              <th scope="col">{t('loads.use')}</th>
              <th scope="col">{t('loads.words')}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <Row key={row.key} row={row} onSelect={(id) => actions.select(id)} />
            ))}
          </tbody>
        </table>
        <Pulls loads={loads} nameOf={nameOf} units={units} onSelect={(id) => actions.select(id)} />
        <HelpRow ids={['bearingLoad', 'boltPull', 'boltStrength', 'prevailingNut', 'firstLimit']} />
        <p className="lower-quiet">{t('loads.caution')}</p>
      </div>
    </section>
  );
}

function Row({
  row,
  onSelect,
}: {
  readonly row: LoadRow;
  readonly onSelect: (id: string) => void;
}) {
  const { part } = row;
  return (
    <tr data-state={row.state} data-testid={`load-${row.key.replaceAll(' ', '-')}`}>
      <th scope="row">
        {part === null ? (
          <Named row={row} />
        ) : (
          <button type="button" className="lower-name" onClick={() => onSelect(part)}>
            {row.what}
          </button>
        )}
      </th>
      <td className="lower-number">{row.value}</td>
      <td>{row.limit}</td>
      <td>
        {row.use !== null && (
          <span className="loads-use">
            <span className="loads-bar" aria-hidden="true">
              <span style={{ width: `${Math.min(100, 100 * row.use).toFixed(1)}%` }} />
            </span>
            {fixed(100 * row.use, 0)} %
          </span>
        )}
      </td>
      <td>{row.words}</td>
    </tr>
  );
}

/** What a row of no part is of, by its key. */
const TOPICS: Readonly<Record<string, TopicId>> = {
  axial: 'axialPull',
  flap: 'flapMoment',
  'missing thrust': 'thrustBearing',
  'missing radial': 'bearingLoad',
};

function Named({ row: { key, what } }: { readonly row: LoadRow }) {
  const topic = TOPICS[key];
  return topic ? <HelpName id={topic}>{what}</HelpName> : what;
}

/** The pull on each part, the largest first. */
function Pulls(props: {
  readonly loads: HeadLoads;
  readonly nameOf: (id: string) => string;
  readonly units: DisplayUnits;
  readonly onSelect: (id: string) => void;
}) {
  const pulls = props.loads.pulls.toSorted((a, b) => b.pull - a.pull);
  const largest = pulls[0]?.pull ?? 0;
  return (
    <table className="lower-table" data-testid="pulls-table">
      <thead>
        <tr>
          <th scope="col">
            <HelpName id="pull">{t('loads.pullOf')}</HelpName>
          </th>
          <th scope="col" className="lower-number">
            {t('loads.pull')}
          </th>
          <th scope="col" aria-hidden="true" />
        </tr>
      </thead>
      <tbody>
        {pulls.map(({ id, pull }) => (
          <tr key={id}>
            <th scope="row">
              <button type="button" className="lower-name" onClick={() => props.onSelect(id)}>
                {props.nameOf(id)}
              </button>
            </th>
            <td className="lower-number">{show(displayForce(pull, props.units))}</td>
            <td className="loads-wide" aria-hidden="true">
              <span className="loads-bar">
                <span
                  style={{ width: `${largest > 0 ? ((100 * pull) / largest).toFixed(1) : 0}%` }}
                />
              </span>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

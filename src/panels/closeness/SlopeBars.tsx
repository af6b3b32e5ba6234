import { useEffect, useState } from 'react';
import { hasKeptTerms } from '../../neutralise/closeness/headProbe';
import { SLOPE_PITCHES, SLOPE_QUANTITIES } from '../../state/closeness';
import { t } from '../../state/words/closenessText';
import { signedDegrees } from '../../state/words/pitchText';
import { HelpRow } from '../../ui/help/HelpRow';
import { useAppState, useSession } from '../../ui/session';
import { useFollowing } from '../fields/useFollowed';
import { SlopeLine } from './SlopeLine';
import { slopedDesign, slopeTable } from './slopeRows';
import { useCloseness } from './useCloseness';

/** Rows shown: those that matter come first, and few keep up with a drag. Asked for, more; never thousands. */
const FIRST_ROWS = 30;
const MOST_ROWS = 150;

/** Every number of the head, ranked by what it does to the push-rod force at a pitch. Follows a drag. */
export function SlopeBars() {
  const { closeness: desk } = useSession();
  const { slopes, view, failed } = useCloseness();
  const units = useAppState((state) => state.settings.units);
  const resting = useAppState((state) => (state.gesture ? null : state.design));
  const tolerance = useAppState((state) => state.design.tolerance);
  const design = resting ?? (slopes && slopedDesign(slopes, tolerance));
  const [isLong, setIsLong] = useState(false);
  useEffect(() => desk.ask(), [desk]);
  useFollowing(() => desk.ask());
  if (failed) {
    return <p className="lower-quiet">{t('closely.slopesFailed', { reason: failed })}</p>;
  }
  if (!slopes || !design) return <p className="lower-quiet">{t('closely.waiting')}</p>;
  const table = slopeTable(slopes, design, view, units);
  const shown = isLong ? MOST_ROWS : FIRST_ROWS;
  return (
    <div className="closeness-side">
      <div className="lower-head">
        <PitchAndRank />
        <span className="lower-quiet" role="status">
          {slopes.terms === 'nominal' && hasKeptTerms(design) ? t('closely.airWaiting') : ''}
        </span>
      </div>
      <div
        className="lower-scroll"
        tabIndex={0}
        role="region"
        aria-label={t(`closely.bars.${table.quantity}`)}
      >
        <table className="lower-table closeness-table" data-testid="slope-table">
          <thead>
            <tr>
              <th scope="col">{t('closely.number')}</th>
              <th scope="col" aria-hidden="true" />
              <th scope="col">
                {view.rank === 'step'
                  ? t(`closely.change.${table.quantity}`)
                  : t('closely.change.tolerance')}
              </th>
              <th scope="col">{t('closely.tolerance')}</th>
            </tr>
          </thead>
          <tbody>
            {table.rows.slice(0, shown).map((row) => (
              <SlopeLine
                key={row.key}
                row={row}
                table={table}
                design={design}
                rank={view.rank}
                units={units}
              />
            ))}
          </tbody>
        </table>
        {table.rows.length === 0 && <p className="lower-quiet">{t('closely.noNumbers')}</p>}
        {!isLong && table.rows.length > FIRST_ROWS && (
          <button
            type="button"
            className="ui-button"
            data-testid="slopes-more"
            onClick={() => setIsLong(true)}
          >
            {t('closely.more', { count: Math.min(MOST_ROWS, table.rows.length) })}
          </button>
        )}
        <p className="lower-quiet">
          {isLong &&
            table.rows.length > MOST_ROWS &&
            `${t('closely.first', { shown: MOST_ROWS, count: table.rows.length })} `}
          {table.zeros > 0 && `${t('closely.zero', { count: table.zeros })} `}
          {t('closely.slopeNote')}
        </p>
        <HelpRow ids={['tolerance', 'tolerance95', 'chance', 'matching', 'massTolerance']} />
      </div>
    </div>
  );
}

function PitchAndRank() {
  const { closeness: desk } = useSession();
  const { slopes, view } = useCloseness();
  return (
    <>
      <select
        className="ui-select"
        aria-label={t('closely.of')}
        data-testid="slope-of"
        value={view.of}
        onChange={({ target }) =>
          desk.setView({ of: SLOPE_QUANTITIES.find((one) => one === target.value) ?? 'force' })
        }
      >
        {SLOPE_QUANTITIES.map((name) => (
          <option key={name} value={name}>
            {t(`closely.of.${name}`)}
          </option>
        ))}
      </select>
      <label className="closeness-choice" hidden={view.of !== 'force'}>
        {t('closely.pitch')}
        <select
          className="ui-select"
          data-testid="slope-pitch"
          value={view.pitch}
          onChange={(event) => desk.setView({ pitch: Number(event.target.value) })}
        >
          {SLOPE_PITCHES.map((share, i) => (
            <option key={share} value={i}>
              {signedDegrees(slopes?.pitchesDeg[i] ?? 0)}
            </option>
          ))}
        </select>
      </label>
      <label className="closeness-choice">
        {t('closely.rank')}
        <select
          className="ui-select"
          data-testid="slope-rank"
          value={view.rank}
          onChange={(event) =>
            desk.setView({ rank: event.target.value === 'step' ? 'step' : 'tolerance' })
          }
        >
          <option value="step">{t('closely.rank.step')}</option>
          <option value="tolerance">{t('closely.rank.tolerance')}</option>
        </select>
      </label>
    </>
  );
}

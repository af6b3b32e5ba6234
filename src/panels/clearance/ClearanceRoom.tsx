import { CLEARANCE_SECTION } from '../../design/sections/clearance';
import { partText, t } from '../../messages';
import { isKeepOut } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { lengthText, overlapText, rangeText, signedPitch } from '../../state/gapText';
import { refusalText } from '../../state/refusalText';
import { shownText, shownUnit } from '../../state/shownUnits';
import { type ClearanceRow, clearanceRows } from '../../state/words/clearanceRows';
import { useAppState, useSession } from '../../ui/session';
import { useMeshDesk } from '../import/ImportRoom';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';
import { addKeepOut, PLAIN_FORMS } from './addKeepOut';
import { useFoundClearance } from './useFoundClearance';
import './clearance.css';

/** Every turning part against every keep-out: how near it comes, where, and at which pitch. */
export function ClearanceRoom() {
  const session = useSession();
  const { live, actions } = session;
  const units = useAppState((state) => state.settings.units);
  const found = useFoundClearance();
  const nameOf = (id: string) => live.reading.part(id)?.part.name || id;
  const rows = clearanceRows(found, nameOf, (id) => live.reading.part(id)?.carriedBy, units);
  const [nearest] = found.pairs;
  const overlap = overlapText(found.pairs, nameOf, units);

  function go(row: ClearanceRow): void {
    actions.setPitch(row.pitchDeg);
    actions.select(row.part);
  }

  return (
    <section className="lower-room" aria-label={t('lower.clearance')} data-testid="clearance-room">
      <div className="lower-head">
        <AddButtons />
        <WantedGap />
        {nearest && (
          <strong data-testid="clearance-nearest" data-state={overlap ? 'overlap' : undefined}>
            {overlap ??
              t('clearance.nearest', {
                part: nameOf(nearest.part),
                keepOut: nameOf(nearest.keepOut),
                length: lengthText(nearest.gap, units),
                pitch: signedPitch(nearest.pitchDeg),
              })}
          </strong>
        )}
      </div>
      <div className="lower-scroll" tabIndex={0} role="region" aria-label={t('clearance.table')}>
        {rows.length === 0 ? (
          <Nothing />
        ) : (
          <>
            <GapTable rows={rows} onGo={go} onSelect={(id) => actions.select(id)} />
            <p className="lower-quiet">{rangeText(found.range)}</p>
            <p className="lower-quiet">{t('clearance.notes')}</p>
            {found.pairs.some(({ reduced }) => reduced) && (
              <p className="lower-quiet">* {t('clearance.reduced')}</p>
            )}
          </>
        )}
      </div>
    </section>
  );
}

function Nothing() {
  const hasKeepOut = useAppState((state) =>
    state.design.parts.some((part) => !part.hidden && isKeepOut(partType(part.kind))),
  );
  return <p>{t(hasKeepOut ? 'clearance.noParts' : 'clearance.none')}</p>;
}

function AddButtons() {
  const session = useSession();
  const meshes = useMeshDesk();
  return (
    <div className="clearance-add" role="group" aria-label={t('clearance.add')}>
      <span aria-hidden="true">{t('clearance.add')}</span>
      {PLAIN_FORMS.map((form) => (
        <button
          key={form}
          type="button"
          className="ui-button"
          data-testid={`add-keep-out-${form}`}
          onClick={() => addKeepOut(session, form)}
        >
          {t(`clearance.add.${form}`)}
        </button>
      ))}
      <button
        type="button"
        className="ui-button"
        data-testid="add-keep-out-mesh"
        onClick={() => void meshes.open('keepOut')}
      >
        {t('clearance.add.mesh')}
      </button>
    </div>
  );
}

/** The gap that the design wants. */
function WantedGap() {
  const { actions, store } = useSession();
  const value = useAppState((state) => state.design.clearance?.wantedGapMm);
  const units = useAppState((state) => state.settings.units);
  const field = CLEARANCE_SECTION.wantedGapMm;
  return (
    <div className="clearance-wanted">
      <OptionalNumberRow
        value={value}
        placeholder={shownText(field.default, shownUnit('mm', units))}
        field={{
          key: 'wantedGap',
          label: partText('clearance.wantedGapMm.label', field.label),
          help: partText('clearance.wantedGapMm.help', field.help),
          limits: { min: field.min, max: field.max, unit: 'mm' },
          step: field.step,
          commit(wantedGapMm) {
            const outcome = actions.setSection('clearance', { wantedGapMm });
            const { design, settings } = store.getState();
            return outcome.ok ? null : refusalText(outcome.error, design, null, settings.units);
          },
        }}
      />
    </div>
  );
}

function GapTable(props: {
  readonly rows: readonly ClearanceRow[];
  readonly onGo: (row: ClearanceRow) => void;
  readonly onSelect: (id: string) => void;
}) {
  const number = 'lower-number';
  return (
    <table className="lower-table" data-testid="clearance-table">
      <thead>
        <tr>
          <th scope="col">{t('clearance.part')}</th>
          <th scope="col">{t('clearance.keepOut')}</th>
          <th scope="col">{t('clearance.state')}</th>
          <th scope="col" className={number}>
            {t('clearance.gap')}
          </th>
          <th scope="col" className={number}>
            {t('clearance.error')}
          </th>
          <th scope="col" className={number}>
            {t('clearance.pitch')}
          </th>
          <th scope="col" className={number}>
            {t('clearance.azimuth')}
          </th>
          <th scope="col">
            <span className="ui-unseen">{t('clearance.go')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {props.rows.map((row) => (
          <tr key={row.key} data-state={row.state} data-testid={`gap-${row.part}`}>
            <th scope="row">
              <Name name={row.partName} onClick={() => props.onSelect(row.part)} />
            </th>
            <td>
              <Name name={row.keepOutName} onClick={() => props.onSelect(row.keepOut)} />
            </td>
            <td className="clearance-state">{row.words}</td>
            <td className={number}>{row.gap}</td>
            <td className={number}>{row.error}</td>
            <td className={number}>{row.pitch}</td>
            <td className={number}>{row.azimuth}</td>
            <td>
              <button
                type="button"
                className="clearance-go"
                title={t('clearance.goTo', { pitch: row.pitch, part: row.partName })}
                aria-label={t('clearance.goTo', { pitch: row.pitch, part: row.partName })}
                onClick={() => props.onGo(row)}
              >
                {t('clearance.go')}
              </button>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Name(props: { readonly name: string; readonly onClick: () => void }) {
  return (
    <button type="button" className="lower-name" onClick={props.onClick}>
      {props.name}
    </button>
  );
}

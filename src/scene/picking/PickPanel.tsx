import { useEffect, useId, useRef, useState } from 'react';
import { POSITION_LIMITS } from '../../design/limits';
import type { PickedPlace, PickFault } from '../../design/placeByPicks';
import type { Result } from '../../engine/result';
import { mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { localNumber } from '../../messages/numbers';
import { tellRefusal } from '../../state/editing';
import { type Picking, RIM_POINTS } from '../../state/picking';
import { fixed } from '../../state/quantities';
import { Press } from '../../ui/Press';
import { useAppState, useSession } from '../../ui/session';
import { readStation, type StationFault } from './readStation';

/** What to press next while a part is being placed by its holes, what was found so far, and the way out. */
export function PickPanel() {
  const picking = useAppState((state) => state.picking);
  return picking ? <OpenPanel picking={picking} /> : null;
}

function OpenPanel({ picking }: { readonly picking: Picking }) {
  const session = useSession();
  const { actions, store } = session;
  const heading = useId();
  const panel = useRef<HTMLElement>(null);
  // From the dialog or the field that began it.
  useEffect(() => panel.current?.focus(), []);
  const name = store.getState().design.parts.find((part) => part.id === picking.part)?.name ?? '';
  const found = actions.picking.preview();
  const count = picking[picking.rim].length;
  const open = picking.bore.length + picking.bolt.length > 0;

  function apply(): void {
    tellRefusal(session, actions.picking.apply(), picking.part);
  }

  return (
    <section
      ref={panel}
      tabIndex={-1}
      className="stage-picks"
      aria-labelledby={heading}
      data-stage-control
      data-testid="pick-panel"
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        actions.picking.stop();
      }}
    >
      <h3 id={heading}>{t('stage.pick.title', { part: name })}</h3>
      <div className="stage-picks-rims" role="group" aria-label={t('stage.pick.rims')}>
        {(['bore', 'bolt'] as const).map((rim) => (
          <button
            key={rim}
            type="button"
            className="ui-button"
            aria-pressed={picking.rim === rim}
            onClick={() => actions.picking.ask(rim)}
          >
            {t(`stage.pick.${rim}`, { count: picking[rim].length, of: RIM_POINTS })}
          </button>
        ))}
      </div>
      <p role="status">
        {count < RIM_POINTS
          ? t(`stage.pick.${picking.rim}Ask`, { left: RIM_POINTS - count })
          : t('stage.pick.whole')}
      </p>
      <PickFindings found={found} />
      {picking.bolt.length === RIM_POINTS && <Station picking={picking} />}
      <div className="stage-picks-tools">
        <Press
          quick
          off={!open}
          why={t('stage.pick.backWhy')}
          onPress={() => actions.picking.back()}
        >
          {t('stage.pick.back')}
        </Press>
        <button type="button" className="ui-button" onClick={() => actions.picking.stop()}>
          {t('stage.pick.stop')}
        </button>
        <Press
          main
          off={!found?.ok}
          why={t('stage.pick.applyWhy')}
          testId="pick-apply"
          onPress={apply}
        >
          {t('stage.pick.apply')}
        </Press>
      </div>
    </section>
  );
}

/** Radii, squareness and what is wrong, so that a slip of the pointer shows before the part moves. */
function PickFindings({ found }: { readonly found: Result<PickedPlace, PickFault> | null }) {
  if (!found) return null;
  if (!found.ok) {
    if (found.error.kind === 'nothing') return null;
    const text =
      found.error.kind === 'onALine'
        ? t(`stage.pick.onALine.${found.error.rim}`)
        : t('stage.pick.parallel');
    return (
      <p className="stage-picks-fault" role="alert">
        {text}
      </p>
    );
  }
  const { bore, bolt, outOfSquareDeg, beside } = found.value;
  return (
    <ul className="stage-picks-found">
      {bore && <li>{t('stage.pick.boreFound', { diameter: diameter(bore.radius) })}</li>}
      {bolt && <li>{t('stage.pick.boltFound', { diameter: diameter(bolt.radius) })}</li>}
      {outOfSquareDeg !== null && (
        <li>
          {t('stage.pick.square', {
            angle: fixed(outOfSquareDeg, 2),
            beside: fixed(mmFromMetres(beside ?? 0), 3),
          })}
        </li>
      )}
    </ul>
  );
}

function diameter(radius: number): string {
  return fixed(mmFromMetres(2 * radius), 2);
}

function Station({ picking }: { readonly picking: Picking }) {
  const { actions } = useSession();
  const id = useId();
  const [text, setText] = useState(localNumber(String(picking.stationMm)));
  const read = readStation(text);
  return (
    <p className="stage-picks-station">
      <label htmlFor={id}>{t('stage.pick.station')}</label>
      <input
        id={id}
        inputMode="decimal"
        value={text}
        aria-invalid={!read.ok}
        onChange={(event) => {
          setText(event.target.value);
          const next = readStation(event.target.value);
          if (next.ok) actions.picking.setStation(next.value);
        }}
      />
      {!read.ok && (
        <span className="stage-picks-fault" role="alert">
          {stationFaultText(read.error, text)}
        </span>
      )}
    </p>
  );
}

function stationFaultText(fault: StationFault, text: string): string {
  const { min, max } = POSITION_LIMITS;
  return fault === 'ambiguousComma'
    ? t('fields.typedAmbiguousComma', { field: t('stage.pick.station'), text: text.trim() })
    : t('stage.pick.stationFault', { min, max });
}

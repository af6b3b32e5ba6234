import { type KeyboardEvent, useId } from 'react';
import { useAppState, useSession } from '../../ui/session';
import { massText } from './massText';
import { t } from './roomText';
import { ScaleStep } from './ScaleStep';
import type { DrawnPart } from './useSheet';
import { useWeighing, type Weighing } from './useWeighing';
import { proofText, windowText } from './weighing';

/** What the finished part may weigh, and what it does weigh. */
export function WeighedBox(props: {
  readonly drawn: DrawnPart;
  readonly onStep: (step: number) => void;
}) {
  const { part, window, step } = props.drawn;
  const units = useAppState((state) => state.settings.units);
  const bought = part.catalogue !== undefined;
  return (
    <section className="drawing-mass" aria-label={t('drawing.mass')} data-testid="drawing-mass">
      <h3 className="ui-heading">{t('drawing.mass')}</h3>
      <dl className="drawing-facts">
        <div>
          <dt>{t('drawing.massDrawn')}</dt>
          <dd data-testid="drawing-mass-drawn">{massText(window.nominal, step / 10, units)}</dd>
        </div>
        {!bought && (
          <div title={t('drawing.massWindowHelp')}>
            <dt>{t('drawing.massWindow')}</dt>
            <dd data-testid="drawing-mass-window">{windowText(window, step, units)}</dd>
          </div>
        )}
      </dl>
      <ScaleStep step={step} onStep={props.onStep} />
      <p className="drawing-proof" data-testid="drawing-proof">
        {bought ? t('drawing.noteBought') : proofText(window, step, units)}
      </p>
      <Weighed key={`${part.id} ${units.mass}`} drawn={props.drawn} />
    </section>
  );
}

/** The field for the reading. What is typed and not taken stays in it, with the reason. */
function Weighed(props: { readonly drawn: DrawnPart }) {
  const { actions } = useSession();
  const entry = useWeighing(props.drawn);
  const id = useId();

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Enter') entry.take();
    else if (event.key === 'Escape' && entry.typing) entry.drop();
    else if (!entry.typing && isUndo(event)) {
      // The page's history, not the browser's of an empty field.
      if (event.shiftKey) actions.redo();
      else actions.undo();
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  return (
    <div className="drawing-weighed">
      <label className="drawing-label" htmlFor={id} title={t('drawing.weighedHelp')}>
        {t('drawing.weighed')}
      </label>
      <span className="drawing-entry" data-invalid={entry.fault !== null || undefined}>
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          aria-invalid={entry.fault !== null}
          aria-describedby={`${id}-said`}
          data-testid="drawing-weighed"
          value={entry.text}
          onChange={(event) => entry.onChange(event.target.value)}
          onFocus={(event) => event.target.select()}
          onBlur={entry.settle}
          onKeyDown={onKeyDown}
        />
        <span className="drawing-unit">{entry.unitName}</span>
      </span>
      <button type="button" className="ui-button" data-testid="drawing-take" onClick={entry.take}>
        {t('drawing.take')}
      </button>
      <div id={`${id}-said`} className="drawing-verdict" role="status">
        <Said entry={entry} />
      </div>
    </div>
  );
}

function Said(props: { readonly entry: Weighing }) {
  const { fault, judged, counted } = props.entry;
  return (
    <>
      {fault !== null && <p className="drawing-fault">{fault}</p>}
      {fault === null && judged && (
        <p data-kind={judged.kind} data-testid="drawing-verdict">
          <Mark kind={judged.kind} />
          {judged.text}
        </p>
      )}
      {fault === null && judged?.odd && <p>{judged.odd}</p>}
      {counted !== null && <p data-testid="drawing-counted">{counted}</p>}
    </>
  );
}

function isUndo(event: KeyboardEvent): boolean {
  return (event.ctrlKey || event.metaKey) && !event.altKey && event.key.toLowerCase() === 'z';
}

/** A shape for each verdict, beside its words. */
function Mark(props: { readonly kind: string }) {
  const sign = { inside: '\u2713', undecided: '?', light: '\u2193', heavy: '\u2191' }[props.kind];
  return (
    <span className="drawing-mark" aria-hidden="true">
      {sign}
    </span>
  );
}

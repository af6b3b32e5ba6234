import { useRef, useState } from 'react';
import type { Part } from '../../design/design';
import { SWING_AXES } from '../../design/measured';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';
import { MeasuredLines } from './MeasuredLines';
import { type MeasuredNumber, measuredField } from './measuredFields';
import { OptionalNumberRow } from './OptionalNumberRow';
import { SwingSheet } from './SwingSheet';
import { swingAbout } from './swingDraft';
import { swingResult } from './swingText';
import './measured.css';

const NUMBERS = [
  'massGrams',
  'massStepGrams',
  'centreXMm',
  'centreYMm',
  'centreZMm',
  'centreStepMm',
] as const satisfies readonly MeasuredNumber[];

/** What was measured of a part, and how it compares with the drawing. Open where there is something to see. */
export function MeasuredGroup(props: { readonly partId: string }) {
  const { partId } = props;
  const session = useSession();
  const measured = useAppState(
    (state) => state.design.parts.find((part) => part.id === partId)?.measured,
  );
  const part = session.live.model.placed(partId)?.part;
  const [opened, setOpened] = useState(measured !== undefined);
  if (!part) return null;
  return (
    <details
      className="fields-group measured"
      open={opened}
      onToggle={(event) => setOpened(event.currentTarget.open)}
      data-testid="measured"
    >
      <summary className="measured-summary">
        <h3 className="ui-heading">{t('measured.title')}</h3>
        {measured && <span className="measured-count">{t('measured.some')}</span>}
      </summary>
      {opened && <MeasuredBody part={part} measured={measured} />}
    </details>
  );
}

/** What the group holds; not there while the group is closed, so that a drag has nothing to work out for it. */
function MeasuredBody(props: { readonly part: Part; readonly measured: Part['measured'] }) {
  const { part, measured } = props;
  const session = useSession();
  const [sheet, setSheet] = useState(false);
  return (
    <>
      <p className="measured-note">{t('measured.lead')}</p>
      {NUMBERS.map((key) => (
        <OptionalNumberRow
          key={key}
          field={measuredField(session, part, key)}
          value={measured?.[key]}
        />
      ))}
      <h4 className="measured-heading">{t('measured.timed')}</h4>
      <TimedLines partId={part.id} />
      <button
        type="button"
        className="ui-button"
        onClick={() => setSheet(true)}
        data-testid="measured-pendulum"
      >
        {t('measured.pendulum')}
      </button>
      <SwingSheet part={part} open={sheet} onClose={() => setSheet(false)} />
      <h4 className="measured-heading">{t('measured.report')}</h4>
      <MeasuredLines partId={part.id} />
      {measured && (
        <button
          type="button"
          className="ui-button"
          onClick={() => session.actions.setMeasured(part.id, {})}
          data-testid="measured-forget"
        >
          {t('measured.forget')}
        </button>
      )}
    </>
  );
}

/** The moment timed about each axis, or that there is none; a drawn mass may change it during a drag. */
function TimedLines(props: { readonly partId: string }) {
  const { partId } = props;
  const { live, store } = useSession();
  const list = useRef<HTMLDListElement>(null);
  useLive((_, { design, settings, parts }) => {
    if (!list.current || !(settings || design)) return;
    if (!settings && parts !== 'all' && !parts.has(partId)) return;
    const placed = live.model.placed(partId);
    if (!placed) return;
    const { design: whole, settings: shown } = store.getState();
    for (const about of SWING_AXES) {
      const swing = swingAbout(placed.part.measured, about);
      const result =
        swing && swingResult(placed.part, placed.values, materialsOf(whole), swing, shown.units);
      const element = list.current.querySelector(`[data-about="${about}"]`);
      if (element) setText(element, result ? result.moment : t('measured.notTimed'));
    }
  });
  return (
    <dl className="fields-results" ref={list}>
      {SWING_AXES.map((about) => (
        <div className="fields-result" key={about}>
          <dt>{t(`measured.about.${about}`)}</dt>
          <dd data-about={about} />
        </div>
      ))}
    </dl>
  );
}

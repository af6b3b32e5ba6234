import { useEffect, useReducer, useRef, useState } from 'react';
import { t } from '../../messages';
import { useSession } from '../../ui/session';
import { write } from './dom';
import { LookControls, LookNote } from './LookControls';
import { createPullPlayer } from './pullPlayer';
import { pullSentence } from './pullSentence';
import { createPullTable, type PullTable } from './pullTable';
import { SpeedPart } from './SpeedPart';
import { StepControls } from './StepControls';
import { usePulls } from './usePulls';
import './pulls.css';

/** Quiet time after the last change before the sentence is read out, ms. */
const READ_OUT_DELAY = 700;

/**
 * The pulls on the parts, added one by one: on the stage, on the dial and in the table here, where the bars end at the page's
 * total. While the room is open it says so to stage and dial.
 */
export function PullsRoom() {
  const session = useSession();
  const { pullsShow } = session;
  // Buttons follow the player; everything that moves is written past React.
  const [, redraw] = useReducer((n: number) => n + 1, 0);
  const [player] = useState(() => createPullPlayer(session, redraw));

  useEffect(() => {
    pullsShow.set({ open: true, progress: 0 });
    return () => {
      player.destroy();
      pullsShow.set({ open: false, progress: 0, speedRpm: null, eye: 'within', turning: false });
    };
  }, [player, pullsShow]);

  return (
    <section
      className="lower-room pulls-room"
      aria-label={t('lower.pulls')}
      data-testid="pulls-room"
    >
      <div className="lower-head">
        <StepControls player={player} />
        <LookControls />
      </div>
      <div className="pulls-columns">
        <BuildUp />
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
        <section className="pulls-aside lower-scroll" tabIndex={0} aria-label={t('pulls.aside')}>
          <LookNote />
          <SpeedPart />
        </section>
      </div>
    </section>
  );
}

function BuildUp() {
  const session = useSession();
  const { pullsShow } = session;
  const root = useRef<HTMLDivElement>(null);
  const sentence = useRef<HTMLParagraphElement>(null);
  const spoken = useRef<HTMLParagraphElement>(null);
  const body = useRef<HTMLTableSectionElement>(null);
  const foot = useRef<HTMLTableSectionElement>(null);
  const table = useRef<PullTable | null>(null);
  const pending = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  useEffect(() => {
    if (!body.current || !foot.current) return;
    const [rows, total] = [body.current, foot.current];
    table.current = createPullTable(rows, total, session);
    return () => {
      clearTimeout(pending.current);
      table.current = null;
      rows.replaceChildren();
      total.replaceChildren();
    };
  }, [session]);

  usePulls((pulls) => {
    table.current?.update();
    const text = pullSentence(session);
    write(sentence.current, text);
    if (!pulls) return;
    if (root.current) root.current.dataset.grain = pullsShow.shown.grain;
    clearTimeout(pending.current);
    pending.current = setTimeout(() => write(spoken.current, text), READ_OUT_DELAY);
    const newest = body.current?.querySelector('[data-newest="true"]');
    newest?.scrollIntoView({ block: 'nearest', behavior: 'auto' });
  });

  return (
    <div className="pulls-build" ref={root} data-grain="parts">
      <p className="pulls-sentence" ref={sentence} data-testid="pulls-sentence" />
      <p className="ui-unseen" aria-live="polite" ref={spoken} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <section className="lower-scroll" tabIndex={0} aria-label={t('pulls.table')}>
        <table className="lower-table pulls-table" data-testid="pulls-table">
          <thead>
            <tr>
              <th scope="col">{t('pulls.column.name')}</th>
              <th scope="col" className="lower-number">
                {t('pulls.column.pull')}
              </th>
              <th scope="col" className="lower-number pulls-fine">
                {t('pulls.column.lever')}
              </th>
              <th scope="col" className="lower-number pulls-fine">
                {t('pulls.column.turning')}
              </th>
              <th scope="col" className="lower-number" colSpan={2}>
                {t('pulls.column.moment')}
              </th>
              <th scope="col">{t('pulls.column.chain')}</th>
              <th scope="col" className="lower-number">
                {t('pulls.column.sum')}
              </th>
            </tr>
          </thead>
          <tbody ref={body} />
          <tfoot ref={foot} />
        </table>
      </section>
    </div>
  );
}

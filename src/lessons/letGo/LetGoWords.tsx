import { useRef } from 'react';
import { t } from '../../messages';
import type { LetGoDesk } from '../../state/letGoTypes';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import { slownessText } from '../../state/words/letGoShort';
import {
  faultText,
  heldText,
  needText,
  nowText,
  pausedText,
  pushText,
  runText,
} from '../../state/words/letGoText';
import { setShown, setText } from '../../ui/drawn/svg';
import { useSession } from '../../ui/session';
import { useLetGo } from './useLetGo';

/** What it does in a sentence, what a hand feels, and what it did last. */
export function LetGoWords() {
  const session = useSession();
  const said = useRef<HTMLParagraphElement>(null);
  const now = useRef<HTMLParagraphElement>(null);
  const push = useRef<HTMLParagraphElement>(null);
  const need = useRef<HTMLParagraphElement>(null);

  useLetGo((reading, desk) => {
    if (!said.current || !now.current || !push.current || !need.current) return;
    const { units } = session.store.getState().settings;
    const { status, fault, pushing } = desk.store.getState();
    setText(said.current, sentence(session, reading, desk));
    // Held, it changes with every step of a drag, which the dial says already.
    said.current.ariaLive = status === 'held' && !fault ? 'off' : 'polite';
    said.current.dataset.tone = fault ? 'warning' : 'plain';
    const moves = desk.run !== null && (status === 'running' || status === 'paused');
    setText(now.current, moves && desk.run ? nowText(desk.run) : lastText(desk, units));
    setShown(now.current, now.current.textContent !== '');
    const loose = moves || status === 'resting';
    setShown(push.current, loose && pushing);
    setShown(need.current, loose && pushing);
    if (!pushing || !desk.run) return;
    setText(push.current, pushText(desk.run, reading, units));
    setText(need.current, needText(desk.run, reading, units));
  });

  return (
    <div className="letgo-words">
      {/* Polite: a run under way says nothing, its end is said. */}
      <p className="letgo-said" role="status" ref={said} data-testid="letgo-said" />
      <p className="letgo-now" ref={now} data-testid="letgo-now" />
      <p className="letgo-push" ref={push} data-testid="letgo-push" />
      <p className="lower-quiet" ref={need} data-testid="letgo-need" />
    </div>
  );
}

function sentence(session: Session, reading: HeadReading, desk: LetGoDesk): string {
  const { pitchDeg, settings } = session.store.getState();
  const { status, fault, slowness } = desk.store.getState();
  if (fault) return faultText(fault);
  if (status === 'held' || status === 'starting' || !desk.run) {
    return heldText(reading, pitchDeg, settings.units);
  }
  if (status === 'running') return t('letGo.moving', { slowness: slownessText(slowness) });
  if (status === 'paused') return pausedText(desk.run, settings.units);
  return runText(desk.run, settings.units);
}

/** What it did before a hand took hold. */
function lastText({ run, store }: LetGoDesk, units: DisplayUnits): string {
  const held = store.getState().status === 'held';
  return run && held ? t('letGo.last', { text: runText(run, units) }) : '';
}

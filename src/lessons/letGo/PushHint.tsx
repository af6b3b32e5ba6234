import { useRef } from 'react';
import { t } from '../../messages';
import { displayMoment, show } from '../../state/quantities';
import { setShown, setText } from '../../ui/drawn/svg';
import { KEY_PUSH } from '../../ui/letGo/push';
import { useSession } from '../../ui/session';
import { useLetGo } from './useLetGo';

/** How what has been let go is pushed, and what a key pushes with. */
export function PushHint() {
  const { store } = useSession();
  const text = useRef<HTMLParagraphElement>(null);
  useLetGo((_, { run, store: desk }) => {
    if (!text.current) return;
    const { status } = desk.getState();
    const loose = run !== null && status !== 'held' && status !== 'starting';
    setShown(text.current, loose);
    if (!loose) return;
    const { units } = store.getState().settings;
    const moment = show(displayMoment(KEY_PUSH * run.soft.need, units));
    setText(text.current, t('letGo.pushHint', { moment }));
  });
  return <p className="lower-quiet" ref={text} data-testid="letgo-hint" />;
}

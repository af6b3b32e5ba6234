import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { t } from '../../messages';
import { pushForce, slownessText } from '../../state/words/letGoShort';
import { useSession } from '../../ui/session';
import { setText } from '../marks/svg';

/** Beside the dial's title: lets the grip go and takes hold of it again; says how slowly it is shown and what a push is. */
export function LetGoButton() {
  const { letGo, live, store } = useSession();
  const loose = useStore(
    letGo.store,
    ({ status }) => status === 'running' || status === 'paused' || status === 'starting',
  );
  const text = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const update = () => {
      if (!text.current) return;
      const { status, slowness, pushing, fault } = letGo.store.getState();
      const running = status === 'running' || status === 'paused';
      const { units } = store.getState().settings;
      const push = pushing && letGo.run ? pushForce(letGo.run, live.reading, units) : null;
      const shown = push === null ? `1/${slowness}` : t('letGo.dialPushes', { force: push });
      text.current.title = slownessText(slowness);
      setText(text.current, fault ? t('letGo.dialFault') : running ? shown : '');
    };
    update();
    return letGo.subscribe(update);
  }, [letGo, live, store]);
  return (
    <span className="dial-let-go">
      <span className="dial-let-go-text" ref={text} data-testid="dial-let-go-text" />
      <button
        type="button"
        className="dial-angle"
        title={t(loose ? 'letGo.takeHoldHelp' : 'letGo.letGoHelp')}
        data-testid="dial-let-go"
        onClick={loose ? letGo.stop : letGo.letGo}
      >
        {t(loose ? 'letGo.takeHold' : 'letGo.letGo')}
      </button>
    </span>
  );
}

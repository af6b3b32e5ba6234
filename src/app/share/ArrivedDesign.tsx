import { useEffect, useState } from 'react';
import type { Design } from '../../design/design';
import { serializeDesign } from '../../design/file';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { Dialog } from '../../ui/Dialog';
import { focusFirst } from '../../ui/focusFirst';
import { useSession } from '../../ui/session';
import { type PageServices, useServices } from '../AppContext';
import { isDemo } from '../demoDesigns';
import { untilNoDialog } from './untilNoDialog';
import './share.css';

/** As `readShareLink` takes it; told here too, so that what reads links is fetched only for one. */
const LINK = /^#d(?:=|%3[Dd])/;
/** Letters of a name that are shown. */
const NAME = 40;

/**
 * A design that came with the page's address. Where the open one is somebody's work it asks first; nothing is written
 * over before. The address forgets the design once it is decided, so that a reload does not ask again.
 */
export function ArrivedDesign() {
  const session = useSession();
  const services = useServices();
  const [arrived, setArrived] = useState<Design | null>(null);
  useEffect(() => {
    function look(): void {
      if (LINK.test(window.location.hash)) void receive(session, services, setArrived);
    }
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, [session, services]);

  function done(): void {
    forgetAddress();
    setArrived(null);
  }
  if (!arrived) return null;
  return <Choice arrived={arrived} onDone={done} />;
}

async function receive(
  session: Session,
  { desk }: PageServices,
  ask: (design: Design) => void,
): Promise<void> {
  const { store, actions } = session;
  const { hash } = window.location;
  const read = await readLink(hash);
  await untilNoDialog();
  if (window.location.hash !== hash) return;
  if (!read.ok) {
    forgetAddress();
    actions.notify({ tone: 'warning', text: t('share.refused', { reason: read.reason }) });
    return;
  }
  session.live.flush();
  const open = serializeDesign(store.getState().design);
  const sent = serializeDesign(read.design);
  if (sent !== open && !isDemo(store.getState().design)) return ask(read.design);
  forgetAddress();
  if (sent === open) actions.notify({ tone: 'plain', text: t('share.same') });
  else desk.openDesign(read.design, t('share.opened', { name: shortName(read.design) }));
}

type Read =
  | { readonly ok: true; readonly design: Design }
  | { readonly ok: false; readonly reason: string };

async function readLink(hash: string): Promise<Read> {
  try {
    const [{ readShareLink }, { linkFaultText }] = await Promise.all([
      import('../../output/share/shareLink'),
      import('../../output/share/linkFaultText'),
    ]);
    const read = readShareLink(hash);
    return read.ok
      ? { ok: true, design: read.value }
      : { ok: false, reason: linkFaultText(read.error) };
  } catch (error) {
    return { ok: false, reason: error instanceof Error ? error.message : String(error) };
  }
}

function forgetAddress(): void {
  const { pathname, search } = window.location;
  window.history.replaceState(window.history.state, '', `${pathname}${search}`);
}

function shortName({ name }: Design): string {
  const letters = Array.from(name);
  return letters.length > NAME ? `${letters.slice(0, NAME - 1).join('')}\u2026` : name;
}

function Choice(props: { readonly arrived: Design; readonly onDone: () => void }) {
  const { arrived, onDone } = props;
  const { store } = useSession();
  const { desk } = useServices();

  useEffect(() => focusDialAfter, []);

  function open(): void {
    onDone();
    desk.openDesign(arrived, t('share.opened', { name: shortName(arrived) }));
  }
  async function saveFirst(): Promise<void> {
    if (await desk.save()) open();
  }

  return (
    <Dialog open title={t('share.arrivedTitle')} onClose={onDone}>
      <div className="share share-arrived" data-testid="share-arrived">
        <p>
          {t('share.arrived', {
            name: shortName(arrived),
            count: arrived.parts.length,
            open: shortName(store.getState().design),
          })}
        </p>
        <div className="share-row">
          <button
            ref={focusFirst}
            type="button"
            className="ui-button"
            data-testid="share-keep"
            onClick={onDone}
          >
            {t('share.keep')}
          </button>
          <button
            type="button"
            className="ui-button"
            data-testid="share-save-first"
            onClick={() => void saveFirst()}
          >
            {t('share.saveFirst')}
          </button>
          <button type="button" className="ui-button" data-testid="share-open" onClick={open}>
            {t('share.open')}
          </button>
        </div>
      </div>
    </Dialog>
  );
}

/** Once the dialog is gone: a page that was opened by a link has nothing that had the focus before. */
function focusDialAfter(): void {
  setTimeout(() => {
    if (document.activeElement !== document.body) return;
    document.getElementById('dial')?.focus({ preventScroll: true });
  });
}

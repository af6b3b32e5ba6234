import { useEffect, useMemo, useState } from 'react';
import { t } from '../messages';
import { FileDrop } from '../panels/files/FileDrop';
import { ImportRoom } from '../panels/import/ImportRoom';
import { PartDialogs } from '../panels/shelf/PartDialogs';
import { Verdict } from '../panels/verdict/Verdict';
import { useLessonDoor, useShownPage } from '../ui/lessonDoor';
import { SessionProvider, useAppState } from '../ui/session';
import { useServices } from './AppContext';
import { Foot } from './Foot';
import { FirstMinuteCard } from './firstMinute/FirstMinuteCard';
import { Guard } from './Guard';
import { KeysDialog } from './KeysDialog';
import { KeepLine } from './keep/KeepLine';
import { useLowerView } from './LowerRoom';
import { LessonLine } from './lesson/LessonLine';
import { DrawerButtons, type DrawerName, MiddlePage } from './MiddlePage';
import { NarrowPage } from './NarrowPage';
import { NoticeLine } from './NoticeLine';
import { UpdateLine } from './offline/UpdateLine';
import { WidePage } from './rooms';
import { ArrivedDesign } from './share/ArrivedDesign';
import { TopBar } from './TopBar';
import { useTheme } from './theme';
import { usePageWidth } from './usePageWidth';
import { useShortcuts } from './useShortcuts';

/** The whole page: bar, verdict, the rooms in the arrangement that fits, foot, and what lies over them. */
export function App() {
  const { desk, readings } = useServices();
  const door = useLessonDoor();
  const shown = useShownPage();
  const width = usePageWidth();
  const room = useAppState((state) => state.settings.room);
  const view = useLowerView();
  const [keysOpen, setKeysOpen] = useState(false);
  const [drawer, setDrawer] = useState<DrawerName | null>(null);
  const page = useMemo(
    () => ({
      open: () => void desk.open(),
      save: () => {
        settleTyping();
        void desk.save();
      },
      saveAs: () => {
        settleTyping();
        void desk.saveAs();
      },
      help: () => setKeysOpen(true),
    }),
    [desk],
  );
  useShortcuts(page);
  useTheme();
  useTitle();
  return (
    <div className="app" data-width={width} data-room={room} data-view={view}>
      <a className="app-skip" href="#dial">
        {t('app.skip')}
      </a>
      <TopBar onHelp={page.help}>
        {width === 'middle' && <DrawerButtons drawer={drawer} onDrawer={setDrawer} />}
      </TopBar>
      <LessonLine />
      <KeepLine />
      <ImportRoom>
        <PartDialogs>
          <main className="app-main">
            <Guard key={shown} room={t('verdict.label')}>
              <Verdict />
            </Guard>
            <FirstMinuteCard />
            {width === 'wide' && <WidePage />}
            {width === 'middle' && <MiddlePage drawer={drawer} onDrawer={setDrawer} />}
            {width === 'narrow' && <NarrowPage />}
          </main>
        </PartDialogs>
        <FileDrop desk={desk} readings={readings} />
      </ImportRoom>
      <UpdateLine />
      <Foot />
      <NoticeLine />
      <SessionProvider session={door.own}>
        <ArrivedDesign />
      </SessionProvider>
      <KeysDialog open={keysOpen} onClose={() => setKeysOpen(false)} />
    </div>
  );
}

/** What is being typed counts as typed when the file is saved. */
function settleTyping(): void {
  const active = document.activeElement;
  if (!(active instanceof HTMLInputElement || active instanceof HTMLTextAreaElement)) return;
  active.blur();
  active.focus();
}

function useTitle(): void {
  const name = useAppState((state) => state.design.name);
  useEffect(() => {
    document.title = t('app.title', { name });
  }, [name]);
}

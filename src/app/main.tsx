import '@fontsource-variable/inter/wght.css';
import '../ui/theme.css';
import '../ui/controls.css';
import './page.css';
import './bar.css';
import './foot.css';
import './notice.css';
import './paper.css';
import './rows.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import type { Design } from '../design/design';
import { t } from '../messages';
import { spokenLanguage } from '../messages/languages';
import { createSession, newId } from '../state/createSession';
import { createFirstMinute } from '../state/firstMinute';
import { firstSelection } from '../state/firstSelection';
import { browserPorts, keepSession, restoreDesign } from '../state/keep/page';
import { createLessonDoor } from '../state/lessonDoor';
import { localNotes } from '../state/localNotes';
import { keepLetGo, readLetGo } from '../state/storedLetGo';
import { keepPlan, readPlan } from '../state/storedPlan';
import { keepSettings, readSettings } from '../state/storedSettings';
import { LessonDoorProvider } from '../ui/lessonDoor';
import { PlotFilesProvider } from '../ui/plotFiles';
import { App } from './App';
import { ServicesProvider } from './AppContext';
import { watchBench } from './benchOverChart';
import { openingDesign } from './demoDesigns';
import { tellFullFields } from './fullFields';
import { foundNotice, messageNotice } from './keep/notices';
import { createPageDesk } from './lesson/pageDesk';
import { resumeLesson } from './lesson/resumeLesson';
import { watchOffline } from './offline/offlineWatch';
import { savePlotFile } from './plotFiles';
import { createReadingsDoor } from './readingsDoor';
import { keepRoomsInHistory } from './roomHistory';
import { followLanguage, speakAtFirst } from './spokenLanguage';
import { showTheme } from './theme';

async function start(root: HTMLElement): Promise<void> {
  const notes = localNotes();
  const settings = readSettings(notes);
  showTheme(settings.theme);
  await speakAtFirst(settings.language);
  const ports = browserPorts(newId, (message) => {
    const notice = messageNotice(message);
    if (notice) session.actions.notify(notice);
  });
  const restored = await restoreDesign(ports);
  const session = createSession(restored.design ?? openingDesign());
  const { store, actions } = session;
  actions.setSettings(settings);
  actions.select(firstSelection(store.getState().design));
  const found = foundNotice(restored.found);
  if (found) actions.notify(found);
  keepSettings(store, notes);
  session.plan.set(readPlan(notes));
  keepPlan(session.plan, notes);
  session.letGo.choose(readLetGo(notes));
  keepLetGo(session.letGo, notes);
  const door = createLessonDoor(session);
  // Nothing of an earlier visit, and nothing that came with the address.
  const newcomer =
    restored.found.kind === 'nothing' &&
    restored.design === null &&
    notes.read('settings') === null &&
    window.location.hash === '';
  const readings = createReadingsDoor(session);
  const desk = createPageDesk(door, readings);
  const open = (design: Design) => desk.openDesign(design, t('keep.opened', { name: design.name }));
  const keeper = keepSession(session, open, ports, restored);
  const services = {
    desk,
    readings,
    keeper,
    keepPorts: ports,
    firstMinute: createFirstMinute(session, notes, newcomer),
    offline: watchOffline(),
  };
  watchBench(session);
  keepRoomsInHistory(session);
  tellFullFields(session);
  const resumed = resumeLesson(door);
  if (settings.room === 'learn') await resumed;
  const page = createRoot(root);
  const draw = () =>
    page.render(
      <StrictMode>
        <LessonDoorProvider door={door}>
          <ServicesProvider value={services}>
            <PlotFilesProvider value={savePlotFile}>
              <App key={spokenLanguage()} />
            </PlotFilesProvider>
          </ServicesProvider>
        </LessonDoorProvider>
      </StrictMode>,
    );
  draw();
  followLanguage(session, draw);
}

const root = document.getElementById('root');
if (!root) throw new Error('main: the page has no #root element');
void start(root);

import '@fontsource-variable/inter/wght.css';
import '../ui/theme.css';
import '../ui/controls.css';
import './app.css';
import './rows.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { createSession } from '../state/createSession';
import { openDesignDatabase } from '../state/designDatabase';
import { createFirstMinute } from '../state/firstMinute';
import { firstSelection } from '../state/firstSelection';
import { createLessonDoor } from '../state/lessonDoor';
import { localNotes } from '../state/localNotes';
import { type PersistencePorts, restoreDesign, startAutosave } from '../state/persistence';
import { keepLetGo, readLetGo } from '../state/storedLetGo';
import { keepPlan, readPlan } from '../state/storedPlan';
import { keepSettings, readSettings } from '../state/storedSettings';
import { takeWriteLock } from '../state/writeLock';
import { LessonDoorProvider } from '../ui/lessonDoor';
import { App } from './App';
import { ServicesProvider } from './AppContext';
import { watchBench } from './benchOverChart';
import { openingDesign } from './demoDesigns';
import { createPageDesk } from './lesson/pageDesk';
import { watchOffline } from './offline/offlineWatch';
import { createReadingsDoor } from './readingsDoor';
import { showTheme } from './theme';

/** A database that does not answer must not keep the page from opening. */
const DATABASE_PATIENCE = 3000;

async function start(root: HTMLElement): Promise<void> {
  const notes = localNotes();
  const settings = readSettings(notes);
  showTheme(settings.theme);
  const ports: PersistencePorts = {
    database: () => inTime(openDesignDatabase()),
    notes,
    lock: takeWriteLock,
    now: Date.now,
  };
  const restored = await restoreDesign(ports);
  const session = createSession(restored.design ?? openingDesign());
  const { store, actions } = session;
  actions.setSettings(settings);
  actions.select(firstSelection(store.getState().design));
  if (restored.notice) actions.notify(restored.notice);
  keepSettings(store, notes);
  session.plan.set(readPlan(notes));
  keepPlan(session.plan, notes);
  session.letGo.choose(readLetGo(notes));
  keepLetGo(session.letGo, notes);
  const door = createLessonDoor(session);
  // Nothing of an earlier visit, and nothing that came with the address.
  const newcomer =
    restored.design === null &&
    restored.notice === null &&
    notes.read('settings') === null &&
    window.location.hash === '';
  const readings = createReadingsDoor(session);
  const services = {
    desk: createPageDesk(door, readings),
    readings,
    autosave: startAutosave(session, ports, restored.text),
    firstMinute: createFirstMinute(session, notes, newcomer),
    offline: watchOffline(),
  };
  watchBench(session);
  createRoot(root).render(
    <StrictMode>
      <LessonDoorProvider door={door}>
        <ServicesProvider value={services}>
          <App />
        </ServicesProvider>
      </LessonDoorProvider>
    </StrictMode>,
  );
}

function inTime<T>(work: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const late = () => reject(new Error('the database does not answer'));
    const timer = setTimeout(late, DATABASE_PATIENCE);
    work.finally(() => clearTimeout(timer)).then(resolve, reject);
  });
}

const root = document.getElementById('root');
if (!root) throw new Error('main: the page has no #root element');
void start(root);

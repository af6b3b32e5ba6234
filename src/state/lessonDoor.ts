import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../design/design';
import { createSession } from './createSession';
import type { Session } from './session';
import type { Settings } from './settings';

/** What a lesson puts on the page: a head of its own and how it is looked at. */
interface LessonScene {
  readonly title: string;
  /** A sound design. */
  readonly design: Design;
  readonly pitchDeg: number;
  readonly select: string | null;
  readonly settings: Partial<Settings>;
}

interface LessonDoorState {
  /** The lesson's own page; null while none is open. */
  readonly lesson: Session | null;
  readonly title: string;
  /** What the lesson asks at the moment, for where its panel is folded away. */
  readonly task: string;
}

/**
 * Between a person's own work and the head of a lesson. A lesson has a session of its own, with its own undo and without
 * autosave, so that nothing done in it can reach the own design. It is shown in the room Learn only: another room shows the
 * own design, and the lesson waits. Units, language, theme, letter keys and room are the same on both sides.
 */
export interface LessonDoor {
  readonly own: Session;
  readonly store: StoreApi<LessonDoorState>;
  /** The session that the page shows. */
  shown(): Session;
  /** Shows a lesson's head; the one session of lessons is made at the first call, and its history begins anew. */
  open(scene: LessonScene): Session;
  /** What the lesson asks now; its title, where that has changed with the language. */
  say(task: string, title?: string): void;
  leave(): void;
}

const NOTHING: LessonDoorState = { lesson: null, title: '', task: '' };
const SHARED = [
  'units',
  'language',
  'theme',
  'letterKeys',
  'room',
] as const satisfies readonly (keyof Settings)[];

export function createLessonDoor(
  own: Session,
  makeSession: (design: Design) => Session = (design) => createSession(design),
): LessonDoor {
  const store = createStore((): LessonDoorState => NOTHING);
  let made: Session | null = null;

  function sessionFor(design: Design): Session {
    if (made) return made;
    // The shelf is this browser's, not the design's.
    made = { ...makeSession(design), shelf: own.shelf };
    carry(own, made);
    stopWhenLeft(made);
    carry(made, own);
    forward(made);
    return made;
  }

  /** What the page has to say of the own design (that it cannot be kept, say) is said while a lesson is shown, too. */
  function forward(lesson: Session): void {
    own.store.subscribe(({ notice, settings }, before) => {
      if (!notice || notice === before.notice) return;
      if (shownSession(own, store.getState(), settings.room) === lesson) {
        lesson.actions.notify(notice);
      }
    });
  }

  return {
    own,
    store,
    shown: () => shownSession(own, store.getState(), own.store.getState().settings.room),
    open({ title, design, pitchDeg, select, settings }) {
      const lesson = sessionFor(design);
      const { actions } = lesson;
      const opened = actions.openDesign(design);
      if (!opened.ok) throw new Error(`lessonDoor.open(): the design is not sound: ${title}`);
      lesson.store.temporal.getState().clear();
      actions.select(select);
      actions.setPitch(pitchDeg);
      actions.setSettings({ ...own.store.getState().settings, ...settings });
      store.setState({ lesson, title, task: '' });
      return lesson;
    },
    say: (task, title) => store.setState(title === undefined ? { task } : { task, title }),
    leave() {
      made?.letGo.stop();
      store.setState(NOTHING);
    },
  };
}

/** The lesson's session in the room Learn while one is open, else the own. */
export function shownSession(
  own: Session,
  { lesson }: Pick<LessonDoorState, 'lesson'>,
  room: Settings['room'],
): Session {
  return lesson !== null && room === 'learn' ? lesson : own;
}

/** What was let go does not go on where nobody sees it. */
function stopWhenLeft(lesson: Session): void {
  lesson.store.subscribe(({ settings }, before) => {
    if (settings.room !== 'learn' && before.settings.room === 'learn') lesson.letGo.stop();
  });
}

/** What is chosen on one side is so on the other. */
function carry(from: Session, to: Session): void {
  from.store.subscribe(({ settings }, before) => {
    if (settings === before.settings) return;
    const there = to.store.getState().settings;
    if (SHARED.every((key) => settings[key] === there[key])) return;
    to.actions.setSettings(Object.fromEntries(SHARED.map((key) => [key, settings[key]])));
  });
}

import { t, withTexts } from '../../messages';
import { createFileDesk, type FileDesk } from '../../panels/files/fileDesk';
import type { ReadingsDoor } from '../../panels/files/readingsDoor';
import type { LessonDoor } from '../../state/lessonDoor';
import type { Session } from '../../state/session';

/** A lesson says so in its first lines; a design never does. */
const LESSON = /"format"\s*:\s*"stillgrip-lesson"/;

/**
 * The files of the page. What is opened takes the place of the own design, and an open lesson is put away for it; what is
 * saved is the head that is on the stage. A lesson file opens as a lesson, whatever way it comes.
 */
export function createPageDesk(door: LessonDoor, readings: ReadingsDoor): FileDesk {
  const takesLessons = (text: string, file: string) => {
    if (!LESSON.test(text.slice(0, 400))) return false;
    void openLesson(door, text, file);
    return true;
  };
  const own = createFileDesk(door.own, takesLessons, readings);
  let lesson: { readonly session: Session; readonly desk: FileDesk } | null = null;

  /** The lesson's head has a file home of its own: it is never saved over the own design's file. */
  function shown(): FileDesk {
    const session = door.shown();
    if (session === door.own) return own;
    if (lesson?.session !== session) lesson = { session, desk: createFileDesk(session) };
    return lesson.desk;
  }

  /** What comes to the own design is seen; where nothing came, the lesson stays. */
  async function toOwn(work: () => void | Promise<void>): Promise<void> {
    const { opening } = door.own.store.getState();
    await work();
    if (door.own.store.getState().opening !== opening) door.leave();
  }

  return {
    open: () => toOwn(own.open),
    openFile: (file) => toOwn(() => own.openFile(file)),
    openSample: (name, text) => void toOwn(() => own.openSample(name, text)),
    openDesign: (design, notice) => void toOwn(() => own.openDesign(design, notice)),
    sayOneOnly: (left) => shown().sayOneOnly(left),
    save: () => shown().save(),
    saveAs: () => shown().saveAs(),
    startNew: () => void toOwn(own.startNew),
  };
}

async function openLesson(door: LessonDoor, text: string, file: string): Promise<void> {
  const { actions } = door.shown();
  try {
    const { lessonDeskOf } = await withTexts(import('../../lessons/course/deskOf'));
    const desk = lessonDeskOf(door);
    if (desk.openText(text, file)) door.own.actions.setSettings({ room: 'learn' });
    else {
      const reason = desk.store.getState().fault ?? '';
      actions.notify({ tone: 'warning', text: t('lessons.refused', { reason }) });
    }
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    actions.notify({ tone: 'warning', text: t('app.notFetched', { reason }) });
  }
}

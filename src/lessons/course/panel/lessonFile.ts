import { fileOpen } from 'browser-fs-access';
import { isCancelled, reasonOf, utf8Text } from '../../../ui/fileErrors';
import { fileSave } from '../../../ui/fileSave';
import { fileStem } from '../../../ui/fileStem';
import type { LessonDesk, LessonRun } from '../desk';
import { say } from '../say';

/** Larger files are not even read. */
const MAX_MB = 32;
function files() {
  return {
    description: say('lessonRoom.fileKind'),
    extensions: ['.json'],
    mimeTypes: ['application/json'],
    id: 'stillgrip-lesson',
  };
}

/** Asks for a lesson file and begins it; what is wrong with it is the desk's fault line. */
export async function openLessonFile(desk: LessonDesk): Promise<void> {
  try {
    const file = await fileOpen(files());
    if (file.size > MAX_MB * 1024 * 1024) {
      return refuse(desk, say('lessonRoom.tooLarge', { file: file.name, limit: MAX_MB }));
    }
    const text = await utf8Text(file);
    if (text === null) return refuse(desk, say('lessonRoom.notUtf8', { file: file.name }));
    desk.openText(text, file.name);
  } catch (error) {
    if (!isCancelled(error)) refuse(desk, reasonOf(error));
  }
}

/** Writes an open lesson as it came. The reason where it could not be written; null where it was, or nobody wanted. */
export async function saveLessonFile({ lesson, text }: LessonRun): Promise<string | null> {
  try {
    const fileName = `${fileStem(lesson.id, 'lesson')}.json`;
    await fileSave(new Blob([text], { type: 'application/json' }), { ...files(), fileName });
    return null;
  } catch (error) {
    return isCancelled(error) ? null : reasonOf(error);
  }
}

function refuse(desk: LessonDesk, fault: string): void {
  desk.store.setState({ fault });
}

import type { LessonDoor } from '../../state/lessonDoor';
import { lessonMark } from '../../state/lessonMark';

/** Opens the lesson that this tab had open before it was reloaded. Never throws: without it the page opens as well. */
export async function resumeLesson(door: LessonDoor): Promise<void> {
  if (!lessonMark().read()) return;
  try {
    const { lessonDeskOf } = await import('../../lessons/course/deskOf');
    lessonDeskOf(door).resume();
  } catch {
    // The list of lessons is where it was.
  }
}

import type { LessonDoor } from '../../state/lessonDoor';
import { lessonMark } from '../../state/lessonMark';
import { localNotes } from '../../state/localNotes';
import { BUILT_IN_LESSONS } from './builtIn';
import { createLessonDesk, type LessonDesk } from './desk';

const desks = new WeakMap<LessonDoor, LessonDesk>();

/** The page's one desk of lessons. */
export function lessonDeskOf(door: LessonDoor): LessonDesk {
  const found = desks.get(door);
  if (found) return found;
  const desk = createLessonDesk(door, localNotes(), BUILT_IN_LESSONS, lessonMark());
  desks.set(door, desk);
  // A page that is left may be the same one that is reloaded.
  window.addEventListener('pagehide', desk.remember);
  return desk;
}

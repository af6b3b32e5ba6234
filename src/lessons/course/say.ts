import { addTexts, t } from '../../messages';
import { LESSON_ROOM } from '../../messages/en/lessonRoom';

addTexts('lessonRoom', LESSON_ROOM);

/** A text of the lessons' panel: they come with this module, so that the page's first load does not hold them. */
export function say(
  key: keyof typeof LESSON_ROOM,
  values?: Readonly<Record<string, string | number>>,
): string {
  return t(key, values);
}

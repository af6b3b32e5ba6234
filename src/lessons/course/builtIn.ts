import { addTexts, partText } from '../../messages';
import { saidAnew } from './lessonTexts';

/** A lesson that comes with the page; its text is read when it is begun. */
export interface LessonEntry {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

// English keeps them in the lessons; another language has them fetched.
addTexts('lessonFiles', {});

const FOLDER = '../../../assets/lessons/';
const texts = import.meta.glob<string>('../../../assets/lessons/*.json', {
  eager: true,
  query: '?raw',
  import: 'default',
});

/** In the order of their index. */
export const BUILT_IN_LESSONS: readonly LessonEntry[] = (
  JSON.parse(texts[`${FOLDER}index.json`] ?? '[]') as readonly string[]
).flatMap((file) => {
  const text = texts[FOLDER + file];
  return text === undefined ? [] : [builtIn(text)];
});

/** Title and text are always those in the language spoken at the moment. */
function builtIn(english: string): LessonEntry {
  const { id, title } = JSON.parse(english) as { readonly id: string; readonly title: string };
  return {
    id,
    get title() {
      return partText(`lesson.${id}.title`, title);
    },
    get text() {
      return spokenLesson(id, english);
    },
  };
}

/** The file in the language spoken; in English as it lies there, to the letter. */
function spokenLesson(id: string, english: string): string {
  let isOther = false;
  const lesson = saidAnew(JSON.parse(english), (path, own) => {
    const text = partText(`lesson.${id}.${path}`, own);
    isOther ||= text !== own;
    return text;
  });
  return isOther ? `${JSON.stringify(lesson, null, 2)}\n` : english;
}

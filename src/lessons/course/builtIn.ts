/** A lesson that comes with the page; its text is read when it is begun. */
export interface LessonEntry {
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

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
  if (text === undefined) return [];
  const { id, title } = JSON.parse(text) as { readonly id: string; readonly title: string };
  return [{ id, title, text }];
});

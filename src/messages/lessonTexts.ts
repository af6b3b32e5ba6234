/** A lesson file's texts in another language: the file with all else left out, and the id of its lesson. */
export interface LessonTexts {
  readonly lesson: string;
  readonly [field: string]: unknown;
}

/** Texts of lessons by key: `lesson.<id>.<path in the lesson file>`. */
export function lessonCatalogue(
  files: Readonly<Record<string, LessonTexts>>,
): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  function gather(path: string, value: unknown): void {
    if (typeof value === 'string') texts[path] = value;
    else if (Array.isArray(value)) {
      for (const [at, each] of value.entries()) gather(`${path}[${at}]`, each);
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, each] of Object.entries(value)) gather(`${path}.${key}`, each);
    }
  }
  for (const { lesson, ...fields } of Object.values(files)) gather(`lesson.${lesson}`, fields);
  return texts;
}

import * as z from 'zod/mini';
import { MAX_ID, MAX_NAME } from '../../design/limits';
import { MAX_LESSON_LABEL, MAX_LESSON_TEXT, MAX_LESSON_TITLE } from './lessonSchema';

function upTo(letters: number) {
  return z.string().check(z.minLength(1), z.maxLength(letters));
}

const text = upTo(MAX_LESSON_TEXT);
const labels = z.array(z.strictObject({ label: upTo(MAX_LESSON_LABEL) }));

/**
 * Form of a lesson's texts in another language: the lesson file with everything left out that is no text, each text at its
 * place in the same lists. That none is missing is held by the tests.
 */
export const lessonTextsSchema = z.strictObject({
  /** Id of the lesson. */
  lesson: upTo(MAX_ID),
  title: upTo(MAX_LESSON_TITLE),
  sentences: z.array(text),
  scene: z.strictObject({
    design: z.strictObject({
      name: upTo(MAX_NAME),
      note: text,
      parts: z.array(z.strictObject({ name: upTo(MAX_NAME) })),
    }),
    knobs: labels,
    watch: labels,
  }),
  steps: z.array(
    z.union([
      z.strictObject({
        question: text,
        choices: z.optional(z.array(z.strictObject({ text: upTo(MAX_NAME) }))),
        because: text,
      }),
      z.strictObject({ instruction: text, hint: z.optional(text), because: text }),
    ]),
  ),
  teacher: z.strictObject({ notes: z.array(text) }),
  sources: z.array(text),
});

/** The JSON Schema (draft 2020-12) of a file of `assets/lessons/<language>`, as text. */
export function lessonTextsSchemaText(): string {
  const schema = z.toJSONSchema(lessonTextsSchema, {
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === lessonTextsSchema) {
        jsonSchema.title = 'Stillgrip lesson in another language';
      }
    },
  });
  return `${JSON.stringify(schema, null, 2)}\n`;
}

import * as z from 'zod/mini';
import { DESIGN_FORMAT } from '../../design/design';
import { MAX_ID, MAX_NAME } from '../../design/limits';
import { number, schemaTexts } from '../../design/schemaNumbers';
import { CHART_QUANTITIES, LAYERS, LEARN_VIEWS } from '../../state/settings';
import { LESSON_FORMAT, LESSON_VERSION } from './lesson';
import { QUANTITIES, QUANTITY_NAMES } from './quantity';

/** Letters of one text of a lesson: two or three sentences. */
export const MAX_LESSON_TEXT = 600;
export const MAX_LESSON_TITLE = 80;
/** Of a knob or of a quantity to watch. */
export const MAX_LESSON_LABEL = 60;
const MAX_STEPS = 12;
const PITCH = { min: -90, max: 90 };
const ANY = { min: -1e12, max: 1e12 };

const id = z.string().check(z.minLength(1), z.maxLength(MAX_ID));
const text = z.string().check(z.minLength(1), z.maxLength(MAX_LESSON_TEXT));
const component = z.union([z.literal(0), z.literal(1), z.literal(2)]);

function list<T extends z.ZodMiniType>(item: T, least: number, most: number) {
  return z.array(item).check(z.minLength(least), z.maxLength(most));
}

const reference = {
  quantity: z.enum(QUANTITY_NAMES).register(schemaTexts, {
    description: QUANTITY_NAMES.map((name) => {
      const { unit, needs, help } = QUANTITIES[name];
      const wants = needs.length > 0 ? ` Needs ${needs.join(' and ')}.` : '';
      return `${name} (${unit ?? 'unit of the field'}): ${help}.${wants}`;
    }).join(' '),
  }),
  atDeg: z.optional(number(PITCH)),
  part: z.optional(id),
  section: z.optional(id),
  field: z.optional(id),
  component: z.optional(component),
};

const numberCondition = z.strictObject({
  ...reference,
  atLeast: z.optional(number(ANY)),
  atMost: z.optional(number(ANY)),
  size: z.optional(z.boolean()),
  timesStart: z.optional(z.boolean()),
});
const verdictCondition = z.strictObject({ verdict: list(id, 1, 12) });
const headCondition = z.union([numberCondition, verdictCondition]);

const happening = z.union([
  z.strictObject({
    happened: z.literal('letGo'),
    outcome: z.optional(list(z.enum(['stays', 'settles', 'stop', 'moving']), 1, 4)),
    fromAtLeastDeg: z.optional(number({ min: 0, max: 90 })),
    endAtLeastDeg: z.optional(number(PITCH)),
    endAtMostDeg: z.optional(number(PITCH)),
  }),
  z.strictObject({
    happened: z.literal('pulls'),
    added: z.optional(number({ min: 1, max: 10_000 })),
  }),
  z.strictObject({
    happened: z.literal('racket'),
    axis: z.optional(z.enum(['least', 'middle', 'greatest'])),
    flips: z.optional(number({ min: 1, max: 1000 })),
  }),
]);

const value = z.union([number(ANY), z.string().check(z.maxLength(MAX_ID)), z.boolean()]);
const partPlace = { part: id, field: id, component: z.optional(component) };
const sectionPlace = { section: id, field: id };
const change = z.union([
  z.strictObject({ ...partPlace, value }),
  z.strictObject({ ...sectionPlace, value }),
  z.strictObject({ pitchDeg: number(PITCH) }),
]);

const knobText = {
  label: z.string().check(z.minLength(1), z.maxLength(MAX_LESSON_LABEL)),
  step: number({ min: 1e-6, max: 1e6 }),
};
const knob = z.union([
  z.strictObject({ ...partPlace, ...knobText }),
  z.strictObject({ ...sectionPlace, ...knobText }),
  z.strictObject({ pointer: z.literal('pitch'), ...knobText }),
]);

const common = { change: z.optional(list(change, 1, 12)), because: text };

export const STEP_KINDS = ['choose', 'estimate', 'do'] as const;
const step = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('choose'),
      question: text,
      choices: list(
        z.strictObject({
          text: z.string().check(z.minLength(1), z.maxLength(MAX_NAME)),
          when: list(headCondition, 1, 6),
        }),
        2,
        6,
      ),
      ...common,
    })
    .register(schemaTexts, {
      description:
        'A question with answers to choose from. It is about the head with `change` made, which is shown after the answer; exactly one answer\u2019s conditions must hold of it.',
    }),
  z
    .strictObject({
      kind: z.literal('estimate'),
      question: text,
      answer: z.strictObject(reference),
      withinPercent: number({ min: 1, max: 100 }),
      ...common,
    })
    .register(schemaTexts, {
      description: 'A question for a number: `answer` of the head with `change` made.',
    }),
  z
    .strictObject({
      kind: z.literal('do'),
      instruction: text,
      hint: z.optional(text),
      until: list(z.union([numberCondition, verdictCondition, happening]), 1, 6),
      ...common,
    })
    .register(schemaTexts, {
      description:
        'Something to do, done when all of `until` holds. It must not hold of the head as the step begins.',
    }),
]);

/** Form of a lesson file. What one schema cannot see is checked by `readLesson`. */
export const lessonSchema = z.strictObject({
  format: z.literal(LESSON_FORMAT),
  version: z.literal(LESSON_VERSION),
  id: z.string().check(z.minLength(1), z.maxLength(MAX_ID)),
  title: z.string().check(z.minLength(1), z.maxLength(MAX_LESSON_TITLE)),
  sentences: list(text, 1, 4),
  scene: z.strictObject({
    design: z.unknown(),
    pitchDeg: z.optional(number(PITCH)),
    select: z.optional(id),
    tab: z.optional(z.enum(LEARN_VIEWS)),
    chart: z.optional(z.enum(CHART_QUANTITIES)),
    layers: z.optional(list(z.enum(LAYERS), 0, LAYERS.length)),
    knobs: list(knob, 0, 8),
    watch: list(
      z.strictObject({
        ...reference,
        label: z.string().check(z.minLength(1), z.maxLength(MAX_LESSON_LABEL)),
      }),
      0,
      6,
    ),
  }),
  steps: list(step, 1, MAX_STEPS),
  teacher: z.strictObject({ minutes: number({ min: 1, max: 240 }), notes: list(text, 1, 8) }),
  sources: list(text, 1, 12),
});

/** The lesson file's JSON Schema (draft 2020-12) as text; the design in it is the design file's own schema. */
export function lessonSchemaText(): string {
  const schema = z.toJSONSchema(lessonSchema, {
    metadata: schemaTexts,
    reused: 'ref',
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === lessonSchema) jsonSchema.title = 'Stillgrip lesson';
    },
  });
  const scene = schema.properties?.scene as z.core.JSONSchema.BaseSchema | undefined;
  if (!scene?.properties?.design) throw new Error('lessonSchemaText(): the scene has no design');
  scene.properties.design = { $ref: `${DESIGN_FORMAT}.schema.json` };
  return `${JSON.stringify(schema, null, 2)}\n`;
}

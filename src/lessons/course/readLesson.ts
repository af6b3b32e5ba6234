import { type DesignFault, type FaultReason, fault } from '../../design/fault';
import { designFrom } from '../../design/file';
import { parseJson } from '../../design/jsonText';
import type { Verdict } from '../../design/verdict';
import { fail, type Result, succeed } from '../../engine/result';
import { knobValue } from '../../neutralise/knobs';
import { wrongMark } from '../../state/words/markedText';
import { allMet, type Condition, isMet } from './condition';
import { readHead, sceneOf, setFor, withChanges } from './head';
import { LESSON_FORMAT, LESSON_VERSION, type Lesson, type LessonStep } from './lesson';
import { lessonFault } from './lessonFault';
import { lessonSchema } from './lessonSchema';
import { textsOf } from './lessonTexts';
import {
  knobOf,
  type LessonHead,
  type QuantityRef,
  quantityValue,
  sectionField,
  specOf,
} from './quantity';

/**
 * The lesson in a file's text, or the first fault in it with the path of its field. Never throws on any text. Form, limits,
 * the design in it and every name are checked here; what its questions and checks come to is `provenLesson`'s.
 */
export function readLesson(text: string): Result<Lesson, DesignFault> {
  const json = parseJson(text);
  if (!json.ok) return json;
  const { value } = json;
  const other = otherFormat(value);
  if (other) return fail(other);
  const read = lessonSchema.safeParse(value);
  if (!read.success) return fail(lessonFault(read.error.issues[0], value));
  const design = designFrom(read.data.scene.design);
  if (!design.ok) return fail(within('scene.design', design.error));
  const lesson = {
    ...read.data,
    scene: { ...read.data.scene, design: design.value },
  } as unknown as Lesson;
  const wrong = wrongName(lesson) ?? wrongText(lesson);
  return wrong ? fail(wrong) : succeed(lesson);
}

/**
 * The same of a foreign file, and more: of every question exactly one answer is true of the head, every number that is asked
 * for is there, and no check is met by a head to which nothing was done.
 */
export function provenLesson(text: string): Result<Lesson, DesignFault> {
  const read = readLesson(text);
  if (!read.ok) return read;
  let set = sceneOf(read.value);
  const start = readHead(set);
  let head = start;
  for (const [at, step] of read.value.steps.entries()) {
    const changed = withChanges(set, step.change ?? []);
    if (!changed.ok) return fail(within(`steps[${at}]`, changed.error));
    // A head that did not change is not worked out again: the air takes its time.
    head =
      changed.value.design === set.design
        ? { ...head, pitchDeg: changed.value.pitchDeg }
        : readHead(changed.value);
    set = changed.value;
    const wrong = unprovenStep(step, head, start);
    if (wrong) return fail(within(`steps[${at}]`, wrong));
  }
  return read;
}

/** The answers of a question that are true of a head: their places in the list. */
export function trueChoices(
  step: Extract<LessonStep, { readonly kind: 'choose' }>,
  head: LessonHead,
  start: LessonHead,
): number[] {
  return step.choices.flatMap(({ when }, at) =>
    when.every((condition) => isMet(condition, head, start)) ? [at] : [],
  );
}

function unprovenStep(step: LessonStep, head: LessonHead, start: LessonHead): DesignFault | null {
  switch (step.kind) {
    case 'choose': {
      const count = trueChoices(step, head, start).length;
      const detail = `exactly one answer must be true of the head; ${count} are`;
      return count === 1 ? null : fault('choices', unsound(detail));
    }
    case 'estimate':
      return quantityValue(head, step.answer) === null
        ? fault('answer', unsound('the head has no such number'))
        : null;
    default:
      return allMet(step.until, head, start, [])
        ? fault('until', unsound('it is met before anything was done'))
        : null;
  }
}

/** What says that a text is no lesson of this version. */
function otherFormat(value: unknown): DesignFault | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return fault('', { code: 'wrongType', expected: 'object', found: typeof value });
  }
  const { format, version } = value as Readonly<Record<string, unknown>>;
  if (format !== LESSON_FORMAT) {
    return fault('format', unsound(`a lesson file says ${LESSON_FORMAT} here`));
  }
  if (version === LESSON_VERSION) return null;
  return typeof version === 'number' && version > LESSON_VERSION
    ? fault('version', { code: 'newerVersion', found: version, known: LESSON_VERSION })
    : fault('version', {
        code: 'badVersion',
        found: String(JSON.stringify(version) ?? '').slice(0, 60),
      });
}

/** The first name in a lesson that its head does not have. */
function wrongName(lesson: Lesson): DesignFault | null {
  const { scene, steps } = lesson;
  if (scene.select !== undefined && !hasPart(lesson, scene.select)) {
    return fault('scene.select', { code: 'missingParent', parent: scene.select });
  }
  for (const [at, knob] of scene.knobs.entries()) {
    if ('pointer' in knob) continue;
    const wrong = wrongReference(lesson, {
      quantity: 'section' in knob ? 'setting' : 'value',
      ...knob,
    });
    if (wrong) return within(`scene.knobs[${at}]`, wrong);
  }
  for (const [at, ref] of scene.watch.entries()) {
    const wrong = wrongReference(lesson, ref);
    if (wrong) return within(`scene.watch[${at}]`, wrong);
  }
  for (const [at, step] of steps.entries()) {
    const set = setFor(lesson, at);
    if (!set.ok) return set.error;
    for (const [path, condition] of namesIn(step)) {
      const wrong = wrongCondition(lesson, condition);
      if (wrong) return within(`steps[${at}].${path}`, wrong);
    }
  }
  return null;
}

/** Every condition and quantity of a step, with its path. */
function namesIn(step: LessonStep): (readonly [string, Condition])[] {
  switch (step.kind) {
    case 'choose':
      return step.choices.flatMap(({ when }, at) =>
        when.map((condition, i) => [`choices[${at}].when[${i}]`, condition] as const),
      );
    case 'estimate':
      // Any limit will do: only the names are looked at.
      return [['answer', { ...step.answer, atLeast: 0 }]];
    default:
      return step.until.map((condition, i) => [`until[${i}]`, condition] as const);
  }
}

const VERDICTS = [
  'noParts',
  'noMass',
  'standsStill',
  'noLever',
  'noReach',
  'stays',
  'centres',
  'tilted',
  'flees',
  'driven',
] as const satisfies readonly Verdict['kind'][];

function wrongCondition(lesson: Lesson, condition: Condition): DesignFault | null {
  if ('happened' in condition) return null;
  if ('verdict' in condition) {
    const strange = condition.verdict.find(
      (kind) => !(VERDICTS as readonly string[]).includes(kind),
    );
    return strange === undefined
      ? null
      : fault('verdict', { code: 'notAChoice', found: strange, options: VERDICTS });
  }
  if (condition.atLeast === undefined && condition.atMost === undefined) {
    return fault('', unsound('wants atLeast, atMost or both'));
  }
  return wrongReference(lesson, condition);
}

function wrongReference(lesson: Lesson, ref: QuantityRef): DesignFault | null {
  const { needs } = specOf(ref);
  const missing = needs.find((name) => ref[name] === undefined);
  if (missing) return fault(missing, { code: 'missing' });
  if (needs.includes('part') && !hasPart(lesson, ref.part ?? '')) {
    return fault('part', { code: 'missingParent', parent: ref.part ?? '' });
  }
  if (ref.quantity === 'value' && knobValue(lesson.scene.design, knobOf(ref)) === undefined) {
    return fault('field', unsound(`the part has no number ${ref.field}`));
  }
  if (ref.quantity === 'setting' && sectionField(ref)?.type !== 'number') {
    return fault('field', unsound(`the design has no number ${ref.section}.${ref.field}`));
  }
  return null;
}

/** The first text with a piece in braces that is no quantity. */
function wrongText({ scene: { knobs, watch }, ...lesson }: Lesson): DesignFault | null {
  for (const [path, text] of textsOf({ ...lesson, scene: { knobs, watch } })) {
    const mark = wrongMark(text);
    if (mark !== null) {
      const detail = `${mark} is no quantity: a number and mm, g, N, N mm, g mm2 or rpm`;
      return fault(path, unsound(detail));
    }
  }
  return null;
}

function hasPart({ scene }: Lesson, id: string): boolean {
  return scene.design.parts.some((part) => part.id === id);
}

function unsound(detail: string): FaultReason {
  return { code: 'unsound', detail };
}

function within(path: string, { path: own, reason }: DesignFault): DesignFault {
  return fault(own === '' ? path : `${path}.${own}`, reason);
}

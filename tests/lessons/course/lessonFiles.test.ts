import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { describeFault } from '../../../src/design/faultText';
import { lessonSchemaText } from '../../../src/lessons/course/lessonSchema';
import { provenLesson, readLesson } from '../../../src/lessons/course/readLesson';
import { filesThere, LESSON_FILES, lessonOf, lessonText } from './files';

describe('the lesson files', () => {
  it('are all in the index, with ids of their own', () => {
    expect(LESSON_FILES.toSorted()).toEqual(filesThere().toSorted());
    expect(LESSON_FILES.length).toBeGreaterThanOrEqual(9);
    const ids = LESSON_FILES.map((file) => lessonOf(file).id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(LESSON_FILES)(
    '%s: one answer of each question is true of the computed head, and nothing is done at the start',
    (file) => {
      const read = provenLesson(lessonText(file));
      expect(read.ok ? '' : describeFault(read.error)).toBe('');
    },
  );

  it.each(LESSON_FILES)('%s has something to predict, something to do, and notes', (file) => {
    const { steps, sentences, teacher, sources } = lessonOf(file);
    expect(steps.some(({ kind }) => kind !== 'do')).toBe(true);
    expect(steps.some(({ kind }) => kind === 'do')).toBe(true);
    expect(sentences.length).toBeGreaterThanOrEqual(2);
    expect(sentences.length).toBeLessThanOrEqual(3);
    expect(teacher.notes.length).toBeGreaterThanOrEqual(3);
    expect(sources.length).toBeGreaterThanOrEqual(1);
  });

  it('have a JSON Schema in assets that is the one they are read by', () => {
    const path = fileURLToPath(
      new URL('../../../assets/stillgrip-lesson.schema.json', import.meta.url),
    );
    expect(readFileSync(path, 'utf8')).toBe(lessonSchemaText());
  });
});

/** The first lesson's file as plain data, to be broken. */
// biome-ignore lint/suspicious/noExplicitAny: any field of it is broken in turn
function plain(): any {
  return JSON.parse(lessonText('1-two-lumps.json'));
}

// biome-ignore lint/suspicious/noExplicitAny: see above
type Break = (lesson: any) => void;

/** What is broken, and the path that the fault must name. */
const BROKEN: readonly (readonly [string, Break])[] = [
  ['format', (l) => (l.format = 'stillgrip-design')],
  ['version', (l) => (l.version = 2)],
  ['title', (l) => (l.title = '')],
  ['sentences', (l) => (l.sentences = [])],
  ['teacher', (l) => delete l.teacher],
  ['teacher.minutes', (l) => (l.teacher.minutes = 'ten')],
  ['scene.design.rotor.speedRpm', (l) => (l.scene.design.rotor.speedRpm = -1)],
  ['scene.design.parts[0].massGrams', (l) => (l.scene.design.parts[0].massGrams = 'heavy')],
  ['scene.select', (l) => (l.scene.select = 'nobody')],
  ['scene.layers[0]', (l) => (l.scene.layers[0] = 'fireworks')],
  ['scene.knobs[1].part', (l) => (l.scene.knobs[1].part = 'nobody')],
  ['scene.knobs[1].field', (l) => (l.scene.knobs[1].field = 'lengthMm')],
  ['scene.knobs[1].step', (l) => (l.scene.knobs[1].step = 0)],
  ['scene.watch[0].quantity', (l) => (l.scene.watch[0].quantity = 'luck')],
  ['steps[0].kind', (l) => (l.steps[0].kind = 'guess')],
  ['steps[0].choices', (l) => l.steps[0].choices.splice(1)],
  [
    'steps[0].choices[1].when[0].verdict',
    (l) => (l.steps[0].choices[1].when[0].verdict = ['wins']),
  ],
  ['steps[0].change[0]', (l) => (l.steps[0].change[0].field = 'luck')],
  ['steps[0].change[0].value', (l) => (l.steps[0].change[0].value = -5)],
  ['steps[2].until[0]', (l) => (l.steps[2].until[0] = { quantity: 'pitch' })],
  ['steps[2].until[0].atLeast', (l) => (l.steps[2].until[0].atLeast = 'most')],
  ['steps[4].until[1].part', (l) => delete l.steps[4].until[1].part],
  ['steps[0].because', (l) => (l.steps[0].because = 'A stick of {10 furlong}.')],
  // The head as the step begins stands at 20 degrees.
  ['steps[2].until', (l) => (l.steps[2].until[0] = { quantity: 'pitch', atLeast: 10 })],
  // Two answers that are both true, and none.
  ['steps[0].choices', (l) => (l.steps[0].choices[1].when[0].verdict = ['centres'])],
  ['steps[0].choices', (l) => (l.steps[0].choices[0].when[0].verdict = ['flees'])],
];

describe('a broken lesson file', () => {
  it.each(BROKEN)('is refused with the path %s', (path, breakIt) => {
    const lesson = plain();
    breakIt(lesson);
    const read = provenLesson(JSON.stringify(lesson));
    expect(read.ok).toBe(false);
    if (!read.ok) {
      expect(read.error.path).toBe(path);
      expect(describeFault(read.error).length).toBeGreaterThan(path.length + 8);
    }
  });

  it('never throws, wherever it is cut off', () => {
    const text = lessonText('3-bolt-stands-up.json');
    for (let at = 0; at < text.length - 2; at += 97) {
      expect(readLesson(text.slice(0, at)).ok).toBe(false);
    }
  });
});

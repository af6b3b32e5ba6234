import type { DisplayUnits } from '../../state/settings';
import { markedText } from '../../state/words/markedText';
import { readHead, sceneOf, setFor } from './head';
import type { ChooseStep, EstimateStep, Lesson } from './lesson';
import { type LessonHead, quantityUnit, quantityValue } from './quantity';
import { typedText, valueText } from './quantityText';
import { trueChoices } from './readLesson';

/** What a question comes to, computed of the head that it asks about. */
interface Truth {
  readonly text: string;
  /** Whether an answer is right (of a choice) or close enough (of a number). */
  fits(answer: number): boolean;
  said(answer: number): string;
}

/** Works out the truth of a question. The lesson must be sound. */
export function truthOf(
  lesson: Lesson,
  at: number,
  step: ChooseStep | EstimateStep,
  units: DisplayUnits,
): Truth {
  const set = setFor(lesson, at);
  if (!set.ok) throw new Error(`truthOf(): ${lesson.id}: ${set.error.path}`);
  const head = readHead(set.value);
  return step.kind === 'choose'
    ? ofChoice(step, head, readHead(sceneOf(lesson)), units)
    : ofNumber(step, head, units);
}

function ofChoice(
  step: ChooseStep,
  head: LessonHead,
  start: LessonHead,
  units: DisplayUnits,
): Truth {
  const [right] = trueChoices(step, head, start);
  const text = (at: number) => markedText(step.choices[at]?.text ?? '', units);
  return { text: text(right), fits: (answer) => answer === right, said: text };
}

function ofNumber(step: EstimateStep, head: LessonHead, units: DisplayUnits): Truth {
  const value = quantityValue(head, step.answer) ?? Number.NaN;
  const unit = quantityUnit(head.design, step.answer);
  const allowed = (step.withinPercent / 100) * Math.abs(value);
  return {
    text: valueText(value, unit, units),
    fits: (answer) => Math.abs(answer - value) <= allowed,
    said: (answer) => typedText(answer, head.design, step.answer, units),
  };
}

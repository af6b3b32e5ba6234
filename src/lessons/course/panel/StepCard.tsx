import { useEffect, useId, useRef } from 'react';
import type { LessonRun } from '../desk';
import { say } from '../say';
import { useLessonDesk, useLessons } from '../useLessons';
import { LessonText } from './LessonText';
import { ChooseBody, EstimateBody } from './questions';
import { Told } from './Told';

/** The step that the lesson is at: the question or what is to be done, and afterwards what it teaches. */
export function StepCard({ run }: { readonly run: LessonRun }) {
  const desk = useLessonDesk();
  const heading = useId();
  const title = useRef<HTMLHeadingElement>(null);
  const { lesson, told } = run;
  const step = lesson.steps[run.step];
  const count = lesson.steps.length;
  const ways = useRef<HTMLDivElement>(null);
  // A new step is read from its heading; a new lesson from its title, which `LessonView` sees to.
  useEffect(() => {
    if (run.step > 0) title.current?.focus();
  }, [run.step]);
  // The button of the answer is gone, and with it the focus.
  useEffect(() => {
    if (told && document.activeElement === document.body) {
      ways.current?.querySelector('button')?.focus();
    }
  }, [told]);
  return (
    <section className="lessons-card" aria-labelledby={heading} data-testid="lesson-step">
      <h3 className="lessons-step" id={heading} ref={title} tabIndex={-1}>
        <span>{say('lessonRoom.step', { step: run.step + 1, count })}</span>
        <span>{say(step.kind === 'do' ? 'lessonRoom.toDo' : 'lessonRoom.predict')}</span>
      </h3>
      {step.kind === 'choose' && <ChooseBody run={run} step={step} />}
      {step.kind === 'estimate' && <EstimateBody run={run} step={step} />}
      {step.kind === 'do' && (
        <>
          <p className="lessons-ask">
            <LessonText text={step.instruction} />
          </p>
          {step.hint && !told && (
            <details className="lessons-hint">
              <summary>{say('lessonRoom.hint')}</summary>
              <p>
                <LessonText text={step.hint} />
              </p>
            </details>
          )}
          {!told && <p className="lessons-quiet">{say('lessonRoom.notYet')}</p>}
        </>
      )}
      <div role="status">{told && <Told run={run} step={step} />}</div>
      <div className="lessons-ways" ref={ways}>
        {told && !run.finished && (
          <button
            type="button"
            className="ui-button ui-button-main"
            data-testid="lesson-next"
            onClick={() => desk.next()}
          >
            {say('lessonRoom.next')}
          </button>
        )}
        {run.finished && <NextLesson run={run} />}
        {step.kind === 'do' && !told && (
          <button type="button" className="ui-button" onClick={() => desk.again()}>
            {say('lessonRoom.again')}
          </button>
        )}
      </div>
    </section>
  );
}

/** After the last step: that it was the last, and the lesson after it. */
function NextLesson({ run }: { readonly run: LessonRun }) {
  const desk = useLessonDesk();
  const entries = useLessons((state) => state.entries);
  const at = entries.findIndex(({ id }) => id === run.lesson.id);
  const next = entries[at + 1];
  return (
    <>
      <p className="lessons-finished" data-testid="lesson-finished">
        {say('lessonRoom.finished')}
      </p>
      {next && (
        <button
          type="button"
          className="ui-button ui-button-main"
          data-testid="lesson-next-lesson"
          onClick={() => desk.begin(next.id)}
        >
          {say('lessonRoom.nextLesson', { title: next.title })}
        </button>
      )}
    </>
  );
}

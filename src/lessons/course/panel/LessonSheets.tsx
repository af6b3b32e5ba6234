import { useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import { useAppState } from '../../../ui/session';
import { readHead, sceneOf } from '../head';
import type { Lesson, LessonStep } from '../lesson';
import { say } from '../say';
import { type SheetFigure, sheetFigure } from '../sheetFigure';
import { truthOf } from '../truth';
import { LessonText } from './LessonText';
import { TeacherNotes } from './TeacherNotes';
import '../../../ui/printSheet.css';

type Reader = 'pupil' | 'teacher';

/** Prints a lesson on paper: for the pupil with room to write, for the teacher with answers and notes. */
export function LessonSheets({ lesson }: { readonly lesson: Lesson }) {
  const [printing, setPrinting] = useState<Reader | null>(null);
  function print(reader: Reader): void {
    // The sheet has to be there before the browser looks.
    flushSync(() => setPrinting(reader));
    globalThis.print();
    setPrinting(null);
  }
  return (
    <>
      <button
        type="button"
        className="ui-button"
        data-testid="lesson-print-pupil"
        onClick={() => print('pupil')}
      >
        {say('lessonRoom.printPupil')}
      </button>
      <button
        type="button"
        className="ui-button"
        data-testid="lesson-print-teacher"
        onClick={() => print('teacher')}
      >
        {say('lessonRoom.printTeacher')}
      </button>
      {printing &&
        createPortal(<Sheet lesson={lesson} isTeachers={printing === 'teacher'} />, document.body)}
    </>
  );
}

function Sheet(props: { readonly lesson: Lesson; readonly isTeachers: boolean }) {
  const { lesson, isTeachers } = props;
  const { title } = lesson;
  const [figure] = useState(() => sheetFigure(readHead(sceneOf(lesson))));
  return (
    <div className="ui-sheet lesson-print" data-testid="lesson-sheet">
      <h1>{say(isTeachers ? 'lessonRoom.sheetTeacher' : 'lessonRoom.sheet', { title })}</h1>
      {!isTeachers && <p className="lesson-print-name">{say('lessonRoom.sheetLines')}</p>}
      <Figure figure={figure} />
      {lesson.sentences.map((sentence) => (
        <p key={sentence}>
          <LessonText text={sentence} />
        </p>
      ))}
      <ol>
        {lesson.steps.map((step, at) => (
          <li key={step.because}>
            <StepOnPaper lesson={lesson} at={at} step={step} isTeachers={isTeachers} />
          </li>
        ))}
      </ol>
      {isTeachers && (
        <>
          <h2>{say('lessonRoom.teacher')}</h2>
          <TeacherNotes lesson={lesson} Heading="h2" />
        </>
      )}
      <p className="lesson-print-safety">{say('lessonRoom.safety')}</p>
    </div>
  );
}

function Figure({ figure }: { readonly figure: SheetFigure }) {
  const [across, up] = figure.half.map((half) => Math.max(half, 6) * 1.15);
  return (
    <figure>
      <svg viewBox={`${-across} ${-up} ${2 * across} ${2 * up}`} aria-hidden="true">
        <line x1={-across} x2={across} y1="0" y2="0" className="lesson-print-plane" />
        {figure.paths.map((path) => (
          <path key={path} d={path} />
        ))}
        <circle r={Math.min(across, up) * 0.03} />
      </svg>
      <figcaption>{say('lessonRoom.sheetFigure')}</figcaption>
    </figure>
  );
}

function StepOnPaper(props: {
  readonly lesson: Lesson;
  readonly at: number;
  readonly step: LessonStep;
  readonly isTeachers: boolean;
}) {
  const { lesson, at, step, isTeachers } = props;
  const units = useAppState((state) => state.settings.units);
  const asked = step.kind === 'do' ? step.instruction : step.question;
  return (
    <>
      <p>
        <LessonText text={asked} />
      </p>
      {step.kind === 'choose' && (
        <ul className="ui-sheet-ticks">
          {step.choices.map(({ text }) => (
            <li key={text}>
              <LessonText text={text} />
            </li>
          ))}
        </ul>
      )}
      {isTeachers ? (
        <p className="lesson-print-answer">
          {step.kind !== 'do' && (
            <strong>
              {say('lessonRoom.sheetTruth', { truth: truthOf(lesson, at, step, units).text })}{' '}
            </strong>
          )}
          <LessonText text={step.because} />
        </p>
      ) : (
        <>
          {step.kind === 'estimate' && (
            <p className="lesson-print-line">{say('lessonRoom.sheetExpect')}</p>
          )}
          <p className="lesson-print-line lesson-print-room">{say('lessonRoom.sheetSaw')}</p>
        </>
      )}
    </>
  );
}

import { ArrowLeft } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { LessonRun } from '../desk';
import type { Lesson } from '../lesson';
import { say } from '../say';
import { useLessonDesk } from '../useLessons';
import { Knobs } from './Knobs';
import { LessonText } from './LessonText';
import { StepCard } from './StepCard';
import { TeacherFold } from './TeacherFold';
import { WatchList } from './WatchList';

/** An open lesson: what it is about, the step, what may be turned and what is to be watched. */
export function LessonView({ run }: { readonly run: LessonRun }) {
  const desk = useLessonDesk();
  const { lesson } = run;
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);
  return (
    <div className="lessons-scroll" data-testid="lesson-view" data-lesson={lesson.id}>
      <button
        type="button"
        className="ui-button ui-button-bare lessons-back"
        data-testid="lessons-all"
        onClick={() => desk.leave()}
      >
        <ArrowLeft aria-hidden="true" />
        {say('lessonRoom.all')}
      </button>
      <h2 className="lessons-title" ref={title} tabIndex={-1}>
        {lesson.title}
      </h2>
      {run.step === 0 ? (
        <Sentences lesson={lesson} />
      ) : (
        <details className="lessons-hint">
          <summary>{say('lessonRoom.about')}</summary>
          <Sentences lesson={lesson} />
        </details>
      )}
      <StepCard key={run.step} run={run} />
      <Knobs lesson={lesson} />
      <WatchList lesson={lesson} />
      <TeacherFold run={run} />
    </div>
  );
}

function Sentences({ lesson }: { readonly lesson: Lesson }) {
  return lesson.sentences.map((sentence) => (
    <p key={sentence} className="lessons-text">
      <LessonText text={sentence} />
    </p>
  ));
}

import { useState } from 'react';
import { MathText } from '../../../ui/MathText';
import type { LessonRun } from '../desk';
import { say } from '../say';
import { LessonSheets } from './LessonSheets';
import { saveLessonFile } from './lessonFile';

/** Notes and answers for the teacher, the sheets, and the lesson as a file. Folded: pupils read the same page. */
export function TeacherFold({ run }: { readonly run: LessonRun }) {
  const [fault, setFault] = useState<string | null>(null);
  const { lesson } = run;
  const { teacher, sources } = lesson;
  return (
    <details className="lessons-teacher" data-testid="lesson-teacher">
      <summary>{say('lessonRoom.teacher')}</summary>
      <p>{say('lessonRoom.minutes', { minutes: teacher.minutes })}</p>
      <ul>
        {teacher.notes.map((note) => (
          <li key={note}>
            <MathText text={note} />
          </li>
        ))}
      </ul>
      <h4>{say('lessonRoom.sources')}</h4>
      <ul>
        {sources.map((source) => (
          <li key={source}>
            <MathText text={source} />
          </li>
        ))}
      </ul>
      <div className="lessons-ways">
        <LessonSheets lesson={lesson} />
        <button
          type="button"
          className="ui-button"
          title={say('lessonRoom.saveHelp')}
          data-testid="lesson-save"
          onClick={() => void saveLessonFile(run).then(setFault)}
        >
          {say('lessonRoom.save')}
        </button>
      </div>
      {fault !== null && (
        <p className="lessons-fault" role="alert">
          {say('lessonRoom.saveFailed', { reason: fault })}
        </p>
      )}
    </details>
  );
}

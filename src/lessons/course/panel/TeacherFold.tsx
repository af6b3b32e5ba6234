import { useState } from 'react';
import type { LessonRun } from '../desk';
import { say } from '../say';
import { LessonSheets } from './LessonSheets';
import { saveLessonFile } from './lessonFile';
import { TeacherNotes } from './TeacherNotes';

/** Notes and answers for the teacher, the sheets, and the lesson as a file. Folded: pupils read the same page. */
export function TeacherFold({ run }: { readonly run: LessonRun }) {
  const [fault, setFault] = useState<string | null>(null);
  const { lesson } = run;
  return (
    <details className="lessons-teacher" data-testid="lesson-teacher">
      <summary>{say('lessonRoom.teacher')}</summary>
      <TeacherNotes lesson={lesson} Heading="h4" />
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

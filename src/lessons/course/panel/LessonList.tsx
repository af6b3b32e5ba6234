import { Check } from 'lucide-react';
import { useEffect, useRef } from 'react';
import { say } from '../say';
import { useLessonDesk, useLessons } from '../useLessons';
import { openLessonFile } from './lessonFile';

/** All lessons, those that were finished marked, and the way to one from a file. */
export function LessonList() {
  const desk = useLessonDesk();
  const { entries, done, fault } = useLessons((state) => state);
  const heading = useRef<HTMLHeadingElement>(null);
  // Back from a lesson, whose button is gone.
  useEffect(() => {
    if (document.activeElement === document.body) heading.current?.focus();
  }, []);
  const count = entries.filter(({ id }) => done.includes(id)).length;
  return (
    <div className="lessons-scroll">
      <h2 className="lessons-title" ref={heading} tabIndex={-1}>
        {say('lessonRoom.title')}
      </h2>
      <p className="lessons-text">{say('lessonRoom.intro')}</p>
      <ol className="lessons-list">
        {entries.map(({ id, title }) => (
          <li key={id}>
            <button
              type="button"
              className="lessons-entry"
              data-testid={`lesson-${id}`}
              onClick={() => desk.begin(id)}
            >
              <span>{title}</span>
              {done.includes(id) && (
                <span className="lessons-done">
                  <Check aria-hidden="true" />
                  {say('lessonRoom.done')}
                </span>
              )}
            </button>
          </li>
        ))}
      </ol>
      <p className="lessons-quiet" data-testid="lessons-progress">
        {say('lessonRoom.progress', { done: count, count: entries.length })}
      </p>
      <button
        type="button"
        className="ui-button"
        title={say('lessonRoom.openHelp')}
        data-testid="lesson-open"
        onClick={() => void openLessonFile(desk)}
      >
        {say('lessonRoom.open')}
      </button>
      {fault !== null && (
        <p className="lessons-fault" role="alert" data-testid="lesson-fault">
          {say('lessonRoom.refused', { reason: fault })}
        </p>
      )}
      <p className="lessons-quiet">{say('lessonRoom.safety')}</p>
    </div>
  );
}

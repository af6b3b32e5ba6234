import { useEffect } from 'react';
import { LessonList } from './course/panel/LessonList';
import { LessonView } from './course/panel/LessonView';
import { say } from './course/say';
import { useLessonDesk, useLessons } from './course/useLessons';
import './course/panel/lessons.css';

/** The left side of the room Learn: the list of lessons, or the one that is open. */
export function LessonsPanel() {
  const desk = useLessonDesk();
  const run = useLessons((state) => state.run);
  // The page is made anew when another language is chosen.
  useEffect(() => desk.sayAnew(), [desk]);
  return (
    <section className="lessons" aria-label={say('lessonRoom.title')} data-testid="lessons">
      {run ? <LessonView key={run.lesson.id} run={run} /> : <LessonList />}
    </section>
  );
}

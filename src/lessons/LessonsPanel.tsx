import { LessonList } from './course/panel/LessonList';
import { LessonView } from './course/panel/LessonView';
import { say } from './course/say';
import { useLessons } from './course/useLessons';
import './course/panel/lessons.css';

/** The left side of the room Learn: the list of lessons, or the one that is open. */
export function LessonsPanel() {
  const run = useLessons((state) => state.run);
  return (
    <section className="lessons" aria-label={say('lessonRoom.title')} data-testid="lessons">
      {run ? <LessonView key={run.lesson.id} run={run} /> : <LessonList />}
    </section>
  );
}

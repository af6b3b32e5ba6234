import type { Lesson } from '../lesson';
import { say } from '../say';
import { LessonText } from './LessonText';

/** How long the lesson takes, what a teacher should know, and where it comes from; folded on the page, whole on the sheet. */
export function TeacherNotes(props: { readonly lesson: Lesson; readonly Heading: 'h2' | 'h4' }) {
  const { Heading } = props;
  const { teacher, sources } = props.lesson;
  return (
    <>
      <p>{say('lessonRoom.minutes', { minutes: teacher.minutes })}</p>
      <List texts={teacher.notes} />
      <Heading>{say('lessonRoom.sources')}</Heading>
      <List texts={sources} />
    </>
  );
}

function List({ texts }: { readonly texts: readonly string[] }) {
  return (
    <ul>
      {texts.map((text) => (
        <li key={text}>
          <LessonText text={text} />
        </li>
      ))}
    </ul>
  );
}

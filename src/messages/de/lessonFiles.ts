import { type LessonTexts, lessonCatalogue } from '../lessonTexts';

/** What the lessons that come with the page say in German: one file a lesson. */
export const LESSON_TEXTS = lessonCatalogue(
  import.meta.glob<LessonTexts>('../../../assets/lessons/de/*.json', {
    eager: true,
    import: 'default',
  }),
);

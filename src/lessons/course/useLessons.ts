import { useStore } from 'zustand';
import { useLessonDoor } from '../../ui/lessonDoor';
import type { LessonDesk, LessonsState } from './desk';
import { lessonDeskOf } from './deskOf';

export function useLessonDesk(): LessonDesk {
  return lessonDeskOf(useLessonDoor());
}

export function useLessons<T>(select: (state: LessonsState) => T): T {
  return useStore(useLessonDesk().store, select);
}

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describeFault } from '../../../src/design/faultText';
import type { LessonEntry } from '../../../src/lessons/course/builtIn';
import type { Lesson } from '../../../src/lessons/course/lesson';
import { readLesson } from '../../../src/lessons/course/readLesson';

const FOLDER = fileURLToPath(new URL('../../../assets/lessons/', import.meta.url));

export const LESSON_FILES = JSON.parse(lessonText('index.json')) as readonly string[];

export function lessonText(file: string): string {
  return readFileSync(FOLDER + file, 'utf8');
}

export function filesThere(): string[] {
  return readdirSync(FOLDER).filter((file) => file.endsWith('.json') && file !== 'index.json');
}

export function lessonOf(file: string): Lesson {
  const read = readLesson(lessonText(file));
  if (!read.ok) throw new Error(`${file}: ${describeFault(read.error)}`);
  return read.value;
}

export function entries(): LessonEntry[] {
  return LESSON_FILES.map((file) => {
    const { id, title } = lessonOf(file);
    return { id, title, text: lessonText(file) };
  });
}

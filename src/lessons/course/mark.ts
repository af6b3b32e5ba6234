import type { Design } from '../../design/design';
import { parseDesign, serializeDesign } from '../../design/file';
import type { Session } from '../../state/session';
import type { Settings } from '../../state/settings';
import { settingsFrom } from '../../state/storedSettings';
import type { LessonRun } from './desk';
import { sceneOf } from './head';
import { readLesson } from './readLesson';

/** A lesson as it stood: how far it is, and the head as the pupil left it. */
interface MarkedLesson {
  readonly run: LessonRun;
  readonly design: Design;
  readonly pitchDeg: number;
  readonly select: string | null;
  readonly settings: Partial<Settings>;
}

/** The run and its session as a text for `markedLesson`. */
export function markOf(run: LessonRun, { store }: Session): string {
  const { design, pitchDeg, selection, settings } = store.getState();
  const { lesson: _, ...stand } = run;
  return JSON.stringify({
    ...stand,
    design: serializeDesign(design),
    pitchDeg,
    selection,
    settings,
  });
}

/**
 * The lesson of a mark; null where there is none, or its lesson cannot be read any more. A head that cannot be read is that of the
 * lesson's beginning. Units, theme and room are the page's own.
 */
export function markedLesson(mark: string | null): MarkedLesson | null {
  try {
    const found = JSON.parse(mark ?? '') as Readonly<Record<string, unknown>>;
    if (typeof found.text !== 'string') return null;
    const read = readLesson(found.text);
    if (!read.ok) return null;
    const lesson = read.value;
    const step = Number(found.step);
    if (!Number.isInteger(step) || !lesson.steps[step]) return null;
    const told = found.told === true;
    const answer = told && typeof found.answer === 'number' ? found.answer : null;
    const finished = found.finished === true;
    const head = parseDesign(String(found.design));
    const { units: _, theme: __, room: ___, ...settings } = settingsFrom(found.settings);
    return {
      run: { lesson, text: found.text, step, told, answer, finished },
      ...sceneOf(lesson),
      ...(head.ok ? { design: head.value, pitchDeg: finite(found.pitchDeg) } : {}),
      select: typeof found.selection === 'string' ? found.selection : null,
      settings,
    };
  } catch {
    return null;
  }
}

function finite(value: unknown): number {
  return typeof value === 'number' && Number.isFinite(value) ? value : 0;
}

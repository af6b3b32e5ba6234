import type { Happening } from '../../state/happenings';
import type { LessonDoor } from '../../state/lessonDoor';
import type { Session } from '../../state/session';
import { allMet } from './condition';
import type { LessonRun } from './desk';
import { readHead, sceneOf } from './head';
import type { Lesson } from './lesson';
import type { LessonHead } from './quantity';

/**
 * Watches the lesson's head until what the step asks is so, and then calls `done`. Nothing counts before a change, nor while
 * a drag is under way. `runNow` gives the lesson that is open.
 */
export function watchSteps(door: LessonDoor, runNow: () => LessonRun | null, done: () => void) {
  let stop = () => {};

  function begin(lesson: Lesson): void {
    stop();
    const { lesson: session } = door.store.getState();
    if (session) stop = watchStep(session, readHead(sceneOf(lesson)), runNow, done);
  }

  door.store.subscribe(({ lesson }) => {
    if (lesson === null) stop();
  });
  return { begin };
}

/** Until the step is done; returns a function that stops. */
function watchStep(
  session: Session,
  start: LessonHead,
  runNow: () => LessonRun | null,
  done: () => void,
): () => void {
  const from = session.store.getState();
  const happened: Happening[] = [];

  function look(): void {
    const run = runNow();
    const step = run?.lesson.steps[run.step];
    const { design, pitchDeg, gesture } = session.store.getState();
    if (!run || run.told || step?.kind !== 'do' || gesture) return;
    const touched = design !== from.design || pitchDeg !== from.pitchDeg || happened.length > 0;
    const now = { design, pitchDeg, reading: session.live.reading };
    if (touched && allMet(step.until, now, start, happened)) done();
  }

  const stops = [
    session.live.subscribe(look),
    session.happenings.subscribe((happening) => {
      happened.push(happening);
      look();
    }),
    // The end of a drag changes nothing that is drawn.
    session.store.subscribe((now, before) => {
      if (before.gesture && !now.gesture) look();
    }),
  ];
  return () => {
    for (const each of stops) each();
  };
}

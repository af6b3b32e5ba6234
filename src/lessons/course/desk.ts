import { createStore, type StoreApi } from 'zustand/vanilla';
import { describeFault } from '../../design/faultText';
import { t } from '../../messages';
import type { Slip } from '../../state/keep/ports';
import type { LessonDoor } from '../../state/lessonDoor';
import type { LocalNotes } from '../../state/localNotes';
import { LAYERS, type Settings } from '../../state/settings';
import type { LessonEntry } from './builtIn';
import { sceneOf, setFor } from './head';
import type { Lesson, LessonStep } from './lesson';
import { markedLesson, markOf } from './mark';
import { provenLesson, readLesson } from './readLesson';
import { watchSteps } from './watchSteps';

/** What was answered: the place of a choice, or a number in the unit of the question. */
type Answer = number;

export interface LessonRun {
  readonly lesson: Lesson;
  readonly text: string;
  readonly step: number;
  /** The step has been answered or done, and what it teaches is shown. */
  readonly told: boolean;
  /** Of the question being looked at; null before and where there is none. */
  readonly answer: Answer | null;
  /** The last step is told. */
  readonly finished: boolean;
}

export interface LessonsState {
  readonly entries: readonly LessonEntry[];
  readonly run: LessonRun | null;
  /** Ids of lessons that were finished in this browser. */
  readonly done: readonly string[];
  /** Why a file was not taken. */
  readonly fault: string | null;
}

/**
 * The lessons of a page: which is open, how far it is, which are finished. It outlives the panel, which may be folded away
 * while its lesson is worked on, and watches the head of the lesson for what the step asks.
 */
export interface LessonDesk {
  readonly store: StoreApi<LessonsState>;
  begin(id: string): void;
  /** Opens a lesson file; false where it is none, and then `fault` says why. */
  openText(text: string, file: string): boolean;
  /** Opens the lesson of the mark where it stood, after a reload; false where there is none. */
  resume(): boolean;
  /** Marks where the lesson stands. */
  remember(): void;
  answer(answer: Answer): void;
  next(): void;
  /** Puts the head so as the step wants it to begin, whatever was done to it. */
  again(): void;
  /** After a change of language: an open lesson that came with the page is told in it. Its head stays as it is. */
  sayAnew(): void;
  leave(): void;
}

const NOTE = 'lessons';

export function createLessonDesk(
  door: LessonDoor,
  notes: LocalNotes,
  builtIn: readonly LessonEntry[],
  mark: Slip,
): LessonDesk {
  const store = createStore(
    (): LessonsState => ({ entries: builtIn, run: null, done: readDone(notes), fault: null }),
  );
  const watch = watchSteps(
    door,
    () => store.getState().run,
    () => tell({}),
  );

  function tell(change: Partial<LessonRun>): void {
    const { run, done } = store.getState();
    if (!run) return;
    const finished = run.finished || run.step === run.lesson.steps.length - 1;
    store.setState({ run: { ...run, ...change, told: true, finished } });
    door.say(t('lessons.stepDone'));
    const { id } = run.lesson;
    if (!finished || done.includes(id)) return;
    const all = [...done, id];
    store.setState({ done: all });
    notes.write(NOTE, JSON.stringify(all));
  }

  function start(lesson: Lesson, text: string): void {
    const set = sceneOf(lesson);
    const session = door.open({
      title: lesson.title,
      ...set,
      select: lesson.scene.select ?? null,
      settings: settingsOf(lesson),
    });
    session.actions.notify(null);
    store.setState({
      fault: null,
      run: { lesson, text, step: 0, told: false, answer: null, finished: false },
    });
    arrive(0);
  }

  function resume(): boolean {
    const found = markedLesson(mark.read());
    if (!found) {
      mark.write('');
      return false;
    }
    const { run, ...scene } = found;
    const { lesson, text } = run;
    const { id, title } = lesson;
    const { entries } = store.getState();
    if (!entries.some((entry) => entry.id === id)) {
      store.setState({ entries: [...entries, { id, title, text }] });
    }
    door.open({ title, ...scene }).actions.notify(null);
    store.setState({ fault: null, run });
    const step = lesson.steps[run.step];
    if (run.told) door.say(t('lessons.stepDone'));
    else {
      door.say(step.kind === 'do' ? step.instruction : step.question);
      watch.begin(lesson);
    }
    return true;
  }

  function remember(): void {
    const { run } = store.getState();
    const { lesson } = door.store.getState();
    mark.write(run && lesson ? markOf(run, lesson) : '');
  }

  /** A step begins: what is to be done is done to the head that the step asks for. */
  function arrive(step: number): void {
    const { run } = store.getState();
    if (!run) return;
    const now = run.lesson.steps[step];
    if (now.kind === 'do' && now.change) put(run.lesson, step);
    door.say(askedOf(now));
    watch.begin(run.lesson);
  }

  function put(lesson: Lesson, step: number): void {
    const { lesson: session } = door.store.getState();
    const set = setFor(lesson, step);
    if (!session || !set.ok) return;
    session.actions.gesture.end();
    const outcome = session.live.commitDesign(set.value.design);
    if (!outcome.ok) throw new Error(`lessons: ${lesson.id} step ${step}: ${outcome.error.path}`);
    session.actions.setPitch(set.value.pitchDeg);
  }

  door.store.subscribe(({ lesson }) => {
    if (lesson === null && store.getState().run) store.setState({ run: null });
  });

  store.subscribe((now, before) => {
    if (now.run !== before.run) remember();
  });

  return {
    store,
    resume,
    remember,
    begin(id) {
      const entry = store.getState().entries.find((one) => one.id === id);
      if (!entry) return;
      const { text } = entry;
      start(sound(id, text), text);
    },
    openText(text, file) {
      const read = provenLesson(text);
      if (!read.ok) {
        store.setState({ fault: `${file}: ${describeFault(read.error)}` });
        return false;
      }
      const { id, title } = read.value;
      const others = store.getState().entries.filter((entry) => entry.id !== id);
      const replaced = store
        .getState()
        .entries.map((entry) => (entry.id === id ? { id, title, text } : entry));
      const known = others.length < replaced.length;
      store.setState({ entries: known ? replaced : [...others, { id, title, text }] });
      start(read.value, text);
      return true;
    },
    answer(answer) {
      const { run } = store.getState();
      const step = run?.lesson.steps[run.step];
      if (!run || run.told || !step || step.kind === 'do') return;
      if (step.change) put(run.lesson, run.step);
      tell({ answer });
    },
    next() {
      const { run } = store.getState();
      if (!run?.told || run.step === run.lesson.steps.length - 1) return;
      const step = run.step + 1;
      store.setState({ run: { ...run, step, told: false, answer: null } });
      arrive(step);
    },
    again() {
      const { run } = store.getState();
      if (!run) return;
      const step = run.lesson.steps[run.step];
      // Before its answer a question is not shown what it asks for.
      const upTo = step.kind === 'do' || run.told ? run.step : run.step - 1;
      put(run.lesson, upTo);
      watch.begin(run.lesson);
    },
    sayAnew() {
      const { run, entries } = store.getState();
      const entry = entries.find(({ id }) => id === run?.lesson.id);
      if (!run || !entry || entry.text === run.text) return;
      const { text } = entry;
      const lesson = sound(entry.id, text);
      store.setState({ run: { ...run, lesson, text } });
      door.say(askedOf(lesson.steps[run.step]), lesson.title);
    },
    leave: () => door.leave(),
  };
}

/** A lesson that comes with the page, which its tests hold sound. */
function sound(id: string, text: string): Lesson {
  const read = readLesson(text);
  if (!read.ok) throw new Error(`lessons: ${id} is not sound: ${describeFault(read.error)}`);
  return read.value;
}

function askedOf(step: LessonStep): string {
  return step.kind === 'do' ? step.instruction : step.question;
}

function settingsOf({ scene }: Lesson): Partial<Settings> {
  const { tab, chart, layers } = scene;
  return {
    learnView: tab ?? 'pitch',
    ...(chart ? { chartQuantity: chart } : {}),
    ...(layers
      ? {
          layers: Object.fromEntries(
            LAYERS.map((layer) => [layer, layers.includes(layer)]),
          ) as Settings['layers'],
        }
      : {}),
  };
}

function readDone(notes: LocalNotes): readonly string[] {
  try {
    const value: unknown = JSON.parse(notes.read(NOTE) ?? '[]');
    return Array.isArray(value) ? value.filter((id) => typeof id === 'string') : [];
  } catch {
    return [];
  }
}

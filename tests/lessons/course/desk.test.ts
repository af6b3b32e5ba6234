import { describe, expect, it } from 'vitest';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { createLessonDesk } from '../../../src/lessons/course/desk';
import { setKnob } from '../../../src/lessons/course/panel/knobValues';
import { truthOf } from '../../../src/lessons/course/truth';
import { createSession } from '../../../src/state/createSession';
import { createLessonDoor } from '../../../src/state/lessonDoor';
import type { LocalNotes } from '../../../src/state/localNotes';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { entries, lessonText } from './files';
import { SOLUTIONS, type Solved } from './solutions';

/** Frames come when they are asked for: `live.flush`. */
const never = () => {};

function noted(): LocalNotes & { readonly kept: Map<string, string> } {
  const kept = new Map<string, string>();
  return {
    kept,
    read: (name) => kept.get(name) ?? null,
    write: (name, text) => Boolean(kept.set(name, text)),
    remove: (name) => void kept.delete(name),
  };
}

function page() {
  const own = createSession(undefined, never);
  own.actions.setDesignName('My own work');
  own.actions.setSettings({ room: 'learn' });
  const door = createLessonDoor(own, (design) => createSession(design, never));
  const notes = noted();
  let marked: string | null = null;
  const mark = { read: () => marked, write: (text: string) => void (marked = text) };
  return { own, door, notes, mark, desk: createLessonDesk(door, notes, entries(), mark) };
}

/** Another page of the same tab, with what the first has marked. */
function reloaded(from: TestPage): TestPage {
  from.desk.remember();
  const next = page();
  next.mark.write(from.mark.read() ?? '');
  return next;
}

type TestPage = ReturnType<typeof page>;

function run({ desk }: TestPage) {
  const { run: now } = desk.store.getState();
  if (!now) throw new Error('run(): no lesson is open');
  return now;
}

function lessonSession({ door }: TestPage) {
  const { lesson } = door.store.getState();
  if (!lesson) throw new Error('lessonSession(): no lesson is open');
  return lesson;
}

function solve(one: TestPage, solved: Solved): void {
  if ('choose' in solved) one.desk.answer(solved.choose);
  else if ('number' in solved) one.desk.answer(Number(solved.number));
  else if ('press' in solved) lessonSession(one).happenings.tell(solved.tells);
  else {
    const session = lessonSession(one);
    for (const [at, text] of solved.turn) {
      expect(setKnob(session, run(one).lesson.scene.knobs[at], Number(text))).toBeNull();
      session.live.flush();
    }
  }
}

/** Those whose heads are worked out at once; the others are finished in the browser's test. */
const LIGHT = [
  'two-lumps',
  'blade-lies-flat',
  'bolt-stands-up',
  'round-ellipse',
  'off-the-plane',
  'over-centre',
  'how-close',
];

describe('a reload', () => {
  it('comes back to the lesson, at its step, with the head as it was; the own design is not touched', () => {
    const one = page();
    one.desk.begin('two-lumps');
    const [first] = SOLUTIONS['two-lumps'];
    solve(one, first);
    expect(run(one).told).toBe(true);
    const told = reloaded(one);
    expect(told.desk.resume()).toBe(true);
    expect(run(told)).toEqual(run(one));
    told.desk.next();
    expect(run(told).step).toBe(1);
    const { actions } = lessonSession(told);
    actions.setDesignName('Of the pupil');
    actions.setPitch(12);
    const next = reloaded(told);
    const own = serializeDesign(next.own.store.getState().design);
    expect(next.desk.resume()).toBe(true);
    expect(run(next)).toEqual(run(told));
    const { design, pitchDeg, settings } = lessonSession(next).store.getState();
    expect(design).toEqual(lessonSession(told).store.getState().design);
    expect(pitchDeg).toBe(12);
    expect(settings.learnView).toBe(lessonSession(told).store.getState().settings.learnView);
    expect(serializeDesign(next.own.store.getState().design)).toBe(own);
    // It goes on: the step is done and told as if there had been no reload.
    solve(next, SOLUTIONS['two-lumps'][1]);
    expect(run(next).told).toBe(true);
  });

  it('after the lesson was left, or with a mark that is damaged, comes back to the list', () => {
    const one = page();
    one.desk.begin('two-lumps');
    const mark = one.mark.read() ?? '';
    expect(mark).not.toBe('');
    for (const bad of ['', '{', '[]', mark.slice(0, -9), mark.replace('"step":0', '"step":99')]) {
      const next = page();
      next.mark.write(bad);
      expect(next.desk.resume()).toBe(false);
      expect(next.door.store.getState().lesson).toBeNull();
    }
    one.desk.leave();
    expect(one.mark.read()).toBe('');
    // A head that is damaged begins anew; the lesson stays.
    const next = page();
    next.mark.write(JSON.stringify({ ...JSON.parse(mark), design: '{"cut' }));
    expect(next.desk.resume()).toBe(true);
    expect(lessonSession(next).store.getState().design).toEqual(
      lessonSession(begun()).store.getState().design,
    );
  });
});

function begun(): TestPage {
  const one = page();
  one.desk.begin('two-lumps');
  return one;
}

describe('a lesson', () => {
  it.each(LIGHT)(
    '%s is not moved on by doing nothing, and is finished by doing what it asks',
    (id) => {
      const one = page();
      one.desk.begin(id);
      for (const [at, solved] of SOLUTIONS[id].entries()) {
        lessonSession(one).live.flush();
        expect(run(one)).toMatchObject({ step: at, told: false });
        one.desk.next();
        expect(run(one).step).toBe(at);
        solve(one, solved);
        expect(run(one).told).toBe(true);
        if (at < SOLUTIONS[id].length - 1) one.desk.next();
      }
      expect(run(one).finished).toBe(true);
      expect(one.desk.store.getState().done).toEqual([id]);
      expect(one.notes.kept.get('lessons')).toBe(JSON.stringify([id]));
    },
  );

  it('counts nothing while a drag is under way, and looks again at its end', () => {
    const one = page();
    one.desk.begin('bolt-stands-up');
    one.desk.answer(0);
    one.desk.next();
    one.desk.answer(0);
    one.desk.next();
    const session = lessonSession(one);
    const hold = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'lengthMm', 4.763);
    session.live.flush();
    expect(run(one).told).toBe(false);
    hold.end();
    expect(run(one).told).toBe(true);
  });

  it('says the computed truth of a question, in the units on screen', () => {
    const one = page();
    one.desk.begin('off-the-plane');
    const { lesson } = run(one);
    const step = lesson.steps[1];
    if (step.kind !== 'estimate') throw new Error('the second step is a number');
    // -W^2 m y z at 10,200 rpm, 0.7 g, 17 mm, 8 mm: -108.6 N mm, -15.4 ozf in.
    expect(truthOf(lesson, 1, step, METRIC_UNITS).text).toBe('\u2212109\u00a0N\u00a0mm');
    expect(truthOf(lesson, 1, step, INCH_UNITS).text).toBe('\u221215.4\u00a0ozf\u00a0in');
    expect(truthOf(lesson, 1, step, METRIC_UNITS).fits(-113)).toBe(true);
    expect(truthOf(lesson, 1, step, METRIC_UNITS).fits(-115)).toBe(false);
  });
});

describe('the own design', () => {
  it('is the same to the byte, with its history, whatever is done in a lesson', () => {
    const one = page();
    const before = serializeDesign(one.own.store.getState().design);
    const past = one.own.store.temporal.getState().pastStates.length;
    one.desk.begin('two-lumps');
    const session = lessonSession(one);
    expect(one.door.shown()).toBe(session);
    session.actions.removePart('stick');
    session.actions.setParameter('ahead', 'massGrams', 77);
    session.actions.undo();
    session.actions.setDesignName('Not mine');
    session.actions.setSettings({ chartQuantity: 'energy' });
    one.desk.leave();
    expect(one.door.shown()).toBe(one.own);
    expect(serializeDesign(one.own.store.getState().design)).toBe(before);
    expect(one.own.store.temporal.getState().pastStates.length).toBe(past);
    expect(one.own.store.getState().settings.chartQuantity).toBe('force');
  });

  it('is what another room shows, and the lesson waits where it was', () => {
    const one = page();
    one.desk.begin('two-lumps');
    one.desk.answer(0);
    const session = lessonSession(one);
    session.actions.setSettings({ room: 'head', letterKeys: false });
    expect(one.own.store.getState().settings).toMatchObject({ room: 'head', letterKeys: false });
    expect(one.door.shown()).toBe(one.own);
    one.own.actions.setSettings({ room: 'learn', units: INCH_UNITS, theme: 'dark' });
    expect(one.door.shown()).toBe(session);
    expect(session.store.getState().settings).toMatchObject({ units: INCH_UNITS, theme: 'dark' });
    expect(run(one)).toMatchObject({ step: 0, told: true });
  });

  it('has its warnings said while a lesson is on the stage', () => {
    const one = page();
    one.desk.begin('two-lumps');
    one.own.actions.notify({ tone: 'warning', text: 'not kept' });
    expect(lessonSession(one).store.getState().notice?.text).toBe('not kept');
  });

  it('undo in a lesson does not reach the lesson before it', () => {
    const one = page();
    one.desk.begin('two-lumps');
    one.desk.begin('bolt-stands-up');
    const session = lessonSession(one);
    session.actions.undo();
    expect(session.store.getState().design.parts.map(({ id }) => id)).toEqual(['bolt']);
  });
});

describe('a lesson from a file', () => {
  it('is begun, stands in the list, and a broken one is refused with the field', () => {
    const one = page();
    const text = lessonText('3-bolt-stands-up.json').replaceAll('bolt-stands-up', 'my-own');
    expect(one.desk.openText(text, 'my.json')).toBe(true);
    expect(run(one).lesson.id).toBe('my-own');
    expect(one.desk.store.getState().entries.at(-1)?.id).toBe('my-own');
    expect(one.desk.openText(text.replace('"flees"', '"wins"'), 'bad.json')).toBe(false);
    expect(one.desk.store.getState().fault).toContain(
      'bad.json: steps[0].choices[1].when[0].verdict',
    );
    expect(run(one).lesson.id).toBe('my-own');
  });

  it('whose design is a whole design file opens as one', () => {
    const { scene } = JSON.parse(lessonText('10-how-close.json')) as {
      readonly scene: { readonly design: unknown };
    };
    expect(parseDesign(JSON.stringify(scene.design)).ok).toBe(true);
  });
});

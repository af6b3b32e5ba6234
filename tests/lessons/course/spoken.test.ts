import { afterEach, describe, expect, it } from 'vitest';
import { BUILT_IN_LESSONS } from '../../../src/lessons/course/builtIn';
import { createLessonDesk } from '../../../src/lessons/course/desk';
import { speak } from '../../../src/messages/languages';
import { createSession } from '../../../src/state/createSession';
import { createLessonDoor } from '../../../src/state/lessonDoor';
import { lessonText } from './files';

const never = () => {};
const NO_NOTES = { read: () => null, write: () => true, remove: () => {} };

function page() {
  const own = createSession(undefined, never);
  own.actions.setSettings({ room: 'learn' });
  const door = createLessonDoor(own, (design) => createSession(design, never));
  return { door, desk: createLessonDesk(door, NO_NOTES, BUILT_IN_LESSONS) };
}

type TestPage = ReturnType<typeof page>;

function titleOf({ desk }: TestPage): string | undefined {
  return desk.store.getState().run?.lesson.title;
}

describe('the lessons that come with the page', () => {
  afterEach(() => speak('en'));

  it('are in English their files, to the letter', () => {
    expect(BUILT_IN_LESSONS[0].text).toBe(lessonText('1-two-lumps.json'));
  });

  it('are begun in the language spoken, the names of their parts too', async () => {
    await speak('de');
    const one = page();
    expect(one.desk.store.getState().entries[0].title).toBe('Zwei Massenpunkte an einem Stab');
    one.desk.begin('two-lumps');
    expect(titleOf(one)).toBe('Zwei Massenpunkte an einem Stab');
    const parts = one.door.shown().store.getState().design.parts;
    expect(parts.map(({ name }) => name)).toEqual([
      'Massenpunkt vorn',
      'Massenpunkt hinten',
      'Stab',
    ]);
  });

  it('go on in another language at the step that was reached, with the head as it was turned', async () => {
    const one = page();
    one.desk.begin('two-lumps');
    one.desk.answer(0);
    one.desk.next();
    one.door.shown().actions.setPitch(33);
    await speak('de');
    one.desk.sayAnew();
    const { run } = one.desk.store.getState();
    expect(run?.step).toBe(1);
    expect(titleOf(one)).toBe('Zwei Massenpunkte an einem Stab');
    expect(one.door.store.getState().title).toBe('Zwei Massenpunkte an einem Stab');
    expect(one.door.store.getState().task).toMatch(/^Den Reiter/);
    expect(one.door.shown().store.getState().pitchDeg).toBe(33);
  });

  it('leave a file of somebody\u2019s own alone, even under the id of one of theirs', async () => {
    const text = lessonText('1-two-lumps.json').replace('Two lumps on a stick', 'My own lumps');
    const one = page();
    expect(one.desk.openText(text, 'own.json')).toBe(true);
    await speak('de');
    one.desk.sayAnew();
    expect(titleOf(one)).toBe('My own lumps');
  });
});

import { expect, it } from 'vitest';
import { tellFullFields } from '../../src/app/fullFields';

/** A field as the HTML standard has it, of which eight of ten letters are taken. */
const FIELD = { value: 'eightoff', maxLength: 10, selectionStart: 8, selectionEnd: 8 };

function told(target: object, data: string | null): readonly string[] {
  const texts: string[] = [];
  const listeners: ((event: InputEvent) => void)[] = [];
  const stop = tellFullFields(
    { actions: { notify: (notice) => texts.push(notice?.text ?? '') } },
    {
      addEventListener: (_: string, listener: unknown) =>
        void listeners.push(listener as (event: InputEvent) => void),
      removeEventListener: (_: string, listener: unknown) =>
        void listeners.splice(listeners.indexOf(listener as never), 1),
    },
  );
  for (const listener of listeners) listener({ target, data } as unknown as InputEvent);
  stop();
  expect(listeners).toEqual([]);
  return texts;
}

it('what goes beyond the room of a field is told with its limit, and nothing else', () => {
  expect(told(FIELD, 'ab')).toEqual([]);
  expect(told(FIELD, 'abc')).toEqual([
    'This field takes 10 characters at most; what goes beyond them is left out.',
  ]);
  // Three are marked, and what is typed takes their place.
  expect(told({ ...FIELD, selectionStart: 5 }, 'abcde')).toEqual([]);
  expect(told({ ...FIELD, selectionStart: 5 }, 'abcdef').length).toBe(1);
  // A field without a limit has -1; deleting brings no text.
  expect(told({ ...FIELD, maxLength: -1 }, 'a'.repeat(500))).toEqual([]);
  expect(told({ ...FIELD, value: 'a'.repeat(12) }, null)).toEqual([]);
  expect(told({}, 'text')).toEqual([]);
});

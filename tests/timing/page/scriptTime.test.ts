import { expect, test } from 'vitest';
import { frameTimes, pictureBegins } from './scriptTime';

const own = { pid: 1, tid: 2 };
const move = (ts: number) => ({
  ...own,
  name: 'EventDispatch',
  ph: 'X',
  ts,
  dur: 1,
  args: { data: { type: 'pointermove' } },
});
const script = (ts: number, dur: number, more: object = {}) => ({
  ...own,
  name: 'FunctionCall',
  ph: 'X',
  ts,
  dur,
  tdur: dur,
  ...more,
});

test('script time is counted from one pointer move to the next: nested calls once, other threads and what came before not', () => {
  const times = frameTimes([
    script(0, 500),
    move(1000),
    script(1001, 2000),
    script(1100, 300),
    script(4000, 1000, { name: 'MinorGC' }),
    script(4500, 9000, { tid: 3 }),
    { ...script(4600, 9000), name: 'Paint' },
    move(20_000),
    // Taken from the thread 1.5 ms long by another program: its processor time counts.
    script(20_001, 2000, { tdur: 500 }),
  ]);
  expect(times).toEqual([3, 0.5]);
});

test('where nobody moves the pointer, script time is counted from the beginning of one picture to the next', () => {
  const picture = (ts: number) => ({ ...own, name: 'AnimationFrame', ph: 'b', ts });
  const ended = (ts: number) => ({ ...own, name: 'AnimationFrame', ph: 'e', ts });
  const times = frameTimes(
    [
      picture(1000),
      script(1001, 2000),
      ended(5000),
      script(5500, 1000),
      picture(9000),
      script(9001, 400),
    ],
    pictureBegins,
  );
  expect(times).toEqual([3, 0.4]);
});

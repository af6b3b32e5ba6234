import { readFileSync } from 'node:fs';
import { beforeEach, expect, it, vi } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { watchStations } from '../../../src/panels/rail/watchStations';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

let session: Session;
let pictures: (() => void)[];
const told = vi.fn<(ids: readonly string[]) => void>();

beforeEach(() => {
  const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const parsed = parseDesign(readFileSync(file, 'utf8'));
  if (!parsed.ok) throw new Error('the demo is not sound');
  pictures = [];
  session = createSession(parsed.value, (draw) => pictures.push(draw));
  told.mockReset();
});

function picture(): void {
  for (const draw of pictures.splice(0)) draw();
}

/** The inner end of the barrel, 4 mm at first: all that sits on it goes outward with it, past the arm and the link. */
const shorten = (barrelStartMm: number) =>
  session.actions.setParameter('grip', 'barrelStartMm', barrelStartMm);

it('tells an order that a drag has changed when the hand lets go, though it rested before', () => {
  watchStations(session, told);
  const [[first]] = told.mock.calls;
  const hold = session.actions.gesture.begin();
  expect(shorten(5).ok).toBe(true);
  for (let k = 0; k < 5; k++) picture();
  expect(told).toHaveBeenCalledOnce();
  hold.end();
  expect(told).toHaveBeenCalledTimes(2);
  expect(told.mock.lastCall?.[0]).not.toEqual(first);
  expect(told.mock.lastCall?.[0].toSorted()).toEqual(first.toSorted());
});

it('tells no order twice, and nothing when it has stopped', () => {
  const stop = watchStations(session, told);
  shorten(4.1);
  picture();
  expect(told).toHaveBeenCalledOnce();
  stop();
  shorten(5);
  picture();
  expect(told).toHaveBeenCalledOnce();
});

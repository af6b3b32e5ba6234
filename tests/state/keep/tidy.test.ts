import { describe, expect, it } from 'vitest';
import { nameState, renameState } from '../../../src/state/keep/pasts';
import type { RecordStore } from '../../../src/state/keep/recordStore';
import { asideKey, type Card, designKey, pastKey } from '../../../src/state/keep/records';
import { makeRoom } from '../../../src/state/keep/room';
import { tidy } from '../../../src/state/keep/tidy';
import { answered, createWorld, torn, type World } from './world';

// What is let go by itself is what DEVELOPERS.md and the dialog of the designs promise: designs that were only looked at,
// but the latest five, after a week; removed ones after a month; named states never.

const DAY = 24 * 3_600_000;
const NOW = 400 * DAY;

function lay(world: World, card: Card): Card {
  world.cards.set(card.key, card);
  world.texts.set(card.key, 't');
  return card;
}

function design(id: string, savedAt: number, more: Partial<Card> = {}): Card {
  const stamp = `s-${id}`;
  return {
    key: designKey(id),
    format: 1,
    id,
    revision: 1,
    stamp,
    writer: 'w',
    name: id,
    savedAt,
    length: 1,
    edited: false,
    ...more,
  };
}

/** A world with five designs that were looked at just now, so that the oldest counts. */
async function withStore(): Promise<{ world: World; store: RecordStore }> {
  const world = createWorld(21, NOW);
  for (let i = 0; i < 5; i++) lay(world, design(`recent ${i}`, NOW - i));
  const tab = await world.openTab();
  await world.pass(600);
  return { world, store: await answered(world, tab.keeper.store()) };
}

const tidied = (world: World, store: RecordStore, now = NOW, open: readonly string[] = []) =>
  answered(world, tidy(store, now, new Set(open)));
const ids = (world: World) => [...world.cards.values()].map((card) => (card as Card).id);

describe('what is let go by itself', () => {
  it('of designs only looked at: those of a week ago, not those of less, changed, open or among the five latest', async () => {
    const { world, store } = await withStore();
    const week = NOW - 7 * DAY;
    lay(world, design('a week ago', week));
    lay(world, design('less', week + 1));
    lay(world, design('changed', week - DAY, { edited: true }));
    lay(world, design('open', week - DAY));
    await tidied(world, store, NOW, ['open']);
    expect(ids(world)).not.toContain('a week ago');
    for (const id of ['less', 'changed', 'open', 'recent 4']) expect(ids(world)).toContain(id);
    // Years later the five stay that came to be looked at last.
    await tidied(world, store, NOW + 2000 * DAY);
    const left = ['recent 0', 'recent 1', 'recent 2', 'recent 3', 'recent 4', 'changed'];
    expect(ids(world).toSorted()).toEqual(left.toSorted());
  });

  it('goes by when a design was last looked at, not by when it was stored', async () => {
    const { world, store } = await withStore();
    const long = NOW - 300 * DAY;
    lay(world, design('looked at daily', long, { openedAt: NOW - DAY }));
    lay(world, design('forgotten', long));
    await tidied(world, store);
    expect(ids(world)).toContain('looked at daily');
    expect(ids(world)).not.toContain('forgotten');
    // Among the latest five it comes before those that were stored later and not opened since.
    const { world: other, store: its } = await withStore();
    lay(other, design('first of all', long, { openedAt: NOW + 1 }));
    await tidied(other, its, NOW + 100 * DAY);
    expect(ids(other)).toContain('first of all');
    expect(ids(other)).not.toContain('recent 4');
  });

  it('spares a design of which a state has a name, and takes the nameless states of one along', async () => {
    const { world, store } = await withStore();
    lay(world, design('only named', NOW - 100 * DAY));
    expect(await answered(world, nameState(store, 'only named', 'good'))).toBe(true);
    await tidied(world, store);
    expect(ids(world).filter((id) => id === 'only named').length).toBe(2);
    const key = [...world.cards.keys()].find((one) => one.startsWith('past/')) as string;
    await answered(world, renameState(store, key, ''));
    await tidied(world, store);
    expect(ids(world)).not.toContain('only named');
    expect(torn(world)).toEqual([]);
    expect(world.texts.size).toBe(5);
  });

  it('of what was set aside: what was removed a month ago, with its history, and nothing that is damaged', async () => {
    const { world, store } = await withStore();
    const month = NOW - 31 * DAY;
    const removed = design('removed', month, { edited: true });
    lay(world, { ...removed, key: pastKey(removed), title: 'named' });
    lay(world, { ...removed, key: asideKey(removed, month), reason: 'removed', asideAt: month });
    const damaged = design('damaged', month, { reason: 'damaged', asideAt: month });
    lay(world, { ...damaged, key: asideKey(damaged, month) });
    await tidied(world, store, NOW - 1);
    expect(ids(world).filter((id) => id === 'removed').length).toBe(2);
    await tidied(world, store);
    expect(ids(world)).not.toContain('removed');
    expect(ids(world)).toContain('damaged');
  });

  it('leaves a history that another record of the same design still has', async () => {
    const { world, store } = await withStore();
    const month = NOW - 31 * DAY;
    const twice = design('twice', month, { edited: true });
    lay(world, { ...twice, key: pastKey(twice) });
    const old = { ...twice, stamp: 'old', reason: 'removed', asideAt: month } as const;
    lay(world, { ...old, key: asideKey(old, month) });
    const later = { ...twice, reason: 'removed', asideAt: NOW - DAY } as const;
    lay(world, { ...later, key: asideKey(later, NOW - DAY) });
    await tidied(world, store);
    expect([...world.cards.keys()]).toContain(pastKey(twice));
    expect(ids(world).filter((id) => id === 'twice').length).toBe(2);
    // Nor does a full storage take it before the last of them.
    lay(world, { ...old, key: asideKey(old, month), savedAt: month - DAY });
    world.cards.set(pastKey(twice), { ...twice, key: pastKey(twice), title: 'named' });
    expect(await answered(world, makeRoom(store))).toEqual({ states: 0, removed: 1 });
    expect([...world.cards.keys()]).toContain(pastKey(twice));
    expect(await answered(world, makeRoom(store))).toEqual({ states: 0, removed: 1 });
    expect(ids(world)).not.toContain('twice');
    expect(await answered(world, makeRoom(store))).toBeNull();
  });
});

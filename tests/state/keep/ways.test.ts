import { describe, expect, it } from 'vitest';
import { listDesigns } from '../../../src/state/keep/designs';
import { listPasts, nameState } from '../../../src/state/keep/pasts';
import { answered, createWorld, isSomewhere, type Tab, torn, type World } from './world';

// The ways in which work gets lost in browser programs, each a test. Browser behaviour: the standards that world.ts names;
// that timers and animation frames are held back in hidden tabs: WHATWG HTML, "run the animation frame callbacks", and
// common practice of browsers.

const designs = (world: World) =>
  [...world.texts].filter(([key]) => key.startsWith('design/')).map(([, text]) => text);
const kinds = (tab: Tab) => tab.messages.map(({ kind }) => kind);
const state = (tab: Tab) => tab.keeper.status.getState().state;

async function opened(world: World): Promise<Tab> {
  const tab = await world.openTab();
  await world.pass(600);
  return tab;
}
async function reopened(world: World): Promise<string> {
  const tab = await opened(world);
  const text = tab.text();
  tab.kill();
  return text;
}
async function withKept(text: string, seed = 1): Promise<{ world: World; tab: Tab }> {
  const world = createWorld(seed);
  const tab = await opened(world);
  tab.edit(text);
  await world.pass(1000);
  return { world, tab };
}

describe('work is not lost', () => {
  it('when saving is throttled and the page is left: at most a second is missing after a kill, nothing after leaving', async () => {
    const { world, tab } = await withKept('one');
    expect(state(tab)).toBe('kept');
    tab.edit('two');
    expect(state(tab)).toBe('keeping');
    tab.close();
    expect(await reopened(world)).toBe('two');
    const second = await opened(world);
    second.edit('three');
    await world.pass(1000);
    second.edit('four');
    second.kill();
    expect(await reopened(world)).toBe('three');
  });

  it('during a drag that does not pause: every moment the store is at most a second behind', async () => {
    const { world, tab } = await withKept('d0');
    const at = new Map<string, number>();
    for (let i = 1; i <= 300; i++) {
      at.set(`d${i}`, world.clock);
      tab.edit(`d${i}`);
      await world.pass(16);
      const [text] = designs(world);
      if (i > 60) expect(world.clock - (at.get(text) ?? 0)).toBeLessThanOrEqual(1000);
    }
  });

  it('in a hidden tab, where timers sleep: it is stored at once and waits for no timer', async () => {
    const { world, tab } = await withKept('seen');
    tab.hidden = true;
    const before = world.clock;
    tab.edit('unseen');
    await world.pass(0);
    expect(world.clock).toBe(before);
    expect(designs(world)).toEqual(['unseen']);
  });

  it('by the first write of a page that has not read the store: nothing is written before something changed', async () => {
    const { world, tab } = await withKept('old');
    tab.kill();
    world.fault = (_, kind) => (kind === 'open' ? { error: 'UnknownError' } : null);
    const blind = await opened(world);
    expect(blind.restored.found).toEqual({ kind: 'unread', trouble: 'broken' });
    blind.edit('made blindly');
    world.fault = () => null;
    await world.pass(60_000);
    expect(designs(world).toSorted()).toEqual(['made blindly', 'old']);
  });

  it('by a stale tab: it is brought up to date before it may write, and undo does not wipe what the other made', async () => {
    const { world, tab } = await withKept('base');
    const stale = await opened(world);
    expect(state(stale)).toBe('otherTab');
    tab.edit('latest of the first');
    await world.pass(1000);
    tab.kill();
    await world.pass(1000);
    expect(stale.text()).toBe('latest of the first');
    expect(kinds(stale)).toContain('caughtUp');
    stale.undo();
    await world.pass(1000);
    expect(designs(world)).toEqual(['base']);
    expect(isSomewhere(world, 'latest of the first')).toBe(true);
  });

  it('by a second tab that is worked in: it becomes a copy, and says so', async () => {
    const { world, tab } = await withKept('base');
    const other = await opened(world);
    other.edit('of the other');
    tab.edit('of the first');
    await world.pass(1000);
    expect(designs(world).toSorted()).toEqual(['of the first', 'of the other']);
    expect(kinds(other)).toEqual(['otherTab', 'copied']);
    expect(state(other)).toBe('kept');
  });

  it('by taking over: the newest state comes along, and what the loser had not stored yet is kept as a copy', async () => {
    const { world, tab } = await withKept('base');
    const other = await opened(world);
    tab.edit('stored by the first');
    await world.pass(1000);
    tab.edit('not stored yet');
    other.keeper.takeOver();
    await world.pass(1000);
    expect(other.text()).toBe('stored by the first');
    other.edit('goes on');
    await world.pass(1000);
    expect(designs(world).toSorted()).toEqual(['goes on', 'not stored yet']);
    expect(kinds(tab)).toContain('copied');
  });

  it('by a write that was on its way when another tab took over: it comes too late, whatever comes first', async () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { world, tab } = await withKept('base', seed);
      const other = await opened(world);
      tab.edit('on its way');
      // The write, the loss of the right and its being given come to be done in one moment, in any order.
      world.clock += 400;
      other.keeper.takeOver();
      await world.pass(5000);
      expect(state(other), `seed ${seed}`).toBe('kept');
      expect(designs(world), `seed ${seed}`).toContain(other.text());
      expect(designs(world), `seed ${seed}`).toContain('on its way');
    }
  });

  it('by taking over a design that is gone from the store: what the stage shows is kept again', async () => {
    const { world } = await withKept('base');
    const other = await opened(world);
    expect(state(other)).toBe('otherTab');
    world.cards.clear();
    world.texts.clear();
    other.keeper.takeOver();
    await world.pass(1000);
    expect(state(other)).toBe('kept');
    expect(designs(world)).toEqual(['base']);
  });

  it('in a sick browser: however often the store is opened anew, one connection stands', async () => {
    const { world, tab } = await withKept('before');
    const before = world.connections();
    world.fault = (_, kind) => (kind === 'commit' ? { error: 'UnknownError' } : null);
    tab.edit('not stored');
    await world.pass(600_000);
    expect(state(tab)).toBe('failed');
    world.fault = () => null;
    await world.pass(31_000);
    expect(state(tab)).toBe('kept');
    expect(world.connections()).toBeLessThanOrEqual(before);
    expect(world.connections()).toBe(1);
  });

  it('by undo to a design that is still being stored: its right is not given away meanwhile', async () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { world, tab } = await withKept('base', seed);
      const other = await opened(world);
      expect(state(other)).toBe('otherTab');
      tab.edit('not stored yet');
      tab.openNew('another');
      tab.undo();
      await world.pass(2000);
      tab.edit('goes on');
      await world.pass(2000);
      expect(designs(world).toSorted(), `seed ${seed}`).toEqual(['another', 'goes on']);
      expect(kinds(tab), `seed ${seed}`).toEqual([]);
      expect(state(other), `seed ${seed}`).toBe('otherTab');
    }
  });

  it('by asking for a copy of what this tab may write: it goes on with it, and no copy is made', async () => {
    const { world, tab } = await withKept('mine');
    await answered(world, tab.keeper.workOnCopy());
    tab.edit('goes on');
    await world.pass(1000);
    expect(designs(world)).toEqual(['goes on']);
    expect(kinds(tab)).toEqual([]);
  });

  it('in a browser without locks: the revisions alone keep two tabs apart', async () => {
    const { world, tab } = await withKept('base');
    world.lockless = true;
    const other = await opened(world);
    // Both believe that they may write.
    tab.edit('first');
    other.edit('second');
    await world.pass(2000);
    for (const text of ['first', 'second']) expect(isSomewhere(world, text)).toBe(true);
  });

  it('by a newer page: its records are left as they are, and the older page goes on with a copy', async () => {
    const { world, tab } = await withKept('mine');
    const [key] = [...world.cards.keys()];
    const foreign = { format: 2, key, anything: 'else' };
    world.cards.set(key, foreign);
    world.texts.set(key, 'written by a newer page');
    tab.edit('mine, changed');
    await world.pass(1000);
    expect(world.cards.get(key)).toEqual(foreign);
    expect(world.texts.get(key)).toBe('written by a newer page');
    expect(designs(world)).toContain('mine, changed');
    expect(tab.messages).toContainEqual({ kind: 'copied', why: 'newer' });
  });

  it('where a newer page has rearranged the whole store: said, and kept in a note', async () => {
    const { world, tab } = await withKept('mine');
    world.fault = () => ({ error: 'VersionError' });
    tab.edit('changed');
    await world.pass(1000);
    expect(tab.messages).toContainEqual({ kind: 'trouble', trouble: 'newerPage' });
    expect(state(tab)).toBe('failed');
    expect(isSomewhere(world, 'changed')).toBe(true);
  });

  for (const [error, trouble] of [
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
    ['UnknownError', 'broken'],
  ] as const) {
    it(`where the storage is ${trouble}: said at once and once, kept in memory, stored when it works again`, async () => {
      const { world, tab } = await withKept('before');
      world.fault = (_, kind) => (kind === 'commit' ? { error } : null);
      tab.edit('first');
      await world.pass(1000);
      tab.edit('second');
      await world.pass(5000);
      expect(tab.messages).toEqual([{ kind: 'trouble', trouble }]);
      expect(state(tab)).toBe('failed');
      expect(tab.text()).toBe('second');
      expect(designs(world)).toEqual(['before']);
      world.fault = () => null;
      await world.pass(31_000);
      expect(designs(world)).toEqual(['second']);
      expect(kinds(tab)).toEqual(['trouble', 'recovered']);
      expect(state(tab)).toBe('kept');
    });
  }

  it('where the storage is full of old states: the oldest without a name are let go, which is said, and the work is kept', async () => {
    const { world, tab } = await withKept('state 0 of a design');
    const store = await answered(world, tab.keeper.store());
    const { id } = tab.keeper.status.getState();
    for (let hour = 1; hour <= 12; hour++) {
      await world.pass(3_600_000);
      tab.edit(`state ${hour} of a design`);
      await world.pass(1000);
      if (hour === 2) await answered(world, nameState(store, id, 'the good one'));
    }
    const before = await answered(world, listPasts(store, id));
    expect(before.length).toBeGreaterThan(8);
    world.capacity = [...world.texts.values()].join('').length;
    tab.edit('longer than any state that was there before, so that it does not fit');
    await world.pass(5000);
    expect(state(tab)).toBe('kept');
    expect(designs(world)).toEqual([tab.text()]);
    const left = await answered(world, listPasts(store, id));
    expect(left.map(({ title }) => title)).toContain('the good one');
    expect(left[0].savedAt).toBe(before[0].savedAt);
    const freed = { states: before.length - left.length, removed: 0 };
    expect(freed.states).toBeGreaterThan(0);
    expect(tab.messages).toEqual([{ kind: 'thinned', freed }]);
  });

  it('where the storage is full and nothing may be let go: no design and no named state is, and it is said', async () => {
    const { world, tab } = await withKept('first');
    const store = await answered(world, tab.keeper.store());
    const { id } = tab.keeper.status.getState();
    await answered(world, nameState(store, id, 'named'));
    tab.openNew('second');
    await world.pass(1000);
    const before = new Map(world.texts);
    world.capacity = 0;
    tab.edit('second, and longer');
    await world.pass(5000);
    expect(world.texts).toEqual(before);
    expect(kinds(tab)).toEqual(['trouble']);
    expect(isSomewhere(world, 'second, and longer')).toBe(true);
  });

  it('where one design is too large for the room there is: a shorter one opened after it is kept all the same', async () => {
    const { world, tab } = await withKept('first');
    world.capacity = 200;
    tab.openNew('H'.repeat(500));
    tab.edit('H'.repeat(501));
    await world.pass(3000);
    expect(state(tab)).toBe('failed');
    tab.openNew('little');
    tab.edit('little work');
    await world.pass(5000);
    expect(designs(world)).toContain('little work');
    // The large one still waits: nothing is called recovered.
    expect(kinds(tab)).toEqual(['trouble']);
    expect(isSomewhere(world, 'H'.repeat(501))).toBe(true);
    world.capacity = Number.POSITIVE_INFINITY;
    await world.pass(60_000);
    expect(designs(world)).toContain('H'.repeat(501));
    expect(kinds(tab)).toEqual(['trouble', 'recovered']);
    expect(state(tab)).toBe('kept');
  });

  it('where storage and notes both fail: leaving the page asks first', async () => {
    const { world, tab } = await withKept('before');
    world.notesFull = true;
    world.fault = () => ({ error: 'QuotaExceededError' });
    expect(tab.keeper.atRisk()).toBe(false);
    tab.edit('only in memory');
    await world.pass(1000);
    expect(tab.keeper.atRisk()).toBe(true);
    world.notesFull = false;
    expect(tab.keeper.atRisk()).toBe(false);
  });

  it('where notes are refused and the store has not answered yet: leaving the page asks, and no longer once it has', async () => {
    const { world, tab } = await withKept('before');
    world.notesFull = true;
    tab.edit('on its way');
    expect(tab.keeper.atRisk()).toBe(true);
    await world.pass(1000);
    expect(state(tab)).toBe('kept');
    expect(tab.keeper.atRisk()).toBe(false);
    // With notes a page is left at any moment and asks nothing.
    world.notesFull = false;
    tab.edit('and this');
    expect(tab.keeper.atRisk()).toBe(false);
    tab.close();
    expect(await reopened(world)).toBe('and this');
  });

  it('where the store cannot be opened for ever after a crash: the page opens, the work of the notes with it', async () => {
    const world = createWorld(3);
    world.fault = () => ({ error: 'UnknownError' });
    const tab = await opened(world);
    tab.edit('without a store');
    await world.pass(2000);
    tab.close();
    expect(await reopened(world)).toBe('without a store');
  });

  it('where a store never answers: the page opens all the same and says so', async () => {
    const { world, tab } = await withKept('kept');
    tab.kill();
    const silent = createWorld(4);
    silent.notes.set('canary', '1');
    silent.fault = () => null;
    const slow = await stalled(silent);
    expect(slow.restored.found).toEqual({ kind: 'unread', trouble: 'slow' });
    expect(world.cards.size).toBeGreaterThan(0);
  });

  it('where a write takes long: said meanwhile, and taken back once it was made', async () => {
    const { world, tab } = await withKept('kept');
    world.delay = 1500;
    tab.edit('slowly');
    await world.pass(3500);
    expect(kinds(tab)).toEqual(['slow']);
    expect(state(tab)).toBe('keeping');
    await world.pass(15_000);
    expect(designs(world)).toEqual(['slowly']);
    expect(kinds(tab)).toEqual(['slow', 'recovered']);
    expect(state(tab)).toBe('kept');
  });

  it('where a store comes back empty: told from a first visit by the note outside it, and said once', async () => {
    expect((await opened(createWorld(5))).restored.found).toEqual({ kind: 'nothing' });
    const { world, tab } = await withKept('kept');
    tab.kill();
    world.cards.clear();
    world.texts.clear();
    const second = await opened(world);
    expect(second.restored.found).toEqual({ kind: 'lost' });
    second.kill();
    expect((await opened(world)).restored.found).toEqual({ kind: 'nothing' });
  });

  it('where a record is damaged: set aside and said, and the design before it opens', async () => {
    const { world, tab } = await withKept('sound');
    tab.openNew('later');
    await world.pass(1000);
    tab.kill();
    const key = [...world.texts].find(([, text]) => text === 'later')?.[0] as string;
    world.texts.set(key, 'lat');
    const next = await opened(world);
    expect(next.restored).toMatchObject({ design: 'sound', found: { kind: 'damaged' } });
    expect([...world.texts].filter(([one]) => one.startsWith('aside/'))[0][1]).toBe('lat');
  });

  it('where the clock was set back between two visits: what was opened or worked on last still opens', async () => {
    const { world, tab } = await withKept('by the fast clock');
    tab.kill();
    world.clock -= 3600_000;
    const next = await opened(world);
    next.openNew('by the right clock');
    await world.pass(1000);
    next.kill();
    expect(await reopened(world)).toBe('by the right clock');
    // A clock that was wrong by more than a day is not followed.
    world.clock -= 48 * 3600_000;
    const far = await opened(world);
    far.openNew('two days before');
    await world.pass(1000);
    const times = [...world.cards.values()].map((card) => (card as { savedAt: number }).savedAt);
    expect(Math.min(...times)).toBeLessThanOrEqual(world.clock);
  });

  it('by opening a file, a link or a demo: it opens beside the work, and undo goes back to it', async () => {
    const { world, tab } = await withKept('work');
    tab.edit('work, not stored yet');
    tab.openNew('from a link');
    await world.pass(1000);
    expect(designs(world).toSorted()).toEqual(['from a link', 'work, not stored yet']);
    tab.edit('link, changed');
    await world.pass(1000);
    tab.undo();
    tab.undo();
    tab.edit('work goes on');
    await world.pass(1000);
    expect(designs(world).toSorted()).toEqual(['from a link', 'work goes on'].toSorted());
  });

  it('by going back to a past state: the state that is left stays in the history', async () => {
    const { world, tab } = await withKept('monday');
    const store = await answered(world, tab.keeper.store());
    await world.pass(24 * 3_600_000);
    tab.edit('tuesday');
    await world.pass(1000);
    const { id } = tab.keeper.status.getState();
    const [past] = await answered(world, listPasts(store, id));
    expect(world.texts.get(past.key)).toBe('monday');
    tab.keeper.open('monday', null);
    await world.pass(1000);
    expect(designs(world)).toEqual(['monday']);
    const texts = (await answered(world, listPasts(store, id))).map(({ key }) =>
      world.texts.get(key),
    );
    expect(texts).toContain('tuesday');
    expect((await answered(world, listDesigns(store))).designs).toHaveLength(1);
  });

  it('by an answer that was lost on the way: what was written in truth is known again, and no copy is made', async () => {
    const { world, tab } = await withKept('base');
    let once = true;
    world.fault = (_, kind) => {
      if (kind !== 'commit' || !once) return null;
      once = false;
      return { error: 'AbortError', after: true };
    };
    tab.edit('written, answer lost');
    await world.pass(500);
    tab.edit('and on');
    await world.pass(3000);
    expect(designs(world)).toEqual(['and on']);
    expect(kinds(tab)).not.toContain('copied');
    expect(torn(world)).toEqual([]);
  });
});

/** A tab in a world where nothing but timers ever happens: requests are never answered. */
async function stalled(world: World): Promise<Tab> {
  world.fault = (_, kind) => (kind === 'request' ? 'never' : null);
  return opened(world);
}

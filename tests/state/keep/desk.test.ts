import { describe, expect, it } from 'vitest';
import { createKeepDesk, type KeepDesk } from '../../../src/state/keep/desk';
import { answered, createWorld, isSomewhere, type Tab, torn, type World } from './world';

// What a person does in the dialog of the designs, over the model of the browser in world.ts.

async function withDesk(text: string) {
  const world = createWorld(11);
  const tab = await world.openTab();
  await world.pass(600);
  tab.edit(text);
  await world.pass(1000);
  const desk = deskOf(world, tab);
  await answered(world, desk.load());
  return { world, tab, desk };
}

function deskOf(world: World, tab: Tab): KeepDesk {
  let ids = 0;
  const canary = {
    read: () => world.notes.get('canary') ?? null,
    write: (said: string) => void world.notes.set('canary', said),
  };
  const ports = { now: () => world.clock, newId: () => `desk${++ids}`, canary };
  return createKeepDesk(tab.keeper, ports, async () => false);
}

function names({ state }: KeepDesk): string[] {
  return state.getState().listing.designs.map(({ name }) => name);
}

async function anotherDesign(world: World, tab: Tab, text: string): Promise<void> {
  tab.openNew(text);
  await world.pass(1000);
  tab.edit(`${text}, changed`);
  await world.pass(1000);
}

describe('the desk of kept designs', () => {
  it('opens a kept design as itself: what is changed then goes on in it, and the other stays', async () => {
    const { world, tab, desk } = await withDesk('first');
    await anotherDesign(world, tab, 'second');
    await answered(world, desk.load());
    expect(names(desk)).toEqual(['second, changed', 'first']);
    const [, first] = desk.state.getState().listing.designs;
    expect(await answered(world, desk.openDesign(first))).toBe(true);
    expect(tab.text()).toBe('first');
    tab.edit('first, gone on');
    await world.pass(1000);
    await answered(world, desk.load());
    expect(names(desk)).toEqual(['first, gone on', 'second, changed']);
    tab.undo();
    tab.undo();
    expect(tab.text()).toBe('second, changed');
  });

  it('names the state on the stage as it is now, also where it was not stored yet, and renames it', async () => {
    const { world, tab, desk } = await withDesk('a');
    tab.edit('just done');
    expect(await answered(world, desk.nameNow('good'))).toBe(true);
    const [state] = desk.state.getState().pasts;
    expect(state.title).toBe('good');
    expect(world.texts.get(state.key)).toBe('just done');
    expect(await answered(world, desk.rename(state, 'better'))).toBe(true);
    expect(desk.state.getState().pasts[0].title).toBe('better');
    expect(await answered(world, desk.rename(desk.state.getState().pasts[0], ''))).toBe(true);
    expect(desk.state.getState().pasts[0].title).toBeUndefined();
  });

  it('opens a past state as a design of its own, which leaves the one that it came from alone', async () => {
    const { world, tab, desk } = await withDesk('a');
    await answered(world, desk.nameNow('then'));
    tab.edit('later');
    await world.pass(1000);
    expect(await answered(world, desk.openCopy(desk.state.getState().pasts[0]))).toBe(true);
    await world.pass(1000);
    await answered(world, desk.load());
    expect(names(desk).toSorted()).toEqual(['a', 'later']);
  });

  it('removes a design so that undo and "bring back" both return it, under another id where its own is taken', async () => {
    const { world, tab, desk } = await withDesk('first');
    await anotherDesign(world, tab, 'second');
    await answered(world, desk.load());
    const [, first] = desk.state.getState().listing.designs;
    const undo = await answered(world, desk.remove(first));
    expect(names(desk)).toEqual(['second, changed']);
    expect(isSomewhere(world, 'first')).toBe(true);
    await answered(world, undo?.() ?? Promise.resolve());
    expect(names(desk)).toEqual(['second, changed', 'first']);
    await answered(world, desk.remove(first));
    const [aside] = desk.state.getState().listing.aside;
    // Meanwhile its id has come back by another way.
    world.cards.set(first.key, { ...first });
    world.texts.set(first.key, 'first');
    expect(await answered(world, desk.bringBack(aside))).toBe(true);
    expect(names(desk).filter((name) => name === 'first').length).toBe(2);
  });

  it('deletes a removed design for good with its history, and undo puts both back', async () => {
    const { world, tab, desk } = await withDesk('first');
    await answered(world, desk.nameNow('good state'));
    await anotherDesign(world, tab, 'second');
    await answered(world, desk.load());
    const [, first] = desk.state.getState().listing.designs;
    await answered(world, desk.remove(first));
    const before = new Map(world.texts);
    const [aside] = desk.state.getState().listing.aside;
    const undo = await answered(world, desk.remove(aside));
    expect([...world.texts.keys()].filter((key) => key.includes(first.id))).toEqual([]);
    expect([...world.texts.values()]).not.toContain('first');
    await answered(world, undo?.() ?? Promise.resolve());
    expect(new Map([...world.texts].toSorted())).toEqual(new Map([...before].toSorted()));
    expect(torn(world)).toEqual([]);
    expect(await answered(world, desk.bringBack(aside))).toBe(true);
    await answered(world, desk.openDesign(first));
    await answered(world, desk.load());
    expect(desk.state.getState().pasts.map(({ title }) => title)).toContain('good state');
  });

  it('deletes for good one of two records of a design: its history stays with the other', async () => {
    const { world, tab, desk } = await withDesk('first');
    await answered(world, desk.nameNow('good state'));
    await anotherDesign(world, tab, 'second');
    await answered(world, desk.load());
    const [, first] = desk.state.getState().listing.designs;
    await answered(world, desk.remove(first));
    world.cards.set(first.key, { ...first });
    world.texts.set(first.key, 'first');
    await answered(world, desk.remove(desk.state.getState().listing.aside[0]));
    const titles = [...world.cards.values()].map((card) => (card as { title?: string }).title);
    expect(titles).toContain('good state');
  });

  it('of a damaged design opens an earlier state, as a design of its own', async () => {
    const { world, tab, desk } = await withDesk('first');
    await answered(world, desk.nameNow('before'));
    tab.edit('first, gone on');
    await world.pass(1000);
    await answered(world, desk.load());
    const [{ key, id }] = desk.state.getState().listing.designs;
    tab.kill();
    world.texts.set(key, 'fir');
    const next = await world.openTab();
    expect(next.restored.found.kind).toBe('damaged');
    const after = deskOf(world, next);
    await answered(world, after.load());
    const { listing, pastsOfDamaged } = after.state.getState();
    expect(listing.aside.map((card) => [card.id, card.reason])).toEqual([[id, 'damaged']]);
    const [state] = pastsOfDamaged.get(id) ?? [];
    expect(state.title).toBe('before');
    expect(await answered(world, after.openCopy(state))).toBe(true);
    expect(next.text()).toBe('first');
    await world.pass(1000);
    await answered(world, after.load());
    expect(after.state.getState().listing.aside.length).toBe(1);
    expect(after.state.getState().listing.designs[0]).toMatchObject({ name: 'first', copyOf: id });
  });

  it('does not open what is not whole, and says why a store cannot be read', async () => {
    const { world, tab, desk } = await withDesk('first');
    await anotherDesign(world, tab, 'second');
    await answered(world, desk.load());
    const [, first] = desk.state.getState().listing.designs;
    world.texts.set(first.key, 'fir');
    expect(await answered(world, desk.openDesign(first))).toBe(false);
    expect(await answered(world, desk.text(first))).toBe('fir');
    expect(tab.text()).toBe('second, changed');
    world.fault = () => ({ error: 'UnknownError' });
    await answered(world, desk.load());
    expect(desk.state.getState().reading).toBe('broken');
    world.fault = () => null;
    await answered(world, desk.load());
    expect(desk.state.getState().reading).toBe('read');
  });

  it('emptied by hand is no loss: the next visit is not told that something was thrown away', async () => {
    const { world, tab, desk } = await withDesk('only');
    const [only] = desk.state.getState().listing.designs;
    tab.kill();
    const other = await world.openTab();
    await world.pass(1000);
    const emptying = deskOf(world, other);
    await answered(world, emptying.remove(only));
    await answered(world, emptying.remove(emptying.state.getState().listing.aside[0]));
    other.kill();
    expect((await world.openTab()).restored.found).toEqual({ kind: 'nothing' });
  });
});

import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { serializeDesign } from '../../src/design/file';
import { createSession } from '../../src/state/createSession';
import { copyText, partFrom } from '../../src/state/partClipboard';
import { createShelf, type Shelf } from '../../src/state/shelf';
import type { ShelfDatabase } from '../../src/state/shelfDatabase';
import { MAX_ITEMS, parseShelf, serializeShelf } from '../../src/state/shelfFile';
import { carriedPart, type ShelfItem } from '../../src/state/shelfItem';
import { designOf, fullHead, mounted, partOf } from '../design/designs';

const own = { id: 'my-bar', name: 'Bar', densityKgM3: 7790, note: 'offcut' };
const BLOCK = {
  ...without(partOf('block', 'a', { name: 'Lug' }), 'densityKgM3'),
  material: 'my-bar',
};
const lug = BLOCK as unknown as Part;

function without(part: Part, name: string): object {
  return Object.fromEntries(Object.entries(part).filter(([key]) => key !== name));
}

/** A browser whose database outlives its pages. Records are kept as copies, as the real one does. */
function createBrowser() {
  const browser = {
    records: new Map<string, unknown>(),
    refuses: false,
    full: false,
    clock: 1000,
    open: 0,
  };
  let ids = 0;
  const database: ShelfDatabase = {
    readAll: async () => [...browser.records.values()],
    async put(item) {
      if (browser.full) throw new Error('quota');
      browser.records.set(item.id, structuredClone(item));
    },
    remove: async (id) => void browser.records.delete(id),
    close: () => void browser.open--,
  };
  const page = (): Shelf =>
    createShelf({
      async database() {
        if (browser.refuses) throw new Error('refused');
        browser.open++;
        return database;
      },
      now: () => browser.clock++,
      newId: () => `id-${ids++}`,
    });
  return { browser, page };
}
const names = (shelf: Shelf) => shelf.state.getState().items.map((item) => item.name);
async function kept(shelf: Shelf, part: Part, materials = [own]): Promise<ShelfItem> {
  const outcome = await shelf.keep(part, materials);
  if (!outcome.ok) throw new Error(outcome.error.path);
  return outcome.value;
}

describe('the shelf', () => {
  it('keeps a part for the next visit: what it is and its materials, not where it sat', async () => {
    const { page } = createBrowser();
    const nut = mounted('nut', 'nut-3', 'bolt', 'thread', { hidden: true, name: 'Locking nut' });
    await kept(page(), nut);
    await kept(page(), lug, [{ ...own, id: 'other' }, own]);
    const next = page();
    await next.load();
    expect(next.state.getState()).toMatchObject({ home: 'browser', unreadable: 0 });
    const [first, second] = next.state.getState().items;
    expect(first).toMatchObject({ name: 'Lug', kind: 'block', materials: [own] });
    expect(second).toMatchObject({ name: 'Locking nut', kind: 'nut', materials: [] });
    for (const key of ['id', 'name', 'kind', 'pose', 'socket', 'hidden']) {
      expect(second.part).not.toHaveProperty(key);
    }
    expect(without(carriedPart(second).part, 'pose')).toEqual({
      ...without(without(without(nut, 'socket') as Part, 'hidden') as Part, 'id'),
      id: second.id,
    });
  });

  it('lets no two items look the same: a name that is taken gets a number', async () => {
    const { page } = createBrowser();
    const shelf = page();
    for (let i = 0; i < 3; i++) await kept(shelf, lug);
    expect(names(shelf).toSorted()).toEqual(['Lug', 'Lug (2)', 'Lug (3)']);
  });

  it('renames and annotates, and an empty note leaves none', async () => {
    const { page } = createBrowser();
    const shelf = page();
    const { id } = await kept(shelf, lug);
    await shelf.describe(id, { name: 'Ear', note: 'from the old grip' });
    expect(shelf.state.getState().items[0]).toMatchObject({
      name: 'Ear',
      note: 'from the old grip',
    });
    await shelf.describe(id, { note: '' });
    const next = page();
    await next.load();
    expect(next.state.getState().items[0]).not.toHaveProperty('note');
    expect(names(next)).toEqual(['Ear']);
  });

  it('gives back what was taken off', async () => {
    const { page } = createBrowser();
    const shelf = page();
    const { id } = await kept(shelf, lug);
    const gone = await shelf.remove(id);
    expect(names(shelf)).toEqual([]);
    if (gone) await shelf.restore(gone);
    const next = page();
    await next.load();
    expect(next.state.getState().items).toEqual([gone]);
    expect(await shelf.remove('nobody')).toBeNull();
  });

  it('works for as long as the page does where the browser refuses, and says so', async () => {
    const { browser, page } = createBrowser();
    browser.refuses = true;
    const shelf = page();
    await kept(shelf, lug);
    expect(shelf.state.getState().home).toBe('page');
    expect(names(shelf)).toEqual(['Lug']);
    // The browser thinks better of it: what was in the page only is kept now.
    browser.refuses = false;
    await shelf.load();
    expect(shelf.state.getState().home).toBe('browser');
    const next = page();
    await next.load();
    expect(names(next)).toEqual(['Lug']);
  });

  it('keeps an item in the page, and says so, when the disk is full', async () => {
    const { browser, page } = createBrowser();
    const shelf = page();
    await shelf.load();
    browser.full = true;
    await kept(shelf, lug);
    expect(shelf.state.getState()).toMatchObject({ home: 'page', items: [{ name: 'Lug' }] });
    // However often it is tried again, no connection is left open.
    for (let time = 0; time < 3; time++) await shelf.load();
    expect(browser.open).toBe(0);
  });

  it('leaves a record that it cannot read where it is, and counts it', async () => {
    const { browser, page } = createBrowser();
    await kept(page(), lug);
    browser.records.set('odd', { id: 'odd', part: 7 });
    const shelf = page();
    await shelf.load();
    expect(shelf.state.getState()).toMatchObject({ unreadable: 1, items: [{ name: 'Lug' }] });
    expect(browser.records.has('odd')).toBe(true);
  });

  it('is one shelf for two tabs: neither overwrites the other', async () => {
    const { page } = createBrowser();
    const [first, second] = [page(), page()];
    await Promise.all([first.load(), second.load()]);
    await kept(first, lug);
    await kept(second, { ...lug, name: 'Ear' } as Part);
    await first.load();
    expect(names(first).toSorted()).toEqual(['Ear', 'Lug']);
  });
});

describe('a shelf file', () => {
  async function filled() {
    const { browser, page } = createBrowser();
    const shelf = page();
    await kept(shelf, lug);
    for (const part of fullHead()) await kept(shelf, part);
    return { browser, shelf, page };
  }

  it('holds every kind of part, and reads back equal', async () => {
    const { shelf } = await filled();
    const { items } = shelf.state.getState();
    const text = serializeShelf(items);
    const read = parseShelf(text);
    expect(read).toEqual({ ok: true, value: items });
    expect(read.ok && serializeShelf(read.value)).toBe(text);
    // Lists of numbers stand on one line; a text that looks like one is not touched.
    const odd = { ...items[0], note: '[\\n 1,\n 2 ]', part: { ...items[0].part } };
    const again = parseShelf(serializeShelf([odd]));
    expect(again.ok && again.value[0].note).toBe(odd.note);
  });

  it('taken in twice adds nothing the second time', async () => {
    const { shelf } = await filled();
    const { items } = shelf.state.getState();
    const other = createBrowser().page();
    expect(await other.takeIn(items)).toMatchObject({
      ok: true,
      value: { added: items.length, known: 0 },
    });
    expect(await other.takeIn(items)).toMatchObject({
      ok: true,
      value: { added: 0, known: items.length },
    });
    expect(other.state.getState().items).toHaveLength(items.length);
  });

  it('with the same id and other content keeps both, the one taken in under a new name', async () => {
    const { page } = createBrowser();
    const shelf = page();
    const here = await kept(shelf, lug);
    const theirs = {
      ...here,
      savedAt: here.savedAt + 50,
      part: { ...here.part, sizeMm: [1, 2, 3] },
    };
    for (let time = 0; time < 2; time++) {
      const outcome = await shelf.takeIn([theirs]);
      expect(outcome).toMatchObject({
        value: time === 0 ? { added: 1, renamed: 1 } : { known: 1 },
      });
    }
    const { items } = shelf.state.getState();
    expect(items).toHaveLength(2);
    expect(items.find((item) => item.id === here.id)).toEqual(here);
    expect(items.find((item) => item.id !== here.id)).toMatchObject({
      name: 'Lug (2)',
      part: { sizeMm: [1, 2, 3] },
    });
  });

  it('that would overflow the shelf is not taken in at all', async () => {
    const { page } = createBrowser();
    const shelf = page();
    const item = await kept(shelf, lug);
    const many = Array.from({ length: MAX_ITEMS }, (_, i) => ({
      ...item,
      id: `m${i}`,
      savedAt: i,
    }));
    expect(await shelf.takeIn(many)).toMatchObject({
      ok: false,
      error: { reason: { code: 'tooMany' } },
    });
    expect(names(shelf)).toEqual(['Lug']);
  });
});

describe('a hostile shelf file', () => {
  const item = {
    id: 'x',
    savedAt: 1,
    name: 'Lug',
    kind: 'block',
    part: { sizeMm: [3, 4, 5], densityKgM3: 2700 },
    materials: [],
  };
  const file = (more: object, ...items: unknown[]) =>
    JSON.stringify({ format: 'stillgrip-shelf', version: 1, items, ...more });
  const faults = (text: string) => {
    const read = parseShelf(text);
    return read.ok ? [] : read.error.map(({ path, reason }) => `${path} ${reason.code}`);
  };

  it('is told by the path of every item that is wrong, and the sound ones do not come in', () => {
    const text = file(
      {},
      item,
      { ...item, id: 'y', part: { sizeMm: [3, -4, 5], densityKgM3: 2700 } },
      { ...item, id: 'z', kind: 'spaceship' },
      { ...item, id: 'u', part: { sizeMm: [3, 4, 5], material: 'nobody' } },
      { ...item, id: 'v', materials: [{ id: 'm', name: 'm', densityKgM3: 1e9 }] },
      { ...item, id: 'w', name: 7 },
      item,
    );
    expect(faults(text)).toEqual([
      'items[1].part.sizeMm[1] tooSmall',
      'items[2].kind unknownKind',
      'items[3].part.material unknownMaterial',
      'items[4].materials[0].densityKgM3 tooLarge',
      'items[5].name wrongType',
      'items[6].id unsound',
    ]);
  });

  it.each([
    ['', ' empty'],
    ['{', ' truncated'],
    ['[]', ' wrongType'],
    ['null', ' wrongType'],
    [JSON.stringify(designOf([])), 'format wrongFormat'],
    [file({ version: 2 }), 'version newerVersion'],
    [file({ version: '1' }), 'version badVersion'],
    [file({ version: undefined }), 'version missing'],
    [file({ items: undefined }), 'items missing'],
    [file({ items: { length: 3 } }), 'items wrongType'],
    [file({ extra: 1 }), ' unknownKey'],
    [file({ items: Array.from({ length: MAX_ITEMS + 1 }, () => item) }), 'items tooMany'],
    [file({}, null), 'items[0] wrongType'],
    [file({}, { ...item, id: '' }), 'items[0].id emptyText'],
    [file({}, { ...item, id: 'x'.repeat(65) }), 'items[0].id textTooLong'],
    [file({}, { ...item, savedAt: 'today' }), 'items[0].savedAt wrongType'],
    [file({}, { ...item, note: ['n'] }), 'items[0].note wrongType'],
    [file({}, { ...item, part: [] }), 'items[0].part wrongType'],
    [file({}, { ...item, part: { ...item.part, socket: {} } }), 'items[0].part unknownKey'],
    [file({}, { ...item, part: { ...item.part, onload: 'x' } }), 'items[0].part unknownKey'],
    [file({}, { ...item, kind: undefined }), 'items[0].kind missing'],
    [file({}, { ...item, materials: 'all' }), 'items[0].materials wrongType'],
    [file({}, item).replace('"part":{', '"part":{"__proto__":{},'), 'items[0].part unknownKey'],
    [file({}, item).replace('"savedAt":1', '"savedAt":1e999'), 'items[0].savedAt notFinite'],
  ])('%.60s is refused with its place', (text, wanted) => {
    expect(faults(text)).toEqual([wanted]);
  });
});

describe('a part with its materials in another head', () => {
  const empty = designOf([]);
  const source: Design = { ...designOf([lug]), materials: [own] };

  it('comes in by the clipboard in one undo step, materials and all', () => {
    const { live } = createSession(source, (call) => call());
    const text = copyText(lug, live.model.placed('a')?.pose as never, source);
    const { store, actions } = createSession(empty, (call) => call());
    const carried = partFrom(text, empty);
    if (!carried.ok) throw new Error(carried.error.path);
    actions.pastePart(carried.value.part, carried.value.materials);
    expect(store.getState().design.materials).toEqual([own]);
    expect(store.getState().design.parts).toHaveLength(1);
    actions.undo();
    expect(store.getState().design).toBe(empty);
  });

  it('is refused by the clipboard where its material did not come and is not there', () => {
    const text = copyText(
      lug,
      { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] } as never,
      empty,
    );
    expect(partFrom(text, empty)).toMatchObject({
      ok: false,
      error: { reason: { code: 'unknownMaterial' } },
    });
  });

  it('swapped in is one undo step, and keeps its name unless another part has it', async () => {
    const { page } = createBrowser();
    const item = await kept(page(), lug);
    const design = designOf([
      partOf('block', 'b', { name: 'Old' }),
      partOf('block', 'c', { name: 'Lug' }),
    ]);
    const { store, actions } = createSession(design, (call) => call());
    expect(actions.swapPart('b', carriedPart(item)).ok).toBe(true);
    expect(store.getState().design.parts[0]).toMatchObject({
      id: 'b',
      name: 'Lug (2)',
      material: 'my-bar',
    });
    expect(store.getState().design.materials).toEqual([own]);
    actions.undo();
    expect(serializeDesign(store.getState().design)).toBe(serializeDesign(design));
  });

  it('swapped in where the head does not take it changes nothing and says which part would lose its seat', async () => {
    const { page } = createBrowser();
    const { store, live, actions } = createSession(designOf(fullHead()), (call) => call());
    const seat = live.model.placed('bolt')?.sockets.find((one) => one.name === 'thread');
    actions.setMount('nut', { offsetMm: seat?.offsetRangeMm[1] ?? 0 });
    const before = store.getState().design;
    const short = partOf('bolt', 'short', { lengthMm: 20, threadLengthMm: 10 });
    const item = await kept(page(), short, []);
    const refused = actions.swapPart('bolt', carriedPart(item));
    expect(refused).toMatchObject({ ok: false, error: { part: 'nut', field: 'offsetMm' } });
    expect(store.getState().design).toBe(before);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { compareItems, listedItems } from '../../../src/panels/shelf/comparison';
import { keepPart, putIn, swapIn } from '../../../src/panels/shelf/shelfDesk';
import { faultTexts } from '../../../src/panels/shelf/shelfFiles';
import { createSession } from '../../../src/state/createSession';
import { parseShelf } from '../../../src/state/shelfFile';
import { itemOf, type ShelfItem } from '../../../src/state/shelfItem';
import { fileStem } from '../../../src/ui/fileStem';
import { designOf, partOf } from '../../design/designs';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
function demo(): Design {
  const read = parseDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}
const open = (design = demo()) => createSession(design, (callback) => callback());
const kindOf = (design: Design, kind: string) =>
  design.parts.find((part) => part.kind === kind) as Part;
function shelved(part: Part, name: string, more = {}): ShelfItem {
  return itemOf({ ...part, ...more } as Part, [], {
    id: `on the shelf: ${name}`,
    savedAt: 1,
    name,
  });
}

describe('keeping a part', () => {
  it('says under which name it is kept, and warns where it is kept for the page only', async () => {
    // Without a browser there is no database.
    const session = open();
    const bolt = kindOf(demo(), 'bolt');
    const first = await keepPart(session, bolt.id);
    expect(first).toMatchObject({ tone: 'warning' });
    expect(first.text).toContain(bolt.name);
    const again = await keepPart(session, bolt.id);
    expect(again.text).toContain(`${bolt.name} (2)`);
    expect((await keepPart(session, 'nobody')).tone).toBe('warning');
  });
});

describe('putting in a part from the shelf', () => {
  it('takes the first free socket that it fits, and says which', () => {
    const session = open();
    const nut = kindOf(demo(), 'nut');
    session.actions.removePart(nut.id);
    const said = putIn(session, shelved(nut, 'Heavy nut'));
    const { design, selection } = session.store.getState();
    const put = design.parts.find((part) => part.id === selection) as Part;
    expect(put).toMatchObject({ name: 'Heavy nut', socket: { part: nut.socket?.part } });
    expect(said.text).toContain(kindOf(design, 'bolt').name);
    said.undo?.();
    expect(session.store.getState().design.parts).not.toContain(put);
  });

  it('is placed free where none is open, off the axis so that it counts', () => {
    const session = open();
    const before = session.store.getState().design;
    const said = putIn(session, shelved(kindOf(demo(), 'nut'), 'Spare nut'));
    const { design, selection } = session.store.getState();
    const put = design.parts.find((part) => part.id === selection) as Part;
    expect(put.pose?.positionMm[2]).toBe(10);
    expect(said.text).toContain('free');
    session.actions.undo();
    expect(session.store.getState().design).toBe(before);
  });
});

describe('swapping in a part from the shelf', () => {
  it('says what gave way, and can be taken back', () => {
    const session = open();
    const bolt = kindOf(demo(), 'bolt');
    const before = session.store.getState().design;
    const said = swapIn(session, shelved(bolt, 'Long bolt', { extensionLengthMm: 6 }), bolt.id);
    expect(said).toMatchObject({ tone: 'plain' });
    expect(said.text).toContain(bolt.name);
    expect(kindOf(session.store.getState().design, 'bolt').name).toBe('Long bolt');
    said.undo?.();
    expect(session.store.getState().design).toBe(before);
  });

  it('says why where the head does not take it', () => {
    const session = open();
    const bolt = kindOf(demo(), 'bolt');
    const nut = kindOf(demo(), 'nut');
    const before = session.store.getState().design;
    const said = swapIn(
      session,
      shelved(bolt, 'Stub', { lengthMm: 6, threadLengthMm: 3 }),
      bolt.id,
    );
    expect(said.tone).toBe('warning');
    expect(said.text).toContain(nut.name);
    expect(session.store.getState().design).toBe(before);
  });
});

describe('side by side', () => {
  const design = demo();
  const bolt = kindOf(design, 'bolt');
  const long = shelved(bolt, 'Long bolt', { extensionLengthMm: 6 });
  const stub = shelved(bolt, 'Stub', { lengthMm: 6, threadLengthMm: 3 });

  it('holds the head as it is against what the swapped design does when it is opened', () => {
    const [head, withLong] = compareItems(design, null, [long]);
    expect(head).toMatchObject({ item: null, old: bolt });
    const session = open();
    const forces = () => head.outlook?.pitchesDeg.map((deg) => session.live.reading.forceAt(deg));
    expect(head.outlook?.forces).toEqual(forces());
    swapIn(session, long, bolt.id);
    expect(withLong.outlook?.forces).toEqual(forces());
    expect(withLong.outlook?.forces).not.toEqual(head.outlook?.forces);
  });

  it('gives each part by itself: only its own dimensions count, not where it sits', () => {
    const moved = { ...design, parts: design.parts.map((part) => part) };
    const same = shelved(bolt, 'Twin');
    const [head, twin] = compareItems(moved, bolt.id, [same]);
    expect(twin.figures).toEqual(head.figures);
    expect(twin.outlook).toEqual(head.outlook);
  });

  it('tells a swap that the head refuses from one that it takes, and goes on with the other', () => {
    const [, refused, taken] = compareItems(design, null, [stub, long]);
    expect(refused).toMatchObject({ outlook: null });
    expect(refused.fault?.path).toMatch(/^parts\[\d+\]\.socket\.offsetMm$/);
    expect(taken.fault).toBeNull();
  });

  it('takes the selected part for the one to give way, else the first that counts', () => {
    const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
    const three = designOf(
      ['a', 'b', 'c'].map((id) =>
        partOf('block', id, { pose, ...(id === 'a' ? { hidden: true } : {}) }),
      ),
    );
    const item = shelved(three.parts[0], 'Block');
    const old = (selection: string | null) => compareItems(three, selection, [item])[1].old?.id;
    expect([old('c'), old(null), old('a')]).toEqual(['c', 'b', 'a']);
    expect(compareItems(designOf([]), null, [item])[1]).toMatchObject({ old: null, outlook: null });
  });
});

describe('the list', () => {
  const items = [
    shelved(partOf('nut', 'n'), 'Thin nut'),
    shelved(partOf('bolt', 'b'), 'Long bolt'),
    shelved(partOf('bolt', 'c'), 'Bolt of the thin grip'),
  ];
  const listed = (...rest: [string, string, string | null]) =>
    listedItems(items, ...rest).map((item) => item.name);
  it('has the selected kind first, and finds by a piece of the name and by kind', () => {
    expect(listed('', '', 'bolt')).toEqual(['Long bolt', 'Bolt of the thin grip', 'Thin nut']);
    expect(listed(' THIN', '', null)).toEqual(['Thin nut', 'Bolt of the thin grip']);
    expect(listed('thin', 'bolt', 'nut')).toEqual(['Bolt of the thin grip']);
  });
});

describe('a refused shelf file in words', () => {
  it('names the place of each fault, the first few of them', () => {
    const items = Array.from({ length: 11 }, () => ({ id: 'x' }));
    const read = parseShelf(JSON.stringify({ format: 'stillgrip-shelf', version: 1, items }));
    const texts = read.ok ? [] : faultTexts(read.error);
    expect(texts).toHaveLength(9);
    expect(texts[0]).toBe('items[0].savedAt: is missing');
    expect(texts[8]).toBe('and 3 more');
    const foreign = parseShelf('{"format":"other"}');
    expect(foreign.ok ? [] : faultTexts(foreign.error)).toEqual(['this is not a shelf file']);
  });
});

describe('a file name', () => {
  it('is letters, digits and single dashes, and never empty', () => {
    expect(fileStem('Dunlin 260: \u00d6se/..\\x', 'head')).toBe('dunlin-260-ose-x');
    expect(fileStem('...', 'head')).toBe('head');
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import type { Pose } from '../../../src/engine/math/pose';
import { byStation, partShare, partStation, writeRows } from '../../../src/panels/rail/railNumbers';
import { createSession } from '../../../src/state/createSession';
import { removeAndSelectNext } from '../../../src/state/editing';
import { copyText, isPartText, partFrom } from '../../../src/state/partClipboard';
import { placesFor } from '../../../src/state/places';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);

function demo(): Design {
  const read = parseDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}
const open = (design = demo()) => createSession(design, (callback) => callback());
const kindOf = (design: Design, kind: string) =>
  design.parts.find((part) => part.kind === kind) as Part;

describe('the rail', () => {
  it('orders parts from the shaft outward', () => {
    const { live } = open();
    const ids = byStation(live.reading, live.reading.order);
    const stations = ids.map((id) => partStation(live.reading.part(id) as never));
    for (let i = 1; i < stations.length; i++) {
      expect(stations[i]).toBeGreaterThanOrEqual(stations[i - 1] - 1e-9);
    }
    expect(ids.toSorted()).toEqual([...live.reading.order].toSorted());
  });

  it('keeps the list order of parts at one station', () => {
    const { live } = open();
    const onBolt = live.reading.order.filter((id) =>
      ['bolt', 'nut', 'washer'].includes(live.reading.part(id)?.part.kind ?? ''),
    );
    const ids = byStation(live.reading, live.reading.order);
    expect(ids.filter((id) => onBolt.includes(id))).toEqual(onBolt);
  });

  it('shows shares that add up to the whole head, and none for a hidden part', () => {
    const { live, actions, store } = open();
    const sum = () =>
      live.reading.order.reduce(
        (total, id) => total + partShare(live.reading.part(id) as never),
        0,
      );
    const whole = () => live.reading.totals[5] - live.reading.totals[6];
    expect(sum()).toBeCloseTo(whole(), 18);
    const { id } = kindOf(store.getState().design, 'blade');
    actions.setHidden(id, true);
    expect(partShare(live.reading.part(id) as never)).toBe(0);
    expect(sum()).toBeCloseTo(whole(), 18);
  });

  it('has the blade centre and the bolt flee', () => {
    const { live, store } = open();
    const { design } = store.getState();
    expect(partShare(live.reading.part(kindOf(design, 'blade').id) as never)).toBeGreaterThan(0);
    expect(partShare(live.reading.part(kindOf(design, 'bolt').id) as never)).toBeLessThan(0);
  });
});

describe('a row of the rail', () => {
  /** As much of an element as is written to. */
  interface Written {
    readonly title: string;
    readonly textContent: string;
    readonly cells: Record<string, Written>;
  }
  function element(part?: string): Written {
    const cells: Record<string, Written> = {};
    return {
      dataset: part === undefined ? {} : { part },
      title: '',
      style: {},
      firstChild: null,
      textContent: '',
      cells,
      querySelector(selector: string): object {
        const name = /"(.*)"/.exec(selector)?.[1] ?? '';
        cells[name] ??= element();
        return cells[name];
      },
    } as Written;
  }

  it('is written anew when mass or share changes though its part is the same object', () => {
    const { store, actions, live } = open(demo());
    const { design, settings } = store.getState();
    const rows = () => design.parts.map(({ id }) => element(id));
    const kept = rows();
    const write = (to: typeof kept) =>
      writeRows(
        { querySelectorAll: () => to } as unknown as HTMLElement,
        live.reading,
        settings.units,
        true,
      );
    const said = (all: typeof kept) =>
      all.map(({ title, cells }) => [title, cells.mass.textContent, cells.spoken.textContent]);
    write(kept);
    const before = said(kept);
    // What the grip carries goes along: every part by its place, none of them as an object.
    const grip = kindOf(design, 'grip');
    const pose = { positionMm: [0, 8, 0], rotationDeg: [20, 0, 0] } as const;
    const parts = design.parts.map((part) => (part === grip ? ({ ...grip, pose } as Part) : part));
    expect(actions.openDesign({ ...design, parts }).ok).toBe(true);
    live.flush();
    write(kept);
    const fresh = rows();
    write(fresh);
    expect(said(kept)).toEqual(said(fresh));
    expect(said(kept)).not.toEqual(before);
  });
});

describe('removing from the rail', () => {
  it('selects the next part that is left, and says what went along', () => {
    const session = open();
    const { store } = session;
    const { id } = kindOf(store.getState().design, 'bolt');
    const order = store.getState().design.parts.map((part) => part.id);
    removeAndSelectNext(session, id);
    const left = store.getState().design.parts.map((part) => part.id);
    expect(left).not.toContain(id);
    expect(left).toContain(store.getState().selection);
    expect(store.getState().notice?.text).toContain('Undo');
    session.actions.undo();
    expect(store.getState().design.parts.map((part) => part.id)).toEqual(order);
  });

  it('selects nothing when the last part goes', () => {
    const session = open();
    for (const { id } of session.store.getState().design.parts) removeAndSelectNext(session, id);
    expect(session.store.getState()).toMatchObject({ selection: null, design: { parts: [] } });
  });
});

describe('places for a part', () => {
  it('are free sockets that it fits', () => {
    const design = demo();
    const bolt = kindOf(design, 'bolt');
    expect(placesFor(design, 'nut')).toEqual([]);
    const free = { ...design, parts: design.parts.filter((part) => part.kind !== 'nut') };
    const onBolt = placesFor(free, 'nut');
    expect(onBolt.map(({ part, socket }) => [part.id, socket.mates])).toEqual([
      [bolt.id, 'thread'],
    ]);
    expect(placesFor(design, 'block')).toEqual([]);
  });

  it('take any number where parts stack', () => {
    expect(placesFor(demo(), 'washer').map(({ socket }) => socket.mates)).toContain('underHead');
  });

  it('offer a part its own seat again, but none on itself or on what it carries', () => {
    const design = demo();
    const bolt = kindOf(design, 'bolt');
    const nut = kindOf(design, 'nut');
    expect(placesFor(design, 'nut', nut.id).map(({ part }) => part.id)).toEqual([bolt.id]);
    expect(placesFor(design, 'washer', bolt.id).map(({ part }) => part.id)).not.toContain(nut.id);
  });
});

describe('a copied part', () => {
  it('comes back as it was, free where its seat is taken', () => {
    const session = open();
    const { live, store, actions } = session;
    const nut = kindOf(store.getState().design, 'nut');
    const pose = live.model.placed(nut.id)?.pose as Pose;
    const text = copyText(nut, pose, store.getState().design);
    expect(isPartText(text)).toBe(true);
    const part = partFrom(text, store.getState().design);
    if (!part.ok) throw new Error(part.error.path);
    expect(part.value.part.socket).toBeUndefined();
    const pasted = actions.pastePart(part.value.part);
    if (!pasted.ok) throw new Error(pasted.error.field);
    const copy = live.model.placed(pasted.value);
    for (let i = 0; i < 3; i++) {
      expect(copy?.pose.translation[i]).toBeCloseTo(pose.translation[i], 9);
    }
  });

  it('sits on its seat again where that is free', () => {
    const session = open();
    const { live, store, actions } = session;
    const nut = kindOf(store.getState().design, 'nut');
    const text = copyText(nut, live.model.placed(nut.id)?.pose as never, store.getState().design);
    actions.removePart(nut.id);
    const part = partFrom(text, store.getState().design);
    expect(part).toMatchObject({ ok: true, value: { part: { socket: nut.socket } } });
    if (part.ok) expect(actions.pastePart(part.value.part).ok).toBe(true);
  });

  it('is refused when its text is not sound', () => {
    const design = demo();
    for (const text of [
      '',
      'null',
      '{"format":"stillgrip-part"}',
      '[1]',
      '{"format":"stillgrip-part","part":{"kind":"bolt"}}',
    ]) {
      expect(partFrom(text, design).ok).toBe(false);
    }
    expect(isPartText('some other text')).toBe(false);
  });
});

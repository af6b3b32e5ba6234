import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { shownTryOut, tryOutsOf } from '../../src/design/tryOuts';
import { knownOutlook, variantOutlook } from '../../src/design/variantOutlook';
import { figuresOf } from '../../src/panels/tryOuts/columns';
import { createSession } from '../../src/state/createSession';
import type { Session } from '../../src/state/session';
import { MAX_COMPARED } from '../../src/state/tryOutActions';
import { partOf } from '../design/designs';
import { seeded } from '../support/seeded';

function demo(name: string): Design {
  const text = readFileSync(new URL(`../../assets/designs/${name}.json`, import.meta.url), 'utf8');
  const design = parseDesign(text);
  if (!design.ok) throw new Error(design.error.path);
  return design.value;
}

/** A session whose frames are drawn by hand. */
function session(name = '4-turned-nut') {
  const waiting: (() => void)[] = [];
  const made = createSession(demo(name), (call) => waiting.push(call));
  const draw = () => {
    for (const call of waiting.splice(0)) call();
  };
  const drawAll = () => {
    for (let left = 100; waiting.length > 0 && left > 0; left--) draw();
  };
  return { ...made, draw, drawAll };
}
const design = ({ store }: Session) => store.getState().design;
const past = ({ store }: Session) => store.temporal.getState().pastStates.length;
const value = <T>(outcome: { readonly ok: boolean; readonly value?: T }): T => {
  if (!outcome.ok) throw new Error('refused');
  return outcome.value as T;
};

describe('work on try-outs', () => {
  it('is one undo step each, and undone gives back the very design', () => {
    const made = session();
    const { tryOuts } = made.actions;
    const steps: ((id: string) => unknown)[] = [
      () => tryOuts.keep('B'),
      () => tryOuts.add(demo('3-ordinary-bolt').parts, 'C', 'from the file'),
      () => tryOuts.addAndShow(demo('1-bare-grip').parts, 'D'),
      (id) => tryOuts.rename(id, 'A'),
      (id) => tryOuts.setNote(id, 'bare'),
      (id) => tryOuts.duplicate(id),
      (id) => tryOuts.show(id),
      (id) => tryOuts.adopt(id),
      () => tryOuts.step(1),
      () => tryOuts.step(-1),
      (id) => tryOuts.remove(id),
    ];
    const designs = [design(made)];
    for (const step of steps) {
      step(tryOutsOf(design(made))[0]?.id ?? '');
      if (design(made) !== designs.at(-1)) designs.push(design(made));
      expect(past(made)).toBe(designs.length - 1);
    }
    // Every step changed something: adopting the one that is shown sets its mark.
    expect(designs.length).toBe(steps.length + 1);
    for (const before of designs.toReversed().slice(1)) {
      made.actions.undo();
      expect(design(made)).toBe(before);
    }
  });

  it('that changes nothing leaves no undo step', () => {
    const made = session();
    const id = value(made.actions.tryOuts.keep('B'));
    const before = past(made);
    made.actions.tryOuts.show(id);
    made.actions.tryOuts.rename(id, 'B');
    made.actions.tryOuts.setNote(id, '');
    made.actions.tryOuts.compare(id, false);
    expect(past(made)).toBe(before);
  });

  it('shows other parts with everything that follows: forces, and what the stage has to draw', () => {
    const made = session();
    const other = demo('3-ordinary-bolt');
    const id = value(made.actions.tryOuts.add(other.parts, 'Ordinary bolt'));
    made.drawAll();
    const told: (ReadonlySet<string> | 'all')[] = [];
    made.live.subscribe((changes) => told.push(changes.parts));
    made.actions.tryOuts.show(id);
    made.drawAll();
    const opened = createSession({ ...design(made) }, (call) => call()).live.reading;
    expect(design(made).parts).toBe(other.parts);
    for (const pitch of [-20, -7, 0, 13, 20]) {
      expect(made.live.reading.forceAt(pitch)).toBeCloseTo(opened.forceAt(pitch) as number, 9);
    }
    expect(told.some((parts) => parts === 'all' || parts.size > 0)).toBe(true);
  });

  it('lets go of a selection that only the other one has', () => {
    const made = session();
    const bare = design(made).parts.filter(
      (part) => part.id !== 'nut' && part.socket?.part !== 'nut',
    );
    expect(bare.length).toBeLessThan(design(made).parts.length);
    const id = value(made.actions.tryOuts.add(bare, 'No nut'));
    made.actions.select('nut');
    made.actions.tryOuts.show(id);
    expect(made.store.getState().selection).toBeNull();
    made.actions.select('bolt');
    made.actions.tryOuts.step(1);
    expect(made.store.getState().selection).toBe('bolt');
  });

  it('ends a drag under way: what was dragged stays with the try-out that it was dragged on', () => {
    const made = session();
    const first = value(made.actions.tryOuts.keep('B'));
    const hold = made.actions.gesture.begin();
    expect(made.actions.setParameter('bolt', 'extensionLengthMm', 7.5).ok).toBe(true);
    made.actions.tryOuts.step(1);
    expect(hold.alive).toBe(false);
    const kept = tryOutsOf(design(made)).find((one) => one.id === first);
    expect(kept?.parts?.find((part) => part.id === 'bolt')).toMatchObject({
      extensionLengthMm: 7.5,
    });
    made.actions.undo();
    expect(shownTryOut(design(made))?.id).toBe(first);
    made.actions.undo();
    expect(design(made).parts.find((part) => part.id === 'bolt')).not.toMatchObject({
      extensionLengthMm: 7.5,
    });
  });

  it('is refused beyond fifty, and by a part that the design cannot hold, with nothing written', () => {
    const made = session();
    for (let n = 0; n < 49; n++) value(made.actions.tryOuts.keep('again'));
    const before = design(made);
    const full = made.actions.tryOuts.keep('one more');
    expect(full).toMatchObject({ ok: false, error: { path: 'tryOuts', reason: { limit: 50 } } });
    expect(design(made)).toBe(before);
    const single = session();
    const wrong = [...before.parts, { ...before.parts[0], name: 'twice' }];
    expect(single.actions.tryOuts.add(wrong, 'wrong')).toMatchObject({
      ok: false,
      error: { path: `tryOuts[1].parts[${before.parts.length}].id` },
    });
    expect(past(single)).toBe(0);
  });

  it('refuses to let go of a material that only a part kept aside is made of', () => {
    const made = session();
    const bar = { id: 'bar', name: 'Bar', densityKgM3: 8000 };
    value(made.actions.setOwnMaterials([bar]));
    value(made.actions.tryOuts.keep('of bar'));
    value(made.actions.setMaterial('bolt', 'densityKgM3', 'bar'));
    made.actions.tryOuts.step(1);
    expect(made.actions.setOwnMaterials([])).toMatchObject({
      ok: false,
      error: { reason: { code: 'unknownMaterial', material: 'bar' } },
    });
  });

  it('survives saving and opening with the one on the stage on the stage', () => {
    const made = session();
    value(made.actions.tryOuts.keep('B'));
    value(made.actions.setParameter('bolt', 'extensionLengthMm', 7.5));
    const opened = parseDesign(serializeDesign(design(made)));
    expect(opened.ok && opened.value).toEqual(design(made));
  });
});

describe('a walk through try-outs, with part changes, undo and redo between', () => {
  it('leaves the running model where a fresh one would be, whatever ids and kinds the variants share', () => {
    for (const seed of [1, 2, 3]) walk(seed);
  });

  function walk(seed: number): void {
    const random = seeded(seed);
    const made = session();
    const { actions } = made;
    // The same id for another thing: a bolt that is a lump.
    const [first, ...rest] = demo('1-bare-grip').parts;
    const clash = [first, ...rest.filter((part) => part.id !== 'bolt')];
    const lump = partOf('pointMass', 'bolt', { massGrams: 2 });
    for (const parts of [demo('3-ordinary-bolt').parts, [...clash, lump]]) {
      value(actions.tryOuts.add(parts, 'variant'));
    }
    for (let step = 0; step < 120; step++) {
      const id = random.pick(tryOutsOf(design(made))).id;
      const act = random.whole(0, 7);
      if (act === 0) actions.tryOuts.show(id);
      else if (act === 1) actions.tryOuts.step(random.pick([1, -1] as const));
      else if (act === 2) actions.tryOuts.adopt(id);
      else if (act === 3) actions.undo();
      else if (act === 4) actions.redo();
      else if (act === 5) {
        const isBolt = design(made).parts.some((part) => part.kind === 'bolt');
        if (isBolt) actions.setParameter('bolt', 'extensionLengthMm', random.between(0, 9));
        else actions.setParameter('bolt', 'massGrams', random.between(1, 9));
      }
      if (act === 6 && tryOutsOf(design(made)).length < 8) actions.tryOuts.duplicate(id);
      else if (act === 7 && tryOutsOf(design(made)).length > 2) actions.tryOuts.remove(id);
      if (tryOutsOf(design(made)).length === 0) actions.redo();
      if (step % 10 === 0) compareWithFresh(made);
    }
  }

  function compareWithFresh(made: ReturnType<typeof session>): void {
    made.drawAll();
    const { reading } = made.live;
    const fresh = createSession(design(made), (call) => call()).live.reading;
    expect(reading.order).toEqual(fresh.order);
    for (const pitch of [-20, 0, 13]) {
      // Sums are kept in double-double, so nothing drifts; angles of the linkage are solved anew each time.
      expect(reading.momentAt(pitch)).toBeCloseTo(fresh.momentAt(pitch), 12);
    }
  }
});

describe('which try-outs are compared', () => {
  it('are the new ones as long as there is room, and no part of the design', () => {
    const made = session();
    for (let n = 0; n < MAX_COMPARED; n++) value(made.actions.tryOuts.duplicate(first(made, n)));
    const before = design(made);
    const others = tryOutsOf(before).filter((one) => one.parts !== undefined);
    expect(others.length).toBe(MAX_COMPARED);
    expect(made.store.getState().compared).toEqual(
      expect.arrayContaining(others.map((one) => one.id)),
    );
    const extra = value(made.actions.tryOuts.duplicate(others[0].id));
    expect(made.store.getState().compared).not.toContain(extra);
    expect(made.actions.tryOuts.compare(extra, true)).toBe(false);
    expect(made.actions.tryOuts.compare(others[0].id, false)).toBe(true);
    expect(made.actions.tryOuts.compare(extra, true)).toBe(true);
    expect(serializeDesign(design(made))).not.toContain('compare');
  });

  it('are none in a design that is opened', () => {
    const made = session();
    value(made.actions.tryOuts.keep('B'));
    expect(made.store.getState().compared.length).toBe(2);
    made.actions.openDesign(design(made));
    expect(made.store.getState().compared).toEqual([]);
  });

  /** The first entry; made where there is none. */
  function first(made: Session, n: number): string {
    if (n === 0) made.actions.tryOuts.add(design(made).parts, 'seed');
    if (n === 0) made.actions.tryOuts.remove(tryOutsOf(design(made))[1].id);
    return tryOutsOf(design(made))[0].id;
  }
});

describe('the outlook of a try-out', () => {
  it.each(['3-ordinary-bolt', '4-turned-nut', '5-both-sides'])(
    'equals, to the bit, what opening the design with its parts shows: %s',
    (name) => {
      const base = demo('4-turned-nut');
      const { parts } = demo(name);
      const { live } = createSession({ ...base, parts }, (call) => call());
      const { curve } = live.reading;
      const {
        curve: own,
        overCentreDeg,
        ...figures
      } = value(variantOutlook(base, parts, curve.pitchDeg));
      expect(figures).toEqual(figuresOf(live.reading));
      expect(overCentreDeg).toEqual(live.reading.overCentreDeg);
      for (const key of Object.keys(own) as (keyof typeof own)[]) {
        expect(own[key], key).toEqual(curve[key]);
      }
    },
  );

  it('is worked out once, a frame after it is asked for, and told', () => {
    const made = session();
    const parts = demo('3-ordinary-bolt').parts;
    made.actions.tryOuts.add(parts, 'C');
    made.drawAll();
    let told = 0;
    made.outlooks.subscribe(() => told++);
    expect(made.outlooks.of(parts)).toBeNull();
    made.drawAll();
    const found = made.outlooks.of(parts);
    expect(found?.ok).toBe(true);
    expect(made.outlooks.of(parts)).toBe(found);
    expect(told).toBe(1);
  });

  it('stays the same object while the one on the stage is dragged, and for a change of its own only', () => {
    const made = session();
    const parts = demo('3-ordinary-bolt').parts;
    made.actions.tryOuts.add(parts, 'C');
    made.outlooks.of(parts);
    made.drawAll();
    const found = made.outlooks.of(parts);
    const hold = made.actions.gesture.begin();
    for (let mm = 1; mm < 6; mm += 0.5) {
      made.actions.setParameter('bolt', 'extensionLengthMm', mm);
      made.draw();
      expect(made.outlooks.of(parts)).toBe(found);
    }
    hold.end();
    made.actions.tryOuts.rename(tryOutsOf(design(made))[1].id, 'other name');
    expect(made.outlooks.of(parts)).toBe(found);
  });

  it('is not known after the speed was changed, and not worked out before the drag of the speed ends', () => {
    const made = session();
    const parts = demo('3-ordinary-bolt').parts;
    const { pitchDeg } = made.live.reading.curve;
    made.actions.tryOuts.add(parts, 'C');
    made.outlooks.of(parts);
    made.drawAll();
    const before = value(made.outlooks.of(parts) ?? { ok: false });
    const { speedRpm } = design(made).rotor;
    const hold = made.actions.gesture.begin();
    made.actions.setSection('rotor', { speedRpm: 2 * speedRpm });
    expect(made.outlooks.of(parts)).toBeNull();
    made.drawAll();
    expect(knownOutlook(design(made), parts, pitchDeg)).toBeNull();
    hold.end();
    made.drawAll();
    const after = value(made.outlooks.of(parts) ?? { ok: false });
    // The mass pulls with the square of the speed; the sums of mass stay (derived).
    expect([...after.totals]).toEqual([...before.totals]);
    expect(Math.abs(after.moments[4])).toBeGreaterThan(2 * Math.abs(before.moments[4]));
  });

  it('is not worked out for what was taken away meanwhile', () => {
    const made = session();
    const parts = demo('3-ordinary-bolt').parts;
    const id = value(made.actions.tryOuts.add(parts, 'C'));
    expect(made.outlooks.of(parts)).toBeNull();
    made.actions.tryOuts.remove(id);
    made.drawAll();
    expect(knownOutlook(design(made), parts, made.live.reading.curve.pitchDeg)).toBeNull();
  });
});

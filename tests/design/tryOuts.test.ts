import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { MAX_NAME } from '../../src/design/limits';
import {
  addTryOut,
  adoptTryOut,
  duplicateTryOut,
  keepAsTryOut,
  partsOfTryOut,
  removeTryOut,
  renameTryOut,
  setTryOutNote,
  shownTryOut,
  showTryOut,
  stepTryOut,
  tryOutsOf,
} from '../../src/design/tryOuts';
import { seeded } from '../support/seeded';
import { designOf, partOf } from './designs';

/**
 * The document leaves the parts of the variant on the stage out of its entry. The model here does not: every variant
 * holds its own parts and one is pointed at. Both must tell the same after any walk (brute force, derived).
 */
interface Variant {
  id: string;
  name: string;
  note: string;
  adopted: boolean;
  parts: readonly Part[];
}
interface Model {
  variants: Variant[];
  shown: number;
}

function told(design: Design): Model {
  const variants = tryOutsOf(design).map(({ id, name, note = '', adopted = false }) => ({
    id,
    name,
    note,
    adopted,
    parts: partsOfTryOut(design, id),
  }));
  return { variants, shown: tryOutsOf(design).findIndex((one) => one.parts === undefined) };
}

const block = (n: number): Part[] => [partOf('block', `block ${n}`, { sizeMm: [n + 1, 2, 3] })];
const base = designOf(block(0));
const names = (design: Design) => tryOutsOf(design).map((one) => one.name);

describe('a first try-out', () => {
  it('kept: the head as it was stays aside, and its copy is on the stage', () => {
    const design = keepAsTryOut(base, 'Longer bolt');
    expect(names(design)).toEqual(['Head as it was', 'Longer bolt']);
    expect(shownTryOut(design)?.name).toBe('Longer bolt');
    expect(design.parts).toBe(base.parts);
    expect(partsOfTryOut(design, tryOutsOf(design)[0].id)).toBe(base.parts);
  });

  it('added from a search: the head stays on the stage, and what was added beside it', () => {
    const found = block(7);
    const design = addTryOut(base, found, 'Nut 2 mm out', 'from the search');
    expect(names(design)).toEqual(['Head as it was', 'Nut 2 mm out']);
    expect(shownTryOut(design)?.name).toBe('Head as it was');
    expect(design.parts).toBe(base.parts);
    expect(tryOutsOf(design)[1]).toMatchObject({ note: 'from the search', parts: found });
  });
});

describe('try-outs', () => {
  const three = addTryOut(keepAsTryOut(base, 'B'), block(3), 'C');
  const [a, b, c] = tryOutsOf(three).map((one) => one.id);

  it('shown and shown back are the design that was, and one on the stage shown again is the same object', () => {
    expect(showTryOut(showTryOut(three, c), b)).toEqual(three);
    expect(showTryOut(three, b)).toBe(three);
  });

  it('stepped through come round to where they began, and back', () => {
    expect(shownTryOut(stepTryOut(three, 1))?.id).toBe(c);
    expect(shownTryOut(stepTryOut(three, -1))?.id).toBe(a);
    expect(stepTryOut(stepTryOut(stepTryOut(three, 1), 1), 1)).toEqual(three);
    expect(stepTryOut(base, 1)).toBe(base);
  });

  it('have one adopted at most, and it is shown', () => {
    const design = adoptTryOut(adoptTryOut(three, a), c);
    expect(tryOutsOf(design).map((one) => one.adopted)).toEqual([undefined, undefined, true]);
    expect(shownTryOut(design)?.id).toBe(c);
    expect(adoptTryOut(design, c)).toBe(design);
  });

  it('taken away from the stage give way to the next, the last to the one before, the only one leaves its parts', () => {
    const next = removeTryOut(three, b);
    expect([names(next), shownTryOut(next)?.id]).toEqual([['Head as it was', 'C'], c]);
    expect(next.parts).toBe(partsOfTryOut(three, c));
    const before = removeTryOut(next, c);
    expect([names(before), shownTryOut(before)?.id]).toEqual([['Head as it was'], a]);
    const none = removeTryOut(before, a);
    expect(none).not.toHaveProperty('tryOuts');
    expect(none.parts).toBe(base.parts);
  });

  it('duplicated lie beside the original, under a fresh name, with its note, not adopted', () => {
    const noted = setTryOutNote(adoptTryOut(three, b), b, 'tight');
    const design = duplicateTryOut(noted, b);
    expect(names(design)).toEqual(['Head as it was', 'B', 'B (2)', 'C']);
    const copy = tryOutsOf(design)[2];
    expect(copy).toEqual({ id: copy.id, name: 'B (2)', note: 'tight', parts: three.parts });
    const long = renameTryOut(three, b, 'x'.repeat(MAX_NAME));
    expect(tryOutsOf(duplicateTryOut(long, b))[2].name.length).toBe(MAX_NAME);
  });

  it('of an unknown id are a fault of the program', () => {
    expect(() => showTryOut(three, 'nobody')).toThrow(/nobody/);
    expect(() => removeTryOut(base, a)).toThrow(RangeError);
  });

  it('lose no part and mix up none in ten thousand random steps', () => {
    for (let seed = 1; seed <= 20; seed++) walk(seed, 500);
  });
});

function walk(seed: number, steps: number): void {
  const random = seeded(seed);
  let design: Design = base;
  let model: Model = { variants: [], shown: -1 };
  let stage: readonly Part[] = base.parts;
  let fresh = 1;

  /** The same work in the plain model; ids and names are taken over, they are chosen freely. */
  function mirror(change: (next: Model) => void, next: Design): void {
    model = { variants: model.variants.map((one) => ({ ...one })), shown: model.shown };
    change(model);
    design = next;
    tryOutsOf(design).forEach(({ id, name }, i) => {
      const one = model.variants[i];
      if (one.id === '') Object.assign(one, { id, name });
    });
    stage = model.variants[model.shown]?.parts ?? stage;
  }
  const entry = (parts: readonly Part[], note = ''): Variant => {
    return { id: '', name: '', note, adopted: false, parts };
  };
  const begin = (next: Model) => {
    if (next.variants.length > 0) return;
    next.variants.push(entry(stage));
    next.shown = 0;
  };

  for (let step = 0; step < steps; step++) {
    const count = model.variants.length;
    const at = random.whole(0, Math.max(0, count - 1));
    const id = model.variants[at]?.id ?? '';
    const act = count === 0 ? random.whole(0, 2) : random.whole(0, 8);
    if (act === 0 && count < 12) {
      mirror(
        (next) => {
          begin(next);
          next.variants.splice(next.shown + 1, 0, entry(stage));
          next.shown++;
        },
        keepAsTryOut(design, `kept ${step}`),
      );
    } else if (act === 1 && count < 12) {
      const parts = block(fresh++);
      mirror(
        (next) => {
          begin(next);
          next.variants.push(entry(parts, 'found'));
        },
        addTryOut(design, parts, 'found', 'found'),
      );
    } else if (act === 2) {
      // A part is changed on the stage.
      const parts = block(fresh++);
      if (count === 0) stage = parts;
      mirror(
        (next) => {
          if (next.shown >= 0) next.variants[next.shown].parts = parts;
        },
        { ...design, parts },
      );
    } else if (act === 3) {
      mirror((next) => void (next.shown = at), showTryOut(design, id));
    } else if (act === 4) {
      mirror(
        (next) => {
          next.shown = at;
          for (const one of next.variants) one.adopted = one.id === id;
        },
        adoptTryOut(design, id),
      );
    } else if (act === 5) {
      mirror(
        (next) => {
          const { note, parts } = next.variants[at];
          next.variants.splice(at + 1, 0, entry(parts, note));
          if (next.shown > at) next.shown++;
        },
        duplicateTryOut(design, id),
      );
    } else if (act === 6) {
      mirror(
        (next) => {
          next.variants.splice(at, 1);
          if (next.shown > at || next.shown === next.variants.length) next.shown--;
        },
        removeTryOut(design, id),
      );
    } else if (act === 7) {
      const way = random.pick([1, -1] as const);
      mirror(
        (next) => {
          next.shown = (next.shown + way + count) % count;
        },
        stepTryOut(design, way),
      );
    } else if (act === 8) {
      mirror(
        (next) => {
          next.variants[at].note = 'noted';
          next.variants[at].name = `named ${step}`;
        },
        renameTryOut(setTryOutNote(design, id, 'noted'), id, `named ${step}`),
      );
    }
    expect(told(design)).toEqual(model);
    expect(design.parts).toBe(stage);
    const { variants } = model;
    expect(new Set(variants.map((one) => one.id)).size).toBe(variants.length);
  }
}

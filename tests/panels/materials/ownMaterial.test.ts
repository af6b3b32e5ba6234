import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { materialsOf } from '../../../src/design/resolve';
import { searchMaterials } from '../../../src/panels/materials/materialSearch';
import {
  type DraftKey,
  draftOf,
  type MaterialDraft,
  usersOf,
  withDraft,
} from '../../../src/panels/materials/ownMaterial';
import { MATERIALS } from '../../../src/parts/materials';
import { createSession } from '../../../src/state/createSession';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const read = parseDesign(readFileSync(file, 'utf8'));
const demo = (read as { value: Design }).value;
const bolt = demo.parts.find((part) => part.kind === 'bolt') as Part;

function typed(texts: Partial<Record<DraftKey, string>>, id: string | null = null): MaterialDraft {
  return { id, texts: { ...draftOf(null).texts, ...texts } };
}
function made(own: Parameters<typeof withDraft>[0], draft: MaterialDraft) {
  const result = withDraft(own, draft);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('a material of the design\u2019s own', () => {
  it('is read from the form, units and all', () => {
    const { materials, id } = made(
      [],
      typed({ name: ' Our bar ', densityKgM3: '1.15 g/cm3', youngsModulusGPa: '3', note: 'dry' }),
    );
    expect(materials).toEqual([
      { id: 'our-bar', name: 'Our bar', densityKgM3: 1150, youngsModulusGPa: 3, note: 'dry' },
    ]);
    expect(id).toBe('our-bar');
  });

  it('takes no id of a table, nor that of another', () => {
    const [table] = MATERIALS;
    const first = made([], typed({ name: table.id, densityKgM3: '1' }));
    expect(first.id).not.toBe(table.id);
    const second = made(first.materials, typed({ name: `${table.id}.`, densityKgM3: '1' }));
    expect(new Set([table.id, first.id, second.id]).size).toBe(3);
    expect(made([], typed({ name: '\u4e2d', densityKgM3: '1' })).id).toBe('own');
  });

  it('is refused field by field, with the reason', () => {
    const result = withDraft(
      [],
      typed({ name: ' ', densityLowKgM3: 'abc', yieldStrengthMPa: '5 g' }),
    );
    expect(result.ok).toBe(false);
    expect(!result.ok && Object.keys(result.error).toSorted()).toEqual([
      'densityKgM3',
      'densityLowKgM3',
      'name',
      'yieldStrengthMPa',
    ]);
    const own = made([], typed({ name: 'Bar', densityKgM3: '1150' })).materials;
    const again = withDraft(own, typed({ name: 'Bar', densityKgM3: '1150' }));
    expect(!again.ok && again.error.name).toBeDefined();
  });

  it('comes back into the form as it was, and is changed in its place', () => {
    const own = made([], typed({ name: 'Bar', densityKgM3: '1150', note: 'dry' })).materials;
    const both = made(own, typed({ name: 'Rod', densityKgM3: '1200' })).materials;
    expect(made(both, draftOf(both[0])).materials).toEqual(both);
    const draft = draftOf(both[0]);
    const next = made(both, { ...draft, texts: { ...draft.texts, densityKgM3: '1160' } });
    expect(next.materials.map((one) => one.densityKgM3)).toEqual([1160, 1200]);
    expect(next.id).toBe(both[0].id);
  });

  it('gives a part its density, follows a change, and cannot go while it is in use', () => {
    const { actions, store, live } = createSession(demo, (callback) => callback());
    const { materials, id } = made([], typed({ name: 'Bar', densityKgM3: '1150' }));
    expect(actions.setOwnMaterials(materials).ok).toBe(true);
    expect(actions.setMaterial(bolt.id, 'densityKgM3', id).ok).toBe(true);
    const density = () => live.model.placed(bolt.id)?.values.densityKgM3;
    expect(density()).toBe(1150);
    actions.setOwnMaterials(
      made(materials, typed({ name: 'Bar', densityKgM3: '1170' }, id)).materials,
    );
    expect(density()).toBe(1170);
    expect(usersOf(store.getState().design.parts, id).map((part) => part.id)).toEqual([bolt.id]);
    expect(actions.setOwnMaterials([]).ok).toBe(false);
    expect(materialsOf(store.getState().design)).toHaveLength(1);
    expect(actions.setMaterial(bolt.id, 'densityKgM3', null).ok).toBe(true);
    expect(density()).toBe(1170);
    expect(actions.setOwnMaterials([]).ok).toBe(true);
  });

  it('is refused by the design where its range does not hold it, and nothing is written', () => {
    const { actions, store } = createSession(demo, (callback) => callback());
    const draft = typed({ name: 'Bar', densityKgM3: '1150', densityLowKgM3: '1200' });
    const outcome = actions.setOwnMaterials(made([], draft).materials);
    expect(!outcome.ok && outcome.error.path).toBe('materials[0].densityLowKgM3');
    expect(store.getState().design).toBe(demo);
  });
});

describe('the search of the materials', () => {
  it('finds by the beginnings of words of name and heading, in any order', () => {
    expect(searchMaterials([], '')).toHaveLength(MATERIALS.length);
    const nylon = searchMaterials([], 'glass nyl').map(({ material }) => material.id);
    expect(nylon).toContain('nylon-pa66-gf30');
    expect(nylon).not.toContain('nylon');
    const foams = searchMaterials([], 'FOAM');
    expect(foams.length).toBeGreaterThanOrEqual(
      MATERIALS.filter((one) => one.group === 'foam').length,
    );
    expect(searchMaterials([], 'zzz')).toEqual([]);
  });

  it('has the design\u2019s own first, once, in the place of a table\u2019s of the same id', () => {
    const own = [{ id: 'nylon', name: 'Nylon as weighed', densityKgM3: 1145 }];
    const hits = searchMaterials(own, 'nylon');
    expect(hits[0]).toMatchObject({ own: true, material: own[0] });
    expect(hits.filter(({ material }) => material.id === 'nylon')).toHaveLength(1);
  });
});

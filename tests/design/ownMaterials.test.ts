import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/design/design';
import { MAX_ID } from '../../src/design/limits';
import { adoptPart, ownMaterialsOf } from '../../src/design/ownMaterials';
import { NO_MATERIALS, valuesOf } from '../../src/design/resolve';
import { weighPart } from '../../src/design/weighPart';
import { createMoments, M } from '../../src/engine/mass/moments';
import { MATERIALS } from '../../src/parts/materials';
import type { OwnMaterial } from '../../src/parts/materials/material';
import { partOf } from './designs';

const bar: OwnMaterial = { id: 'my-bar', name: 'The bar by the lathe', densityKgM3: 7790 };
const foam: OwnMaterial = { id: 'my-foam', name: 'Foam', densityKgM3: 52 };
const [steel] = MATERIALS;

/** A part without a density of its own: the material gives it. */
function madeOf(material: string): Part {
  const { densityKgM3: _, ...rest } = partOf('cylinder', 'c') as unknown as Record<string, unknown>;
  return { ...rest, material } as unknown as Part;
}
function massOf(part: Part, materials = NO_MATERIALS): number {
  const out = createMoments();
  const weighed = weighPart(part, valuesOf(part, materials), out);
  if (!weighed.ok) throw new Error(weighed.error.path);
  return out[M];
}
const materialOf = (part: Part) => (part as unknown as { material: string }).material;

describe('the own materials of a part', () => {
  it('are those it names, and no others; a table material needs no company', () => {
    expect(ownMaterialsOf(madeOf('my-bar'), [foam, bar])).toEqual([bar]);
    expect(ownMaterialsOf(madeOf(steel.id), [foam, bar])).toEqual([]);
    expect(ownMaterialsOf(partOf('cylinder', 'c'), [foam, bar])).toEqual([]);
  });

  it('come along even where a written density overrides them, or the part could not be opened', () => {
    const part = { ...madeOf('my-bar'), densityKgM3: 7000 } as Part;
    expect(ownMaterialsOf(part, [bar])).toEqual([bar]);
  });
});

describe('a part that comes into another design', () => {
  it('brings its material, and weighs what it weighed', () => {
    const adopted = adoptPart({ part: madeOf('my-bar'), materials: [bar] }, [foam]);
    expect(adopted.materials).toEqual([foam, bar]);
    expect(massOf(adopted.part, adopted.materials)).toBe(massOf(madeOf('my-bar'), [bar]));
  });

  it('shares a material of the same id and figures, under the name it has there', () => {
    const present = [{ ...bar, name: 'Bar' }];
    const part = madeOf('my-bar');
    const adopted = adoptPart({ part, materials: [bar] }, present);
    expect(adopted.materials).toBe(present);
    expect(adopted.part).toBe(part);
  });

  it('gets a fresh id where the same id means other figures, and both keep their weight', () => {
    const present = [{ ...bar, densityKgM3: 1000 }];
    const adopted = adoptPart({ part: madeOf('my-bar'), materials: [bar] }, present);
    expect(materialOf(adopted.part)).toBe('my-bar-2');
    expect(adopted.materials[0]).toBe(present[0]);
    expect(adopted.materials[1]).toMatchObject({ id: 'my-bar-2', densityKgM3: 7790 });
    // Same volume: masses are as the densities, to the rounding of a product.
    const ratio = massOf(adopted.part, adopted.materials) / massOf(madeOf('my-bar'), present);
    expect(ratio).toBeCloseTo(7.79, 12);
  });

  it('finds its fresh id again when it comes a second time', () => {
    const present = [{ ...bar, densityKgM3: 1000 }];
    const first = adoptPart({ part: madeOf('my-bar'), materials: [bar] }, present);
    const second = adoptPart({ part: madeOf('my-bar'), materials: [bar] }, first.materials);
    expect(second.materials).toBe(first.materials);
    expect(materialOf(second.part)).toBe('my-bar-2');
  });

  it('never puts its own figures in place of a table material that others use', () => {
    const heavier = { id: steel.id, name: 'Weighed', densityKgM3: steel.densityKgM3 + 100 };
    const adopted = adoptPart({ part: madeOf(steel.id), materials: [heavier] }, NO_MATERIALS);
    expect(materialOf(adopted.part)).toBe(`${steel.id}-2`);
    expect(massOf(madeOf(steel.id), adopted.materials)).toBe(massOf(madeOf(steel.id)));
    expect(massOf(adopted.part, adopted.materials)).toBe(massOf(madeOf(steel.id), [heavier]));
  });

  it('of a table material keeps the table figures where the design has its own under that id', () => {
    const present = [{ id: steel.id, name: 'Weighed', densityKgM3: steel.densityKgM3 + 100 }];
    const adopted = adoptPart({ part: madeOf(steel.id), materials: NO_MATERIALS }, present);
    expect(massOf(adopted.part, adopted.materials)).toBe(massOf(madeOf(steel.id)));
    expect(Object.keys(adopted.materials[1])).not.toContain('group');
    expect(Object.keys(adopted.materials[1])).not.toContain('fromMemory');
  });

  it('with two materials brings both, and rewrites each by itself', () => {
    const {
      skinDensityKgM3: _s,
      coreDensityKgM3: _c,
      ...rest
    } = partOf('blade', 'b') as unknown as Record<string, unknown>;
    const part = { ...rest, skinMaterial: 'my-bar', coreMaterial: 'my-foam' } as unknown as Part;
    const adopted = adoptPart({ part, materials: [bar, foam] }, [{ ...foam, densityKgM3: 9 }]);
    expect(adopted.part).toMatchObject({ skinMaterial: 'my-bar', coreMaterial: 'my-foam-2' });
    expect(adopted.materials.map((one) => one.id)).toEqual(['my-foam', 'my-bar', 'my-foam-2']);
  });

  it('keeps a fresh id within the length that a file may have', () => {
    const long = { ...bar, id: 'x'.repeat(MAX_ID) };
    const present = [{ ...long, densityKgM3: 1 }];
    const adopted = adoptPart({ part: madeOf(long.id), materials: [long] }, present);
    expect(materialOf(adopted.part)).toBe(`${'x'.repeat(MAX_ID - 2)}-2`);
  });

  it('with a name that leads nowhere is left to the checks', () => {
    const part = madeOf('nobody-knows');
    expect(adoptPart({ part, materials: [] }, [bar])).toEqual({ part, materials: [bar] });
  });
});

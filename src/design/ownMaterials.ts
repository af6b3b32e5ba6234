import { findMaterial } from '../parts/materials';
import type { Material, OwnMaterial } from '../parts/materials/material';
import { partType } from '../parts/registry';
import type { Part } from './design';
import { MATERIAL_LIMITS, MAX_ID, MAX_NAME } from './limits';
import { type Materials, materialKeyOf } from './resolve';
import { valueOf } from './values';

/**
 * A part on its way from one design to another (clipboard, shelf) with what it needs of the first: the own materials
 * it names. A material of the tables needs no company.
 */
export interface CarriedPart {
  readonly part: Part;
  readonly materials: Materials;
}

/** The design's own materials that a part names, in the design's order; also one that a written density overrides. */
export function ownMaterialsOf(part: Part, materials: Materials): Materials {
  const named = new Set(materialKeys(part).map((key) => valueOf(part, key)));
  return materials.filter((one) => named.has(one.id));
}

/**
 * A carried part made at home in a design with the materials `present`, and that design's materials with what had to
 * be added. The part weighs what it weighed: a name that means the same figures here as there is shared; one that
 * means others, be it in the design or in the tables, gets a fresh id, to which the part is rewritten. A name that
 * leads nowhere is left for the checks. `present` itself comes back where nothing is added.
 */
export function adoptPart({ part, materials }: CarriedPart, present: Materials): CarriedPart {
  let home = present;
  const ids = new Map<string, string>();
  for (const key of materialKeys(part)) {
    const id = valueOf(part, key) as string;
    const brought = findMaterial(id, materials);
    if (!brought || ids.has(id)) continue;
    const settled = settle(brought, home);
    ids.set(id, settled.id);
    home = settled.materials;
  }
  const rewritten = materialKeys(part)
    .map((key) => [key, ids.get(valueOf(part, key) as string)] as const)
    .filter(([key, id]) => id !== undefined && id !== valueOf(part, key));
  const adopted = rewritten.length > 0 ? { ...part, ...Object.fromEntries(rewritten) } : part;
  return { part: adopted as Part, materials: home };
}

/** The id under which a design has, or now gets, a material with these figures. */
function settle(
  brought: Material | OwnMaterial,
  present: Materials,
): { readonly id: string; readonly materials: Materials } {
  for (let n = 1; ; n++) {
    const id = n === 1 ? brought.id : numbered(brought.id, n);
    const here = findMaterial(id, present);
    if (here && sameFigures(here, brought)) return { id, materials: present };
    if (!here) return { id, materials: [...present, ownMaterial(brought, id, n)] };
  }
}

function numbered(id: string, n: number): string {
  const ending = `-${n}`;
  return id.slice(0, MAX_ID - ending.length) + ending;
}

/** As a design's list holds it: no group, no word of whether it was read or recalled. */
function ownMaterial(from: Material | OwnMaterial, id: string, n: number): OwnMaterial {
  const { group: _, fromMemory: __, ...figures } = from as Material;
  const ending = n === 1 ? '' : ` (${n})`;
  return { ...figures, id, name: from.name.slice(0, MAX_NAME - ending.length) + ending };
}

/** Whether two materials have the same numbers, whatever they are called. */
function sameFigures(a: Material | OwnMaterial, b: Material | OwnMaterial): boolean {
  const names = Object.keys(MATERIAL_LIMITS) as (keyof typeof MATERIAL_LIMITS)[];
  return names.every((name) => a[name] === b[name]);
}

/** The part's keys that name a material. */
function materialKeys(part: Part): string[] {
  const keys = Object.values(partType(part.kind).parameters).map(materialKeyOf);
  return [...new Set(keys)].filter(
    (key) => key !== undefined && valueOf(part, key) !== undefined,
  ) as string[];
}

import { findMaterial } from '../../parts/materials';
import { partType } from '../../parts/registry';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';
import { materialNamed } from '../resolve';

/**
 * Yield strength of what a part is made of, Pa, or its tensile strength where no yield is known; null where the part
 * names no material or the table has neither.
 */
export function materialStrength(
  { part }: PlacedPart,
  model: HeadModel,
): { readonly pascal: number; readonly source: string } | null {
  for (const parameter of Object.values(partType(part.kind).parameters)) {
    const name = materialNamed(part, parameter);
    if (name === undefined) continue;
    const material = findMaterial(name, model.ownMaterials);
    const strength = material?.yieldStrengthMPa ?? material?.tensileStrengthMPa;
    if (material && strength !== undefined) {
      return { pascal: strength * 1e6, source: material.name };
    }
  }
  return null;
}

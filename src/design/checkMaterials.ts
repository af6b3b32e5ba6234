import type { OwnMaterial } from '../parts/materials/material';
import { checkNumbers } from './checkMeasured';
import { type DesignFault, fault } from './fault';
import { MATERIAL_LIMITS, MAX_OWN_MATERIALS } from './limits';
import type { Materials } from './resolve';

/** The first fault of a design's own materials, or null: numbers, repeated ids, a range that does not hold the density. */
export function checkOwnMaterials(materials: Materials): DesignFault | null {
  if (materials.length > MAX_OWN_MATERIALS) {
    return fault('materials', {
      code: 'tooMany',
      count: materials.length,
      limit: MAX_OWN_MATERIALS,
    });
  }
  const seen = new Map<string, number>();
  for (let i = 0; i < materials.length; i++) {
    const path = `materials[${i}]`;
    const first = seen.get(materials[i].id);
    if (first !== undefined) {
      return fault(`${path}.id`, { code: 'repeatedMaterial', id: materials[i].id, first });
    }
    seen.set(materials[i].id, i);
    const found =
      checkNumbers(materials[i], MATERIAL_LIMITS, path) ?? checkRange(materials[i], path);
    if (found) return found;
  }
  return null;
}

function checkRange(material: OwnMaterial, path: string): DesignFault | null {
  const { densityKgM3: value, densityLowKgM3: low, densityHighKgM3: high } = material;
  const unit = 'kg/m3';
  if (low !== undefined && low > value) {
    return fault(`${path}.densityLowKgM3`, { code: 'tooLarge', value: low, limit: value, unit });
  }
  if (high !== undefined && high < value) {
    return fault(`${path}.densityHighKgM3`, { code: 'tooSmall', value: high, limit: value, unit });
  }
  return null;
}

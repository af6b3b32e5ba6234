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

/** Balsa is sold from a quarter of its usual density to twice it (common practice). */
const WIDEST_RANGE = 5;

function checkRange(material: OwnMaterial, path: string): DesignFault | null {
  const { densityKgM3: value, densityLowKgM3: low, densityHighKgM3: high } = material;
  const unit = 'kg/m3';
  // A range wider than this is a slip of the unit: 8.7 for 8700.
  const least = value / WIDEST_RANGE;
  const most = value * WIDEST_RANGE;
  if (low !== undefined && low < least) {
    return fault(`${path}.densityLowKgM3`, { code: 'tooSmall', value: low, limit: least, unit });
  }
  if (high !== undefined && high > most) {
    return fault(`${path}.densityHighKgM3`, { code: 'tooLarge', value: high, limit: most, unit });
  }
  if (low !== undefined && low > value) {
    return fault(`${path}.densityLowKgM3`, { code: 'tooLarge', value: low, limit: value, unit });
  }
  if (high !== undefined && high < value) {
    return fault(`${path}.densityHighKgM3`, { code: 'tooSmall', value: high, limit: value, unit });
  }
  return null;
}

import { parameterUnit } from '../parts/contract';
import { findMaterial } from '../parts/materials';
import { partType } from '../parts/registry';
import type { Part } from './design';
import { type Materials, materialNamed, valueOrigin } from './resolve';
import type { PartValues } from './values';

/** The range that a material's density lies in as bought, kg/m3. */
export interface DensityRange {
  /** The parameter that takes its density from the material. */
  readonly name: string;
  readonly material: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Standard uncertainty: uniform within the range, half of it over sqrt(3) (JCGM 100, GUM, 4.3.7). */
  readonly uncertainty: number;
}

/** Names of a part's densities. */
export function densitiesOf(part: Part): readonly string[] {
  const { parameters } = partType(part.kind);
  return Object.keys(parameters).filter((name) => parameterUnit(parameters[name]) === 'kg/m3');
}

/**
 * Ranges of those densities that come from a material which has one. An end that is not known is the density itself. A
 * density that was typed is taken at its word.
 */
export function densityRanges(
  part: Part,
  values: PartValues,
  materials: Materials,
): readonly DensityRange[] {
  const { parameters } = partType(part.kind);
  return densitiesOf(part).flatMap((name) => {
    const id = materialNamed(part, parameters[name]);
    if (id === undefined || valueOrigin(part, name) !== 'material') return [];
    const material = findMaterial(id, materials);
    if (!material) return [];
    const value = values[name] as number;
    const { densityLowKgM3: low = value, densityHighKgM3: high = value } = material;
    if (!(high > low)) return [];
    return [{ name, material: id, value, low, high, uncertainty: (high - low) / 2 / Math.sqrt(3) }];
  });
}

import { FOAMS } from './foams';
import { HEAVY_METALS } from './heavyMetals';
import { LAMINATES } from './laminates';
import type { Material, OwnMaterial } from './material';
import { METALS } from './metals';
import { PLASTICS } from './plastics';
import { WOODS } from './woods';

/** Every material of the tables, in the order in which a picker lists them; groups stand together. */
export const MATERIALS: readonly Material[] = [
  ...METALS,
  ...HEAVY_METALS,
  ...PLASTICS,
  ...LAMINATES,
  ...WOODS,
  ...FOAMS,
];

const byId: ReadonlyMap<string, Material> = new Map(MATERIALS.map((one) => [one.id, one]));

/**
 * The material that `id` names; undefined where there is none. A design's own list comes first, so a maker who has
 * weighed a bar can put its density in place of the table's under the same id.
 */
export function findMaterial(
  id: string,
  own: readonly OwnMaterial[],
): Material | OwnMaterial | undefined {
  return own.find((one) => one.id === id) ?? byId.get(id);
}

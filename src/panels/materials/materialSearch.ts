import type { Materials } from '../../design/resolve';
import { type MessageKey, t } from '../../messages';
import { MATERIALS } from '../../parts/materials';
import type { Material, OwnMaterial } from '../../parts/materials/material';
import { materialName } from '../../state/words/materialText';

export interface MaterialHit {
  readonly material: Material | OwnMaterial;
  /** Heading in words. */
  readonly group: string;
  readonly own: boolean;
}

/**
 * Materials all of whose words are found: each word of `query` begins a word of the name, the id or the heading. The
 * design's own come first and take the place of a table's of the same id; then as the tables have them.
 */
export function searchMaterials(own: Materials, query: string): MaterialHit[] {
  const words = wordsOf(query);
  const taken = new Set(own.map((one) => one.id));
  const hits: MaterialHit[] = [
    ...own.map((material) => ({ material, group: t('materials.groupOwn'), own: true })),
    ...MATERIALS.filter((one) => !taken.has(one.id)).map((material) => ({
      material,
      group: t(`materials.group.${material.group}` as MessageKey),
      own: false,
    })),
  ];
  return hits.filter(({ material, group }) => {
    const known = wordsOf(
      `${materialName(material.id, own)} ${material.name} ${material.id} ${group}`,
    );
    return words.every((word) => known.some((one) => one.startsWith(word)));
  });
}

function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}.%]+/u)
    .filter((word) => word !== '');
}

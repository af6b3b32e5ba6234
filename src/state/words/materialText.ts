import type { Part } from '../../design/design';
import { type Materials, materialNamed } from '../../design/resolve';
import { valueOf } from '../../design/values';
import { type MessageKey, partText, t } from '../../messages';
import { phrase } from '../../messages/phrases';
import { findMaterial } from '../../parts/materials';
import type { Material, OwnMaterial } from '../../parts/materials/material';
import { partType } from '../../parts/registry';
import { METRIC_UNITS } from '../settings';
import { type FieldUnit, shownText, shownUnit } from '../shownUnits';

/** What gives a part's density: the material's name, said when a number beside it wins, or "Own density". */
export function materialText(part: Part, density: string, materials: Materials): string {
  const id = materialNamed(part, partType(part.kind).parameters[density]);
  if (id === undefined) return t('materials.own');
  const name = materialName(id, materials);
  return valueOf(part, density) === undefined ? name : t('materials.overridden', { name });
}

/** A material of the design by its own name, one of the tables by the language's; an unknown one by what names it. */
export function materialName(id: string, materials: Materials): string {
  const own = materials.find((one) => one.id === id);
  return own ? own.name : partText(`material.${id}`, findMaterial(id, materials)?.name ?? id);
}

/** "7800 to 7850 kg/m3"; null where no range is known. */
export function rangeText({
  densityLowKgM3: low,
  densityHighKgM3: high,
}: Pick<Material, 'densityLowKgM3' | 'densityHighKgM3'>): string | null {
  if (low === undefined && high === undefined) return null;
  if (low === undefined)
    return t('materials.rangeTo', { high: materialNumber(high ?? 0, 'kg/m3') });
  if (high === undefined) return t('materials.rangeFrom', { low: materialNumber(low, 'kg/m3') });
  return t('materials.rangeText', { low, high: materialNumber(high, 'kg/m3') });
}

/** Densities and strengths have one unit whatever the page shows. */
export function materialNumber(value: number, unit: FieldUnit): string {
  return shownText(value, shownUnit(unit, METRIC_UNITS));
}

/** What is known of a material beside its density, in words, as pairs. */
export function materialFacts(material: Material | OwnMaterial): [MessageKey, string][] {
  const facts: [MessageKey, string | null | undefined][] = [
    ['materials.density', materialNumber(material.densityKgM3, 'kg/m3')],
    ['materials.range', rangeText(material)],
    ['materials.tensile', optional(material.tensileStrengthMPa, 'MPa')],
    ['materials.yield', optional(material.yieldStrengthMPa, 'MPa')],
    ['materials.modulus', optional(material.youngsModulusGPa, 'GPa')],
    ['materials.source', material.source ? phrase(material.source) : t('materials.sourceOwn')],
    ['materials.note', material.note && phrase(material.note)],
  ];
  return facts.flatMap(([key, text]) => (text ? [[key, text] as [MessageKey, string]] : []));
}

function optional(value: number | undefined, unit: FieldUnit): string | null {
  return value === undefined ? null : materialNumber(value, unit);
}

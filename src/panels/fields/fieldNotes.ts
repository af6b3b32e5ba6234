import type { Part } from '../../design/design';
import { type Materials, materialNamed } from '../../design/resolve';
import { valueOf } from '../../design/values';
import { t } from '../../messages';
import { findMaterial } from '../../parts/materials';
import { partType } from '../../parts/registry';
import type { Refusal } from '../../state/refusal';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import { lengthText } from '../../state/words/catalogueText';
import { materialName } from '../../state/words/materialText';
import { deviationOf, nearestListed, type OddLength, oddLength } from '../catalogue/leftStandard';
import { oddLengthText, valueText } from '../catalogue/standardText';

/**
 * What a part's own value stands in the place of: the standard's ("standard 3 mm"), a listed length, or a material's
 * density ("own value instead of Steel 7850 kg/m3"). Null where it stands in no other's place.
 */
export function noteText(
  part: Part,
  field: string,
  materials: Materials,
  units: DisplayUnits,
): string | null {
  const standard = standardText(part, field, units);
  if (standard !== null) return t('fields.standard', { value: standard });
  const odd = oddLengthOf(part, field);
  if (odd) return oddLengthText(odd);
  const material = materialValue(part, field, materials, units);
  return material && t('materials.instead', material);
}

/** What `resetField` does, in words. */
export function resetText(
  part: Part,
  field: string,
  materials: Materials,
  units: DisplayUnits,
): string {
  const standard = standardText(part, field, units);
  if (standard !== null) return t('fields.backToStandard', { value: standard });
  const odd = oddLengthOf(part, field);
  const nearest = odd && nearestListed(odd);
  if (odd && nearest) return t('fields.setTo', { value: lengthText(odd.size, nearest) });
  const material = materialValue(part, field, materials, units);
  return material ? t('materials.backTo', material) : '';
}

/** Lets go of a written value; an odd length goes to the nearest listed one. */
export function resetField({ actions }: Session, part: Part, field: string): Refusal | null {
  const written = valueOf(part, field) !== undefined;
  const odd = written ? null : oddLengthOf(part, field);
  const nearest = odd && nearestListed(odd);
  const outcome = nearest
    ? actions.setParameter(part.id, field, nearest)
    : actions.clearValue(part.id, field);
  return outcome.ok ? null : outcome.error;
}

function standardText(part: Part, field: string, units: DisplayUnits): string | null {
  const left = deviationOf(part, field);
  return left && valueText(part, field, left.standard, units);
}

function oddLengthOf(part: Part, field: string): OddLength | null {
  const odd = oddLength(part);
  return odd?.field === field ? odd : null;
}

/** The material that a written density stands in the place of. */
function materialValue(part: Part, field: string, materials: Materials, units: DisplayUnits) {
  if (valueOf(part, field) === undefined) return null;
  const id = materialNamed(part, partType(part.kind).parameters[field]);
  const material = id === undefined ? undefined : findMaterial(id, materials);
  if (!material || material.densityKgM3 === valueOf(part, field)) return null;
  return {
    name: materialName(material.id, materials),
    density: valueText(part, field, material.densityKgM3, units),
  };
}

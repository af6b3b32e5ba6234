import type { Part } from '../../design/design';
import { MATERIAL_LIMITS, MAX_ID, MAX_NAME, MAX_NOTE } from '../../design/limits';
import { type Materials, materialNamed } from '../../design/resolve';
import { fail, type Result, succeed } from '../../engine/result';
import { type MessageKey, t } from '../../messages';
import { findMaterial } from '../../parts/materials';
import type { OwnMaterial } from '../../parts/materials/material';
import { partType } from '../../parts/registry';
import { METRIC_UNITS } from '../../state/settings';
import { type FieldUnit, shownNumber, shownUnit } from '../../state/shownUnits';
import { parseQuantity } from '../../state/typed/parseQuantity';

/** A material of the design's own while it is typed: texts as they stand in the form. */
export type NumberKey = keyof typeof MATERIAL_LIMITS;
export type DraftKey = NumberKey | 'name' | 'note';
export interface MaterialDraft {
  /** The material being changed; null for a new one. */
  readonly id: string | null;
  readonly texts: Readonly<Record<DraftKey, string>>;
}

/** The form's numbers in order, with the words beside them. */
export const DRAFT_NUMBERS: readonly (readonly [NumberKey, MessageKey, FieldUnit])[] = [
  ['densityKgM3', 'materials.density', 'kg/m3'],
  ['densityLowKgM3', 'materials.low', 'kg/m3'],
  ['densityHighKgM3', 'materials.high', 'kg/m3'],
  ['tensileStrengthMPa', 'materials.tensile', 'MPa'],
  ['yieldStrengthMPa', 'materials.yield', 'MPa'],
  ['youngsModulusGPa', 'materials.modulus', 'GPa'],
];

export function draftOf(material: OwnMaterial | null): MaterialDraft {
  const numbers = DRAFT_NUMBERS.map(([key, , unit]) => {
    const value = material?.[key];
    return [key, value === undefined ? '' : shownNumber(value, shownUnit(unit, METRIC_UNITS))];
  });
  const texts = { name: material?.name ?? '', note: material?.note ?? '' };
  return {
    id: material?.id ?? null,
    texts: { ...texts, ...Object.fromEntries(numbers) } as MaterialDraft['texts'],
  };
}

/** What is wrong with a draft, by field. */
export type DraftFaults = Partial<Record<DraftKey, string>>;

/**
 * The design's own materials with the draft put in: in its old place, or at the end under a fresh id. Limits and the
 * order of the range are left to the design's own check; what that refuses comes back from `setOwnMaterials`.
 */
export function withDraft(
  own: Materials,
  draft: MaterialDraft,
): Result<{ readonly materials: Materials; readonly id: string }, DraftFaults> {
  const faults: DraftFaults = {};
  const name = draft.texts.name.trim();
  const note = draft.texts.note.trim();
  const nameFault = faultOfName(own, draft.id, name);
  if (nameFault !== null) faults.name = nameFault;
  if (note.length > MAX_NOTE) {
    faults.note = t('materials.noteLong', { length: note.length, limit: MAX_NOTE });
  }
  const numbers: Partial<Record<NumberKey, number>> = {};
  for (const [key, , unit] of DRAFT_NUMBERS) {
    const text = draft.texts[key].trim();
    if (text === '') {
      if (key === 'densityKgM3') faults[key] = t('materials.densityEmpty');
      continue;
    }
    const unitName = shownUnit(unit, METRIC_UNITS).name;
    const read = parseQuantity(text, unit, unitName);
    if (read.ok) numbers[key] = read.value;
    else faults[key] = t('materials.unread', { text: text.slice(0, 40), unit: unitName });
  }
  const { densityKgM3, ...others } = numbers;
  if (Object.keys(faults).length > 0 || densityKgM3 === undefined) return fail(faults);
  const old = own.find((one) => one.id === draft.id);
  const id = old?.id ?? freshMaterialId(name, own);
  const source = old?.source === undefined ? {} : { source: old.source };
  const material = { id, name, densityKgM3, ...others, ...source, ...(note ? { note } : {}) };
  const materials = old ? own.map((one) => (one === old ? material : one)) : [...own, material];
  return succeed({ materials, id });
}

function faultOfName(own: Materials, id: string | null, name: string): string | null {
  if (name === '') return t('materials.nameEmpty');
  if (name.length > MAX_NAME) {
    return t('materials.nameLong', { length: name.length, limit: MAX_NAME });
  }
  return own.some((one) => one.id !== id && one.name === name) ? t('materials.nameTaken') : null;
}

/** Small letters, digits and dashes from the name, and no id of a table or the design. */
function freshMaterialId(name: string, own: Materials): string {
  const stem =
    name
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '')
      .slice(0, MAX_ID - 8) || 'own';
  for (let n = 1; ; n++) {
    const id = n === 1 ? stem : `${stem}-${n}`;
    if (!findMaterial(id, own)) return id;
  }
}

/** Parts of which a density names the material. */
export function usersOf(parts: readonly Part[], id: string): Part[] {
  return parts.filter((part) =>
    Object.values(partType(part.kind).parameters).some((one) => materialNamed(part, one) === id),
  );
}

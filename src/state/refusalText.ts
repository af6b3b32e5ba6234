import type { Design, Part } from '../design/design';
import { faultMessage } from '../design/faultText';
import { SECTION_NAMES, SECTIONS, type SectionName } from '../design/sections';
import type { SectionField, SectionSet } from '../design/sections/section';
import { type MessageKey, partText, t } from '../messages';
import { phrase } from '../messages/phrases';
import { type Parameter, parameterUnit } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Refusal } from './refusal';
import type { DisplayUnits } from './settings';
import { type FieldUnit, limitText, shownUnit } from './shownUnits';

/**
 * A refusal in words: which field, and which limit, in the units on screen. `changed` is the part that was being
 * changed (null: the rotor); a field of another part is named with its part.
 */
export function refusalText(
  refusal: Refusal,
  design: Design,
  changed: string | null,
  units: DisplayUnits,
): string {
  const ownerId = refusal.part ?? changed;
  const owner = design.parts.find((part) => part.id === ownerId);
  const field = fieldLabel(owner, refusal.field);
  const label =
    owner && owner.id !== changed ? t('fields.ofPart', { part: owner.name, field }) : field;
  if (refusal.rule === 'unknownPart') return t('fields.unknownPart');
  if (refusal.rule === 'notAllowed') {
    const reason = refusal.fault ? faultMessage(refusal.fault.reason) : '';
    return t('fields.notAllowed', { field: label, reason });
  }
  if (refusal.fault?.reason.code === 'notWhole') return t('fields.notWhole', { field: label });
  if (refusal.limit === undefined) {
    return t(`fields.${refusal.rule}` as MessageKey, { field: label });
  }
  const unit = shownUnit(unitOf(owner, refusal.field), units);
  const limit = limitText(refusal.limit, unit);
  if (refusal.against === undefined) {
    return t(`fields.${refusal.rule}` as MessageKey, { field: label, limit });
  }
  const against = fieldLabel(owner, refusal.against);
  return t(`fields.${refusal.rule}Other` as MessageKey, { field: label, limit, against });
}

const PLACEMENT: Readonly<
  Record<string, { readonly label: MessageKey; readonly unit: FieldUnit }>
> = {
  positionMm: { label: 'fields.position', unit: 'mm' },
  rotationDeg: { label: 'fields.rotation', unit: 'deg' },
  offsetMm: { label: 'fields.offset', unit: 'mm' },
  turnDeg: { label: 'fields.turn', unit: 'deg' },
};

/** The label of a parameter, of the rotor's, or of a placement; what is none of these stands for itself. */
export function fieldLabel(part: Part | undefined, field: string): string {
  const parameter = parameterOf(part, field);
  if (part && parameter) return partText(`part.${part.kind}.${field}.label`, parameter.label);
  if (Object.hasOwn(PLACEMENT, field)) return t(PLACEMENT[field].label);
  const section = part ? undefined : sectionOf(field);
  if (section) return partText(`${section.name}.${field}.label`, section.field.label);
  return phrase(partText(`phrase.${field}`, field));
}

function unitOf(part: Part | undefined, field: string): FieldUnit {
  const parameter = parameterOf(part, field);
  if (parameter) return parameterUnit(parameter);
  if (Object.hasOwn(PLACEMENT, field)) return PLACEMENT[field].unit;
  const section = part ? undefined : sectionOf(field);
  return section?.field.type === 'number' ? section.field.unit : '1';
}

/** The section field of that name; no two sections share one. */
function sectionOf(
  name: string,
): { readonly name: SectionName; readonly field: SectionField } | undefined {
  for (const section of SECTION_NAMES) {
    const set: SectionSet = SECTIONS[section];
    if (Object.hasOwn(set, name)) return { name: section, field: set[name] };
  }
  return undefined;
}

function parameterOf(part: Part | undefined, field: string): Parameter | undefined {
  if (!part) return undefined;
  const { parameters } = partType(part.kind);
  return Object.hasOwn(parameters, field) ? parameters[field] : undefined;
}

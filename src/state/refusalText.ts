import type { Design, Part } from '../design/design';
import { faultMessage } from '../design/faultText';
import { ROTOR_PARAMETERS } from '../design/rotorRules';
import { type MessageKey, partText, t } from '../messages';
import { type Parameter, parameterUnit } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Refusal } from './refusal';
import type { DisplayUnits } from './settings';
import { type FieldUnit, shownText, shownUnit } from './shownUnits';

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
  const limit = shownText(Number(refusal.limit.toPrecision(6)), unit);
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
  if (!part && Object.hasOwn(ROTOR_PARAMETERS, field)) {
    const { label } = ROTOR_PARAMETERS[field as keyof typeof ROTOR_PARAMETERS];
    return partText(`rotor.${field}.label`, label);
  }
  return partText(`phrase.${field}`, field);
}

function unitOf(part: Part | undefined, field: string): FieldUnit {
  const parameter = parameterOf(part, field);
  if (parameter) return parameterUnit(parameter);
  if (Object.hasOwn(PLACEMENT, field)) return PLACEMENT[field].unit;
  if (!part && Object.hasOwn(ROTOR_PARAMETERS, field)) {
    return ROTOR_PARAMETERS[field as keyof typeof ROTOR_PARAMETERS].unit;
  }
  return '1';
}

function parameterOf(part: Part | undefined, field: string): Parameter | undefined {
  if (!part) return undefined;
  const { parameters } = partType(part.kind);
  return Object.hasOwn(parameters, field) ? parameters[field] : undefined;
}

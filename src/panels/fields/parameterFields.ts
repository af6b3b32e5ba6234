import type { Part } from '../../design/design';
import { materialKeyOf, materialsOf, valuesOf } from '../../design/resolve';
import { type PartValues, sameValue, valueOf } from '../../design/values';
import { partText, t } from '../../messages';
import {
  type ChoiceParameter,
  isUsed,
  type NumberParameter,
  type Parameter,
  type VectorParameter,
} from '../../parts/contract';
import { partType } from '../../parts/registry';
import { fieldLabel } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { materialText } from '../../state/words/materialText';
import {
  currentPart,
  type Field,
  type FieldNote,
  limitsOf,
  type MaterialField,
  refusalIn,
  vectorField,
} from './fieldModel';
import { noteText, resetField, resetText } from './fieldNotes';

/** The fields under one heading; those without a heading come first. */
export interface FieldSection {
  readonly group: string | null;
  readonly fields: readonly Field[];
  /** How many of its values are written in the part and are not the usual ones. */
  readonly changed: number;
}

/** A part's own parameters, in the order its type lists them; a material stands before the density that it gives. */
export function parameterFields(session: Session, part: Part): Field[] {
  return Object.entries(partType(part.kind).parameters).flatMap(([key, parameter]) =>
    fieldsOf(session, part, key, parameter),
  );
}

/** The same under their headings. */
export function parameterSections(session: Session, part: Part): FieldSection[] {
  const sections = new Map<string | null, { fields: Field[]; changed: number }>([
    [null, { fields: [], changed: 0 }],
  ]);
  for (const [key, parameter] of Object.entries(partType(part.kind).parameters)) {
    const group = parameter.group ?? null;
    const section = sections.get(group) ?? { fields: [], changed: 0 };
    section.fields.push(...fieldsOf(session, part, key, parameter));
    const counts = isUsed(parameter, currentValues(session, part));
    if (counts && isChanged(part, key, parameter)) section.changed++;
    sections.set(group, section);
  }
  return [...sections].map(([group, section]) => ({ group, ...section }));
}

function isChanged(part: Part, key: string, parameter: Parameter): boolean {
  const written = valueOf(part, key);
  return written !== undefined && !sameValue(written, parameter.default);
}

function fieldsOf(session: Session, part: Part, key: string, parameter: Parameter): Field[] {
  if (parameter.type === 'text' || parameter.type === 'numbers') return [];
  const used = parameter.usedWhen && {
    used: () => isUsed(parameter, currentValues(session, part)),
  };
  const field = { ...parameterField(session, part, key, parameter), ...used };
  const materialKey = materialKeyOf(parameter);
  if (materialKey === undefined) return [field];
  return [{ ...materialField(session, part, materialKey, key), ...used }, field];
}

function materialField(
  session: Session,
  part: Part,
  materialKey: string,
  density: string,
): MaterialField {
  const { parameters } = partType(part.kind);
  const only = Object.values(parameters).filter(materialKeyOf).length === 1;
  const usual = only
    ? t('materials.material')
    : t('materials.materialOf', { part: fieldLabel(part, density).replace(/:? density$/i, '') });
  return {
    kind: 'material',
    key: materialKey,
    label: partText(`part.${part.kind}.${materialKey}.label`, usual),
    help: t('materials.help'),
    density,
    read: () =>
      materialText(
        currentPart(session, part),
        density,
        materialsOf(session.store.getState().design),
      ),
  };
}

function parameterField(
  session: Session,
  part: Part,
  key: string,
  parameter: NumberParameter | VectorParameter | ChoiceParameter,
): Field {
  const { actions } = session;
  const label = fieldLabel(part, key);
  const help = partText(`part.${part.kind}.${key}.help`, parameter.help);
  const current = () => currentValues(session, part)[key];
  if (parameter.type === 'choice') {
    return {
      kind: 'choice',
      key,
      label,
      help,
      ...noteOf(session, part, key),
      options: parameter.options.map((value) => ({
        value,
        label: partText(`part.${part.kind}.${key}.${value}`, parameter.optionLabels[value]),
      })),
      read: () => String(current()),
      commit: (value) => refusalIn(actions.setParameter(part.id, key, value)),
    };
  }
  if (parameter.type === 'vector') {
    return vectorField(key, label, help, parameter.axes, parameter, {
      read: () => current() as readonly [number, number, number],
      commit: (value) => refusalIn(actions.setParameter(part.id, key, value)),
    });
  }
  return {
    kind: 'number',
    key,
    label,
    help,
    ...limitsOf(parameter),
    ...noteOf(session, part, key),
    read: () => current() as number,
    commit: (value) => refusalIn(actions.setParameter(part.id, key, value)),
  };
}

/** For what a catalogue or a material may give. */
function noteOf(session: Session, part: Part, key: string): { readonly note?: FieldNote } {
  const type = partType(part.kind);
  if (!type.catalogue && materialKeyOf(type.parameters[key]) === undefined) return {};
  const now = () => currentPart(session, part);
  const materials = () => materialsOf(session.store.getState().design);
  return {
    note: {
      text: (units) => noteText(now(), key, materials(), units),
      resetLabel: (units) => resetText(now(), key, materials(), units),
      reset: () => resetField(session, now(), key),
    },
  };
}

/** Its values as they stand now. */
function currentValues(session: Session, part: Part): PartValues {
  const { live, store } = session;
  return live.model.placed(part.id)?.values ?? valuesOf(part, materialsOf(store.getState().design));
}

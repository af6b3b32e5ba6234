import type { FreePose, Part, Rotor } from '../../design/design';
import { ROTOR_PARAMETERS } from '../../design/rotorRules';
import { materialsOf, valuesOf } from '../../design/resolve';
import type { PartValues } from '../../design/values';
import type { Result } from '../../engine/result';
import { partText, t } from '../../messages';
import type { ChoiceParameter, NumberParameter, VectorParameter } from '../../parts/contract';
import { partType } from '../../parts/registry';
import type { Refusal } from '../../state/refusal';
import { fieldLabel } from '../../state/refusalText';
import type { Session } from '../../state/session';
import type { FieldUnit } from '../../state/shownUnits';

/** A number of the design as a field shows and changes it; always in the document's unit. */
export interface NumberField {
  readonly kind: 'number';
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly unit: FieldUnit;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  read(): number;
  /** Writes the value, or says why not and changes nothing. */
  commit(value: number): Refusal | null;
}

/** Three numbers side by side; each component is a field of its own. */
export interface VectorField {
  readonly kind: 'vector';
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly axes: readonly string[];
  readonly components: readonly NumberField[];
}

export interface ChoiceField {
  readonly kind: 'choice';
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  /** Its options are sentences: give them the room. */
  readonly wide?: boolean;
  read(): string;
  commit(value: string): Refusal | null;
}

export type Field = NumberField | VectorField | ChoiceField;

export function refusalIn(outcome: Result<unknown, Refusal>): Refusal | null {
  return outcome.ok ? null : outcome.error;
}

/** The rotor's numbers. */
export function rotorFields({ store, actions }: Session): Field[] {
  return Object.entries(ROTOR_PARAMETERS).map(([key, parameter]): NumberField => {
    const name = key as keyof Rotor;
    return {
      kind: 'number',
      key,
      label: fieldLabel(undefined, key),
      help: partText(`rotor.${key}.help`, parameter.help),
      unit: parameter.unit,
      min: parameter.min,
      max: parameter.max,
      step: parameter.step,
      read: () => store.getState().design.rotor[name] ?? parameter.default,
      commit: (value) => refusalIn(actions.setRotor({ [name]: value })),
    };
  });
}

/** A part's own parameters, in the order its type lists them. */
export function parameterFields(session: Session, part: Part): Field[] {
  return Object.entries(partType(part.kind).parameters).flatMap(([key, parameter]) =>
    parameter.type === 'text' || parameter.type === 'numbers'
      ? []
      : [parameterField(session, part, key, parameter)],
  );
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
    read: () => current() as number,
    commit: (value) => refusalIn(actions.setParameter(part.id, key, value)),
  };
}

type Triple = readonly [number, number, number];

export function vectorField(
  key: string,
  label: string,
  help: string,
  axes: readonly string[],
  limits: Pick<NumberField, 'unit' | 'min' | 'max' | 'step'>,
  whole: { read(): Triple; commit(value: Triple): Refusal | null },
): VectorField {
  const components = axes.map(
    (axis, at): NumberField => ({
      kind: 'number',
      key: `${key}-${axis}`,
      label: t('fields.component', { label, axis }),
      help,
      ...limitsOf(limits),
      read: () => whole.read()[at],
      commit: (value) =>
        whole.commit(whole.read().map((old, i) => (i === at ? value : old)) as unknown as Triple),
    }),
  );
  return { kind: 'vector', key, label, help, axes, components };
}

function limitsOf(
  source: Pick<NumberField, 'unit' | 'min' | 'max' | 'step'> | NumberParameter | VectorParameter,
) {
  const { unit, min, max, step } = source;
  return { unit, min, max, step };
}

/** The part as it stands now; the one the field was made for when it is gone for a moment. */
export function currentPart({ live }: Session, part: Part): Part {
  return live.model.placed(part.id)?.part ?? part;
}

/** Its values as they stand now. */
function currentValues(session: Session, part: Part): PartValues {
  const { live, store } = session;
  return live.model.placed(part.id)?.values ?? valuesOf(part, materialsOf(store.getState().design));
}

export const NO_POSE: FreePose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };

import type { FreePose, Part } from '../../design/design';
import type { Result } from '../../engine/result';
import { t } from '../../messages';
import type { NumberParameter, VectorParameter } from '../../parts/contract';
import type { Refusal } from '../../state/refusal';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import type { FieldUnit } from '../../state/shownUnits';

/** What a field's value stands in the place of, and the way back to it. */
export interface FieldNote {
  /** Null where the value is what catalogue or material give, or where there is neither. */
  text(units: DisplayUnits): string | null;
  /** What the way back does. */
  resetLabel(units: DisplayUnits): string;
  reset(): Refusal | null;
}

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
  readonly note?: FieldNote;
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
  readonly note?: FieldNote;
  read(): string;
  commit(value: string): Refusal | null;
}

/** The material that gives a density; chosen in a picker of its own. */
export interface MaterialField {
  readonly kind: 'material';
  readonly key: string;
  readonly label: string;
  readonly help: string;
  /** The density parameter. */
  readonly density: string;
  /** The material's name as the row shows it. */
  read(): string;
}

export type Field = (NumberField | VectorField | ChoiceField | MaterialField) & {
  /** Whether it counts for something now, and is shown. Absent: always. */
  readonly used?: () => boolean;
};

export function refusalIn(outcome: Result<unknown, Refusal>): Refusal | null {
  return outcome.ok ? null : outcome.error;
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

export function limitsOf(
  source: Pick<NumberField, 'unit' | 'min' | 'max' | 'step'> | NumberParameter | VectorParameter,
) {
  const { unit, min, max, step } = source;
  return { unit, min, max, step };
}

/** The part as it stands now; the one the field was made for when it is gone for a moment. */
export function currentPart({ live }: Session, part: Part): Part {
  return live.model.placed(part.id)?.part ?? part;
}

export const NO_POSE: FreePose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };

import { LevaPanel, useControls, useCreateStore } from 'leva';
import { useId } from 'react';
import type { Field } from './fieldModel';
import { choiceInput, materialInput, numberInput, vectorInput } from './levaFields';
import { PANEL_THEME } from './panelTheme';
import { useRested } from './useFollowed';

/** One group of fields under a heading. Give it another `key` for other fields. */
export function FieldGroup(props: {
  readonly title: string;
  readonly fields: readonly Field[];
  readonly partId: string | null;
}) {
  const heading = useId();
  return (
    <section className="fields-group" aria-labelledby={heading}>
      <h3 className="ui-heading" id={heading}>
        {props.title}
      </h3>
      <FieldPanel fields={props.fields} partId={props.partId} />
    </section>
  );
}

/**
 * The fields themselves, in a panel of their own. While something else changes the design (a drag on the stage), the
 * inputs of numbers are written with every frame (`useWrittenNumber`), and the panel follows at the end of the gesture.
 */
export function FieldPanel(props: {
  readonly fields: readonly Field[];
  readonly partId: string | null;
}) {
  const { fields, partId } = props;
  const panel = useCreateStore();
  const [, set] = useControls(
    () => Object.fromEntries(fields.map((field) => [field.key, inputOf(field, partId)])),
    { store: panel },
  );
  useRested(() => {
    const changed = fields.flatMap((field): [string, unknown][] => {
      const value = valueOf(field);
      return sameValue(panel.get(field.key), value) ? [] : [[field.key, value]];
    });
    if (changed.length > 0) (set as (values: object) => void)(Object.fromEntries(changed));
  });
  return <LevaPanel store={panel} fill flat titleBar={false} theme={PANEL_THEME} hideCopyButton />;
}

/** The panel asks `render` after each of its changes, and leaves the row out where it says no. */
function inputOf(field: Field, partId: string | null) {
  const render = field.used && { render: field.used };
  switch (field.kind) {
    case 'number':
      return numberInput({ field, partId, ...render });
    case 'vector':
      return vectorInput({ field, partId, ...render });
    case 'choice':
      return choiceInput({ field, partId, ...render });
    case 'material':
      return materialInput({ field, partId, ...render });
  }
}

function valueOf(field: Field): unknown {
  return field.kind === 'vector' ? field.components.map((one) => one.read()) : field.read();
}

function sameValue(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b)) return a === b;
  return a.every((value, i) => value === b[i]);
}

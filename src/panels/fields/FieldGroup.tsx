import { LevaPanel, useControls, useCreateStore } from 'leva';
import { useEffect, useId, useRef } from 'react';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import type { Field } from './fieldModel';
import { choiceInput, numberInput, vectorInput } from './levaFields';
import { PANEL_THEME } from './panelTheme';

/** Fields follow a drag at this pace, ms: fast enough to read, far from a render per pointer event. */
const FOLLOW_EVERY = 100;

/**
 * One group of fields in a panel of its own. Give it another `key` for other fields. While something else changes
 * the design (a drag on the stage, undo), the fields follow ten times a second, and at the end of the gesture.
 */
export function FieldGroup(props: {
  readonly title: string;
  readonly fields: readonly Field[];
  readonly partId: string | null;
}) {
  const { fields, partId } = props;
  const { store } = useSession();
  const heading = useId();
  const panel = useCreateStore();
  const [, set] = useControls(
    () => Object.fromEntries(fields.map((field) => [field.key, inputOf(field, partId)])),
    { store: panel },
  );
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  function follow(): void {
    timer.current = undefined;
    const changed = fields.flatMap((field): [string, unknown][] => {
      const value = valueOf(field);
      return sameValue(panel.get(field.key), value) ? [] : [[field.key, value]];
    });
    if (changed.length > 0) (set as (values: object) => void)(Object.fromEntries(changed));
  }
  useLive((_, changes) => {
    if (changes.design)
      timer.current ??= setTimeout(follow, store.getState().gesture ? FOLLOW_EVERY : 0);
  });
  useEffect(
    () => () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    },
    [],
  );

  return (
    <section className="fields-group" aria-labelledby={heading}>
      <h3 className="ui-heading" id={heading}>
        {props.title}
      </h3>
      <LevaPanel store={panel} fill flat titleBar={false} theme={PANEL_THEME} hideCopyButton />
    </section>
  );
}

function inputOf(field: Field, partId: string | null) {
  switch (field.kind) {
    case 'number':
      return numberInput({ field, partId });
    case 'vector':
      return vectorInput({ field, partId });
    case 'choice':
      return choiceInput({ field, partId });
  }
}

function valueOf(field: Field): unknown {
  return field.kind === 'vector' ? field.components.map((one) => one.read()) : field.read();
}

function sameValue(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b)) return a === b;
  return a.every((value, i) => value === b[i]);
}

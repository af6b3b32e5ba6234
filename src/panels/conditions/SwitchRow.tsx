import { useId } from 'react';
import { useAppState, useSession } from '../../ui/session';
import type { SwitchField } from './sectionRows';

/** A row with a box to tick. */
export function SwitchRow({ field }: { readonly field: SwitchField }) {
  const { actions } = useSession();
  const id = useId();
  const { section, key, standard } = field;
  const on = useAppState(({ design }) => {
    const written: Readonly<Record<string, unknown>> = design[section] ?? {};
    return (written[key] as boolean | undefined) ?? standard;
  });
  return (
    <div className="field" data-help={field.help} data-testid={`field-${key}`}>
      <label className="field-label" htmlFor={id}>
        {field.label}
      </label>
      <span className="field-switch">
        <input
          id={id}
          type="checkbox"
          checked={on}
          aria-describedby={`${id}-help`}
          data-testid={`input-${key}`}
          onChange={(event) => actions.setSection(section, { [key]: event.target.checked })}
        />
        <span className="ui-unseen" id={`${id}-help`}>
          {field.help}
        </span>
      </span>
    </div>
  );
}

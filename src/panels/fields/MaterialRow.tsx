import { ChevronDown } from 'lucide-react';
import { useId, useState } from 'react';
import { lazyRoom } from '../../ui/lazyRoom';
import type { MaterialField } from './fieldModel';

const MaterialPicker = lazyRoom(() =>
  import('../materials/MaterialPicker').then((module) => module.MaterialPicker),
);

/** The material that gives a density; the button opens the picker. */
export function MaterialRow(props: {
  readonly field: MaterialField;
  readonly partId: string | null;
  readonly value: string;
}) {
  const { field, partId } = props;
  const id = useId();
  const [asked, setAsked] = useState(false);
  const [open, setOpen] = useState(false);
  return (
    <div className="field field-wide" data-help={field.help} data-testid={`field-${field.key}`}>
      <span className="field-label" id={`${id}-label`}>
        {field.label}
      </span>
      <button
        type="button"
        id={`${id}-button`}
        className="ui-button field-pick"
        aria-haspopup="dialog"
        aria-labelledby={`${id}-label ${id}-button`}
        aria-describedby={`${id}-help`}
        title={props.value}
        data-testid={`input-${field.key}`}
        onClick={() => {
          setAsked(true);
          setOpen(true);
        }}
      >
        <span>{props.value}</span>
        <ChevronDown aria-hidden="true" />
      </button>
      <span className="ui-unseen" id={`${id}-help`}>
        {field.help}
      </span>
      {asked && partId !== null && (
        <>
          <MaterialPicker
            open={open}
            onClose={() => setOpen(false)}
            partId={partId}
            density={field.density}
            title={field.label}
          />
        </>
      )}
    </div>
  );
}

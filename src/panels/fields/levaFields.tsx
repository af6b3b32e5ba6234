import { createPlugin, type LevaInputProps, useInputContext } from 'leva/plugin';
import type { ChoiceField, MaterialField, NumberField, VectorField } from './fieldModel';
import { MaterialRow } from './MaterialRow';
import { ChoiceRow, NumberRow, VectorRow } from './rows';

/**
 * Our fields as inputs of the leva panel. The panel's own number input clamps to its limits in silence; these refuse
 * aloud instead: the row commits through the field, and the panel only holds what the design holds.
 */
interface Input<F> {
  readonly field: F;
  readonly partId: string | null;
  /** Taken by the panel itself. */
  readonly render?: () => boolean;
}

export const numberInput = createPlugin<Input<NumberField>, number, Input<NumberField>>({
  normalize: (input) => ({ value: input.field.read(), settings: input }),
  component: NumberControl,
});

export const vectorInput = createPlugin<Input<VectorField>, readonly number[], Input<VectorField>>({
  normalize: (input) => ({
    value: input.field.components.map((one) => one.read()),
    settings: input,
  }),
  component: VectorControl,
});

export const choiceInput = createPlugin<Input<ChoiceField>, string, Input<ChoiceField>>({
  normalize: (input) => ({ value: input.field.read(), settings: input }),
  component: ChoiceControl,
});

export const materialInput = createPlugin<Input<MaterialField>, string, Input<MaterialField>>({
  normalize: (input) => ({ value: input.field.read(), settings: input }),
  component: MaterialControl,
});

function NumberControl() {
  const { value, settings, onUpdate } =
    useInputContext<LevaInputProps<number, Input<NumberField>>>();
  return <NumberRow {...settings} value={value} onCommitted={onUpdate} />;
}

function VectorControl() {
  const { value, settings, onUpdate } =
    useInputContext<LevaInputProps<readonly number[], Input<VectorField>>>();
  return <VectorRow {...settings} value={value} onCommitted={onUpdate} />;
}

function ChoiceControl() {
  const { value, settings, onUpdate } =
    useInputContext<LevaInputProps<string, Input<ChoiceField>>>();
  return <ChoiceRow {...settings} value={value} onCommitted={onUpdate} />;
}

function MaterialControl() {
  const { value, settings } = useInputContext<LevaInputProps<string, Input<MaterialField>>>();
  return <MaterialRow {...settings} value={value} />;
}

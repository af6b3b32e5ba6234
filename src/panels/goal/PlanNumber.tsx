import type { LimitUnit } from '../../design/limits';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';

/** A number of the plan. Without `standard` it cannot be left empty: the old value then stays. */
export function PlanNumber(props: {
  readonly name: string;
  readonly label: string;
  readonly help: string;
  readonly unit: LimitUnit;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly value: number | null;
  /** What an empty field stands for. */
  readonly standard?: number;
  readonly onChange: (value: number | null) => void;
}) {
  const { unit, min, max, standard } = props;
  return (
    <OptionalNumberRow
      field={{
        key: props.name,
        label: props.label,
        help: props.help,
        limits: { unit, min, max, ...(standard === undefined ? {} : { standard }) },
        step: props.step,
        commit(value) {
          if (value === undefined && standard === undefined) return null;
          props.onChange(value ?? null);
          return null;
        },
      }}
      value={props.value ?? undefined}
      // Empty while it is typed anew; it does not stay so.
      placeholder=""
    />
  );
}

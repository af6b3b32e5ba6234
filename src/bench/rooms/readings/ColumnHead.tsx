import { BENCH_ROLES, BENCH_TRAVELS } from '../../../design/sections/bench';
import { dimensionsOf } from '../../readings/headings';
import type { ReadingsPreview } from '../../readings/preview';
import type { ColumnMapping, ColumnRole, Travel } from '../../readings/types';
import { type UnitName, unitsOf } from '../../readings/unitNames';
import { say } from '../../say';
import { useDesk } from '../useDesk';

/** A column of a table: what it is called there, and what it is taken for. */
export function ColumnHead(props: {
  readonly preview: ReadingsPreview;
  readonly column: ColumnMapping;
  readonly place: number;
}) {
  const desk = useDesk();
  const { preview, column, place } = props;
  const heading = preview.table.headings[place] || say('benchRoom.column', { count: place + 1 });
  const dimensions = dimensionsOf(column.role) ?? [];
  const isLoad = column.role === 'force' || column.role === 'moment';
  function change(next: Partial<ColumnMapping>): void {
    desk.reread({
      mapping: preview.mapping.map((one, k) => (k === place ? { ...one, ...next } : one)),
    });
  }
  function changeRole(role: ColumnRole): void {
    const allowed = dimensionsOf(role) ?? [];
    const fits =
      column.unit !== null && allowed.some((one) => unitsOf(one).includes(column.unit as UnitName));
    const keeps = role === 'force' || role === 'moment';
    change({
      role,
      unit: fits ? column.unit : null,
      ...(!keeps && { travel: null }),
      ...(!keeps && role !== 'pitch' && { flipped: false }),
    });
  }
  return (
    <th scope="col">
      <span className="bench-heading">{heading}</span>
      <select
        className="ui-select"
        value={column.role}
        aria-label={say('benchRoom.roleOf', { heading })}
        data-testid={`bench-role-${place}`}
        onChange={({ target }) => changeRole(target.value as ColumnRole)}
      >
        {BENCH_ROLES.map((role) => (
          <option key={role} value={role}>
            {say(`benchRoom.role.${role}`)}
          </option>
        ))}
      </select>
      {dimensions.length > 0 && (
        <select
          className="ui-select"
          value={column.unit ?? ''}
          aria-label={say('benchRoom.unitOf', { heading })}
          data-testid={`bench-unit-${place}`}
          onChange={({ target }) =>
            change({ unit: target.value === '' ? null : (target.value as UnitName) })
          }
        >
          <option value="">{say('benchRoom.noUnit')}</option>
          {dimensions.flatMap(unitsOf).map((unit) => (
            <option key={unit} value={unit}>
              {unit}
            </option>
          ))}
        </select>
      )}
      {isLoad && (
        <select
          className="ui-select"
          value={column.travel ?? ''}
          aria-label={say('benchRoom.travelOf', { heading })}
          onChange={({ target }) =>
            change({ travel: target.value === '' ? null : (target.value as Travel) })
          }
        >
          <option value="">{say('benchRoom.anyTravel')}</option>
          {BENCH_TRAVELS.map((travel) => (
            <option key={travel} value={travel}>
              {say(`benchRoom.travel.${travel}`)}
            </option>
          ))}
        </select>
      )}
      {(isLoad || column.role === 'pitch') && (
        <label className="bench-check">
          <input
            type="checkbox"
            checked={column.flipped}
            onChange={({ target }) => change({ flipped: target.checked })}
          />
          {say(column.role === 'force' ? 'benchRoom.compressionPositive' : 'benchRoom.flipped')}
        </label>
      )}
    </th>
  );
}

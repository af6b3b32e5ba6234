import { useState } from 'react';
import { Press } from '../../../ui/Press';
import { useAppState } from '../../../ui/session';
import { say } from '../../say';
import {
  EMPTY_ROW,
  type GridDraft,
  type GridFault,
  type GridPlace,
  gridOfPlan,
  rowsOfGrid,
  rowsWithoutForce,
} from '../../typedRows';
import { useBench, useDesk } from '../useDesk';
import { usePlan } from '../usePlan';
import { GridRows } from './GridRows';
import { changedAbout, FIRST_ROWS, takeDraft } from './gridDraft';
import { RunFields } from './RunFields';

/** Readings typed by hand with what is known of their run. What is typed is kept until it is taken or thrown away. */
export function TypedGrid({ onDone }: { readonly onDone: () => void }) {
  const draft = useBench((state) => state.draft);
  return draft ? <Typed draft={draft} onDone={onDone} /> : null;
}

function Typed({ draft, onDone }: { readonly draft: GridDraft; readonly onDone: () => void }) {
  const desk = useDesk();
  const pageUnit = useAppState((state) => state.settings.units.force);
  const scaleUnit = useBench((state) => state.scaleUnit);
  const plan = usePlan('everyRung');
  const [faults, setFaults] = useState<readonly GridFault[]>([]);
  const [said, setSaid] = useState('');
  const isEmpty = draft.rows.every((row) => `${row.pitch}${row.force}${row.note}`.trim() === '');
  const unread = rowsWithoutForce(draft.rows);
  const change = (next: Partial<GridDraft>) => desk.set({ draft: { ...draft, ...next } });
  function take(): void {
    const rows = rowsOfGrid(draft.rows, draft.unit, draft.place);
    setFaults(rows.ok ? [] : rows.error);
    setSaid(rows.ok && rows.value.length === 0 ? say('benchRoom.gridEmpty') : '');
    if (!rows.ok || rows.value.length === 0) return;
    const fault = takeDraft(desk, draft, rows.value);
    if (fault) setSaid(say(`benchRoom.take.${fault}`));
    else onDone();
  }
  return (
    <div className="bench-stack" data-testid="bench-grid">
      <RunFields
        about={draft.about}
        onChange={(about) => change({ about: changedAbout(draft.about, about) })}
      />
      <p className="lower-quiet">{say('benchRoom.gridHelp')}</p>
      <div className="bench-buttons">
        <label>
          {say('benchRoom.gridPlace')}{' '}
          <select
            className="ui-select"
            value={draft.place}
            data-testid="bench-grid-place"
            onChange={({ target }) => change({ place: target.value as GridPlace })}
          >
            <option value="pitch">{say('benchRoom.gridPlace.pitch')}</option>
            <option value="scale" disabled={scaleUnit === 'div'}>
              {say('benchRoom.gridPlace.scale') +
                (scaleUnit === 'div' ? say('benchRoom.gridPlace.noScale') : '')}
            </option>
          </select>
        </label>
        {plan.ok && draft.place === 'pitch' && (
          <Press
            off={!isEmpty}
            title={say('benchRoom.gridPlanHelp')}
            testId="bench-grid-plan"
            onPress={() => change({ rows: gridOfPlan(plan.value) })}
          >
            {say('benchRoom.gridPlan')}
          </Press>
        )}
        {draft.unit !== pageUnit && isEmpty && (
          <button type="button" className="bench-link" onClick={() => change({ unit: pageUnit })}>
            {say('benchRoom.gridUnit', { unit: pageUnit })}
          </button>
        )}
      </div>
      <GridRows draft={draft} faults={faults} onRows={(rows) => change({ rows })} />
      <Faults faults={faults} said={said} />
      <div className="bench-buttons">
        <button
          type="button"
          className="ui-button ui-button-main"
          data-testid="bench-grid-take"
          onClick={take}
        >
          {say(draft.run === null ? 'benchRoom.gridTake' : 'benchRoom.gridChange')}
        </button>
        {unread.length > 0 && unread.length < draft.rows.length && (
          <button
            type="button"
            className="ui-button"
            data-testid="bench-grid-unread"
            onClick={() => {
              setFaults([]);
              change({ rows: draft.rows.filter((_, k) => !unread.includes(k)) });
            }}
          >
            {say('benchRoom.gridUnread', { count: unread.length })}
          </button>
        )}
        <button
          type="button"
          className="ui-button"
          onClick={() =>
            change({
              rows: [...draft.rows, ...Array.from({ length: FIRST_ROWS }, () => EMPTY_ROW)],
            })
          }
        >
          {say('benchRoom.gridMore')}
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="bench-grid-drop"
          onClick={() => {
            desk.set({ draft: null });
            onDone();
          }}
        >
          {say(draft.run === null ? 'benchRoom.gridDrop' : 'benchRoom.gridLeave')}
        </button>
      </div>
    </div>
  );
}

function Faults(props: { readonly faults: readonly GridFault[]; readonly said: string }) {
  if (props.said !== '')
    return (
      <p className="bench-fault" role="alert">
        {props.said}
      </p>
    );
  if (props.faults.length === 0) return null;
  return (
    <ul className="bench-words bench-fault" role="alert" data-testid="bench-grid-faults">
      {props.faults.map(({ row, field, why, min, max, unit }) => (
        <li key={`${row} ${field}`}>
          {say(`benchRoom.gridFault.${why}`, {
            row,
            field: say(`benchRoom.grid.${field}`),
            min: Number(min.toPrecision(4)),
            max: Number(max.toPrecision(4)),
            unit,
          })}
        </li>
      ))}
    </ul>
  );
}

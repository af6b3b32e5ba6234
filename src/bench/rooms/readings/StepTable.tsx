import { useMemo } from 'react';
import { BENCH_TRAVELS } from '../../../design/sections/bench';
import { displayForce, displayMoment, fixed, show } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { StepsDraft } from '../../deskTypes';
import { namedReadings } from '../../namedSteps';
import type { Reading, Travel } from '../../readings/types';
import { say } from '../../say';
import { pitchOf } from './stepsDraft';

/** The steps in their order: when, how much was read, and the pitch and the way in which it was come to. */
export function StepTable(props: {
  readonly draft: StepsDraft;
  readonly readings: readonly Reading[];
  readonly onChange: (draft: StepsDraft) => void;
}) {
  const { draft, readings, onChange } = props;
  const units = useAppState((state) => state.settings.units);
  const first = readings[0]?.time ?? 0;
  const levels = useMemo(
    () =>
      namedReadings(
        readings,
        draft.steps.map(({ from, to }) => ({ from, to, pitchDeg: 0 })),
      ).readings,
    [readings, draft.steps],
  );
  function change(place: number, next: Partial<StepsDraft['steps'][number]>): void {
    const steps = draft.steps.map((step, k) => (k === place ? { ...step, ...next } : step));
    onChange({ ...draft, steps });
  }
  const seconds = (place: number) => fixed((readings[place]?.time ?? first) - first, 1);
  return (
    <table className="lower-table bench-narrow" data-testid="bench-step-table">
      <thead>
        <tr>
          <th scope="col">{say('benchRoom.steps.step')}</th>
          <th scope="col" className="lower-number">
            {say('benchRoom.steps.when')}
          </th>
          <th scope="col" className="lower-number">
            {say('benchRoom.head.load')}
          </th>
          <th scope="col">{say('benchRoom.gridPitch')}</th>
          <th scope="col">{say('benchRoom.head.travel')}</th>
          <th scope="col">{say('benchRoom.counted')}</th>
        </tr>
      </thead>
      <tbody>
        {draft.steps.map(({ from, to, pitch, travel, counts }, k) => (
          <tr key={from} data-left={counts ? undefined : true}>
            <th scope="row">{k + 1}</th>
            <td className="lower-number">{`${seconds(from)} \u2013 ${seconds(to - 1)}\u00a0s`}</td>
            <td className="lower-number">{levels[k] ? loadText(levels[k]) : ''}</td>
            <td>
              <input
                className="bench-input bench-number"
                autoComplete="off"
                aria-label={say('benchRoom.gridCell', {
                  row: k + 1,
                  field: say('benchRoom.grid.pitch'),
                })}
                aria-invalid={counts && pitch !== '' && pitchOf(pitch) === null}
                disabled={!counts}
                title={counts ? undefined : say('benchRoom.steps.notCounted')}
                value={pitch}
                data-testid={`bench-step-pitch-${k}`}
                onChange={({ target }) => change(k, { pitch: target.value })}
              />
            </td>
            <td>
              <select
                className="ui-select"
                aria-label={say('benchRoom.gridCell', {
                  row: k + 1,
                  field: say('benchRoom.head.travel'),
                })}
                disabled={!counts}
                title={counts ? undefined : say('benchRoom.steps.notCounted')}
                value={travel ?? ''}
                onChange={({ target }) =>
                  change(k, { travel: target.value === '' ? null : (target.value as Travel) })
                }
              >
                <option value="">{say('benchRoom.notSaid')}</option>
                {BENCH_TRAVELS.map((one) => (
                  <option key={one} value={one}>
                    {say(`benchRoom.travel.${one}`)}
                  </option>
                ))}
              </select>
            </td>
            <td>
              <input
                type="checkbox"
                checked={counts}
                aria-label={say('benchRoom.steps.countStep', { count: k + 1 })}
                onChange={({ target }) => change(k, { counts: target.checked })}
              />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
  function loadText({ force, moment }: Reading): string {
    return force === null
      ? show(displayMoment(moment ?? 0, units))
      : show(displayForce(force, units));
  }
}

import { degreesFromRadians } from '../../../engine/units';
import { displayForce, show, showDegrees } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { RungAnalysis } from '../../analysis';
import { say } from '../../say';
import { useDesk } from '../useDesk';
import { reasonText } from './fitWords';

/** Readings that are doubted, with the reason, to be set aside; and those that are, to be counted again. */
export function Flagged({ rung }: { readonly rung: RungAnalysis }) {
  const desk = useDesk();
  const units = useAppState((state) => state.settings.units);
  const aside = rung.runs.flatMap(({ run }) =>
    (run.setAside ?? []).map((place) => ({ run, place })),
  );
  if (rung.flags.length === 0 && aside.length === 0) return null;
  return (
    <ul className="bench-flags" data-testid="bench-flags">
      {rung.flags.map(({ index, reasons }) => {
        const { run, place } = rung.origins[index];
        const { pitch, force } = rung.readings[index];
        return (
          <li key={`${run} ${place}`}>
            <span>
              {say('benchRoom.flag.line', {
                pitch: showDegrees(degreesFromRadians(pitch)),
                force: show(displayForce(force, units)),
                reasons: reasons.map((reason) => reasonText(reason, units)).join('; '),
              })}
            </span>
            <button
              type="button"
              className="ui-button"
              onClick={() => desk.setAside(run, place, true)}
            >
              {say('benchRoom.setAside')}
            </button>
          </li>
        );
      })}
      {aside.map(({ run, place }) => (
        <li key={`${run.id} ${place} aside`}>
          <span>{say('benchRoom.flag.aside', { name: run.name, number: place + 1 })}</span>
          <button
            type="button"
            className="ui-button"
            onClick={() => desk.setAside(run.id, place, false)}
          >
            {say('benchRoom.countAgain')}
          </button>
        </li>
      ))}
    </ul>
  );
}

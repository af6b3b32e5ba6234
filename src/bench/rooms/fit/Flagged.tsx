import { useAppState } from '../../../ui/session';
import { say } from '../../say';
import { useDesk } from '../useDesk';
import { idOf, readingText } from './plotContents';
import type { ShownReading } from './shownReadings';

/** So many are listed; all are in the plots. */
const LISTED = 20;

/** Readings that are doubted, with the reason, to be set aside; and those that are, to be counted again. */
export function Flagged({ shown }: { readonly shown: readonly ShownReading[] }) {
  const desk = useDesk();
  const units = useAppState((state) => state.settings.units);
  const odd = shown.filter(({ state }) => state !== 'counts');
  if (odd.length === 0) return null;
  return (
    <div>
      <h3 className="ui-heading">{say('benchRoom.flag.title')}</h3>
      <ul className="bench-flags" data-testid="bench-flags">
        {odd.slice(0, LISTED).map((one) => (
          <li key={idOf(one)}>
            <span id={`bench-odd ${idOf(one)}`.replaceAll(' ', '-')}>
              {readingText(one, units)}
            </span>
            <button
              type="button"
              className="ui-button"
              aria-describedby={`bench-odd ${idOf(one)}`.replaceAll(' ', '-')}
              onClick={() => desk.setAside(one.origin.run, one.origin.place, one.state !== 'aside')}
            >
              {say(one.state === 'aside' ? 'benchRoom.countAgain' : 'benchRoom.setAside')}
            </button>
          </li>
        ))}
      </ul>
      {odd.length > LISTED && (
        <p className="lower-quiet">{say('benchRoom.flag.more', { count: odd.length - LISTED })}</p>
      )}
    </div>
  );
}

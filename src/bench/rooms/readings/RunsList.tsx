import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';
import { runLine } from './runText';

/** The runs that were taken, in their order. */
export function RunsList({ onOpen }: { readonly onOpen: () => void }) {
  const desk = useDesk();
  const runs = useBench((state) => state.runs);
  const chosen = useBench((state) => state.chosen);
  const removed = useBench((state) => state.removed);
  return (
    <>
      {/* With nothing in it, it is nothing to hear of. */}
      <ul
        className="bench-runs"
        hidden={runs.length === 0}
        aria-label={say('benchRoom.runs')}
        data-testid="bench-runs"
      >
        {runs.map((run) => (
          <li key={run.id}>
            <button
              type="button"
              className="bench-run"
              aria-current={run.id === chosen}
              onClick={() => {
                desk.set({ chosen: run.id });
                onOpen();
              }}
            >
              <strong>{run.name}</strong>
              <span>{runLine(run)}</span>
            </button>
          </li>
        ))}
      </ul>
      {removed && (
        <p className="lower-quiet" role="status">
          {say('benchRoom.removed', { name: removed.run.name })}{' '}
          <button type="button" className="bench-link" onClick={() => desk.putBack()}>
            {say('benchRoom.putBack')}
          </button>
        </p>
      )}
    </>
  );
}

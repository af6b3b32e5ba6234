import type { HeadAnalysis } from '../../headAnalysis';
import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';

/** Which runs count. One that is left out stays as it is; one of another head counts here once it is ticked. */
export function RunChoices({ analysis: { apart } }: { readonly analysis: HeadAnalysis }) {
  const desk = useDesk();
  const runs = useBench((state) => state.runs);
  if (runs.length === 0) return null;
  const why = new Map(apart.map((one) => [one.run.id, one]));
  return (
    <details data-testid="bench-run-choices">
      <summary>
        {say('benchRoom.fit.runs', { count: runs.length - apart.length, all: runs.length })}
      </summary>
      {runs.map(({ id, name }) => {
        const one = why.get(id);
        return (
          <label key={id} className="bench-check">
            <input
              type="checkbox"
              checked={one === undefined}
              onChange={({ target }) => desk.countRun(id, target.checked)}
            />
            <span>
              {name}
              {one && one.why !== 'uncounted' && (
                <span className="lower-quiet">
                  {', '}
                  {say(`benchRoom.fit.${one.why}`, {
                    name: one.why === 'otherHead' ? one.name : '',
                  })}
                </span>
              )}
            </span>
          </label>
        );
      })}
    </details>
  );
}

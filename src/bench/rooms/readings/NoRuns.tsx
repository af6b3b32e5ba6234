import { partText } from '../../../messages';
import { useRestingDesign, useSession } from '../../../ui/session';
import { offerFiles } from '../../arrivals';
import { EXAMPLE_HEAD } from '../../exampleHead';
import { say } from '../../say';

/** What to do where no readings are yet: one's own, or the examples that come with a demo head. */
export function NoRuns() {
  const session = useSession();
  const head = partText(`demo.name.${EXAMPLE_HEAD}`, EXAMPLE_HEAD);
  const isExample = [EXAMPLE_HEAD, head].includes(useRestingDesign().name);
  async function look(): Promise<void> {
    const { exampleTables } = await import('../../exampleTables');
    await offerFiles(session, exampleTables());
  }
  return (
    <div className="bench-empty bench-stack" data-testid="bench-empty">
      <p>{say('benchRoom.empty')}</p>
      <p className="lower-quiet">{say('benchRoom.emptyMore')}</p>
      {isExample ? (
        <>
          <p>{say('benchRoom.examples.here')}</p>
          <button
            type="button"
            className="ui-button"
            data-testid="bench-examples"
            onClick={() => void look()}
          >
            {say('benchRoom.examples')}
          </button>
        </>
      ) : (
        <p>{say('benchRoom.examples.elsewhere', { head })}</p>
      )}
    </div>
  );
}

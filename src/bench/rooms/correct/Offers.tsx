import { useMemo, useState } from 'react';
import type { Design } from '../../../design/design';
import { describeFault } from '../../../design/faultText';
import { useSession } from '../../../ui/session';
import type { Estimated } from '../../fitRung';
import { runsLeftWith, runsMoved } from '../../headRuns';
import { recordOf } from '../../record';
import { say } from '../../say';
import { useDesk } from '../useDesk';
import { fixesFor, type LumpPlace } from './fixes';
import { LumpFields } from './LumpFields';
import { LengthOffer, LumpOffer, MassOffer, type OnTry } from './OfferRows';
import { RefusedFixes } from './Refused';

/** What may be wrong in the model, and what would bring the measured head to neutral; each can be made a try-out. */
export function Offers(props: {
  readonly design: Design;
  readonly deficit: Estimated;
  /** J_yy - J_zz of the model, kg m^2. */
  readonly modelSpread: number;
  readonly onTried: (said: string) => void;
}) {
  const { design, deficit, modelSpread } = props;
  const tryIt = useTry(props.onTried);
  const [place, setPlace] = useState<LumpPlace>({ stationMm: 45, radiusMm: 10 });
  const fixes = useMemo(() => {
    const names = {
      lump: say('benchRoom.correct.lumpName'),
      added: say('benchRoom.correct.addedName'),
    };
    return fixesFor(design, deficit, place, names, modelSpread);
  }, [design, deficit, place, modelSpread]);
  const { lump, added, agrees } = fixes;
  return (
    <>
      <h3 className="ui-heading">{say('benchRoom.correct.model')}</h3>
      {!agrees && (
        <ul className="bench-flags" data-testid="bench-offers">
          {fixes.masses.map((one) => (
            <MassOffer key={one.part} mass={one} design={design} onTry={tryIt} />
          ))}
          {lump.ok && <LumpOffer lump={lump.value} kind="lump" onTry={tryIt} />}
        </ul>
      )}
      {fixes.masses.length === 0 && (
        <p>{say(agrees ? 'benchRoom.correct.nothing' : 'benchRoom.correct.noMass')}</p>
      )}
      <h3 className="ui-heading">{say('benchRoom.correct.turn')}</h3>
      {!agrees && <p>{say('benchRoom.correct.modelFirst')}</p>}
      <ul className="bench-flags" data-testid="bench-lengths">
        {fixes.lengths.map((one) => (
          <LengthOffer
            key={`${one.ref.part} ${one.ref.field}`}
            length={one}
            design={design}
            {...(agrees && { onTry: tryIt })}
          />
        ))}
        {added.ok && (
          <LumpOffer lump={added.value} kind="added" {...(agrees && { onTry: tryIt })} />
        )}
      </ul>
      {fixes.lengths.length === 0 && <p>{say('benchRoom.correct.noLength')}</p>}
      <LumpFields place={place} onChange={setPlace} />
      <RefusedFixes fixes={fixes} design={design} />
    </>
  );
}

/** Puts a corrected head on the stage, and says of which head the runs so far are: one undo step. */
function useTry(onTried: (said: string) => void): OnTry {
  const { actions } = useSession();
  const desk = useDesk();
  return (corrected, name, kind) => {
    const note = say('benchRoom.correct.note');
    const made = actions.tryOuts.addAndShow(corrected.parts, name, note, (next, ids) => {
      const state = desk.store.getState();
      const runs =
        kind === 'model'
          ? runsMoved(state.runs, ids.before, ids.now)
          : runsLeftWith(state.runs, ids.before);
      const bench = recordOf({ ...state, runs });
      return bench ? { ...next, bench } : next;
    });
    onTried(made.ok ? say(`benchRoom.correct.made.${kind}`, { name }) : describeFault(made.error));
  };
}

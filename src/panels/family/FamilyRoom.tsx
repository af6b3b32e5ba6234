import { useEffect, useMemo, useRef, useState } from 'react';
import { t } from '../../messages';
import type { FamilyRequest } from '../../neutralise/family';
import { knobText } from '../../state/words/planText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { useFamily, usePlan } from '../goal/usePlan';
import { FamilyChart } from './FamilyChart';
import { FamilyHead } from './FamilyHead';
import { FamilyTools } from './FamilyTools';
import {
  chosenFamily,
  type FamilyChoice,
  familyChoices,
  familyRequest,
  sameFamily,
  usualWindow,
} from './familyRequest';
import './family.css';

/** Every length and diameter of a part that reaches the goal, by material; where they are forbidden; to be dragged along. */
export function FamilyRoom() {
  const plan = usePlan();
  const design = useRestingDesign();
  const opening = useAppState((state) => state.opening);
  const choices = useMemo(() => familyChoices(design), [design]);
  const choice = chosenFamily(plan, choices);
  return (
    <section className="lower-room" aria-label={t('lower.family')} data-testid="family-room">
      {choice ? (
        <FamilyOf key={`${choice.key} ${opening}`} choice={choice} choices={choices} />
      ) : (
        <p className="lower-quiet">{t('family.none')}</p>
      )}
    </section>
  );
}

function FamilyOf(props: {
  readonly choice: FamilyChoice;
  readonly choices: readonly FamilyChoice[];
}) {
  const { choice } = props;
  const { plan: desk } = useSession();
  const plan = usePlan();
  const design = useRestingDesign();
  // The chart does not move under the hand that drags along it.
  const [window, setWindow] = useState(() => usualWindow(choice, design));
  const request = familyRequest(plan, design, { choice, window });
  useRequested(request);
  const [asTable, setAsTable] = useState(false);
  const about = knobText(design, { part: choice.part.id, field: choice.trim.length });
  return (
    <>
      <FamilyHead
        choices={props.choices}
        choice={choice}
        window={window}
        onWindow={setWindow}
        onWorkOut={() => desk.family.start(request)}
      />
      <FamilyChart request={request} asTable={asTable}>
        <FamilyTools request={request} about={about} asTable={asTable} onTable={setAsTable} />
      </FamilyChart>
    </>
  );
}

/** Wait before the family is worked out anew, ms: a drag elsewhere asks for it only at its end. */
const SETTLE = 500;

/** Works a family out when it is first looked at, and when what it depends on has changed and come to rest. */
function useRequested(request: FamilyRequest): void {
  const { plan: desk } = useSession();
  const state = useFamily();
  const dragging = useAppState((app) => app.gesture);
  const known = state.kind === 'done' || state.kind === 'running' ? state.request : null;
  const stopped = state.kind === 'cancelled' || state.kind === 'failed';
  const wanted = !dragging && !stopped && !(known && sameFamily(known, request));
  const latest = useRef(request);
  useEffect(() => {
    latest.current = request;
  });
  useEffect(() => {
    if (!wanted) return;
    const timer = setTimeout(() => desk.family.start(latest.current), SETTLE);
    return () => clearTimeout(timer);
  }, [desk, wanted]);
}

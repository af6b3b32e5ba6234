import { useLayoutEffect, useRef, useState } from 'react';
import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { SECTION_NAMES } from '../../design/sections';
import { partsOfTryOut, tryOutsOf } from '../../design/tryOuts';
import { type MessageKey, t } from '../../messages';
import type { Answer } from '../../neutralise/answers';
import type { SearchRequest } from '../../neutralise/request';
import type { SearchResult } from '../../neutralise/search';
import { HelpRow } from '../../ui/help/HelpRow';
import { MathText } from '../../ui/MathText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import { useFind } from '../goal/useFind';
import { useSearch } from '../goal/usePlan';
import { AnswerTable, type TriedState } from './AnswerTable';
import {
  answerName,
  blockedText,
  changeText,
  obstacleText,
  refusedText,
  wantedText,
} from './answerText';
import './answers.css';

/** What the search found: every way, the best first, each of which becomes a try-out with one press. */
export function AnswersRoom() {
  const search = useSearch();
  return (
    <section
      className="lower-room answers-room"
      aria-label={t('lower.answers')}
      tabIndex={-1}
      data-testid="answers-room"
    >
      {search.kind === 'done' ? (
        <Answers result={search.result} request={search.request} />
      ) : (
        <Waiting />
      )}
    </section>
  );
}

/** The goal may lie out of sight, in a drawer or a fold: what begins and ends the search stands here too. */
function Waiting() {
  const button = useRef<HTMLButtonElement>(null);
  const { plan } = useSession();
  const search = useSearch();
  const find = useFind();
  const running = search.kind === 'running';
  // The answers come in its place: whoever stands on it goes on from there.
  useLayoutEffect(() => {
    const pressed = button.current;
    const room = pressed?.closest<HTMLElement>('.answers-room');
    return () => {
      if (pressed === document.activeElement) room?.focus({ preventScroll: true });
    };
  }, []);
  return (
    <p className="lower-quiet answers-waiting">
      {running ? t('answers.running', { ...search.progress }) : t('answers.none')}
      <button
        type="button"
        className="ui-button"
        ref={button}
        data-testid="answers-find"
        onClick={() => (running ? plan.search.cancel() : find())}
      >
        {t(running ? 'goal.cancel' : 'goal.find')}
      </button>
    </p>
  );
}

function Answers(props: { readonly result: SearchResult; readonly request: SearchRequest }) {
  const { result, request } = props;
  const { design } = request;
  const { actions, store } = useSession();
  const find = useFind();
  const units = useAppState((state) => state.settings.units);
  const open = useRestingDesign();
  const [told, setTold] = useState<{ readonly text: string; readonly of: Design } | null>(null);
  // What was said of the head before an undo is no longer so.
  const said = told?.of === open ? told.text : '';
  const setSaid = (text: string) => setTold({ text, of: store.getState().design });
  const stale = isStale(open, design);
  const refs = request.knobs.map(({ ref }) => ref);
  const hard = result.obstacles.filter(({ obstacle }) => obstacle.kind !== 'partly');
  const partly = result.obstacles.length > hard.length;
  const turned = result.answers.find(({ make }) => make === 'turned') ?? null;
  const bought = result.answers
    .filter(({ make }) => make === 'bought')
    .reduce<Answer | null>((best, one) => (best && best.left <= one.left ? best : one), null);

  function tryOut(answer: Answer): void {
    const name = answerName(answer, design, units);
    const outcome = actions.tryOuts.addAndShow(
      answer.parts,
      name,
      changeText(answer, design, units),
    );
    setSaid(outcome.ok ? t('answers.tried', { name }) : '');
    if (!outcome.ok) actions.notify({ tone: 'warning', text: describeFault(outcome.error) });
  }

  function adopt(answer: Answer): void {
    const id = triedId(store.getState().design, answer);
    if (id === null) return;
    const outcome = actions.tryOuts.adopt(id);
    const name = tryOutsOf(store.getState().design).find((one) => one.id === id)?.name ?? '';
    if (outcome.ok) setSaid(t('answers.adopted', { name }));
  }

  return (
    <>
      <div className="lower-head answers-head">
        <span data-testid="answers-wanted">{wantedText(request.wanted, units)}</span>
        <Best title="answers.best" none="answers.turnedNone" answer={turned} design={design} />
        <Best title="answers.bought" none="answers.boughtNone" answer={bought} design={design} />
        <span role="status" data-testid="answers-said">
          {said}
        </span>
        {stale && (
          <span className="answers-stale" data-testid="answers-stale">
            {t('answers.stale')}
            <button type="button" className="ui-button" onClick={find}>
              {t('answers.again')}
            </button>
          </span>
        )}
      </div>
      <div className="lower-scroll" tabIndex={0} role="region" aria-label={t('answers.table')}>
        {hard.length > 0 && (
          <ul className="answers-obstacles" data-testid="answers-obstacles">
            <li>
              <strong>{t('answers.noneMeets')}</strong>
            </li>
            {hard.map(({ knobs, obstacle }) => (
              <li key={knobs.join()}>{obstacleText(knobs, obstacle, { design, refs }, units)}</li>
            ))}
          </ul>
        )}
        <AnswerTable
          answers={result.answers}
          now={result.now}
          design={design}
          goal={request.wanted.goal.kind}
          tried={(answer) => triedState(open, answer)}
          onTry={tryOut}
          onAdopt={adopt}
        />
        <p className="lower-quiet">
          {t('answers.summary', { looked: result.looked })} {t('answers.trimmed')}{' '}
          {partly && <MathText text={`${t('answers.partly')} `} />}
          {refusedText(result)} {t('loads.caution')}
        </p>
        <HelpRow ids={['difference', 'restAngle', 'holdingBand', 'firstLimit', 'clearance']} />
      </div>
    </>
  );
}

/** Whether head or conditions are others than the answers are for, apart from the head being one of them. */
function isStale(open: Design, design: Design): boolean {
  const sameConditions = [...SECTION_NAMES, 'materials' as const].every(
    (name) => open[name] === design[name],
  );
  if (!sameConditions) return true;
  const asked = (parts: Design['parts'] | undefined) => parts === design.parts;
  return !asked(open.parts) && !tryOutsOf(open).some(({ parts }) => asked(parts));
}

function triedState(design: Design, answer: Answer): TriedState {
  const id = triedId(design, answer);
  if (id === null) return 'new';
  return tryOutsOf(design).find((one) => one.id === id)?.adopted ? 'adopted' : 'tried';
}

/** The try-out that an answer has become; null where it is none. */
function triedId(design: Design, answer: Answer): string | null {
  const found = tryOutsOf(design).find((one) => partsOfTryOut(design, one.id) === answer.parts);
  return found?.id ?? null;
}

function Best(props: {
  readonly title: MessageKey;
  readonly none: MessageKey;
  readonly answer: Answer | null;
  readonly design: Design;
}) {
  const units = useAppState((state) => state.settings.units);
  const { answer, design } = props;
  const blocked = answer && blockedText(answer, units);
  return (
    <span>
      {t(props.title)}:{' '}
      <strong>{answer ? changeText(answer, design, units) : t(props.none)}</strong>
      {blocked && <span className="answers-stale"> ({blocked})</span>}
    </span>
  );
}

import { useRef, useSyncExternalStore } from 'react';
import { rpmFromAngularSpeed } from '../../engine/units';
import { t } from '../../messages';
import type { PullEye } from '../../state/pullsShow';
import { fixed } from '../../state/quantities';
import type { Session } from '../../state/session';
import { grouped } from '../../state/shownUnits';
import { secondsPerTurn, slowness } from '../../state/turnTime';
import { wantsNoMotion } from '../../state/wantsNoMotion';
import { ChoiceRow } from '../../ui/ChoiceRow';
import { useSession } from '../../ui/session';
import { write } from './dom';
import { usePulls } from './usePulls';

/** What is seen from there, and how much it is slowed. */
export function LookNote() {
  const session = useSession();
  const note = useRef<HTMLParagraphElement>(null);

  usePulls(() => write(note.current, lookNote(session)));
  return <p className="lower-quiet" ref={note} data-testid="pulls-look-note" />;
}

/** Who looks. */
export function LookControls() {
  const session = useSession();
  const { pullsShow } = session;
  const eye = useSyncExternalStore(pullsShow.subscribe, () => pullsShow.shown.eye);
  const turning = useSyncExternalStore(pullsShow.subscribe, () => pullsShow.shown.turning);

  function look(chosen: PullEye): void {
    pullsShow.set({ eye: chosen, turning: chosen === 'outside' && !wantsNoMotion() });
  }

  return (
    <>
      <span className="pulls-choice">
        <ChoiceRow
          label={t('pulls.look')}
          value={eye}
          options={(['within', 'outside'] as const).map((value) => ({
            value,
            text: t(`pulls.look.${value}`),
          }))}
          testId="pulls-look"
          onChoose={look}
        />
        {eye === 'outside' && !wantsNoMotion() && (
          <button
            type="button"
            className="ui-button"
            data-testid="pulls-turn"
            onClick={() => pullsShow.set({ turning: !turning })}
          >
            {t(turning ? 'pulls.stop' : 'pulls.goRound')}
          </button>
        )}
      </span>
    </>
  );
}

function lookNote({ pullsShow, live }: Session): string {
  const { eye, speedRpm } = pullsShow.shown;
  if (eye === 'within') return `${t('pulls.within')} ${t('pulls.legend')}`;
  const designRpm = rpmFromAngularSpeed(live.reading.rotor.angularSpeed);
  return `${t('pulls.outside')} ${turnNote(speedRpm ?? designRpm, designRpm)}`;
}

function turnNote(speedRpm: number, designRpm: number): string {
  if (wantsNoMotion()) return t('pulls.still');
  const seconds = secondsPerTurn(speedRpm, designRpm);
  if (seconds === Infinity) return t('pulls.standing');
  return t('pulls.slowed', {
    times: grouped(fixed(slowness(speedRpm, designRpm), 0)),
    seconds: fixed(seconds, 1),
  });
}

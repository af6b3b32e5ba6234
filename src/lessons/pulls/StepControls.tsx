import { ChevronFirst, ChevronLast, Pause, Play, StepBack, StepForward } from 'lucide-react';
import { type ReactNode, useRef, useSyncExternalStore } from 'react';
import { t } from '../../messages';
import type { PullGrain } from '../../state/pullsShow';
import { ChoiceRow } from '../../ui/ChoiceRow';
import { useSession } from '../../ui/session';
import { write } from './dom';
import type { PullPlayer } from './pullPlayer';
import { usePulls } from './usePulls';

/** Forward, back, by itself; and what a step is. */
export function StepControls({ player }: { readonly player: PullPlayer }) {
  const { pullsShow } = useSession();
  const count = useRef<HTMLSpanElement>(null);
  const grain = useSyncExternalStore(pullsShow.subscribe, () => pullsShow.shown.grain);

  usePulls(() => {
    const { added, of } = player.count();
    write(count.current, t('pulls.count', { added, of }));
  });

  function chooseGrain(chosen: PullGrain): void {
    player.goTo(0);
    pullsShow.set({ grain: chosen });
  }

  return (
    <>
      <div className="pulls-steps" role="group" aria-label={t('pulls.steps')}>
        <Step name="first" onPress={() => player.goTo(0)}>
          <ChevronFirst aria-hidden="true" />
        </Step>
        <Step name="back" onPress={() => player.step(-1)}>
          <StepBack aria-hidden="true" />
        </Step>
        <button
          type="button"
          className="ui-button"
          data-testid="pulls-play"
          onClick={() => (player.playing ? player.pause() : player.play())}
        >
          {player.playing ? <Pause aria-hidden="true" /> : <Play aria-hidden="true" />}
          {t(player.playing ? 'pulls.pause' : 'pulls.play')}
        </button>
        <Step name="next" onPress={() => player.step(1)}>
          <StepForward aria-hidden="true" />
        </Step>
        <Step name="all" onPress={() => player.goTo(Infinity)}>
          <ChevronLast aria-hidden="true" />
        </Step>
        <span className="pulls-count" ref={count} data-testid="pulls-count" />
      </div>
      <span className="pulls-choice" title={t('pulls.grain.lumps.help')}>
        <ChoiceRow
          label={t('pulls.grain')}
          value={grain}
          options={(['parts', 'lumps'] as const).map((value) => ({
            value,
            text: t(`pulls.grain.${value}`),
          }))}
          testId="pulls-grain"
          onChoose={chooseGrain}
        />
      </span>
    </>
  );
}

function Step(props: {
  readonly name: 'first' | 'back' | 'next' | 'all';
  readonly onPress: () => void;
  readonly children: ReactNode;
}) {
  const label = t(`pulls.${props.name}`);
  return (
    <button
      type="button"
      className="ui-button ui-button-icon"
      aria-label={label}
      title={label}
      data-testid={`pulls-${props.name}`}
      onClick={props.onPress}
    >
      {props.children}
    </button>
  );
}

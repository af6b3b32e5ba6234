import { type KeyboardEvent, useId, useRef } from 'react';
import { t } from '../../messages';
import { LOWER_ROOMS, type LowerRoomName } from '../../state/settings';
import { lazyRoom } from '../../ui/lazyRoom';
import { useAppState, useSession } from '../../ui/session';
import { ForceChart } from '../chart/ForceChart';
import './lower.css';

const waiting = () => <p className="app-loading">{t('lower.loading')}</p>;
const SpeedRoom = lazyRoom(
  () => import('../speed/SpeedRoom').then((module) => module.SpeedRoom),
  waiting,
);
const AirRoom = lazyRoom(() => import('../air/AirRoom').then((module) => module.AirRoom), waiting);
const LoadsRoom = lazyRoom(
  () => import('../loads/LoadsRoom').then((module) => module.LoadsRoom),
  waiting,
);
const BalanceRoom = lazyRoom(
  () => import('../balance/BalanceRoom').then((module) => module.BalanceRoom),
  waiting,
);

/** What lies under the stage: force against pitch, against speed, the air along the blade, loads, balance. */
export function LowerRoom() {
  const { actions } = useSession();
  const room = useAppState((state) => state.settings.lowerRoom);
  const id = useId();
  const list = useRef<HTMLDivElement>(null);

  function onKeyDown(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const end = { Home: 0, End: LOWER_ROOMS.length - 1 }[event.key];
    if (step === undefined && end === undefined) return;
    event.preventDefault();
    const count = LOWER_ROOMS.length;
    const next = end ?? (LOWER_ROOMS.indexOf(room) + (step ?? 0) + count) % count;
    actions.setSettings({ lowerRoom: LOWER_ROOMS[next] });
    list.current?.querySelectorAll<HTMLElement>('[role="tab"]')[next]?.focus();
  }

  return (
    <div className="lower">
      <div
        className="lower-tabs"
        role="tablist"
        aria-label={t('lower.label')}
        ref={list}
        onKeyDown={onKeyDown}
      >
        {LOWER_ROOMS.map((name) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`${id}-${name}`}
            className="lower-tab"
            aria-selected={name === room}
            aria-controls={`${id}-panel`}
            tabIndex={name === room ? 0 : -1}
            data-testid={`lower-${name}`}
            onClick={() => actions.setSettings({ lowerRoom: name })}
          >
            {t(`lower.${name}`)}
          </button>
        ))}
      </div>
      <div
        className="lower-panel"
        role="tabpanel"
        id={`${id}-panel`}
        aria-labelledby={`${id}-${room}`}
      >
        <Room name={room} />
      </div>
    </div>
  );
}

function Room({ name }: { readonly name: LowerRoomName }) {
  switch (name) {
    case 'speed':
      return <SpeedRoom />;
    case 'air':
      return <AirRoom />;
    case 'loads':
      return <LoadsRoom />;
    case 'balance':
      return <BalanceRoom />;
    default:
      return <ForceChart />;
  }
}

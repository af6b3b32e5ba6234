import { type ComponentType, type KeyboardEvent, useId, useRef } from 'react';
import { type MessageKey, t } from '../../messages';
import {
  LOWER_ROOMS,
  type LowerRoomName,
  NEUTRALISE_VIEWS,
  type NeutraliseView,
} from '../../state/settings';
import { lazyRoom } from '../../ui/lazyRoom';
import { useAppState, useSession } from '../../ui/session';
import { ForceChart } from '../chart/ForceChart';
import './lower.css';

const waiting = () => <p className="app-loading">{t('lower.loading')}</p>;

/** Everything that can lie under the stage; all but the chart are loaded when they are first looked at. */
const VIEWS: Readonly<Record<LowerRoomName | NeutraliseView, ComponentType>> = {
  pitch: ForceChart,
  speed: lazyRoom(() => import('../speed/SpeedRoom').then((module) => module.SpeedRoom), waiting),
  air: lazyRoom(() => import('../air/AirRoom').then((module) => module.AirRoom), waiting),
  loads: lazyRoom(() => import('../loads/LoadsRoom').then((module) => module.LoadsRoom), waiting),
  balance: lazyRoom(
    () => import('../balance/BalanceRoom').then((module) => module.BalanceRoom),
    waiting,
  ),
  answers: lazyRoom(
    () => import('../answers/AnswersRoom').then((module) => module.AnswersRoom),
    waiting,
  ),
  family: lazyRoom(
    () => import('../family/FamilyRoom').then((module) => module.FamilyRoom),
    waiting,
  ),
  closely: lazyRoom(
    () => import('../closeness/ClosenessRoom').then((module) => module.ClosenessRoom),
    waiting,
  ),
  clearance: lazyRoom(
    () => import('../clearance/ClearanceRoom').then((module) => module.ClearanceRoom),
    waiting,
  ),
  tryOuts: lazyRoom(
    () => import('../tryOuts/TryOutsRoom').then((module) => module.TryOutsRoom),
    waiting,
  ),
};

/** What lies under the stage: in the room Head the chart, speed, air, loads and balance; in Neutralise what belongs there. */
export function LowerRoom() {
  const { actions } = useSession();
  const room = useAppState((state) => state.settings.room);
  const lowerRoom = useAppState((state) => state.settings.lowerRoom);
  const neutraliseView = useAppState((state) => state.settings.neutraliseView);
  return room === 'head' ? (
    <Tabs
      names={LOWER_ROOMS}
      chosen={lowerRoom}
      onChoose={(name) => actions.setSettings({ lowerRoom: name })}
    />
  ) : (
    <Tabs
      names={NEUTRALISE_VIEWS}
      chosen={neutraliseView}
      onChoose={(name) => actions.setSettings({ neutraliseView: name })}
    />
  );
}

function Tabs<Name extends LowerRoomName | NeutraliseView>(props: {
  readonly names: readonly Name[];
  readonly chosen: Name;
  readonly onChoose: (name: Name) => void;
}) {
  const { names, chosen, onChoose } = props;
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const View: ComponentType = VIEWS[chosen];

  function onKeyDown(event: KeyboardEvent): void {
    const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
    const end = { Home: 0, End: names.length - 1 }[event.key];
    if (step === undefined && end === undefined) return;
    event.preventDefault();
    const count = names.length;
    const next = end ?? (names.indexOf(chosen) + (step ?? 0) + count) % count;
    onChoose(names[next]);
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
        {names.map((name) => (
          <button
            key={name}
            type="button"
            role="tab"
            id={`${id}-${name}`}
            className="lower-tab"
            aria-selected={name === chosen}
            aria-controls={`${id}-panel`}
            tabIndex={name === chosen ? 0 : -1}
            data-testid={`lower-${name}`}
            onClick={() => onChoose(name)}
          >
            {t(`lower.${name}` as MessageKey)}
          </button>
        ))}
      </div>
      <div
        className="lower-panel"
        role="tabpanel"
        id={`${id}-panel`}
        aria-labelledby={`${id}-${chosen}`}
      >
        <View />
      </div>
    </div>
  );
}

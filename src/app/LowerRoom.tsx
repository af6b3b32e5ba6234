import { type ComponentType, type KeyboardEvent, useId, useRef } from 'react';
import { type MessageKey, t } from '../messages';
import { ForceChart } from '../panels/chart/ForceChart';
import {
  BENCH_VIEWS,
  type BenchView,
  LEARN_VIEWS,
  type LearnView,
  LOWER_ROOMS,
  type LowerRoomName,
  MAKE_VIEWS,
  type MakeView,
  NEUTRALISE_VIEWS,
  type NeutraliseView,
  type RoomName,
} from '../state/settings';
import { lazyRoom } from '../ui/lazyRoom';
import { useAppState, useSession } from '../ui/session';
import { Guard } from './Guard';
import '../panels/lower/lower.css';

type ViewName = LowerRoomName | NeutraliseView | MakeView | BenchView | LearnView;

const waiting = () => <p className="app-loading">{t('lower.loading')}</p>;

/** Everything that can lie under the stage; all but the chart are loaded when they are first looked at. */
const VIEWS: Readonly<Record<ViewName, ComponentType>> = {
  pitch: ForceChart,
  speed: lazyRoom(
    () => import('../panels/speed/SpeedRoom').then((module) => module.SpeedRoom),
    waiting,
  ),
  air: lazyRoom(() => import('../panels/air/AirRoom').then((module) => module.AirRoom), waiting),
  loads: lazyRoom(
    () => import('../panels/loads/LoadsRoom').then((module) => module.LoadsRoom),
    waiting,
  ),
  balance: lazyRoom(
    () => import('../panels/balance/BalanceRoom').then((module) => module.BalanceRoom),
    waiting,
  ),
  answers: lazyRoom(
    () => import('../panels/answers/AnswersRoom').then((module) => module.AnswersRoom),
    waiting,
  ),
  family: lazyRoom(
    () => import('../panels/family/FamilyRoom').then((module) => module.FamilyRoom),
    waiting,
  ),
  closely: lazyRoom(
    () => import('../panels/closeness/ClosenessRoom').then((module) => module.ClosenessRoom),
    waiting,
  ),
  clearance: lazyRoom(
    () => import('../panels/clearance/ClearanceRoom').then((module) => module.ClearanceRoom),
    waiting,
  ),
  tryOuts: lazyRoom(
    () => import('../panels/tryOuts/TryOutsRoom').then((module) => module.TryOutsRoom),
    waiting,
  ),
  drawing: lazyRoom(
    () => import('../output/drawing/DrawingRoom').then((module) => module.DrawingRoom),
    waiting,
  ),
  report: lazyRoom(
    () => import('../output/report/ReportRoom').then((module) => module.ReportRoom),
    waiting,
  ),
  files: lazyRoom(
    () => import('../output/files/FilesRoom').then((module) => module.FilesRoom),
    waiting,
  ),
  benchPlan: lazyRoom(
    () => import('../bench/rooms/PlanRoom').then((module) => module.PlanRoom),
    waiting,
  ),
  readings: lazyRoom(
    () => import('../bench/rooms/ReadingsRoom').then((module) => module.ReadingsRoom),
    waiting,
  ),
  fit: lazyRoom(() => import('../bench/rooms/FitRoom').then((module) => module.FitRoom), waiting),
  correct: lazyRoom(
    () => import('../bench/rooms/CorrectRoom').then((module) => module.CorrectRoom),
    waiting,
  ),
  practice: lazyRoom(
    () => import('../bench/rooms/PracticeRoom').then((module) => module.PracticeRoom),
    waiting,
  ),
  letGo: lazyRoom(
    () => import('../lessons/letGo/LetGoRoom').then((module) => module.LetGoRoom),
    waiting,
  ),
  pulls: lazyRoom(
    () => import('../lessons/pulls/PullsRoom').then((module) => module.PullsRoom),
    waiting,
  ),
  racket: lazyRoom(
    () => import('../scene/racket/RacketRoom').then((module) => module.RacketRoom),
    waiting,
  ),
  words: lazyRoom(
    () => import('../lessons/words/WordsRoom').then((module) => module.WordsRoom),
    waiting,
  ),
};

/** What lies under the stage in each room, and the setting that holds which of it is looked at. */
const TABS = {
  head: { names: LOWER_ROOMS, setting: 'lowerRoom' },
  neutralise: { names: NEUTRALISE_VIEWS, setting: 'neutraliseView' },
  make: { names: MAKE_VIEWS, setting: 'makeView' },
  bench: { names: BENCH_VIEWS, setting: 'benchView' },
  learn: { names: LEARN_VIEWS, setting: 'learnView' },
} as const satisfies Readonly<Record<RoomName, object>>;

/** What lies under the stage now. */
export function useLowerView(): ViewName {
  return useAppState(({ settings }) => settings[TABS[settings.room].setting]);
}

/** Under the stage: what belongs to the room, one at a time. */
export function LowerRoom() {
  const { actions } = useSession();
  const settings = useAppState((state) => state.settings);
  const { names, setting } = TABS[settings.room];
  return (
    <Tabs<ViewName>
      names={names}
      chosen={settings[setting]}
      onChoose={(name) => actions.setSettings({ [setting]: name })}
    />
  );
}

function Tabs<Name extends ViewName>(props: {
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
        {/* A tab that fails leaves the others. */}
        <Guard key={chosen} room={t(`lower.${chosen}` as MessageKey)}>
          <View />
        </Guard>
      </div>
    </div>
  );
}

import { t } from '../messages';
import { PitchDial } from '../panels/dial/PitchDial';
import { Rail } from '../panels/rail/Rail';
import type { RoomName } from '../state/settings';
import { afterPaint } from '../ui/afterPaint';
import { lazyRoom } from '../ui/lazyRoom';
import { useShownPage } from '../ui/lessonDoor';
import { useAppState } from '../ui/session';
import { Guard } from './Guard';
import { LowerRoom } from './LowerRoom';

/** The stage brings three.js with it: chart and dial are usable before it is there, and are painted before it is fetched. */
const LazyStage = lazyRoom(
  () =>
    afterPaint()
      .then(() => import('../scene/Stage'))
      .then(({ Stage }) => Stage),
  () => <p className="app-loading">{t('app.stageLoading')}</p>,
);

/** The fields bring leva with them. */
const LazyFields = lazyRoom(
  () =>
    afterPaint()
      .then(() => import('../panels/fields/Fields'))
      .then(({ Fields }) => Fields),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

const LazyGoal = lazyRoom(
  () => import('../panels/goal/GoalPanel').then(({ GoalPanel }) => GoalPanel),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

const LazyLessons = lazyRoom(
  () => import('../lessons/LessonsPanel').then(({ LessonsPanel }) => LessonsPanel),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

/** Each of these is made anew when the page turns to a lesson's head or back: another session is under it. */
export function StageRoom() {
  const page = useShownPage();
  return (
    <Guard key={page} room={t('app.stage')}>
      <LazyStage />
    </Guard>
  );
}
export function ChartRoom() {
  const page = useShownPage();
  return (
    <Guard key={page} room={t('app.chart')}>
      <LowerRoom />
    </Guard>
  );
}
export function DialRoom() {
  const page = useShownPage();
  return (
    <Guard key={page} room={t('app.dial')}>
      <PitchDial />
    </Guard>
  );
}
/** The rooms that have something of their own at the left in place of the parts, and what it is called. */
const LEFT = {
  neutralise: { label: 'app.goal', short: 'app.goalShort', Panel: LazyGoal },
  learn: { label: 'app.lessons', short: 'app.lessons', Panel: LazyLessons },
} as const;

/** What the room has at the left of its own; undefined where it is the parts. */
export function leftOf(room: RoomName): (typeof LEFT)[keyof typeof LEFT] | undefined {
  return room in LEFT ? LEFT[room as keyof typeof LEFT] : undefined;
}

/** At the left: the parts, or what the room has of its own: in Neutralise what is wanted, in Learn the lessons. */
export function LeftRoom() {
  const room = useAppState((state) => state.settings.room);
  const left = leftOf(room);
  if (!left) return <RailRoom />;
  return (
    <Guard room={t(left.label)}>
      <left.Panel />
    </Guard>
  );
}
export function RailRoom() {
  const page = useShownPage();
  return (
    <Guard key={page} room={t('app.parts')}>
      <Rail />
    </Guard>
  );
}
export function FieldsRoom() {
  const page = useShownPage();
  return (
    <Guard key={page} room={t('app.numbers')}>
      <LazyFields />
    </Guard>
  );
}

/** Everything side by side. */
export function WidePage() {
  return (
    <div className="app-rooms">
      <div className="app-rail">
        <LeftRoom />
      </div>
      <div className="app-stage">
        <StageRoom />
      </div>
      <div className="app-chart">
        <ChartRoom />
      </div>
      <div className="app-side">
        <div className="app-dial" id="dial" tabIndex={-1}>
          <DialRoom />
        </div>
        <div className="app-fields">
          <FieldsRoom />
        </div>
      </div>
    </div>
  );
}

import { t } from '../messages';
import { PitchDial } from '../panels/dial/PitchDial';
import { Fields } from '../panels/fields/Fields';
import { Rail } from '../panels/rail/Rail';
import { lazyRoom } from '../ui/lazyRoom';
import { useAppState } from '../ui/session';
import { Guard } from './Guard';
import { LowerRoom } from './LowerRoom';

/** The stage brings three.js with it: chart and dial are usable before it is there. */
const LazyStage = lazyRoom(
  () => import('../scene/Stage').then(({ Stage }) => Stage),
  () => <p className="app-loading">{t('app.stageLoading')}</p>,
);

const LazyGoal = lazyRoom(
  () => import('../panels/goal/GoalPanel').then(({ GoalPanel }) => GoalPanel),
  () => <p className="app-loading">{t('lower.loading')}</p>,
);

export function StageRoom() {
  return (
    <Guard room={t('app.stage')}>
      <LazyStage />
    </Guard>
  );
}
export function ChartRoom() {
  return (
    <Guard room={t('app.chart')}>
      <LowerRoom />
    </Guard>
  );
}
export function DialRoom() {
  return (
    <Guard room={t('app.dial')}>
      <PitchDial />
    </Guard>
  );
}
/** At the left: the parts, or in the room Neutralise what is wanted and what may change. */
export function LeftRoom() {
  const room = useAppState((state) => state.settings.room);
  return room === 'neutralise' ? (
    <Guard room={t('app.goal')}>
      <LazyGoal />
    </Guard>
  ) : (
    <RailRoom />
  );
}
export function RailRoom() {
  return (
    <Guard room={t('app.parts')}>
      <Rail />
    </Guard>
  );
}
export function FieldsRoom() {
  return (
    <Guard room={t('app.numbers')}>
      <Fields />
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

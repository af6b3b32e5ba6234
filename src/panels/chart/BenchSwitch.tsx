import { t } from '../../messages';
import { useAppState, useSession } from '../../ui/session';

/** Whether the bench's readings lie over the curve; there is no switch where there are none. */
export function BenchSwitch() {
  const { actions } = useSession();
  const isOn = useAppState((state) => state.settings.chartBench);
  const isEnergy = useAppState((state) => state.settings.chartQuantity === 'energy');
  const hasRuns = useAppState(({ design }) => (design.bench?.runs ?? []).length > 0);
  if (!hasRuns) return null;
  return (
    <label className="chart-check" title={t(isEnergy ? 'chart.benchNoEnergy' : 'chart.benchHelp')}>
      <input
        type="checkbox"
        data-testid="chart-bench"
        checked={isOn}
        disabled={isEnergy}
        onChange={(event) => actions.setSettings({ chartBench: event.target.checked })}
      />
      <svg width="11" height="11" viewBox="-5.5 -5.5 11 11" aria-hidden="true">
        <path className="chart-bench-point" d="M0 -5L5 0L0 5L-5 0Z" />
      </svg>
      {t('chart.bench')}
    </label>
  );
}

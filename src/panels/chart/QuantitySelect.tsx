import { t } from '../../messages';
import { CHART_QUANTITIES, type ChartQuantity } from '../../state/settings';
import { useAppState, useSession } from '../../ui/session';

/** Which quantity is plotted. The servo's is offered where its arms are given. */
export function QuantitySelect(props: { readonly without?: ChartQuantity }) {
  const { actions } = useSession();
  const quantity = useAppState((state) => state.settings.chartQuantity);
  const hasServo = useAppState(({ design: { control } }) =>
    [control?.crankOutputMm, control?.crankInputMm, control?.servoArmMm].every(
      (arm) => arm !== undefined,
    ),
  );
  const offered = CHART_QUANTITIES.filter((each) => each !== props.without);
  return (
    <select
      className="chart-quantity"
      aria-label={t('chart.quantity')}
      data-testid="chart-quantity"
      value={quantity === props.without ? 'moment' : quantity}
      onChange={(event) => {
        actions.setSettings({ chartQuantity: event.target.value as ChartQuantity });
      }}
    >
      {offered.map((each) => (
        <option key={each} value={each} disabled={each === 'servo' && !hasServo}>
          {t(`chart.quantity.${each}`) + (each === 'servo' && !hasServo ? t('chart.noServo') : '')}
        </option>
      ))}
    </select>
  );
}

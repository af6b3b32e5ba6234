import { Minus, Plus } from 'lucide-react';
import type { ReactNode, RefObject } from 'react';
import { t } from '../../messages';
import { useAppState, useSession } from '../../ui/session';
import { BenchSwitch } from './BenchSwitch';
import { CountedSwitches } from './CountedSwitches';
import type { ChartView } from './chartView';
import { WHOLE_WINDOW, zoomed } from './pitchWindow';
import { QuantitySelect } from './QuantitySelect';

const ZOOM_STEP = 1.6;

interface ChartToolsProps {
  readonly view: RefObject<ChartView | null>;
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
  readonly children: ReactNode;
}

/** The row above the plot: which quantity, shares or not, zoom, table. */
export function ChartTools({ view, asTable, onTable, children }: ChartToolsProps) {
  const { actions, store } = useSession();
  const shares = useAppState((state) => state.settings.chartShares);

  function zoom(factor: number): void {
    if (view.current) {
      view.current.setWindow(zoomed(view.current.window, factor, store.getState().pitchDeg));
    }
  }

  return (
    <div className="chart-tools">
      <QuantitySelect />
      <label className="chart-check">
        <input
          type="checkbox"
          data-testid="chart-shares"
          checked={shares}
          onChange={(event) => actions.setSettings({ chartShares: event.target.checked })}
        />
        {t('chart.shares')}
      </label>
      <BenchSwitch />
      <CountedSwitches />
      <div className="chart-zoom" role="group" aria-label={t('chart.zoom')}>
        <button
          type="button"
          className="ui-button ui-button-small"
          aria-label={t('chart.zoomOut')}
          title={t('chart.zoomOut')}
          onClick={() => zoom(ZOOM_STEP)}
        >
          <Minus size={14} aria-hidden="true" />
        </button>
        <button
          type="button"
          className="ui-button ui-button-small"
          aria-label={t('chart.zoomIn')}
          title={t('chart.zoomIn')}
          onClick={() => zoom(1 / ZOOM_STEP)}
        >
          <Plus size={14} aria-hidden="true" />
        </button>
        <button
          type="button"
          className="ui-button ui-button-small"
          title={t('chart.zoomAllHelp')}
          onClick={() => view.current?.setWindow(WHOLE_WINDOW)}
        >
          {t('chart.zoomAll')}
        </button>
      </div>
      <button
        type="button"
        className="ui-button ui-button-small"
        aria-pressed={asTable}
        data-testid="chart-table-toggle"
        onClick={() => onTable(!asTable)}
      >
        {t('chart.table')}
      </button>
      {children}
    </div>
  );
}

import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import type { PlotData } from '../drawn/plotLayout';
import { PlotTable } from './PlotTable';
import { writePlotTable } from './plotTable';

/** A table of a plot that is drawn by React; a word where there is no plot yet. */
export function PlotNumbers(props: {
  readonly data: PlotData | null;
  readonly name: string;
  readonly testId: string;
}) {
  const { data, name, testId } = props;
  const table = useRef<HTMLTableElement>(null);
  useEffect(() => {
    if (table.current && data) writePlotTable(table.current, data);
  }, [data]);
  if (!data) return <p className="ui-plot-table">{t('plots.empty')}</p>;
  return <PlotTable table={table} name={name} testId={testId} />;
}

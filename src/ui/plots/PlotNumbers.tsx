import { useEffect, useRef } from 'react';
import type { PlotData } from '../drawn/plotLayout';
import { PlotTable } from './PlotTable';
import { writePlotTable } from './plotTable';

/** A table of a plot that is drawn by React; nothing where there is no plot yet. */
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
  return <PlotTable table={table} name={name} testId={testId} />;
}

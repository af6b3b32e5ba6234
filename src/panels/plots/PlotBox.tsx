import { useEffect, useRef } from 'react';
import type { HeadReading } from '../../state/reading';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { PlotTable } from '../../ui/plots/PlotTable';
import { writePlotTable } from '../../ui/plots/plotTable';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

import { createSvgPlot, type SvgPlot } from './svgPlot';
import './plots.css';

/**
 * A small plot that follows the design: `data` is asked on a change, and its `summary` read to who cannot see it. In place of
 * the picture the numbers may stand, with `tableName` over them.
 */
export function PlotBox(props: {
  readonly data: (reading: HeadReading) => PlotData | null;
  readonly summary: (reading: HeadReading) => string;
  readonly testId: string;
  readonly asTable?: boolean;
  readonly tableName?: string;
}) {
  const { asTable = false, tableName = '' } = props;
  const { live } = useSession();
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const text = useRef<HTMLParagraphElement>(null);
  const table = useRef<HTMLTableElement>(null);
  const plot = useRef<SvgPlot | null>(null);
  const latest = useRef(props);
  useEffect(() => {
    latest.current = props;
  });

  function draw(reading: HeadReading): void {
    if (!host.current || !plot.current || !text.current || !svg.current) return;
    const data = latest.current.data(reading);
    svg.current.style.display = data ? '' : 'none';
    if (data) plot.current.update(data, host.current.clientWidth, host.current.clientHeight);
    if (data && table.current) writePlotTable(table.current, data);
    const words = latest.current.summary(reading);
    if (text.current.textContent !== words) text.current.textContent = words;
  }

  const redraw = useRef(draw);
  useEffect(() => {
    redraw.current = draw;
  });
  useEffect(() => {
    if (!host.current || !svg.current) return;
    plot.current = createSvgPlot(svg.current);
    const observer = new ResizeObserver(() => redraw.current(live.reading));
    observer.observe(host.current);
    const made = svg.current;
    return () => {
      observer.disconnect();
      plot.current = null;
      made.replaceChildren();
    };
  }, [live]);
  useEffect(() => {
    if (asTable) redraw.current(live.reading);
  }, [asTable, live]);
  useLive((reading, changes) => {
    if (changes.design || changes.settings || changes.pitch) draw(reading);
  }, 'chart');

  return (
    <div className="plot-box" ref={host} data-testid={props.testId}>
      <svg className="plot-svg" ref={svg} aria-hidden="true" />
      {asTable && <PlotTable table={table} name={tableName} testId={`${props.testId}-table`} />}
      <p className="ui-unseen" ref={text} />
    </div>
  );
}

import { useEffect, useRef } from 'react';
import type { HeadReading } from '../../state/reading';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { createSvgPlot, type SvgPlot, type SvgPlotData } from './svgPlot';
import './plots.css';

/** A small plot that follows the design: `data` is asked on a change, and its `summary` read to who cannot see it. */
export function PlotBox(props: {
  readonly data: (reading: HeadReading) => SvgPlotData | null;
  readonly summary: (reading: HeadReading) => string;
  readonly testId: string;
}) {
  const { live } = useSession();
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const text = useRef<HTMLParagraphElement>(null);
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
  useLive((reading, changes) => {
    if (changes.design || changes.settings || changes.pitch) draw(reading);
  });

  return (
    <div className="plot-box" ref={host} data-testid={props.testId}>
      <svg className="plot-svg" ref={svg} aria-hidden="true" />
      <p className="ui-unseen" ref={text} />
    </div>
  );
}

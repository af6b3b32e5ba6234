import { useEffect, useRef, useState } from 'react';
import { degreesFromRadians, radians } from '../../engine/units';
import { t } from '../../messages';
import type { LetGoDesk } from '../../state/letGoTypes';
import type { HeadReading } from '../../state/reading';
import { timeText } from '../../state/words/letGoText';
import { signedDegrees } from '../../state/words/pitchText';
import { setText } from '../../ui/drawn/svg';
import { useSession } from '../../ui/session';
import { LetGoNumbers } from './LetGoNumbers';
import { LetGoPlotTools } from './LetGoPlotTools';
import { traceData } from './traceData';
import { createTraceView, type TraceView } from './traceView';
import { useLetGo } from './useLetGo';

/** Pitch against time. */
export function TracePlot() {
  const session = useSession();
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const text = useRef<HTMLParagraphElement>(null);
  const caption = useRef<HTMLSpanElement>(null);
  const view = useRef<TraceView | null>(null);

  const [asTable, setAsTable] = useState(false);
  const data = () => traceData(session.letGo);
  function redraw(reading: HeadReading): void {
    if (!host.current) return;
    view.current?.draw(reading, host.current.clientWidth, host.current.clientHeight);
    if (caption.current)
      setText(caption.current, t('letGo.trace', { unit: view.current?.unit ?? 'ms' }));
  }
  const latest = useRef(redraw);
  useEffect(() => {
    latest.current = redraw;
  });
  useEffect(() => {
    if (!host.current || !svg.current) return;
    view.current = createTraceView(svg.current, session);
    const observer = new ResizeObserver(() => latest.current(session.live.reading));
    observer.observe(host.current);
    const drawn = svg.current;
    return () => {
      observer.disconnect();
      view.current = null;
      drawn.replaceChildren();
    };
  }, [session]);
  useLetGo((reading, desk) => {
    redraw(reading);
    if (!text.current) return;
    // Over the empty plot it is seen too.
    text.current.className = desk.run ? 'ui-unseen' : 'letgo-nothing';
    // Said once it has ended: a sentence a frame could not be read.
    if (!desk.moving) setText(text.current, summary(desk));
  });

  return (
    <figure className="letgo-figure">
      <figcaption className="letgo-caption">
        <span ref={caption} />
        <LetGoPlotTools
          testId="letgo-trace"
          name="let-go"
          data={data}
          summary={() => summary(session.letGo)}
          asTable={asTable}
          onTable={setAsTable}
        />
      </figcaption>
      <div className="letgo-frame">
        <div className="letgo-plot" ref={host} data-testid="letgo-trace">
          <svg ref={svg} aria-hidden="true" />
          <p className="ui-unseen" ref={text} />
        </div>
        {asTable && (
          <LetGoNumbers data={data} name={t('lower.letGo')} testId="letgo-trace-numbers" />
        )}
      </div>
    </figure>
  );
}

function summary({ run }: LetGoDesk): string {
  if (!run) return t('letGo.notYet');
  const { length, pitch } = run.trace;
  let [low, high] = [run.from as number, run.from as number];
  for (let i = 0; i < length; i++) {
    low = Math.min(low, pitch[i]);
    high = Math.max(high, pitch[i]);
  }
  const deg = (angle: number) => signedDegrees(degreesFromRadians(radians(angle)));
  return t('letGo.summaryTrace', {
    from: deg(run.from),
    low: deg(low),
    high: deg(high),
    pitch: deg(run.release.pitch),
    time: timeText(run.time),
  });
}

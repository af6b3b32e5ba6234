import { useEffect, useRef, useState } from 'react';
import { landscape } from '../../engine/release/potential';
import { degreesFromRadians, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { displayEnergy, show } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { signedDegrees, spokenPitch } from '../../state/words/pitchText';
import { setText, setValues } from '../../ui/drawn/svg';
import { useAppState, useSession } from '../../ui/session';
import { attachBall } from './ballHand';
import { hillsData } from './hillsData';
import { drivenSpan } from './hillsScale';
import { createHillsView, type HillsView } from './hillsView';
import { LetGoNumbers } from './LetGoNumbers';
import { LetGoPlotTools } from './LetGoPlotTools';
import { useLetGo } from './useLetGo';

/** The plot of energy against pitch; its ball is the handle. */
export function HillsPlot() {
  const session = useSession();
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const text = useRef<HTMLParagraphElement>(null);
  const view = useRef<HillsView | null>(null);
  const { unit } = displayEnergy(
    1,
    useAppState((state) => state.settings.units),
  );

  const [asTable, setAsTable] = useState(false);
  const data = () => hillsData(session.live.reading, session.store.getState().settings.units);
  function redraw(reading: HeadReading): void {
    if (!host.current) return;
    view.current?.draw(reading, host.current.clientWidth, host.current.clientHeight);
  }
  /** In words, for the slider: it changes with the head, not with what is let go or pushed. */
  function describe(reading: HeadReading): void {
    if (text.current) setText(text.current, summary(reading, session));
  }
  const latest = useRef(redraw);
  useEffect(() => {
    latest.current = redraw;
  });

  useEffect(() => {
    if (!host.current || !svg.current) return;
    const made = createHillsView(svg.current, session);
    view.current = made;
    const observer = new ResizeObserver(() => latest.current(session.live.reading));
    observer.observe(host.current);
    const detach = attachBall(host.current, session, made);
    const drawn = svg.current;
    return () => {
      detach();
      observer.disconnect();
      view.current = null;
      drawn.replaceChildren();
    };
  }, [session]);
  useLetGo((reading, desk, head) => {
    if (!host.current) return;
    // The energy it has may lie higher than the plot reaches once a hand has given some.
    if (head || desk.store.getState().pushing) redraw(reading);
    else view.current?.move(reading);
    if (head || !text.current?.textContent) describe(reading);
    const { pitchDeg, settings } = session.store.getState();
    setValues(host.current, {
      'aria-valuenow': Math.round(pitchDeg * 1000) / 1000,
      'aria-valuetext': spokenPitch(reading, pitchDeg, settings.units),
    });
  });

  return (
    <figure className="letgo-figure">
      <figcaption className="letgo-caption">
        {t('letGo.hills', { unit })}
        <LetGoPlotTools
          testId="letgo-hills"
          name="energy"
          data={data}
          summary={() => summary(session.live.reading, session)}
          asTable={asTable}
          onTable={setAsTable}
        />
      </figcaption>
      <div className="letgo-frame">
        <div
          className="letgo-plot letgo-hills"
          ref={host}
          role="slider"
          tabIndex={0}
          aria-label={t('letGo.ball')}
          aria-valuemin={-90}
          aria-valuemax={90}
          aria-valuenow={0}
          aria-describedby="letgo-hills-summary"
          title={t('letGo.ballHelp')}
          data-testid="letgo-hills"
        >
          <svg ref={svg} aria-hidden="true" />
        </div>
        {asTable && (
          <LetGoNumbers data={data} name={t('lower.letGo')} testId="letgo-hills-numbers" />
        )}
      </div>
      <ul className="letgo-key" aria-hidden="true">
        <li>
          <span className="letgo-swatch letgo-swatch-rests" />
          {t('letGo.key.rests')}
        </li>
        <li>
          <span className="letgo-swatch letgo-swatch-flees" />
          {t('letGo.key.flees')}
        </li>
        <li>
          <span className="letgo-swatch letgo-swatch-held" />
          {t('letGo.key.holds')}
        </li>
        <li>
          <span className="letgo-swatch letgo-swatch-level" />
          {t('letGo.key.level')}
        </li>
      </ul>
      <p className="ui-unseen" id="letgo-hills-summary" ref={text} />
    </figure>
  );
}

function landmarkKey(well: boolean, depth: number | null) {
  if (!well) return 'letGo.summaryHill' as const;
  return depth === null ? ('letGo.summaryWellOnly' as const) : ('letGo.summaryWell' as const);
}

function summary(reading: HeadReading, { store }: Session): string {
  const { units } = store.getState().settings;
  const [low, high] = drivenSpan(reading);
  const marks = landscape(
    (pitch) => reading.energyAt(degreesFromRadians(pitch)),
    reading.equilibria,
    radiansFromDegrees(low),
    radiansFromDegrees(high),
  );
  const landmarks = marks
    .filter(({ kind }) => kind !== 'shoulder')
    .map(({ kind, pitch, depth }) =>
      t(landmarkKey(kind === 'well', depth), {
        pitch: signedDegrees(degreesFromRadians(pitch)),
        depth: depth === null ? '' : show(displayEnergy(depth, units)),
      }),
    );
  const held = reading.bandsDeg.map(([from, to]) =>
    t('letGo.summaryHeld', { from: signedDegrees(from), to: signedDegrees(to) }),
  );
  return t('letGo.summaryHills', {
    low: signedDegrees(low),
    high: signedDegrees(high),
    landmarks: landmarks.join(' '),
    held: held.join(' '),
  });
}

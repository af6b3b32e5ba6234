import { useEffect, useId, useRef, useState } from 'react';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import type { ChartQuantity } from '../../state/settings';
import { HelpName } from '../../ui/help/HelpName';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';
import { benchSummary } from './benchMarks';
import { ChartTools } from './ChartTools';
import { CurveTable } from './CurveTable';
import { chartSummary } from './chartSummary';
import { type ChartView, createChartView } from './chartView';
import { laidOver } from './comparedLines';
import { plottedQuantity } from './quantity';
import { SetPitches } from './SetPitches';
import './chart.css';

/** The entry of the help on what is plotted. */
const TOPIC = {
  force: 'pushRodForce',
  slider: 'sliderForce',
  servo: 'servoTorque',
  moment: 'featheringMoment',
  energy: 'energy',
} as const satisfies Readonly<Record<ChartQuantity, string>>;

/** Push-rod force (or moment, or energy) against pitch, with the shares of the parts and the pitch cursor. */
export function ForceChart() {
  const session = useSession();
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const readout = useRef<HTMLDivElement>(null);
  const note = useRef<HTMLParagraphElement>(null);
  const signs = useRef<HTMLSpanElement>(null);
  const summary = useRef<HTMLParagraphElement>(null);
  const view = useRef<ChartView | null>(null);
  const summaryId = useId();
  const quantity = useAppState((state) => state.settings.chartQuantity);
  const [asTable, setAsTable] = useState(false);

  useEffect(() => {
    if (!host.current || !svg.current || !readout.current || !note.current) return;
    const made = createChartView(
      { host: host.current, svg: svg.current, readout: readout.current, note: note.current },
      session,
    );
    view.current = made;
    // The bench's points come when they are worked out, with no change of the head.
    const stop = session.benchPoints.subscribe(() => {
      if (summary.current) setText(summary.current, summaryOf(session));
    });
    const stopResting = session.store.subscribe((state, before) => {
      if (!before.gesture || state.gesture) return;
      session.live.flush();
      if (summary.current) setText(summary.current, summaryOf(session));
    });
    return () => {
      stop();
      stopResting();
      made.destroy();
      view.current = null;
    };
  }, [session]);
  useLive((_, changes) => {
    view.current?.take(changes.design || changes.settings || changes.selection);
  }, 'curve');
  useLive(() => view.current?.draw(), 'chart');
  useLive((reading, changes) => {
    view.current?.writeWords();
    const head = changes.design || changes.settings || changes.selection;
    if (!head || !signs.current || !summary.current) return;
    const { settings } = session.store.getState();
    const { kind, unit } = plottedQuantity(reading, settings);
    const sense = t(`chart.signs.${kind}`, { unit });
    const banded = kind !== 'energy' && reading.friction.counted && reading.friction.known;
    setText(signs.current, banded ? t('chart.signsFriction', { signs: sense }) : sense);
    // Nobody reads it while something is dragged: it follows at the end.
    if (!session.store.getState().gesture) setText(summary.current, summaryOf(session));
  }, 'names');

  return (
    <section className="chart" aria-label={t('chart.title')} data-testid="force-chart">
      <div className="chart-body">
        <ChartTools view={view} asTable={asTable} onTable={setAsTable}>
          <p className="chart-signs">
            <HelpName id={TOPIC[quantity]}>
              <span ref={signs} />
            </HelpName>
          </p>
        </ChartTools>
        <figure className="chart-figure" aria-describedby={summaryId}>
          <div className="chart-plot" ref={host}>
            <svg className="chart-overlay" ref={svg} />
            <div className="chart-readout" ref={readout} data-testid="chart-readout" />
          </div>
          <p className="chart-note" ref={note} data-testid="chart-note" />
          {asTable && <CurveTable />}
          <p className="ui-unseen" id={summaryId} ref={summary} data-testid="chart-summary" />
        </figure>
        <SetPitches />
      </div>
    </section>
  );
}

/** The chart in sentences, with what is laid over it. */
function summaryOf({ store, live: { reading }, benchPoints }: Session): string {
  const state = store.getState();
  const names = laidOver(state).map((one) => one.name);
  const said = chartSummary(reading, state.settings.units, names);
  return `${said} ${benchSummary(benchPoints.getState(), reading)}`.trim();
}

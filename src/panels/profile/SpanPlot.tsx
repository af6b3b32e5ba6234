import { useEffect, useId, useRef, useState } from 'react';
import { bodyMoments } from '../../design/bodyMoments';
import { measuredReport } from '../../design/measuredReport';
import { NO_MATERIALS } from '../../design/resolve';
import { t } from '../../messages';
import { partType } from '../../parts/registry';
import type { PlotToSave } from '../../ui/plotFiles';
import { PlotTable } from '../../ui/plots/PlotTable';
import { PlotTools } from '../../ui/plots/PlotTools';
import { writePlotTable } from '../../ui/plots/plotTable';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';
import {
  CENTRE_FOOT,
  CENTRE_TOP,
  LEFT,
  MASS_FOOT,
  MASS_TOP,
  PLOT_HEIGHT,
  PLOT_WIDTH,
  type PlotTick,
  RIGHT,
  type SpanView,
  spanView,
} from './spanView';
import './profile.css';

/** Stations of the plot: one to every two pixels or so. */
const STATIONS = 121;

/** Mass per length and the centre of each slice along a part's span; follows drags by writing to the page itself. */
export function SpanPlot(props: { readonly partId: string }) {
  const { partId } = props;
  const { live, store } = useSession();
  const svg = useRef<SVGSVGElement>(null);
  const summary = useRef<HTMLParagraphElement>(null);
  const drawn = useRef<PlotPainter | null>(null);
  const title = useId();
  const text = useId();
  const view = useRef<SpanView | null>(null);
  const table = useRef<HTMLTableElement>(null);
  const [asTable, setAsTable] = useState(false);
  useEffect(() => {
    if (asTable && table.current && view.current) writePlotTable(table.current, view.current.data);
  }, [asTable]);
  useLive((_, { parts, settings, design }) => {
    if (!svg.current || !summary.current || !(settings || design)) return;
    if (!settings && parts !== 'all' && !parts.has(partId)) return;
    const placed = live.model.placed(partId);
    const profile = placed && partType(placed.part.kind).spanProfile?.(placed.values, STATIONS);
    const moments = profile && bodyMoments(placed.part, placed.values);
    if (!profile || !moments) return;
    const report = placed.part.measured && measuredReport(placed.part, placed.values, NO_MATERIALS);
    const { units } = store.getState().settings;
    const shown = spanView(profile, report?.densityFactor ?? 1, moments, units);
    view.current = shown;
    if (drawn.current?.svg !== svg.current) drawn.current = createPainter(svg.current);
    setShown(svg.current, shown !== null);
    setText(summary.current, shown ? shown.summary : t('profile.noMass'));
    if (!shown) return;
    drawn.current.paint(shown);
    if (table.current) writePlotTable(table.current, shown.data);
  });

  function toSave(): PlotToSave | null {
    live.flush();
    const { design } = store.getState();
    const name = design.parts.find(({ id }) => id === partId)?.name ?? '';
    return (
      view.current && {
        data: view.current.data,
        design,
        lines: [`${t('profile.title')}: ${name}.`],
        summary: view.current.summary,
        name: 'span',
      }
    );
  }
  return (
    <section className="fields-group span-plot" aria-labelledby={title} data-testid="span-plot">
      <h3 className="ui-heading" id={title}>
        {t('profile.title')}
      </h3>
      <div className="span-figure">
        <svg
          ref={svg}
          viewBox={`0 0 ${PLOT_WIDTH} ${PLOT_HEIGHT}`}
          role="img"
          aria-labelledby={title}
          aria-describedby={text}
        />
        {asTable && (
          <PlotTable table={table} name={t('profile.title')} testId="span-plot-numbers" />
        )}
      </div>
      <p className="span-summary" id={text} ref={summary} />
      <PlotTools testId="span" plot={toSave} asTable={asTable} onTable={setAsTable} />
    </section>
  );
}

interface PlotPainter {
  readonly svg: SVGSVGElement;
  paint(view: SpanView): void;
}

/** Makes the plot's elements once; painting only changes them. */
function createPainter(svg: SVGSVGElement): PlotPainter {
  svg.replaceChildren();
  const area = svgElement('path', svg, { class: 'span-area' });
  const zero = svgElement('line', svg, { class: 'span-zero', x1: LEFT, x2: RIGHT });
  svgElement('path', svg, {
    class: 'span-frame',
    d: `M${LEFT} ${MASS_TOP}V${MASS_FOOT}H${RIGHT}M${LEFT} ${CENTRE_TOP}V${CENTRE_FOOT}H${RIGHT}`,
  });
  const mass = svgElement('path', svg, { class: 'span-mass' });
  const centres = svgElement('path', svg, { class: 'span-centres' });
  const centre = svgElement('circle', svg, { class: 'span-centre', r: 4 });
  const text = (x: number, y: number, anchor = 'start') =>
    svgElement('text', svg, { x, y, 'text-anchor': anchor, class: 'span-text' });
  const titles = [
    text(0, MASS_TOP - 7),
    text(0, CENTRE_TOP - 7),
    text(RIGHT, CENTRE_FOOT + 27, 'end'),
  ];
  const pool = (anchor: string) =>
    new ElementPool(() => svgElement('text', svg, { 'text-anchor': anchor, class: 'span-text' }));
  const pools = { span: pool('middle'), mass: pool('end'), centre: pool('end') };
  const upright = (ticks: readonly PlotTick[], elements: readonly SVGTextElement[]) =>
    ticks.forEach(({ at, text: shown }, i) => {
      setValues(elements[i], { x: LEFT - 4, y: at + 3.5 });
      setText(elements[i], shown);
    });
  return {
    svg,
    paint(view) {
      setValues(area, { d: view.massArea });
      setValues(mass, { d: view.massLine });
      setValues(centres, { d: view.centreLine });
      setValues(centre, { cx: view.centre.x, cy: view.centre.y });
      setValues(zero, { y1: view.zeroY, y2: view.zeroY });
      [view.massTitle, view.centreTitle, view.spanTitle].forEach((one, i) => {
        setText(titles[i], one);
      });
      const span = pools.span.take(view.spanTicks.length);
      view.spanTicks.forEach(({ at, text: shown }, i) => {
        setValues(span[i], { x: at, y: CENTRE_FOOT + 13 });
        setText(span[i], shown);
      });
      upright(view.massTicks, pools.mass.take(view.massTicks.length));
      upright(view.centreTicks, pools.centre.take(view.centreTicks.length));
    },
  };
}

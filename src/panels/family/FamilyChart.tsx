import {
  type KeyboardEvent,
  type PointerEvent,
  type ReactNode,
  type RefObject,
  useEffect,
  useId,
  useRef,
  useState,
} from 'react';
import { M } from '../../engine/mass/moments';
import { t } from '../../messages';
import { type Family, type FamilyRequest, FORBIDDEN } from '../../neutralise/family';
import { displayMass, show } from '../../state/quantities';
import { shownText, shownUnit } from '../../state/shownUnits';
import { PlotNumbers } from '../../ui/plots/PlotNumbers';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { useFollowing } from '../fields/useFollowed';
import { CurveDrag } from './curveDrag';
import { familyData } from './familyData';
import { curveNow, materialNow, moveAlong, placeNow } from './familyMove';
import { createFamilyPlot, type FamilyPlot, forbiddenKinds } from './familyPlot';
import { nearestOnCurves, xOf, yOf } from './familyScale';
import { useFamilyTexts } from './useFamilyTexts';
import '../plots/plots.css';

/** Curves and hatching, and the mark of the head: dragged along a curve, the head follows. */
export function FamilyChart(props: {
  readonly request: FamilyRequest;
  readonly asTable: boolean;
  /** What can be done with the chart. */
  readonly children: ReactNode;
}) {
  const { request, asTable, children } = props;
  const session = useSession();
  const { family, texts, curveName, summary } = useFamilyTexts(request);
  const host = useRef<HTMLDivElement>(null);
  const svg = useRef<SVGSVGElement>(null);
  const handle = useRef<SVGGElement>(null);
  const plot = useRef<FamilyPlot | null>(null);
  const id = useId();
  const move = useFamilyDrag(request, family, plot, svg);
  function draw(): void {
    if (!host.current || !plot.current) return;
    const { clientWidth, clientHeight } = host.current;
    plot.current.update(request, family, texts, clientWidth, clientHeight);
  }
  const redraw = useRef(draw);
  useEffect(() => {
    redraw.current = draw;
    draw();
  });
  useEffect(() => {
    if (!host.current || !svg.current || !handle.current) return;
    plot.current = createFamilyPlot(svg.current, handle.current, id);
    const observer = new ResizeObserver(() => redraw.current());
    observer.observe(host.current);
    const made = svg.current;
    const mark = handle.current;
    return () => {
      observer.disconnect();
      plot.current = null;
      made.replaceChildren(mark);
    };
  }, [id]);
  useLive((_, changes) => {
    const now = changes.design ? placeNow(session, request) : null;
    if (now) plot.current?.mark(...now);
  });

  return (
    <div className="family-body">
      <div className="plot-box" ref={host} data-testid="family-plot">
        <svg className="plot-svg family-svg" ref={svg} {...move.pointer}>
          <FamilyHandle
            handle={handle}
            request={request}
            curveName={curveName}
            onKeyDown={move.onKeyDown}
          />
        </svg>
        {asTable && (
          <PlotNumbers
            data={family && familyData(request, family, texts)}
            name={t('lower.family')}
            testId="family-plot-table"
          />
        )}
        <p className="ui-unseen">{summary}</p>
      </div>
      <Legend family={family} names={texts.names} id={id}>
        {children}
      </Legend>
    </div>
  );
}

/** The mark of the head as it is; speaks its numbers. */
function FamilyHandle(props: {
  readonly handle: RefObject<SVGGElement | null>;
  readonly request: FamilyRequest;
  readonly curveName: (material: string | null) => string;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}) {
  const { request, handle } = props;
  const spoken = useSpoken(request, props.curveName);
  return (
    <>
      <g
        ref={handle}
        className="family-handle"
        role="slider"
        tabIndex={0}
        aria-label={t('family.handle')}
        aria-valuemin={request.diametersMm[0]}
        aria-valuemax={request.diametersMm[1]}
        aria-valuenow={spoken.diameterMm}
        aria-valuetext={spoken.text}
        data-testid="family-handle"
        onKeyDown={props.onKeyDown}
      >
        <title>{spoken.text}</title>
        <circle r={22} className="family-hit" />
        <circle r={12} className="family-focus" />
        <circle r={6} className="family-dot" />
      </g>
    </>
  );
}

/** Where the head stands on the chart, in words; follows a drag ten times a second. */
function useSpoken(request: FamilyRequest, curveName: (material: string | null) => string) {
  const session = useSession();
  const units = useAppState((app) => app.settings.units);
  const [, setSeen] = useState(0);
  useFollowing(() => setSeen((count) => count + 1), true);
  const [diameterMm, lengthMm] = placeNow(session, request) ?? [0, 0];
  const mm = shownUnit('mm', units);
  const text = t('family.handleText', {
    diameter: shownText(diameterMm, mm),
    length: shownText(lengthMm, mm),
    material: curveName(materialNow(session, request) ?? null),
    mass: show(displayMass(session.live.reading.totals[M], units), 4),
  });
  return { diameterMm, text };
}

function Legend(props: {
  readonly family: Family | null;
  readonly names: readonly string[];
  readonly id: string;
  readonly children: ReactNode;
}) {
  const { family, names, id, children } = props;
  const kinds = family ? forbiddenKinds(family) : [];
  const empty = family?.curves.every(({ points }) => points.every((point) => !point));
  return (
    <div className="family-legend" tabIndex={0} role="region" aria-label={t('family.legend')}>
      {children}
      {empty && <p className="family-warning">{t('family.noCurve')}</p>}
      {family && (
        <p className="lower-quiet">
          {kinds.length === 0
            ? t('family.forbiddenNone')
            : t('family.forbidden', { material: names[0] ?? '' })}
        </p>
      )}
      <ul>
        {kinds.map((kind) => (
          <li key={kind}>
            <svg width="28" height="14" aria-hidden="true">
              <rect
                width="28"
                height="14"
                className="family-swatch"
                fill={`url(#${id}-hatch-${FORBIDDEN[kind]})`}
              />
            </svg>
            {t(`family.forbidden.${kind}`)}
          </li>
        ))}
      </ul>
      <p className="lower-quiet">{t('family.drag')}</p>
    </div>
  );
}

/** Dragging and stepping along the curves; a drag, or one key, is one undo step. */
function useFamilyDrag(
  request: FamilyRequest,
  family: Family | null,
  plot: RefObject<FamilyPlot | null>,
  svg: RefObject<SVGSVGElement | null>,
) {
  const session = useSession();
  const [drag] = useState(() => new CurveDrag(session.actions.gesture));
  // The room may go in the middle of a drag.
  useEffect(() => () => drag.end(), [drag]);

  function nearest(px: number, py: number) {
    const scale = plot.current?.scale();
    return family && scale ? nearestOnCurves(family.curves, scale, px, py) : null;
  }

  function follow(event: PointerEvent): void {
    if (!drag.isMoving(event.pointerId) || !svg.current || !family) return;
    const box = svg.current.getBoundingClientRect();
    const found = nearest(event.clientX - box.left, event.clientY - box.top);
    if (found) moveAlong(session, request, family, { ...found, fine: event.altKey });
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'Escape' && drag.cancel()) {
      event.stopPropagation();
      return;
    }
    const now = placeNow(session, request);
    const scale = plot.current?.scale();
    if (!family || !now || !scale) return;
    const step = { ArrowLeft: -1, ArrowRight: 1, PageDown: -10, PageUp: 10 }[event.key];
    const turn = { ArrowUp: -1, ArrowDown: 1 }[event.key];
    if (step === undefined && turn === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const near = nearest(xOf(scale, now[0]), yOf(scale, now[1]));
    const from = curveNow(session, request, family) ?? near?.curve ?? 0;
    const count = family.curves.length;
    const size = event.altKey ? 0.01 : 0.1;
    const own = session.actions.gesture.begin();
    moveAlong(session, request, family, {
      curve: (from + (turn ?? 0) + count) % count,
      diameterMm: now[0] + (step ?? 0) * size,
      fine: event.altKey,
    });
    own.end();
  }

  return {
    onKeyDown,
    pointer: {
      onPointerDown(event: PointerEvent<SVGSVGElement>) {
        if (event.button !== 0 || !family || !drag.press(event.pointerId)) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        follow(event);
        event.currentTarget.querySelector<SVGGElement>('.family-handle')?.focus();
        event.preventDefault();
      },
      onPointerMove: follow,
      onPointerUp: ({ pointerId }: PointerEvent) => drag.lift(pointerId),
      onLostPointerCapture: ({ pointerId }: PointerEvent) => drag.lift(pointerId),
      onPointerCancel: ({ pointerId }: PointerEvent) => drag.takeBack(pointerId),
    },
  };
}

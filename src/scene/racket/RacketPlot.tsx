import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import { fixed } from '../../state/quantities';
import { tickText } from '../../ui/drawn/axes';
import { linePath, place, roundTicks } from '../../ui/drawn/plotScale';
import { type RacketRun, SLOWNESS } from './racketRun';
import { DURATION, flipsBy, type RacketThrow, SPIN } from './racketThrow';

const [WIDE, HIGH] = [300, 164];
const [LEFT, RIGHT, TOP, FOOT] = [26, 292, 6, 132];
const SAMPLES = 400;

const xOf = (time: number) => place(time, 0, DURATION, LEFT, RIGHT);
const yOf = (share: number) => place(share, -1.1, 1.1, FOOT, TOP);

/** The spin about the thrown axis against time, by the closed form; where it crosses zero the racket turns over. */
export function RacketPlot({ run }: { readonly run: RacketRun }) {
  const svg = useRef<SVGSVGElement>(null);
  const said = useRef<HTMLElement>(null);

  useEffect(() => {
    let drawn: RacketThrow | null = null;
    function show(): void {
      if (!svg.current) return;
      if (run.thrown !== drawn) {
        drawn = run.thrown;
        drawCurve(svg.current, drawn);
      }
      const text = saidText(run);
      // Written when the count changes only, so that it is read out once each time.
      if (said.current && said.current.textContent !== text) said.current.textContent = text;
      const x = xOf(run.time).toFixed(1);
      const now = svg.current.querySelector('.racket-now');
      now?.setAttribute('x1', x);
      now?.setAttribute('x2', x);
    }
    show();
    return run.subscribe(show);
  }, [run]);

  return (
    <>
      <p className="racket-said">
        <strong ref={said} data-testid="racket-flips" aria-live="polite" />{' '}
        <span className="lower-quiet">{t('racket.slowed', { times: SLOWNESS })}</span>
      </p>
      <p className="racket-plot-title">{t('racket.plot')}</p>
      <svg ref={svg} className="racket-plot" viewBox={`0 0 ${WIDE} ${HIGH}`} role="img">
        <path className="racket-axis" d={`M${LEFT} ${TOP}V${FOOT}M${LEFT} ${yOf(0)}H${RIGHT}`} />
        {roundTicks(0, DURATION, 8).map((time) => (
          <text key={time} className="racket-tick" x={xOf(time)} y={FOOT + 14} textAnchor="middle">
            {tickText(time)}
          </text>
        ))}
        {[-1, 0, 1].map((share) => (
          <text
            key={share}
            className="racket-tick"
            x={LEFT - 6}
            y={yOf(share) + 4}
            textAnchor="end"
          >
            {share > 0 ? `+${share}` : fixed(share, 0)}
          </text>
        ))}
        <text className="racket-tick" x={RIGHT} y={HIGH - 4} textAnchor="end">
          {t('racket.time')}
        </text>
        <path className="racket-curve" />
        <path className="racket-flips" />
        <line className="racket-now" y1={TOP} y2={FOOT} />
      </svg>
    </>
  );
}

function saidText({ thrown, time }: RacketRun): string {
  const flips = flipsBy(thrown, time);
  if (flips === 0) return t('racket.said.none');
  return flips === 1 ? t('racket.said.once') : t('racket.said', { flips });
}

function drawCurve(svg: SVGSVGElement, { free, index, flips, axis }: RacketThrow): void {
  const out = new Float64Array(3);
  const times = Array.from({ length: SAMPLES + 1 }, (_, i) => (DURATION * i) / SAMPLES);
  const shares = times.map((time) => yOf(free.spinAt(time, out)[index] / SPIN));
  svg.querySelector('.racket-curve')?.setAttribute('d', linePath(times.map(xOf), shares));
  const circle = (time: number) => {
    const x = xOf(time);
    return `M${(x - 4).toFixed(1)} ${yOf(0)}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`;
  };
  svg.querySelector('.racket-flips')?.setAttribute('d', flips.map(circle).join(''));
  const name = t(`racket.axis.${axis}`);
  const label =
    flips.length === 0
      ? t('racket.plot.none', { axis: name })
      : t('racket.plot.flips', {
          axis: name,
          times: flips.map((time) => fixed(time, 2)).join(', '),
        });
  svg.setAttribute('aria-label', label);
}

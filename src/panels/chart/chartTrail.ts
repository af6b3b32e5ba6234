import { degreesFromRadians, radians } from '../../engine/units';
import { t } from '../../messages';
import type { LetGoDesk } from '../../state/letGoTypes';
import type { HeadReading } from '../../state/reading';
import { linePath } from '../../ui/drawn/plotScale';
import { setShown, setText, setValues, svgElement } from '../marks/svg';
import { curveAt } from './curveAt';
import type { PlotFrame } from './plotFrame';
import { type PlottedQuantity, perMoment } from './quantity';

/**
 * The way of a released grip through the chart: what drives it, with friction taken off, so that it runs along the edges of
 * the friction band, the lower one going up and the upper one coming down (the sense of the moment); in the energy, all
 * that it has. Read from the sampled curves, straight between their quarter degrees.
 */
export interface ChartTrail {
  draw(frame: PlotFrame, reading: HeadReading, quantity: PlottedQuantity): void;
}

export function createChartTrail(svg: SVGSVGElement, desk: LetGoDesk): ChartTrail {
  const line = svgElement('path', null, { class: 'chart-trail', 'data-testid': 'chart-trail' });
  setText(svgElement('title', line), t('letGo.chartTrail'));
  svg.prepend(line);

  function draw(frame: PlotFrame, reading: HeadReading, quantity: PlottedQuantity): void {
    const { run } = desk;
    const { status } = desk.store.getState();
    const shown = run !== null && status !== 'held' && status !== 'starting';
    setShown(line, shown);
    if (!shown) return;
    const { length, pitch, rate, kinetic } = run.trace;
    const xs = new Float64Array(length);
    const ys = new Float64Array(length);
    const { curve } = reading;
    const per = perMoment(curve, quantity.kind);
    const source = quantity.kind === 'energy' ? curve.energy : curve.moment;
    for (let i = 0; i < length; i++) {
      const deg = degreesFromRadians(radians(pitch[i]));
      const own = curveAt(curve.pitchDeg, source, deg);
      const value =
        quantity.kind === 'energy'
          ? own + kinetic[i]
          : (own - Math.sign(rate[i]) * curveAt(curve.pitchDeg, curve.friction, deg)) *
            (per ? curveAt(curve.pitchDeg, per, deg) : 1);
      const y = frame.y(value * quantity.factor);
      xs[i] = frame.x(deg);
      ys[i] = y < frame.top || y > frame.bottom ? Number.NaN : y;
    }
    setValues(line, { d: linePath(xs, ys) });
  }

  return { draw };
}

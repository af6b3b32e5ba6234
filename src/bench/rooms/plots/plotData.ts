import type { PlotData, PlotPoints } from '../../../ui/drawn/plotLayout';
import { say } from '../../say';
import type { PlotContent, PlotPoint } from './plotScene';

const LINES = { model: '4', fit: 'total' } as const;
const BANDS = { friction: 'wide', fit: 'narrow', two: 'about' } as const;
const SHAPES = { pull: 'up', push: 'down', held: 'round' } as const;
const STATES = { counts: 'full', doubted: 'ringed', aside: 'crossed' } as const;

/** A plot of readings as it leaves the page and as a table; `held`: what a reading without a direction is called there. */
export function plotData(
  { x, curves, bands, points }: PlotContent,
  titles: { readonly x: string; readonly y: string; readonly held: string },
): PlotData {
  return {
    x,
    lines: curves
      .filter(({ y }) => !y.every(Number.isNaN))
      .map(({ look, y }) => ({
        name: say(`benchRoom.plot.${look}`),
        look: LINES[look],
        values: y,
      })),
    bands: bands
      .filter(({ low }) => !low.every(Number.isNaN))
      .map(({ look, low, high }) => ({
        name: look === 'two' ? '' : say(`benchRoom.plot.band.${look}`),
        look: BANDS[look],
        low,
        high,
      })),
    points: (['counts', 'doubted', 'aside'] as const).flatMap((state) =>
      (['pull', 'push', 'held'] as const).flatMap((kind) => {
        const own = points.filter((point) => point.kind === kind && point.state === state);
        const travel = kind === 'held' ? titles.held : say(`benchRoom.travel.${kind}`);
        return own.length === 0 ? [] : [pointsOf(own, travel)];
      }),
    ),
    xTitle: titles.x,
    yTitle: titles.y,
  };
}

/** All of one kind and state. */
function pointsOf(points: readonly PlotPoint[], travel: string): PlotPoints {
  const [{ kind, state }] = points;
  const doubt = state === 'doubted' ? 'benchRoom.plot.keyDoubted' : 'benchRoom.plot.keyAside';
  return {
    name: state === 'counts' ? travel : `${travel}, ${say(doubt)}`,
    shape: SHAPES[kind],
    state: STATES[state],
    x: points.map(({ x }) => x),
    y: points.map(({ y }) => y),
    ...(points.some(({ half }) => half !== undefined) && {
      half: points.map(({ half }) => half ?? Number.NaN),
    }),
  };
}

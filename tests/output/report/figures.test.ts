import { describe, expect, it } from 'vitest';
import { chartFigure } from '../../../src/output/report/figures/chartFigure';
import { dialFigure } from '../../../src/output/report/figures/dialFigure';
import {
  type Command,
  circle,
  ellipse,
  type Figure,
  pathData,
} from '../../../src/output/report/figures/figure';
import { clippedLine } from '../../../src/output/report/figures/plotLine';
import { METRIC_UNITS } from '../../../src/state/settings';
import { demoDesign, inputsOf } from './demoReport';

/** Points on a path, twenty to a cubic piece. */
function pointsOf(commands: readonly Command[]): [number, number][] {
  const points: [number, number][] = [];
  for (const command of commands) {
    if (command[0] === 'Z') continue;
    if (command[0] !== 'C') {
      points.push([command[1], command[2]]);
      continue;
    }
    const [x0, y0] = points[points.length - 1];
    const [, a, b, c, d, e, f] = command;
    for (let i = 1; i <= 20; i++) {
      const [t, u] = [i / 20, 1 - i / 20];
      const mix = (p: number, q: number, r: number, s: number) =>
        u ** 3 * p + 3 * u * u * t * q + 3 * u * t * t * r + t ** 3 * s;
      points.push([mix(x0, a, c, e), mix(y0, b, d, f)]);
    }
  }
  return points;
}

function everyPoint({ shapes }: Figure): [number, number][] {
  return shapes.flatMap((shape) =>
    shape.kind === 'path' ? pointsOf(shape.commands) : [[shape.x, shape.y] as [number, number]],
  );
}

describe('shapes of the report', () => {
  it('draws a circle of cubic pieces that leaves the true one by less than 0.03 % of its radius', () => {
    // Largest error of the usual four-piece circle: 2.73e-4 of the radius (textbook value).
    for (const [x, y] of pointsOf(circle(3, -2, 10, {}).commands)) {
      expect(Math.abs(Math.hypot(x - 3, y + 2) - 10)).toBeLessThan(2.8e-3);
    }
  });

  it('turns an ellipse clockwise on the paper, where y is down', () => {
    const [first] = pointsOf(ellipse(0, 0, 4, 1, {}, 90).commands);
    expect(first[0]).toBeCloseTo(0, 12);
    expect(first[1]).toBeCloseTo(4, 12);
  });

  it('writes the same commands as SVG path data', () => {
    expect(pathData([['M', 1, 2.345], ['C', 0, 0, 1, 1, 2, 2], ['Z']])).toBe(
      'M1 2.35C0 0 1 1 2 2Z',
    );
  });
});

describe('a curve cut to its window', () => {
  const window = { low: -10, high: 10, reach: 1, x: (p: number) => p, y: (v: number) => v };
  const cut = (pitches: number[], values: number[]) =>
    clippedLine(Float64Array.from(pitches), Float64Array.from(values), window);

  it('ends where the straight piece leaves at the top, worked by hand', () => {
    // From (0, 0) to (4, 2): it meets 1 half way, at 2.
    expect(cut([0, 4], [0, 2])).toEqual([
      ['M', 0, 0],
      ['L', 2, 1],
    ]);
  });

  it('lifts the pen over a gap and is not drawn through a pole', () => {
    const gap = cut([0, 1, 2, 3, 4], [0, 0, Number.NaN, 0, 0]);
    expect(gap.map(([op]) => op).join('')).toBe('MLML');
    const pole = cut([0, 1, 2, 3], [0, 0.9, -2.5, -0.6]);
    // Up to 0.9, then from the bottom edge: never straight down the height.
    expect(pole.map(([op]) => op).join('')).toBe('MLML');
  });

  it('is held to the pitches of the window', () => {
    const points = pointsOf(cut([-20, 20], [0.5, 0.5]));
    expect(points).toEqual([
      [-10, 0.5],
      [10, 0.5],
    ]);
  });
});

describe('dial and chart on paper', () => {
  const { reading } = inputsOf(demoDesign('4-turned-nut'));

  it('keep every line and the foot of every text inside their own frames', () => {
    for (const figure of [dialFigure(reading, 12), chartFigure(reading, METRIC_UNITS, null)]) {
      for (const [x, y] of everyPoint(figure)) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(figure.width);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y).toBeLessThanOrEqual(figure.height);
      }
    }
  });

  it('turn the parts anticlockwise with the pitch: a quarter turn takes the leading edge up', () => {
    const furthest = (pitch: number) => {
      const { shapes } = dialFigure(reading, pitch);
      // The pointer: the only solid line from the middle out to nine pixels inside the ring.
      const pointer = shapes.find(
        (shape) =>
          shape.kind === 'path' &&
          shape.width === 1.2 &&
          shape.dash === undefined &&
          shape.commands.length === 2,
      );
      return pointer?.kind === 'path' ? pointsOf(pointer.commands) : [];
    };
    const [[cx, cy], [x0, y0]] = furthest(0);
    expect([x0 - cx, y0 - cy]).toEqual([95, 0]);
    const [, [x90, y90]] = furthest(90);
    expect(x90 - cx).toBeCloseTo(0, 9);
    expect(y90 - cy).toBeCloseTo(-95, 9);
  });

  it('turn the spread ellipse with the parts', () => {
    const axis = (pitch: number) => {
      const { shapes } = dialFigure(reading, pitch);
      const drawn = shapes.find((shape) => shape.kind === 'path' && shape.stroke === '#0072b2');
      const [first, , , , last] = drawn?.kind === 'path' ? drawn.commands : [];
      // A whole turn of four pieces ends where it began.
      if (first?.[0] !== 'M' || last?.[0] !== 'C') throw new Error('no ellipse');
      expect(last[5]).toBeCloseTo(first[1], 9);
      const [x, y] = [first[1] - 112, first[2] - 143];
      return { angle: (Math.atan2(-y, x) * 180) / Math.PI, size: Math.hypot(x, y) };
    };
    const [flat, turned] = [axis(0), axis(30)];
    expect(turned.angle - flat.angle).toBeCloseTo(30, 9);
    expect(turned.size).toBeCloseTo(flat.size, 9);
  });

  it('mark every rest and flee angle once, rest filled and flee hollow', () => {
    const { equilibria } = reading;
    const rests =
      equilibria.kind === 'neutral'
        ? 0
        : equilibria.roots.filter((one) => one.kind === 'stable').length;
    const filled = dialFigure(reading, 0).shapes.filter(
      (shape) => shape.kind === 'path' && shape.fill === '#1a1d1b' && shape.width === 1.4,
    );
    expect(filled).toHaveLength(rests);
    expect(rests).toBeGreaterThan(0);
  });

  it('put each set pitch on the chart at the height that the axis says', () => {
    const ordinary = inputsOf(demoDesign('3-ordinary-bolt')).reading;
    const { shapes } = chartFigure(ordinary, METRIC_UNITS, null);
    // Numbers of the axis end at its left edge; their baseline stands 3.5 below the line that they name.
    const ticks = shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.anchor === 'end'
        ? [{ value: Number(shape.text.replace('\u2212', '-')), y: shape.y - 3.5 }]
        : [],
    );
    const [low, high] = [ticks[0], ticks[ticks.length - 1]];
    const perUnit = (high.y - low.y) / (high.value - low.value);
    const squares = shapes.filter(
      (shape) =>
        shape.kind === 'path' &&
        shape.fill === '#1a1d1b' &&
        shape.stroke === undefined &&
        shape.commands.length === 5,
    );
    expect(squares).toHaveLength(5);
    squares.forEach((square, i) => {
      const [corner] = square.kind === 'path' ? pointsOf(square.commands) : [];
      const value = ordinary.forceAt(-20 + 10 * i) ?? Number.NaN;
      expect(corner[1] + 2.5).toBeCloseTo(low.y + perUnit * (value - low.value), 6);
    });
    // The ordinary bolt pulls ten newtons at -20 degrees: the squares are not all at zero.
    expect(ordinary.forceAt(-20)).toBeGreaterThan(5);
  });

  it('write on the chart the number that the head gives at each set pitch', () => {
    const { shapes } = chartFigure(reading, METRIC_UNITS, null);
    const texts = shapes.flatMap((shape) =>
      shape.kind === 'text' && shape.bold ? [shape.text] : [],
    );
    const wanted = [-20, -10, 0, 10, 20].map((pitch) => reading.forceAt(pitch) ?? Number.NaN);
    expect(texts).toHaveLength(5);
    // Three digits are shown: half of the last of them, relative to the value.
    texts.forEach((text, i) => {
      const shown = Number(text.replace('\u2212', '-'));
      expect(Math.abs(shown - wanted[i])).toBeLessThanOrEqual(0.006 * Math.abs(wanted[i]));
    });
  });
});

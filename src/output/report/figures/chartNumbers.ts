import { significant } from '../../../state/quantities';
import type { HeadReading } from '../../../state/reading';
import { pitchMarks } from '../../../state/words/pitchMarks';
import { INK, polygon, type Shape, text } from './figure';
import { type NumberBox, placeNumbers } from './numberPlaces';
import type { PlotWindow } from './plotLine';

/** Set pitches as shares of the pitch in use. */
export const SET_SHARES = [-1, -0.5, 0, 0.5, 1] as const;

/** What the chart shows at the set pitches, in display units; a pitch without a value is left out. */
export function setValues(
  reading: HeadReading,
  factor: number,
): { readonly pitchDeg: number; readonly value: number }[] {
  return SET_SHARES.flatMap((share) => {
    const pitchDeg = share * reading.usedPitchDeg;
    const value = reading.linkage ? reading.forceAt(pitchDeg) : reading.momentAt(pitchDeg);
    return value === null || Number.isNaN(value) ? [] : [{ pitchDeg, value: value * factor }];
  });
}

/** A square on the curve at each set pitch, and its number where it covers least. */
export function numberShapes(
  reading: HeadReading,
  lines: readonly Float64Array[],
  factor: number,
  frame: PlotWindow,
  box: NumberBox,
): Shape[] {
  const points = setValues(reading, factor).map(({ pitchDeg, value }) => {
    const sign = value > 0.005 ? '+' : '';
    const words = `${sign}${Math.abs(value) < 0.005 ? '0' : significant(value)}`;
    return { x: frame.x(pitchDeg), y: frame.y(value), words };
  });
  const marks = pitchMarks(reading).map(({ pitchDeg }) => [frame.x(pitchDeg), frame.y(0)] as const);
  const places = placeNumbers(
    points,
    [
      ...lines.flatMap((values) => curvePoints(reading, values, frame)),
      ...marks,
      ...points.map(({ x, y }) => [x, y] as const),
    ],
    box,
  );
  return points.flatMap(({ x, y, words }, i): Shape[] => [
    polygon(
      [
        [x - 2.5, y - 2.5],
        [x + 2.5, y - 2.5],
        [x + 2.5, y + 2.5],
        [x - 2.5, y + 2.5],
      ],
      { fill: INK.text },
    ),
    text(places[i].x, places[i].y, words, { anchor: 'middle', bold: true, size: 10 }),
  ]);
}

/** The curve's points in the plot, no farther apart than a letter is wide where it is steep. */
function curvePoints(
  { curve }: HeadReading,
  values: Float64Array,
  { low, high, reach, x, y }: PlotWindow,
): [number, number][] {
  const points: [number, number][] = [];
  curve.pitchDeg.forEach((pitch, i) => {
    if (i === 0 || pitch <= low || pitch > high) return;
    const [from, to] = [values[i - 1], values[i]];
    const steps = Math.min(50, Math.ceil(Math.abs(y(to) - y(from)) / 3) || 1);
    for (let k = 1; k <= steps; k++) {
      const value = from + ((to - from) * k) / steps;
      if (Math.abs(value) <= reach) points.push([x(pitch), y(value)]);
    }
  });
  return points;
}

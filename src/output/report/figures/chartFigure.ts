import type { CurveColumns } from '../../../design/curve';
import { closedSpans } from '../../../state/closedSpans';
import { displayForce, displayMoment } from '../../../state/quantities';
import type { HeadReading } from '../../../state/reading';
import type { DisplayUnits } from '../../../state/settings';
import { pitchMarks } from '../../../state/words/pitchMarks';
import { signedDegrees } from '../../../state/words/pitchText';
import { tickText } from '../../../ui/drawn/axes';
import { place, roundTicks } from '../../../ui/drawn/plotScale';
import { t } from '../roomText';
import { numberShapes, setValues } from './chartNumbers';
import {
  circle,
  type Figure,
  INK,
  type Look,
  line,
  path,
  polygon,
  type Shape,
  text,
} from './figure';
import { clippedLine, clippedPoints, type PlotWindow } from './plotLine';
import { axisShapes, box } from './plotShapes';

const WIDTH = 380;
const HEIGHT = 286;
const BOX = { left: 46, right: WIDTH - 18, top: 46, bottom: HEIGHT - 34 };
/** Of the letters. */
const SIZE = 9.5;
const { left: LEFT, right: RIGHT, top: TOP, bottom: BOTTOM } = BOX;

/** Beyond the pitch in use the chart goes on for as much again, and shows what waits there. */
const BEYOND = 2;
const SMALLEST_FORCE = 1;
const USUAL_ARM = 0.01;

/** One line of the chart, in display units over the curve's pitches. */
interface Drawn {
  readonly name: string;
  readonly values: Float64Array;
  readonly look: Look;
}

/** A curve to lay under the present one: the head as it was. */
export interface ChartBefore {
  readonly name: string;
  readonly curve: CurveColumns;
}

/**
 * Push-rod force of one grip against pitch (the moment where there is no arm): total, what of it is mass and what air, the
 * band of friction, rest and flee angles, and the numbers at the set pitches.
 */
export function chartFigure(
  reading: HeadReading,
  units: DisplayUnits,
  before: ChartBefore | null,
): Figure {
  const { usedPitchDeg } = reading;
  const factor = displayFactor(reading, units);
  const lines = linesOf(reading, factor, before);
  const limit = Math.min(90, BEYOND * usedPitchDeg);
  const frame = frameOf(reading, lines, limit, factor);
  const shapes = [
    ...groundShapes(reading, frame),
    ...bandShapes(reading, lines[0], factor, frame),
    ...lines.toReversed().map(({ values, look }) => curveShape(reading, values, look, frame)),
    ...markShapes(reading, frame),
    ...numberShapes(
      reading,
      lines.map(({ values }) => values),
      factor,
      frame,
      BOX,
    ),
    ...keyShapes(lines, reading),
    ...titleShapes(reading, units, frame),
  ];
  return { width: WIDTH, height: HEIGHT, alt: t('report.chartAlt'), shapes };
}

function displayFactor({ linkage }: HeadReading, units: DisplayUnits): number {
  return linkage ? displayForce(1, units).value : displayMoment(1, units).value;
}

function linesOf(reading: HeadReading, factor: number, before: ChartBefore | null): Drawn[] {
  const { curve, linkage, terms } = reading;
  const per = (i: number, own = curve.forcePerMoment) => factor * (linkage ? own[i] : 1);
  const lines: Drawn[] = [
    {
      name: t('report.lineTotal'),
      values: curve.moment.map((moment, i) => moment * per(i)),
      look: { stroke: INK.text, width: 1.8 },
    },
  ];
  const air = terms.find(({ id }) => id === 'air');
  if (air) {
    const share = curve.pitchDeg.map((pitch, i) => air.momentAt(pitch) * per(i));
    lines.push(
      {
        name: t('report.lineMass'),
        values: lines[0].values.map((value, i) => value - share[i]),
        look: { stroke: INK.flees, width: 1.2, dash: [6, 3] },
      },
      {
        name: t('chart.term.air'),
        values: share,
        look: { stroke: INK.centres, width: 1.2, dash: [1.5, 2.5] },
      },
    );
  }
  if (before) {
    const { moment, forcePerMoment } = before.curve;
    lines.push({
      name: before.name,
      values: moment.map((one, i) => one * per(i, forcePerMoment)),
      look: { stroke: INK.before, width: 1.2, dash: [8, 2.5, 1.5, 2.5] },
    });
  }
  return lines;
}

/** Where the arm comes over centre in the pitch in use, force has no bound: so many times the set pitches' is shown. */
const POLE_REACH = 3;

/**
 * The height shows everything within the pitch in use (but for what runs off where the arm comes over centre), and at least
 * a newton, so that nearly nothing looks flat.
 */
function frameOf(
  reading: HeadReading,
  lines: readonly Drawn[],
  limit: number,
  factor: number,
): PlotWindow {
  const { curve, usedPitchDeg, linkage } = reading;
  const least = SMALLEST_FORCE * factor * (linkage ? 1 : linkageArm(linkage));
  let size = least;
  curve.pitchDeg.forEach((pitch, i) => {
    if (Math.abs(pitch) > 1.25 * usedPitchDeg) return;
    for (const { values } of lines) if (Math.abs(values[i]) > size) size = Math.abs(values[i]);
  });
  const pole = closedSpans(linkage).some(({ edgeDeg }) => Math.abs(edgeDeg) <= 1.25 * usedPitchDeg);
  if (pole) {
    const set = setValues(reading, factor).map(({ value }) => Math.abs(value));
    size = Math.min(size, Math.max(least, POLE_REACH * Math.max(0, ...set)));
  }
  const reach = 1.2 * size;
  return {
    low: -limit,
    high: limit,
    reach,
    x: (pitch) => place(pitch, -limit, limit, LEFT, RIGHT),
    y: (value) => place(value, -reach, reach, BOTTOM, TOP),
  };
}

function linkageArm(linkage: HeadReading['linkage']): number {
  return linkage?.reach || USUAL_ARM;
}

function groundShapes(reading: HeadReading, frame: PlotWindow): Shape[] {
  const { usedPitchDeg } = reading;
  const x = (pitch: number) => frame.x(Math.min(frame.high, Math.max(frame.low, pitch)));
  const ticks = {
    x: roundTicks(frame.low, frame.high, 8).map((pitch) => ({
      at: frame.x(pitch),
      text: signedDegrees(pitch, 0),
    })),
    y: roundTicks(-frame.reach, frame.reach, 7).map((value) => ({
      at: frame.y(value),
      text: tickText(value),
    })),
  };
  const shapes: Shape[] = [
    box(x(-usedPitchDeg), TOP, x(usedPitchDeg), BOTTOM, { fill: INK.wash }),
    ...axisShapes(BOX, ticks, frame.y(0), SIZE),
  ];
  for (const { edgeDeg } of closedSpans(reading.linkage)) {
    if (Math.abs(edgeDeg) >= frame.high) continue;
    const at = frame.x(edgeDeg);
    shapes.push(line(at, TOP, at, BOTTOM, { stroke: INK.flees, width: 1, dash: [4, 2] }));
  }
  return shapes;
}

function bandShapes(
  { curve, friction, linkage }: HeadReading,
  total: Drawn,
  factor: number,
  frame: PlotWindow,
): Shape[] {
  if (!friction.counted || !friction.known) return [];
  const half = curve.friction.map((one, i) =>
    Math.abs(one * factor * (linkage ? curve.forcePerMoment[i] : 1)),
  );
  const edge = (sign: 1 | -1) =>
    clippedPoints(
      curve.pitchDeg,
      total.values.map((value, i) => value + sign * half[i]),
      frame,
    );
  const [over, under] = [edge(1), edge(-1)];
  if (over.length < 2) return [];
  return [polygon([...over, ...under.toReversed()], { fill: INK.holdsWash })];
}

function curveShape(
  { curve }: HeadReading,
  values: Float64Array,
  look: Look,
  frame: PlotWindow,
): Shape {
  return path(clippedLine(curve.pitchDeg, values, frame), look);
}

function markShapes(reading: HeadReading, frame: PlotWindow): Shape[] {
  return pitchMarks(reading)
    .filter(({ pitchDeg }) => Math.abs(pitchDeg) <= frame.high)
    .map(({ pitchDeg, kind }) =>
      circle(frame.x(pitchDeg), frame.y(0), 4, {
        stroke: INK.text,
        width: 1.2,
        fill: kind === 'stable' ? INK.text : '#ffffff',
      }),
    );
}

/** Names of the lines with a piece of each, two to a row, over the plot. */
function keyShapes(lines: readonly Drawn[], { friction }: HeadReading): Shape[] {
  const band = friction.counted && friction.known;
  const items: { readonly name: string; readonly look: Look | null }[] = [
    ...lines.map(({ name, look }) => ({ name, look })),
    ...(band ? [{ name: t('report.lineFriction'), look: null }] : []),
  ];
  const across = (RIGHT - LEFT) / 3;
  return items.flatMap(({ name, look }, i): Shape[] => {
    const x = LEFT + (i % 3) * across;
    const y = TOP - 22 + 12 * Math.floor(i / 3);
    const short = name.length > 17 ? `${name.slice(0, 16).trimEnd()}\u2026` : name;
    const sample = look
      ? line(x, y - 3, x + 18, y - 3, look)
      : box(x, y - 7, x + 18, y, { fill: INK.holdsWash, stroke: INK.holds, width: 0.4 });
    return [sample, text(x + 22, y, short, { size: SIZE })];
  });
}

function titleShapes({ linkage }: HeadReading, units: DisplayUnits, frame: PlotWindow): Shape[] {
  const { unit } = linkage ? displayForce(1, units) : displayMoment(1, units);
  const title = t(linkage ? 'report.axisForce' : 'report.axisMoment', { unit });
  const small = { size: SIZE, colour: INK.quiet } as const;
  return [
    text(LEFT - 40, 10, title, { ...small, colour: INK.text }),
    text((frame.x(frame.low) + frame.x(frame.high)) / 2, HEIGHT - 6, t('report.axisPitch'), {
      ...small,
      anchor: 'middle',
    }),
  ];
}

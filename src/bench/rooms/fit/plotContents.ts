import { frictionForce } from '../../../engine/identify/benchDesign';
import { fittedOf } from '../../../engine/identify/benchFitTypes';
import { restDragAt } from '../../../engine/identify/benchReading';
import { degreesFromRadians, radiansFromDegrees, rpmFromAngularSpeed } from '../../../engine/units';
import { displayForce, fixed, show, showDegrees } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { say } from '../../say';
import { readingAt } from '../../setup';
import { splitRung } from '../../splitRung';
import type { PlotContent, PlotPoint } from '../plots/plotScene';
import { rungCurves } from './curves';
import { reasonText, withHalf } from './fitWords';
import type { ShownReading } from './shownReadings';

const KINDS = { 1: 'pull', 0: 'held', [-1]: 'push' } as const;
/** Speeds within a thousandth are one. */
const SAME_SPEED = 1e-3;

export function isAtSpeed(reading: { readonly angularSpeed: number }, speed: number): boolean {
  return Math.abs(reading.angularSpeed - speed) < SAME_SPEED * speed;
}

export function idOf({ origin }: Pick<ShownReading, 'origin'>): string {
  return `${origin.run} ${origin.place}`;
}

/**
 * "Bare grip, reading 3: 1.23 N at -20 degrees, pull, 10200 rpm. 2.1 standard uncertainties over the fit." The force as it was
 * read; without the fitted zero, as the plot has it, it is said beside it where it differs.
 */
export function readingText(shown: ShownReading, units: DisplayUnits): string {
  const { reading, standardised, state, reasons } = shown;
  const line = say('benchRoom.plot.point', {
    name: shown.name,
    number: shown.origin.place + 1,
    force: forceWords(shown, units),
    pitch: showDegrees(degreesFromRadians(reading.pitch)),
    travel: say(`benchRoom.travel.${KINDS[reading.sense]}`),
    rpm: fixed(rpmFromAngularSpeed(reading.angularSpeed), 0),
  });
  const left = Number.isFinite(standardised)
    ? ` ${say(standardised < 0 ? 'benchRoom.plot.under' : 'benchRoom.plot.over', {
        many: fixed(Math.abs(standardised), 1),
      })}`
    : '';
  if (state === 'aside') return `${line}${left} ${say('benchRoom.plot.aside')}`;
  const why = reasons.map((reason) => reasonText(reason, units)).join('; ');
  return state === 'doubted' ? `${line} ${say('benchRoom.plot.doubted', { why })}` : line + left;
}

function forceWords({ reading, force }: ShownReading, units: DisplayUnits): string {
  const words = (newtons: number, digits?: number) => show(displayForce(newtons, units), digits);
  const read = words(reading.force);
  return words(reading.force, 2) === words(force, 2) || !Number.isFinite(force)
    ? read
    : say('benchRoom.plot.withoutZero', { read, less: words(force) });
}

function pointOf(shown: ShownReading, y: number, units: DisplayUnits): PlotPoint {
  const { reading, state } = shown;
  return {
    id: idOf(shown),
    x: degreesFromRadians(reading.pitch),
    y,
    kind: KINDS[reading.sense],
    state,
    text: readingText(shown, units),
  };
}

/** Force at the gauge at one speed, over the predicted and the fitted curve. */
export function forceContent(
  rung: RungAnalysis,
  fitted: FittedHead,
  shown: readonly ShownReading[],
  speed: number,
  units: DisplayUnits,
): PlotContent {
  const curves = rungCurves(rung, fitted, speed);
  const scaled = (values: readonly number[]) =>
    values.map((value) => displayForce(value, units).value);
  return {
    x: curves.pitchDeg,
    bands: [
      { look: 'friction', low: scaled(curves.frictionLow), high: scaled(curves.frictionHigh) },
      { look: 'fit', low: scaled(curves.fitLow), high: scaled(curves.fitHigh) },
    ],
    curves: [
      { look: 'model', y: scaled(curves.model) },
      { look: 'fit', y: scaled(curves.fit) },
    ],
    points: shown
      .filter(({ reading }) => isAtSpeed(reading, speed))
      .map((one) => pointOf(one, displayForce(one.force, units).value, units)),
  };
}

/** What the fit leaves over at all speeds, in standard uncertainties. */
export function leftContent(
  shown: readonly ShownReading[],
  x: readonly number[],
  units: DisplayUnits,
): PlotContent {
  return {
    x,
    bands: [{ look: 'two', low: x.map(() => -2), high: x.map(() => 2) }],
    curves: [],
    points: shown
      .filter(({ standardised }) => Number.isFinite(standardised))
      .map((one) => pointOf(one, one.standardised, units)),
    least: [-3, 3],
  };
}

/** Half of pull less push against pitch at one speed: friction and drag, over the model's and the fitted. Null: no pairs. */
export function frictionContent(
  rung: RungAnalysis,
  fitted: FittedHead,
  speed: number,
  x: readonly number[],
  units: DisplayUnits,
): PlotContent | null {
  const { head, setup } = rung;
  const { rows } = splitRung(rung, fitted);
  const own = rows.filter((row) => isAtSpeed(row, speed));
  if (own.length === 0) return null;
  const scaled = (value: number) => displayForce(value, units).value;
  const { friction } = fittedOf(fitted.fit);
  const pitches = x.map(radiansFromDegrees);
  return {
    x,
    bands: [],
    curves: [
      { look: 'model', y: pitches.map((pitch) => scaled(head.frictionForce(pitch, speed))) },
      {
        look: 'fit',
        y: pitches.map((pitch) => {
          const reading = {
            ...readingAt(head, pitch, speed),
            force: 0,
            sense: 1,
            zero: 0,
          } as const;
          const drag = restDragAt(setup.drag, reading.travel).force;
          return scaled(frictionForce(reading, setup, friction, drag));
        }),
      },
    ],
    points: own.map((row, k) => {
      // Twice the standard uncertainty of half the difference: about 95 %.
      const half = scaled(2 * row.momentSigma);
      const { value, unit } = displayForce(row.hysteresis / 2, units);
      const pitchDeg = degreesFromRadians(row.pitch);
      const said = withHalf({ value, unit }, half);
      return {
        id: `${row.zero} ${k}`,
        x: pitchDeg,
        y: value,
        half,
        kind: 'held',
        state: 'counts',
        text: say('benchRoom.plot.frictionPoint', { pitch: showDegrees(pitchDeg), said }),
      };
    }),
  };
}

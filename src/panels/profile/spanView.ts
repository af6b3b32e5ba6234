import { centralSecondMoment, centreOfMass } from '../../engine/mass/inertia';
import { M, type Moments } from '../../engine/mass/moments';
import { gramsFromKilograms, INCH_MM, mmFromMetres, OUNCE_GRAMS } from '../../engine/units';
import { t } from '../../messages';
import type { SpanProfile } from '../../parts/contract';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition, secondMomentText } from '../../state/shownUnits';
import { tickText } from '../../ui/drawn/axes';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { linePath, place, roundTicks } from '../../ui/drawn/plotScale';

export const PLOT_WIDTH = 268;
export const PLOT_HEIGHT = 190;
export const LEFT = 40;
export const RIGHT = PLOT_WIDTH - 6;
/** Upper field: mass per length. Lower field: the centre of each slice. */
export const MASS_TOP = 16;
export const MASS_FOOT = 84;
export const CENTRE_TOP = 110;
export const CENTRE_FOOT = 160;

export interface PlotTick {
  readonly at: number;
  readonly text: string;
}
export interface SpanView {
  readonly massLine: string;
  readonly massArea: string;
  readonly centreLine: string;
  /** Centre of mass in the lower field, pixels. */
  readonly centre: { readonly x: number; readonly y: number };
  readonly spanTicks: readonly PlotTick[];
  readonly massTicks: readonly PlotTick[];
  readonly centreTicks: readonly PlotTick[];
  /** The bolt axis in the lower field. */
  readonly zeroY: number;
  readonly massTitle: string;
  readonly centreTitle: string;
  readonly spanTitle: string;
  readonly summary: string;
  /** The same as it leaves the page. */
  readonly data: PlotData;
}

/**
 * What the plot shows. `factor` scales the drawn mass to the weighed one; `moments_B` are those that apply, in the body
 * frame. Null without mass.
 */
export function spanView(
  profile: SpanProfile,
  factor: number,
  moments_B: Moments,
  units: DisplayUnits,
): SpanView | null {
  const centre = centreOfMass(moments_B);
  const J = centralSecondMoment(moments_B);
  if (!centre || !J || !(moments_B[M] > 0)) return null;
  const length = (metres: number) =>
    units.length === 'mm' ? mmFromMetres(metres) : mmFromMetres(metres) / INCH_MM;
  const xs = Array.from(profile.x, length);
  const masses = Array.from(profile.massPerLength, (one) => massPerShown(one * factor, units));
  const centres = Array.from(profile.centreY, length);
  const [xLow, xHigh] = [xs[0], xs[xs.length - 1]];
  const massHigh = 1.08 * Math.max(...masses);
  const [cLow, cHigh] = centreRange([...centres, length(centre[1])]);
  const px = xs.map((x) => place(x, xLow, xHigh, LEFT, RIGHT));
  const onMass = (value: number) => place(value, 0, massHigh, MASS_FOOT, MASS_TOP);
  const onCentre = (value: number) => place(value, cLow, cHigh, CENTRE_FOOT, CENTRE_TOP);
  const massLine = linePath(px, masses.map(onMass));
  const ticks = (values: readonly number[], put: (value: number) => number) =>
    values.map((value) => ({ at: put(value), text: tickText(value) }));
  const titles = {
    mass: t('profile.massAxis', { unit: massPerUnit(units) }),
    centre: t('profile.centreAxis', { unit: units.length }),
    span: t('profile.spanAxis', { unit: units.length }),
  };
  const marks = [{ x: length(centre[0]), text: t('profile.centreOfMass') }];
  return {
    massLine,
    massArea: `${massLine}L${RIGHT} ${MASS_FOOT}L${LEFT} ${MASS_FOOT}Z`,
    centreLine: linePath(px, centres.map(onCentre)),
    centre: {
      x: place(length(centre[0]), xLow, xHigh, LEFT, RIGHT),
      y: onCentre(length(centre[1])),
    },
    spanTicks: ticks(roundTicks(xLow, xHigh, 5), (x) => place(x, xLow, xHigh, LEFT, RIGHT)),
    massTicks: ticks(roundTicks(0, massHigh, 3), onMass),
    centreTicks: ticks(roundTicks(cLow, cHigh, 3), onCentre),
    zeroY: onCentre(0),
    massTitle: titles.mass,
    centreTitle: titles.centre,
    spanTitle: titles.span,
    data: {
      x: xs,
      lines: [{ name: titles.mass, look: 'total', values: masses }],
      xTitle: titles.span,
      yTitle: titles.mass,
      marks,
      below: {
        x: xs,
        lines: [{ name: titles.centre, look: '2', values: centres }],
        xTitle: titles.span,
        yTitle: titles.centre,
        marks,
      },
    },
    summary: t('profile.summary', {
      x: `${displayPosition(centre[0], units)}\u00a0${units.length}`,
      y: `${displayPosition(Math.abs(centre[1]), units)}\u00a0${units.length}`,
      side: t(centre[1] < 0 ? 'profile.behind' : 'profile.ahead'),
      span: secondMomentText(J.xx, units),
      chord: secondMomentText(J.yy, units),
      thickness: secondMomentText(J.zz, units),
    }),
  };
}

/** The bolt axis is always in view, with a little room either side. */
function centreRange(values: readonly number[]): readonly [number, number] {
  const known = values.filter((value) => !Number.isNaN(value));
  const low = Math.min(0, ...known);
  const high = Math.max(0, ...known);
  const room = 0.15 * (high - low || 1);
  return [low - room, high + room];
}

/** kg/m is g/mm. */
function massPerShown(perMetre: number, units: DisplayUnits): number {
  const gramsPerMm = gramsFromKilograms(perMetre) / 1000;
  const perLength = units.length === 'mm' ? gramsPerMm : gramsPerMm * INCH_MM;
  return units.mass === 'g' ? perLength : perLength / OUNCE_GRAMS;
}

function massPerUnit(units: DisplayUnits): string {
  return `${units.mass}/${units.length}`;
}

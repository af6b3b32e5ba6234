import type { HeadAir } from '../../design/forces/headAir';
import { createCoefficients, OUTSIDE_ANGLE } from '../../engine/air/section';
import { degreesFromRadians, radians, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { fixed } from '../../state/quantities';
import { signedDegrees } from '../../state/words/pitchText';
import type { PlotData } from '../../ui/drawn/plotLayout';

type EstimatedAir = Extract<HeadAir, { readonly kind: 'estimated' }>;

/** As far as a table reaches. */
const WIDEST_DEG = 90;
const STEP_DEG = 0.5;
/** Of the tip radius: the usual place to judge a blade's section at. */
const JUDGED_AT = 0.75;

/** The station next to three quarters of the radius, and its Reynolds number without inflow. */
export function judgedStation({ blade, conditions }: EstimatedAir): {
  readonly index: number;
  readonly reynolds: number;
} {
  const wanted = JUDGED_AT * blade.tipRadius;
  let index = 0;
  blade.stations.forEach((station, i) => {
    if (Math.abs(station - wanted) < Math.abs(blade.stations[index] - wanted)) index = i;
  });
  const speed = conditions.angularSpeed * blade.stations[index];
  return {
    index,
    reynolds: (conditions.density * speed * blade.chords[index]) / conditions.viscosity,
  };
}

/** Lift, drag and moment of the section against its angle; NaN beyond a table's angles. */
export function sectionCurves(air: EstimatedAir): {
  readonly anglesDeg: Float64Array;
  readonly lift: Float64Array;
  readonly drag: Float64Array;
  readonly moment: Float64Array;
} {
  const count = (2 * WIDEST_DEG) / STEP_DEG + 1;
  const anglesDeg = Float64Array.from({ length: count }, (_, i) => i * STEP_DEG - WIDEST_DEG);
  const { reynolds } = judgedStation(air);
  const [lift, drag, moment] = [0, 0, 0].map(() => new Float64Array(count).fill(Number.NaN));
  const answer = createCoefficients();
  anglesDeg.forEach((angle, i) => {
    air.section.coefficients(radiansFromDegrees(angle), reynolds, answer);
    if (answer.outside & OUTSIDE_ANGLE) return;
    lift[i] = answer.lift;
    drag[i] = answer.drag;
    moment[i] = answer.moment;
  });
  return { anglesDeg, lift, drag, moment };
}

/** What the air is reckoned with, as a picture; the mark is the angle at which the blade meets the air now. */
export function sectionPlot(air: EstimatedAir, angleOfAttack: number): PlotData {
  const { anglesDeg, lift, drag, moment } = sectionCurves(air);
  const now = degreesFromRadians(radians(angleOfAttack));
  return {
    x: anglesDeg,
    lines: [
      { name: t('air.section.lift'), look: '1', values: lift },
      { name: t('air.section.drag'), look: '2', values: drag },
      { name: t('air.section.moment'), look: '3', values: moment },
    ],
    xTitle: t('air.section.axis'),
    yTitle: t('air.section.title', {
      reynolds: String(Math.round(judgedStation(air).reynolds / 1000) * 1000),
    }),
    marks: Number.isNaN(now)
      ? []
      : [{ x: now, text: t('air.section.now', { angle: signedDegrees(now) }) }],
  };
}

export function sectionSummary(air: EstimatedAir): string {
  const { anglesDeg, lift, drag, moment } = sectionCurves(air);
  return [-30, -10, 0, 10, 30]
    .map((wanted) => anglesDeg.indexOf(wanted))
    .map((i) =>
      Number.isNaN(lift[i])
        ? t('air.section.noData', { angle: signedDegrees(anglesDeg[i], 0) })
        : t('air.section.summary', {
            angle: signedDegrees(anglesDeg[i], 0),
            lift: fixed(lift[i], 2),
            drag: fixed(drag[i], 3),
            moment: fixed(moment[i], 3),
          }),
    )
    .join(' ');
}

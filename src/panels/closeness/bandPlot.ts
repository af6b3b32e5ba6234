import type { ToleranceResult } from '../../neutralise/closeness/toleranceTypes';
import { displayForce } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { t } from '../../state/words/closenessText';
import { signedDegrees } from '../../state/words/pitchText';
import type { PlotData } from '../../ui/drawn/plotLayout';

/** The force as drawn, the band that 95 % of heads lie in, its edges by first order, and the target. */
export function bandPlot(result: ToleranceResult, units: DisplayUnits): PlotData {
  const { pitchDeg, nominal, exact, linear, targetForce, used } = result;
  const shown = (forces: ArrayLike<number>) =>
    Float64Array.from(forces, (force) => displayForce(force, units).value);
  const level = (force: number) => shown(Float64Array.from(pitchDeg, () => force));
  return {
    x: pitchDeg,
    lines: [
      { name: t('closely.drawn'), look: 'total', values: shown(nominal) },
      { name: t('closely.firstHigh'), look: '1', values: shown(linear.high) },
      { name: t('closely.firstLow'), look: '1', values: shown(linear.low) },
      { name: t('closely.target'), look: '2', values: level(targetForce) },
      { name: t('closely.target'), look: '2', values: level(-targetForce) },
    ],
    bands: [{ name: '', look: 'about', low: shown(exact.low), high: shown(exact.high) }],
    xTitle: t('closely.plotPitch'),
    yTitle: `${t('closely.plotForce')}, ${displayForce(0, units).unit}`,
    marks: used.map((place) => ({
      x: pitchDeg[place],
      text: signedDegrees(pitchDeg[place], 0),
    })),
  };
}

import type { DensityRange } from '../../design/densityRange';
import {
  DIMENSION_UNCERTAINTY,
  type MeasuredReport,
  type QuantityComparison,
} from '../../design/measuredReport';
import type { MeasuredQuantity } from '../../engine/mass/measured';
import { INCH_MM, mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { displayMass, fixed, type Quantity, show, significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displaySecondMoment, grouped, shownText, shownUnit } from '../../state/shownUnits';

/** One measured quantity against the drawing, in words. */
export interface ReportLine {
  readonly what: MeasuredQuantity;
  readonly label: string;
  readonly values: string;
  readonly verdict: string;
  readonly disagrees: boolean;
}

export function reportLines(report: MeasuredReport, units: DisplayUnits): readonly ReportLine[] {
  return report.quantities.flatMap(({ what, comparison }) => {
    if (!comparison) return [];
    const { measured, measuredUncertainty, modelled, modelUncertainty, disagrees } = comparison;
    const values = t('measured.values', {
      measured: uncertainText(what, measured, measuredUncertainty, units),
      modelled: uncertainText(what, modelled, modelUncertainty, units),
    });
    const verdict = verdictText(comparison, units);
    return [{ what, label: t(`measured.what.${what}`), values, verdict, disagrees }];
  });
}

/** "5.7 % more, beyond the 4.0 % expected"; a centre may lie at zero, so its difference is a length. */
export function verdictText(comparison: QuantityComparison, units: DisplayUnits): string {
  const { what, difference, disagrees } = comparison;
  const size = Math.abs(difference);
  const text = sizeText(comparison, size, units);
  const same = !/[1-9]/.test(text);
  return t(disagrees ? 'measured.disagrees' : 'measured.agrees', {
    difference: same ? t('measured.same') : t(moreOrLess(what, difference), { size: text }),
    expected: sizeText(comparison, comparison.expected, units),
  });
}

function moreOrLess(what: MeasuredQuantity, difference: number) {
  if (isCentre(what)) return difference > 0 ? 'measured.further' : 'measured.short';
  return difference > 0 ? 'measured.more' : 'measured.less';
}

function sizeText({ what, modelled }: QuantityComparison, size: number, units: DisplayUnits) {
  if (!isCentre(what)) return `${fixed((100 * size) / modelled, 1)}\u00a0%`;
  const { value, unit } = inUnits(what, size, units);
  return `${fixed(value, unit === 'mm' ? 2 : 4)}\u00a0${unit}`;
}

function isCentre(what: MeasuredQuantity): boolean {
  return what === 'centreX' || what === 'centreY' || what === 'centreZ';
}

/** A value of a body, SI, in the units on screen. */
function inUnits(what: MeasuredQuantity, value: number, units: DisplayUnits): Quantity {
  if (what === 'mass') return displayMass(value, units);
  if (!isCentre(what)) return displaySecondMoment(value, units);
  const mm = mmFromMetres(value);
  return { value: units.length === 'mm' ? mm : mm / INCH_MM, unit: units.length };
}

/** "8.900 +- 0.003 g": as many decimals as the standard uncertainty is worth, one digit of it, two from 1 up to 2. */
export function uncertainText(
  what: MeasuredQuantity,
  value: number,
  uncertainty: number,
  units: DisplayUnits,
): string {
  const shown = inUnits(what, value, units);
  const spread = inUnits(what, uncertainty, units).value;
  if (!(spread > 0)) return show(shown);
  const exponent = Math.floor(Math.log10(spread));
  const digits = spread / 10 ** exponent < 2 ? 1 : 0;
  const decimals = Math.min(8, Math.max(0, digits - exponent));
  const number = grouped(fixed(shown.value, decimals));
  return `${number}\u00a0\u00b1\u00a0${grouped(fixed(spread, decimals))}\u00a0${shown.unit}`;
}

/** What the density was scaled by; null where the mass was not weighed. */
export function densityText(report: MeasuredReport, units: DisplayUnits): string | null {
  if (!report.quantities.some(({ what, comparison }) => what === 'mass' && comparison)) return null;
  const factor = fixed(report.densityFactor, 3);
  if (!report.density) return t('measured.densities', { factor });
  const density = densityUnits(report.density.to, units);
  return t('measured.density', { factor, density });
}

function densityUnits(value: number, units: DisplayUnits): string {
  return shownText(Math.round(value), shownUnit('kg/m3', units));
}

/** Mass and centre that the head is computed with. */
export function inUseText(report: MeasuredReport, units: DisplayUnits): string {
  const [mass, x, y, z] = report.quantities;
  const centres = [x, y, z].map(({ what, applied }) => {
    const { value, unit } = inUnits(what, applied, units);
    return fixed(value, unit === 'mm' ? 2 : 4);
  });
  const measured = report.quantities.some(({ comparison }) => comparison);
  return t(measured ? 'measured.inUse' : 'measured.asDrawn', {
    mass: show(displayMass(mass.applied, units)),
    centre: `${centres.join(', ')}\u00a0${units.length}`,
  });
}

/** What the uncertainties of the drawing were taken to be. `nameOf` gives a material's name by its id. */
export function assumptionText(
  { ranges }: Pick<MeasuredReport, 'ranges'>,
  nameOf: (material: string) => string,
  units: DisplayUnits,
): string {
  const rangeText = ({ material, low, high }: DensityRange) =>
    t('measured.assumedRange', {
      material: nameOf(material),
      low: densityUnits(low, units),
      high: densityUnits(high, units),
    });
  return t('measured.assumed', {
    percent: `${significant(100 * DIMENSION_UNCERTAINTY, 1)}\u00a0%`,
    ranges: ranges.map(rangeText).join(''),
  });
}

import type { LimitUnit } from '../design/limits';
import {
  gramSquareMmFromSi,
  gramsFromKilograms,
  INCH_MM,
  mmFromMetres,
  OUNCE_FORCE_N,
  OUNCE_GRAMS,
} from '../engine/units';
import { t } from '../messages';
import { localNumber } from '../messages/numbers';
import { fixed, type Quantity, significant } from './quantities';
import type { DisplayUnits } from './settings';

/**
 * A parameter's value as it is shown and typed in the chosen display units. The document keeps mm and g: only what
 * is on screen changes, and a value that nobody touches is never rewritten.
 */
export interface ShownUnit {
  /** Name after the number, as typed and as shown; empty for a bare number. */
  readonly name: string;
  /** How many of the document's unit one shown unit holds. */
  readonly perShown: number;
  /** Decimals that are worth showing; what was typed in the document's own unit is shown in full. */
  readonly decimals: number | null;
}

export type FieldUnit = LimitUnit;

const OWN: Readonly<Record<FieldUnit, string>> = {
  mm: 'mm',
  g: 'g',
  deg: '\u00b0',
  'kg/m3': 'kg/m\u00b3',
  rpm: 'rpm',
  s: 's',
  'g mm2': 'g\u00a0mm\u00b2',
  MPa: 'MPa',
  GPa: 'GPa',
  m: 'm',
  N: 'N',
  'N mm': 'N\u00a0mm',
  degC: '\u00b0C',
  '%': '%',
  '1': '',
};

export function shownUnit(unit: FieldUnit, units: DisplayUnits): ShownUnit {
  if (unit === 'mm' && units.length === 'in') return { name: 'in', perShown: INCH_MM, decimals: 4 };
  if (unit === 'g' && units.mass === 'oz')
    return { name: 'oz', perShown: OUNCE_GRAMS, decimals: 5 };
  if (unit === 'N' && units.force === 'ozf')
    return { name: 'ozf', perShown: OUNCE_FORCE_N, decimals: 4 };
  if (unit === 'N mm' && units.moment === 'ozf in')
    return { name: 'ozf\u00a0in', perShown: OUNCE_FORCE_N * INCH_MM, decimals: 3 };
  return { name: unit === 'rpm' ? t('unit.rpm') : OWN[unit], perShown: 1, decimals: null };
}

/** The number of a field as text, without its unit; the language's decimal sign, a plain minus that can be typed. */
export function shownNumber(value: number, unit: ShownUnit): string {
  const shown = value / unit.perShown;
  const text = String(
    unit.decimals === null ? Number(shown.toPrecision(10)) : Number(shown.toFixed(unit.decimals)),
  );
  return text === '-0' ? '0' : localNumber(text);
}

/** From the shown unit to the document's, without the noise of the division. */
export function documentNumber(shown: number, unit: ShownUnit): number {
  return unit.perShown === 1 ? shown : Number((shown * unit.perShown).toPrecision(12));
}

/** A step in the shown unit that feels like the document's: 0.1 mm is 0.005 in, 0.01 g is 0.0005 oz. */
export function shownStep(step: number, unit: ShownUnit): number {
  return unit.perShown === 1 ? step : step / 20;
}

/** "5.5 mm", "50\u00b0": a field's number with its unit, for sentences. */
export function shownText(value: number, unit: ShownUnit): string {
  const number = shownNumber(value, unit).replace('-', '\u2212');
  const gap = unit.name === '' || unit.name === OWN.deg ? '' : '\u00a0';
  return `${number}${gap}${unit.name}`;
}

/** A limit in a sentence: a whole one as it is, one that was computed without the noise of the computing. */
export function limitText(limit: number, unit: ShownUnit): string {
  return shownText(Number.isInteger(limit) ? limit : Number(limit.toPrecision(6)), unit);
}

/** A second moment of mass (kg m^2) in g mm^2 or oz in^2. */
export function displaySecondMoment(value: number, units: DisplayUnits): Quantity {
  const gramMm = gramSquareMmFromSi(value);
  if (units.length === 'mm' || units.mass === 'g')
    return { value: gramMm, unit: 'g\u00a0mm\u00b2' };
  return { value: gramMm / OUNCE_GRAMS / INCH_MM / INCH_MM, unit: 'oz\u00a0in\u00b2' };
}

/** A position in the grip frame (metres) in the shown length, to a hundredth of a millimetre or so. */
export function displayPosition(metres: number, units: DisplayUnits): string {
  const mm = mmFromMetres(metres);
  return units.length === 'mm' ? fixed(mm, 2) : fixed(mm / INCH_MM, 4);
}

/** Mass on the rail: hundredths of a gram, as a small scale shows. */
export function displayRailMass(kilograms: number, units: DisplayUnits): string {
  const grams = gramsFromKilograms(kilograms);
  if (units.mass === 'oz') return `${fixed(grams / OUNCE_GRAMS, 3)}\u00a0oz`;
  if (Math.abs(grams) >= 10_000) return `${significant(grams / 1000, 4)}\u00a0kg`;
  return `${Math.abs(grams) >= 1000 ? significant(grams, 4) : fixed(grams, 2)}\u00a0g`;
}

/** "1940", "12 300": from five digits on before the point in groups of three, set apart by narrow spaces. */
export function grouped(text: string): string {
  return text.replace(/^(\D?)(\d{5,})/, (_, sign: string, digits: string) => {
    return sign + digits.replace(/\B(?=(\d{3})+$)/g, '\u202f');
  });
}

/** A second moment as text: whole g mm^2, three significant digits below a hundred. */
export function secondMomentText(value: number, units: DisplayUnits): string {
  const own = displaySecondMoment(value, units);
  const large = own.unit === 'g\u00a0mm\u00b2' && Math.abs(own.value) >= 1e6;
  const { value: shown, unit } = large
    ? { value: own.value / 1000, unit: 'kg\u00a0mm\u00b2' }
    : own;
  const number = Math.abs(shown) >= 100 ? fixed(shown, 0) : significant(shown);
  return `${grouped(number)}\u00a0${unit}`;
}

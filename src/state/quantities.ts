import {
  gramsFromKilograms,
  INCH_MM,
  mmFromMetres,
  OUNCE_FORCE_N,
  OUNCE_GRAMS,
} from '../engine/units';
import { localNumber } from '../messages/numbers';
import type { DisplayUnits } from './settings';

/** Display of quantities: three significant digits, the language's decimal sign, a real minus, the unit always there. */
const MINUS = '\u2212';
const SPACE = '\u00a0';

/** A number to `digits` significant digits without exponent for everyday sizes; "0" for exactly zero. */
export function significant(value: number, digits = 3): string {
  if (value === 0) return '0';
  const size = Math.abs(value);
  const exponent = Math.floor(Math.log10(size));
  const text =
    exponent >= 6 || exponent < -4
      ? size.toExponential(digits - 1)
      : size.toFixed(Math.max(0, Math.min(12, digits - 1 - exponent)));
  return (value < 0 ? MINUS : '') + localNumber(text);
}

/** A number with a fixed count of decimals; a rounded zero carries no sign. */
export function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return (value < 0 && Number(text) !== 0 ? MINUS : '') + localNumber(text);
}

export interface Quantity {
  readonly value: number;
  readonly unit: string;
}

/** Sizes that are rounding, not force or moment: a nanonewton, a nanonewton metre. */
const NO_FORCE = 1e-9;
const NO_MOMENT = 1e-9;

export function displayForce(force: number, units: DisplayUnits): Quantity {
  const newtons = Math.abs(force) < NO_FORCE ? 0 : force;
  return units.force === 'N'
    ? { value: newtons, unit: 'N' }
    : { value: newtons / OUNCE_FORCE_N, unit: 'ozf' };
}
export function displayMoment(moment: number, units: DisplayUnits): Quantity {
  const newtonMetres = Math.abs(moment) < NO_MOMENT ? 0 : moment;
  return units.moment === 'N mm'
    ? { value: mmFromMetres(newtonMetres), unit: 'N\u00a0mm' }
    : { value: mmFromMetres(newtonMetres) / INCH_MM / OUNCE_FORCE_N, unit: 'ozf\u00a0in' };
}
/** A newton millimetre is a millijoule; ounce-force inches serve for energy too. */
export function displayStress(pascal: number, units: DisplayUnits): Quantity {
  return units.length === 'mm'
    ? { value: pascal / 1e6, unit: 'MPa' }
    : { value: (pascal / 1e6) * (INCH_MM ** 2 / OUNCE_FORCE_N / 16), unit: 'psi' };
}
export function displayEnergy(energy: number, units: DisplayUnits): Quantity {
  const { value, unit } = displayMoment(energy, units);
  return { value, unit: units.moment === 'N mm' ? 'mJ' : unit };
}
export function displayMass(kilograms: number, units: DisplayUnits): Quantity {
  const grams = gramsFromKilograms(kilograms);
  return units.mass === 'g'
    ? { value: grams, unit: 'g' }
    : { value: grams / OUNCE_GRAMS, unit: 'oz' };
}
/** "8.04 N": three significant digits and the unit. */
export function show(quantity: Quantity, digits = 3): string {
  const { value, unit } = largeUnit(quantity);
  return `${significant(value, digits)}${unit === '\u00b0' ? '' : SPACE}${unit}`;
}

/** The same with a plus where it is above zero. */
export function signedQuantity(quantity: Quantity): string {
  return `${quantity.value > 0 ? '+' : ''}${show(quantity)}`;
}

/** Two of the same kind in one unit, that of the second: they are to be compared. */
export function showBoth(one: Quantity, other: Quantity, digits = 3): readonly [string, string] {
  const shown = largeUnit(other);
  const holds = shown.unit === other.unit ? 1 : other.value / shown.value;
  const text = (value: number) =>
    `${significant(value, digits)}${shown.unit === '' ? '' : SPACE}${shown.unit}`;
  return [text(one.value / holds), text(shown.value)];
}

/** A full-size head in units that fit it: kilonewtons, newton metres, kilograms, pounds. */
function largeUnit(quantity: Quantity): Quantity {
  const large = LARGE[quantity.unit];
  if (!large || Math.abs(quantity.value) < large.from) return quantity;
  return { value: quantity.value / large.holds, unit: large.unit };
}

interface LargeUnit {
  readonly from: number;
  readonly unit: string;
  /** So many of the small unit are one of the large. */
  readonly holds: number;
}
const LARGE: Readonly<Record<string, LargeUnit>> = {
  N: { from: 10_000, unit: 'kN', holds: 1000 },
  g: { from: 10_000, unit: 'kg', holds: 1000 },
  'N\u00a0mm': { from: 10_000, unit: 'N\u00a0m', holds: 1000 },
  psi: { from: 10_000, unit: 'ksi', holds: 1000 },
  ozf: { from: 10_000, unit: 'lbf', holds: 16 },
  oz: { from: 10_000, unit: 'lb', holds: 16 },
  'ozf\u00a0in': { from: 10_000, unit: 'lbf\u00a0in', holds: 16 },
};

/** "-1.8 deg" to one decimal with the degree sign. */
export function showDegrees(degrees: number, decimals = 1): string {
  return `${fixed(degrees, decimals)}\u00b0`;
}

import { INCH_MM, OUNCE_FORCE_N, OUNCE_GRAMS } from '../../engine/units';
import type { FieldUnit } from '../shownUnits';

/** Units that may be typed into a field, as multiples of the field's own unit. */
const TYPED: Readonly<Record<FieldUnit, Readonly<Record<string, number>>>> = {
  mm: {
    mm: 1,
    cm: 10,
    m: 1000,
    um: 0.001,
    in: INCH_MM,
    inch: INCH_MM,
    inches: INCH_MM,
    '"': INCH_MM,
    mil: INCH_MM / 1000,
    thou: INCH_MM / 1000,
  },
  g: { g: 1, kg: 1000, mg: 0.001, oz: OUNCE_GRAMS, lb: 16 * OUNCE_GRAMS },
  deg: { deg: 1, '\u00b0': 1, rad: 180 / Math.PI },
  'kg/m3': {
    'kg/m3': 1,
    'g/cm3': 1000,
    'g/cc': 1000,
    'lb/in3': (16 * OUNCE_GRAMS) / 1000 / (INCH_MM / 1000) ** 3,
  },
  rpm: { rpm: 1, '1/min': 1, '/min': 1, hz: 60 },
  s: { s: 1, sec: 1, min: 60, ms: 0.001 },
  'g mm2': { 'g mm2': 1, gmm2: 1, 'kg m2': 1e9, 'g cm2': 100 },
  MPa: { mpa: 1, 'n/mm2': 1, gpa: 1000 },
  GPa: { gpa: 1, mpa: 0.001 },
  m: { m: 1, km: 1000, ft: 0.3048 },
  N: { n: 1, kn: 1000, ozf: OUNCE_FORCE_N, lbf: 16 * OUNCE_FORCE_N },
  'N mm': {
    'n mm': 1,
    nmm: 1,
    'n cm': 10,
    ncm: 10,
    'n m': 1000,
    nm: 1000,
    'kg cm': 98.0665,
    kgcm: 98.0665,
    'ozf in': OUNCE_FORCE_N * INCH_MM,
    'oz in': OUNCE_FORCE_N * INCH_MM,
    ozfin: OUNCE_FORCE_N * INCH_MM,
    ozin: OUNCE_FORCE_N * INCH_MM,
  },
  degC: { degc: 1, '\u00b0c': 1, c: 1 },
  '%': { '%': 1 },
  '1': { '': 1 },
};

function plain(unit: string): string {
  return unit
    .toLowerCase()
    .replaceAll('^', '')
    .replaceAll('\u00b3', '3')
    .replaceAll('\u00b2', '2')
    .replaceAll('\u00a0', ' ')
    .replace(/^[\u00b5\u03bc]/, 'u');
}

/** What one of `unit` is in the field's own unit; undefined where it measures something else. */
export function unitFactor(field: FieldUnit, unit: string): number | undefined {
  const units = TYPED[field];
  const name = plain(unit);
  return Object.hasOwn(units, name) ? units[name] : undefined;
}

/** Whether any field knows the unit. */
export function knownUnit(unit: string): boolean {
  const name = plain(unit);
  return Object.values(TYPED).some((units) => Object.hasOwn(units, name));
}

import {
  READING_UNITS,
  type ReadingDimension,
  type ReadingUnit,
  siFromReading,
} from '../../engine/units';

export type Dimension = ReadingDimension;

/** Units that a table may come in; the name is the one that is shown and written. */
export type UnitName = ReadingUnit;

/** A unit as a force gauge with a scale's habits prints it: a mass that stands for its weight. */
const AS_FORCE: Readonly<Record<string, UnitName>> = {
  g: 'gf',
  gram: 'gf',
  grams: 'gf',
  kg: 'kgf',
  oz: 'ozf',
  ounce: 'ozf',
  ounces: 'ozf',
  lb: 'lbf',
  lbs: 'lbf',
  pound: 'lbf',
  pounds: 'lbf',
};

/** Other spellings, in small letters, blanks and dots between factors as one blank. Those of case stand in `CASED`. */
const SPELLINGS: Readonly<Record<string, UnitName>> = {
  ...AS_FORCE,
  deg: 'deg',
  degs: 'deg',
  degree: 'deg',
  degrees: 'deg',
  '\u00b0': 'deg',
  '\u00ba': 'deg',
  gradi: 'deg',
  grados: 'deg',
  graden: 'deg',
  'degr\u00e9s': 'deg',
  rad: 'rad',
  radian: 'rad',
  radians: 'rad',
  n: 'N',
  newton: 'N',
  newtons: 'N',
  cn: 'cN',
  dan: 'daN',
  kn: 'kN',
  ozf: 'ozf',
  ouncef: 'ozf',
  'oz f': 'ozf',
  'ounce force': 'ozf',
  'ounces force': 'ozf',
  lbf: 'lbf',
  'lb f': 'lbf',
  'pound force': 'lbf',
  gf: 'gf',
  'g f': 'gf',
  'gram force': 'gf',
  kgf: 'kgf',
  'kg f': 'kgf',
  kp: 'kgf',
  'n m': 'N m',
  nm: 'N m',
  'newton metre': 'N m',
  'n cm': 'N cm',
  ncm: 'N cm',
  'n mm': 'N mm',
  nmm: 'N mm',
  'ozf in': 'ozf in',
  'in ozf': 'ozf in',
  'oz in': 'ozf in',
  'in oz': 'ozf in',
  ozin: 'ozf in',
  inoz: 'ozf in',
  'lbf in': 'lbf in',
  'in lbf': 'lbf in',
  'lb in': 'lbf in',
  'in lb': 'lbf in',
  'lbf ft': 'lbf ft',
  'ft lbf': 'lbf ft',
  'lb ft': 'lbf ft',
  'ft lb': 'lbf ft',
  'gf cm': 'gf cm',
  'g cm': 'gf cm',
  'kgf cm': 'kgf cm',
  'kg cm': 'kgf cm',
  rpm: 'rpm',
  'r/min': 'rpm',
  '1/min': 'rpm',
  '/min': 'rpm',
  'rev/min': 'rpm',
  'u/min': 'rpm',
  'tr/min': 'rpm',
  'min^-1': 'rpm',
  'min-1': 'rpm',
  'rad/s': 'rad/s',
  'rad s^-1': 'rad/s',
  hz: 'Hz',
  '1/s': 'Hz',
  'rev/s': 'Hz',
  rps: 'Hz',
  s: 's',
  sec: 's',
  secs: 's',
  second: 's',
  seconds: 's',
  ms: 'ms',
  msec: 'ms',
  min: 'min',
  minutes: 'min',
  h: 'h',
  hours: 'h',
  mm: 'mm',
  millimetres: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  m: 'm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  div: 'div',
  divs: 'div',
  divisions: 'div',
};

/** Where only the size of a letter tells units apart. */
const CASED: Readonly<Record<string, UnitName>> = {
  mN: 'mN',
  'mN m': 'mN m',
  mNm: 'mN m',
  // German for degree; in small letters it could be the 400th part of a turn.
  Grad: 'deg',
};

/** The unit that a text names, in any of many spellings; null where it names none. */
export function unitFromText(text: string): UnitName | null {
  const plain = text
    .replaceAll('\u2212', '-')
    .replaceAll('\u207b\u00b9', '^-1')
    .replace(/[\s\u00a0\u202f]+/g, ' ')
    .replace(/ ?[.*\u00b7\u22c5\u00d7\u2022] ?/g, ' ')
    .trim();
  const cased = own(CASED, plain);
  if (cased) return cased;
  // "mn" in small letters could be no other unit than the millinewton, but "MN" would be mega.
  if (plain === 'mn') return 'mN';
  const small = plain.toLowerCase();
  const found =
    own(SPELLINGS, small) ?? own(SPELLINGS, small.replace(/(?<=[a-z])-(?=[a-z])/g, ' '));
  return found ?? null;
}

function own(table: Readonly<Record<string, UnitName>>, key: string): UnitName | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}

export function dimensionOf(name: UnitName): Dimension {
  return READING_UNITS[name].dimension;
}

/** The value in SI units; a plain division of a scale stays what it is. */
export function siFrom(value: number, name: UnitName): number {
  return siFromReading(value, name);
}

/** Units of a dimension, for a list to choose from. */
export function unitsOf(dimension: Dimension): UnitName[] {
  return (Object.keys(READING_UNITS) as UnitName[]).filter(
    (name) => READING_UNITS[name].dimension === dimension,
  );
}

import {
  angularSpeedFromRpm,
  INCH_MM,
  metresFromMm,
  OUNCE_FORCE_N,
  OUNCE_GRAMS,
  radiansFromDegrees,
} from '../../engine/units';

export type Dimension = 'angle' | 'force' | 'moment' | 'speed' | 'time' | 'length' | 'divisions';

/** Units that a table may come in; the name is the one that is shown and written. */
export type UnitName = keyof typeof UNITS;

interface Unit {
  readonly dimension: Dimension;
  toSi(value: number): number;
}

/*
 * These belong in engine/units.ts, which has no such functions yet. All derive from its constants. The pound is 16
 * ounces; the gram-force is an ounce-force over the grams of an ounce.
 */
const GRAM_FORCE_N = OUNCE_FORCE_N / OUNCE_GRAMS;
const POUND_FORCE_N = 16 * OUNCE_FORCE_N;
const INCH_M = metresFromMm(INCH_MM);

function unit(dimension: Dimension, toSi: (value: number) => number): Unit {
  return { dimension, toSi };
}

function times(dimension: Dimension, factor: number): Unit {
  return unit(dimension, (value) => value * factor);
}

const UNITS = {
  deg: unit('angle', radiansFromDegrees),
  rad: times('angle', 1),
  N: times('force', 1),
  mN: times('force', 1e-3),
  cN: times('force', 1e-2),
  daN: times('force', 10),
  kN: times('force', 1000),
  ozf: times('force', OUNCE_FORCE_N),
  lbf: times('force', POUND_FORCE_N),
  gf: times('force', GRAM_FORCE_N),
  kgf: times('force', 1000 * GRAM_FORCE_N),
  'N m': times('moment', 1),
  'N cm': times('moment', 1e-2),
  'N mm': unit('moment', metresFromMm),
  'mN m': times('moment', 1e-3),
  'ozf in': times('moment', OUNCE_FORCE_N * INCH_M),
  'lbf in': times('moment', POUND_FORCE_N * INCH_M),
  'lbf ft': times('moment', 12 * POUND_FORCE_N * INCH_M),
  'gf cm': times('moment', GRAM_FORCE_N / 100),
  'kgf cm': times('moment', 10 * GRAM_FORCE_N),
  rpm: unit('speed', angularSpeedFromRpm),
  'rad/s': times('speed', 1),
  Hz: unit('speed', (value) => angularSpeedFromRpm(60 * value)),
  s: times('time', 1),
  ms: times('time', 1e-3),
  min: times('time', 60),
  h: times('time', 3600),
  mm: unit('length', metresFromMm),
  cm: unit('length', (value) => metresFromMm(10 * value)),
  m: times('length', 1),
  in: unit('length', (value) => metresFromMm(value * INCH_MM)),
  div: times('divisions', 1),
} as const satisfies Readonly<Record<string, Unit>>;

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
  Nm: 'N m',
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
  return UNITS[name].dimension;
}

/** The value in SI units; a plain division of a scale stays what it is. */
export function siFrom(value: number, name: UnitName): number {
  return UNITS[name].toSi(value);
}

/** Units of a dimension, for a list to choose from. */
export function unitsOf(dimension: Dimension): UnitName[] {
  return (Object.keys(UNITS) as UnitName[]).filter((name) => UNITS[name].dimension === dimension);
}

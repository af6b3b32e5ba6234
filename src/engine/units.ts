/**
 * The only place where units are converted. Inside the program everything is SI (metre, kilogram, second,
 * radian, newton); a suffix in a name (`lengthMm`, `massGrams`, `speedRpm`) marks a value at an edge.
 *
 * Factors: the inch (25.4 mm), the avoirdupois pound (0.45359237 kg; ounce = 1/16) and standard gravity
 * (9.80665 m/s^2) are exact by definition (international yard and pound agreement of 1959; 3rd CGPM 1901).
 */
declare const unit: unique symbol;

/** An angle in radians. Made by `radians` or `radiansFromDegrees`, so that degrees cannot slip in. */
export type Radians = number & { readonly [unit]: 'rad' };

export const INCH_MM = 25.4;
export const OUNCE_GRAMS = 28.349523125;
const STANDARD_GRAVITY = 9.80665;
/** Newtons in one ounce-force. */
export const OUNCE_FORCE_N = (OUNCE_GRAMS / 1000) * STANDARD_GRAVITY;

export function radians(value: number): Radians {
  return value as Radians;
}
export function radiansFromDegrees(degrees: number): Radians {
  return ((degrees * Math.PI) / 180) as Radians;
}
export function degreesFromRadians(angle: Radians): number {
  return (angle * 180) / Math.PI;
}
export function metresFromMm(lengthMm: number): number {
  return lengthMm / 1000;
}
export function mmFromMetres(length: number): number {
  return length * 1000;
}
export function kilogramsFromGrams(massGrams: number): number {
  return massGrams / 1000;
}
export function gramsFromKilograms(mass: number): number {
  return mass * 1000;
}
/** Angular speed in rad/s from revolutions per minute. */
export function angularSpeedFromRpm(speedRpm: number): number {
  return (speedRpm * Math.PI) / 30;
}
export function ounceForceFromNewtons(force: number): number {
  return force / OUNCE_FORCE_N;
}
export function rpmFromAngularSpeed(angularSpeed: number): number {
  return (angularSpeed * 30) / Math.PI;
}
/** Second moments of mass on screen: 1 kg m^2 = 1e9 g mm^2. */
export function gramSquareMmFromSi(secondMoment: number): number {
  return secondMoment * 1e9;
}
export function siFromGramSquareMm(secondMoment: number): number {
  return secondMoment / 1e9;
}

/** The avoirdupois pound is 16 ounces: 0.45359237 kg. */
const POUND_FORCE_N = 16 * OUNCE_FORCE_N;
const INCH_M = INCH_MM / 1000;

type Dimension = 'angle' | 'force' | 'moment' | 'speed' | 'time' | 'length' | 'divisions';

function unitOf(dimension: Dimension, factor: number, per = 1) {
  return { dimension, factor, per };
}

/**
 * Units that readings of a bench come in: SI = value times `factor` over `per`, two exact numbers where the definition has
 * them (SI brochure, 9th edition, table 7 and 8; for inch, pound and gram-force see above; a foot is 12 inches; the
 * kilogram-force is standard gravity on a kilogram). A division of a scale is no unit: it stays what it is.
 */
export const READING_UNITS = {
  deg: unitOf('angle', Math.PI, 180),
  rad: unitOf('angle', 1),
  N: unitOf('force', 1),
  mN: unitOf('force', 1, 1000),
  cN: unitOf('force', 1, 100),
  daN: unitOf('force', 10),
  kN: unitOf('force', 1000),
  ozf: unitOf('force', OUNCE_FORCE_N),
  lbf: unitOf('force', POUND_FORCE_N),
  gf: unitOf('force', STANDARD_GRAVITY, 1000),
  kgf: unitOf('force', STANDARD_GRAVITY),
  'N m': unitOf('moment', 1),
  'N cm': unitOf('moment', 1, 100),
  'N mm': unitOf('moment', 1, 1000),
  'mN m': unitOf('moment', 1, 1000),
  'ozf in': unitOf('moment', OUNCE_FORCE_N * INCH_M),
  'lbf in': unitOf('moment', POUND_FORCE_N * INCH_M),
  'lbf ft': unitOf('moment', 12 * POUND_FORCE_N * INCH_M),
  'gf cm': unitOf('moment', STANDARD_GRAVITY, 100_000),
  'kgf cm': unitOf('moment', STANDARD_GRAVITY, 100),
  rpm: unitOf('speed', Math.PI, 30),
  'rad/s': unitOf('speed', 1),
  Hz: unitOf('speed', 2 * Math.PI),
  s: unitOf('time', 1),
  ms: unitOf('time', 1, 1000),
  min: unitOf('time', 60),
  h: unitOf('time', 3600),
  mm: unitOf('length', 1, 1000),
  cm: unitOf('length', 1, 100),
  m: unitOf('length', 1),
  in: unitOf('length', INCH_MM, 1000),
  div: unitOf('divisions', 1),
} as const;

export type ReadingUnit = keyof typeof READING_UNITS;
export type ReadingDimension = Dimension;

/** A reading in SI units; angles in rad, speeds in rad/s. */
export function siFromReading(value: number, name: ReadingUnit): number {
  const { factor, per } = READING_UNITS[name];
  return (value * factor) / per;
}

/** The way back. */
export function readingFromSi(value: number, name: ReadingUnit): number {
  const { factor, per } = READING_UNITS[name];
  return (value * per) / factor;
}
